package baywright.script;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The text of one file by lines. Columns count code points, as Groovy's parser counts them. */
final class SourceText {

    private final String file;
    /** The word before a brace on an emptied line. */
    static final String NOTHING = "_";

    private final List<String> lines;
    private final Set<Integer> emptied = new TreeSet<>();

    /** Takes the text without a byte-order mark; {@code \r\n}, {@code \r} and {@code \n} each end one line. */
    SourceText(String file, String text) {
        this.file = file;
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        this.lines = new ArrayList<>(Arrays.asList(plain.split("\r\n|\r|\n", -1)));
    }

    String file() {
        return file;
    }

    List<String> lines() {
        return List.copyOf(lines);
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

    /**
     * Empties a line except for its braces, so that the rest of the file can be read. An opening brace gets a word that
     * stands for nothing, since braces alone would belong to the line before. False when the line was empty already.
     */
    boolean blank(int line) {
        if (line < 1 || line > lines.size() || !emptied.add(line)) {
            return false;
        }
        String braces = line(line).replaceAll("[^{}]", " ").replaceAll("  \\{", ";" + NOTHING + "{");
        lines.set(line - 1, braces);
        return true;
    }

    /** Whether a line was emptied; what is noted about it afterwards says nothing about what its author wrote. */
    boolean isEmptied(int line) {
        return emptied.contains(line);
    }

    /** The same text with nothing but the lines between two others. */
    SourceText between(int above, int below) {
        SourceText inner = new SourceText(file, text());
        for (int i = 0; i < lines.size(); i++) {
            if (i + 1 <= above || i + 1 >= below) {
                inner.lines.set(i, "");
            }
        }
        return inner;
    }

    /** The line on which the brace that opens at a place is closed again, or the last one. */
    int closing(Place brace) {
        int depth = 0;
        for (int line = brace.line(); line <= lines.size(); line++) {
            String text = line == brace.line() ? from(line, brace.column()) : line(line);
            for (int i = 0; i < text.length(); i++) {
                depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
                if (depth == 0) {
                    return line;
                }
            }
        }
        return lines.size();
    }
}
