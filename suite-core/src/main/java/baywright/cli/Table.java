package baywright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows in aligned columns no wider than a console. One column may wrap; the others are as wide as their widest text. */
final class Table {

    private static final String GAP = "  ";

    private final List<String> headings;
    private final List<String[]> rows = new ArrayList<>();
    private final List<Boolean> right;
    private final int wrapping;

    /**
     * A table that is empty so far.
     *
     * @param headings titles of the columns; a title that begins with {@code >} has its column's texts on the right, one
     *                 that begins with {@code ~} wraps
     */
    Table(String... headings) {
        List<String> marked = List.of(headings);
        this.right = marked.stream().map(h -> h.startsWith(">")).toList();
        this.wrapping = (int) marked.stream().takeWhile(h -> !h.startsWith("~")).count();
        this.headings = marked.stream()
                .map(h -> h.startsWith(">") || h.startsWith("~") ? h.substring(1) : h)
                .toList();
    }

    /**
     * Adds a row.
     *
     * @throws IllegalArgumentException when it has not one text for each column
     */
    void add(String... texts) {
        if (texts.length != headings.size()) {
            throw new IllegalArgumentException(
                    "a row of this table has " + headings.size() + " texts, got " + Arrays.toString(texts));
        }
        rows.add(texts.clone());
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    void print(Console console, String indent) {
        int[] widths = widths(indent.length());
        boolean titled = headings.stream().anyMatch(h -> !h.isEmpty());
        if (titled) {
            lines(headings.toArray(String[]::new), widths)
                    .forEach(line -> console.out().println(indent + console.paint(Ink.HEAD, line)));
        }
        rows.forEach(row -> lines(row, widths).forEach(line -> console.out().println(indent + line)));
    }

    private int[] widths(int indent) {
        int[] widths = headings.stream().mapToInt(Wrap::width).toArray();
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.max(widths[i], Wrap.width(row[i]));
            }
        }
        if (wrapping < widths.length) {
            int others = Arrays.stream(widths).sum() - widths[wrapping] + GAP.length() * (widths.length - 1);
            int room = Math.max(16, Console.WIDTH - indent - others);
            widths[wrapping] = Math.min(widths[wrapping], room);
        }
        return widths;
    }

    private List<String> lines(String[] row, int[] widths) {
        List<String> wrapped = wrapping < row.length ? Wrap.lines(row[wrapping], widths[wrapping]) : List.of("");
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < Math.max(1, wrapped.size()); line++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < row.length; i++) {
                String cell = i == wrapping ? wrapped.get(line) : line == 0 ? row[i] : "";
                text.append(i == 0 ? "" : GAP).append(padded(cell, widths[i], right.get(i)));
            }
            lines.add(text.toString().stripTrailing());
        }
        return lines;
    }

    private static String padded(String text, int width, boolean right) {
        String space = " ".repeat(Math.max(0, width - Wrap.width(text)));
        return right ? space + text : text + space;
    }
}
