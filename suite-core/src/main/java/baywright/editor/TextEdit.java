package baywright.editor;

import java.util.Comparator;
import java.util.List;

/**
 * A change of a text: what stands between two offsets gives way to other words.
 *
 * @param from offset of the first character that goes
 * @param to   offset behind the last one; equal to {@code from} for a mere insertion
 * @param with what comes instead
 */
public record TextEdit(int from, int to, String with) {

    public TextEdit {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("edit needs 0 <= from <= to, got " + from + " and " + to);
        }
    }

    /**
     * The text with these edits made; their offsets are all those of the text before.
     *
     * @throws IllegalArgumentException when two of them overlap or one lies outside the text
     */
    public static String apply(String text, List<TextEdit> edits) {
        List<TextEdit> sorted = edits.stream()
                .sorted(Comparator.comparingInt(TextEdit::from).thenComparingInt(TextEdit::to))
                .toList();
        StringBuilder made = new StringBuilder();
        int at = 0;
        for (TextEdit edit : sorted) {
            if (edit.from < at || edit.to > text.length()) {
                throw new IllegalArgumentException(
                        "edit " + edit + " overlaps another or lies outside the text of " + text.length());
            }
            made.append(text, at, edit.from).append(edit.with);
            at = edit.to;
        }
        return made.append(text, at, text.length()).toString();
    }
}
