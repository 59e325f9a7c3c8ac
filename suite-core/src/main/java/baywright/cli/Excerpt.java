package baywright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The line of a file that a problem is about, with a caret under the place.
 *
 * @param source the line, cut to a console's width
 * @param caret  spaces and a caret
 */
record Excerpt(String source, String caret) {

    private static final int ROOM = Console.WIDTH - 10;

    /** Larger files are not worth reading for one line. */
    private static final long MOST_BYTES = 4L << 20;

    /**
     * Cuts the line out of its file.
     *
     * @param line   from 1
     * @param column from 1, in code points; 0 for the whole line
     * @return empty when there is no such line to show
     */
    static Optional<Excerpt> of(Path file, int line, int column) {
        try {
            if (line < 1 || !Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            List<String> lines =
                    Files.readString(file, StandardCharsets.UTF_8).lines().toList();
            return line > lines.size() ? Optional.empty() : Optional.of(of(lines.get(line - 1), column));
        } catch (IOException e) {
            // A file that cannot be read has a problem of its own; this one goes without its line.
            return Optional.empty();
        }
    }

    static Excerpt of(String text, int column) {
        int[] points = text.codePoints()
                .map(c -> c == '\t' || Character.isISOControl(c) ? ' ' : c)
                .toArray();
        int at = Math.min(Math.max(column - 1, 0), points.length);
        int start = at < ROOM ? 0 : at - ROOM / 2;
        int length = Math.min(points.length - start, ROOM);
        String source = new String(points, start, length);
        return new Excerpt(source, column < 1 ? "" : " ".repeat(at - start) + "^");
    }
}
