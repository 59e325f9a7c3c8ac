package baywright.script;

/**
 * Where something was written.
 *
 * @param file   name relative to the library's folder, with {@code /}
 * @param line   from 1; 0 when the whole file is meant
 * @param column from 1, in code points; 0 when the whole line is meant
 */
public record Place(String file, int line, int column) implements Comparable<Place> {

    public static Place ofFile(String file) {
        return new Place(file, 0, 0);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        int byLine = Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
