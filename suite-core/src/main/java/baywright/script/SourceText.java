package baywright.script;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The text of one file by lines. Columns count code points, as Groovy's parser counts them. */
final class SourceText {

    private final String file;
    private final List<String> lines;

    /** Takes the text without a byte-order mark; {@code \r\n}, {@code \r} and {@code \n} each end one line. */
    SourceText(String file, String text) {
        this.file = file;
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        this.lines = new ArrayList<>(Arrays.asList(plain.split("\r\n|\r|\n", -1)));
    }

    String file() {
        return file;
    }

    String text() {
        return String.join("\n", lines);
    }

    Place place(int line, int column) {
        return new Place(file, Math.max(line, 1), Math.max(column, 1));
    }

    int lastLine() {
        return lines.size();
    }

    String line(int line) {
        return line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    }

    /** What stands at a place up to the end of its line. */
    String from(int line, int column) {
        String whole = line(line);
        int points = whole.codePointCount(0, whole.length());
        return column < 1 || column > points ? "" : whole.substring(whole.offsetByCodePoints(0, column - 1));
    }

    /** Empties a line except for its braces, so that the rest of the file can be read; false when it already was. */
    boolean blank(int line) {
        String before = line(line);
        String after = before.replaceAll("[^{}]", " ");
        if (line < 1 || line > lines.size() || after.equals(before)) {
            return false;
        }
        lines.set(line - 1, after);
        return true;
    }
}
