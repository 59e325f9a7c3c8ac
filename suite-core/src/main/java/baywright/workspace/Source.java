package baywright.workspace;

import baywright.script.Place;
import java.util.Arrays;

/** The text of one file, which can tell line and column of each of its characters. */
final class Source {

    private final String file;
    private final String text;
    private final int[] lineStarts;

    /** @param file path relative to the workspace, with {@code /} */
    Source(String file, String text) {
        this.file = file;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, count * 2);
            }
            starts[count++] = i + 1;
        }
        return Arrays.copyOf(starts, count);
    }

    String file() {
        return file;
    }

    String text() {
        return text;
    }

    int lines() {
        return lineStarts.length;
    }

    /** The place of a character; an offset past the end means the end. */
    Place place(int offset) {
        int at = Math.min(Math.max(offset, 0), text.length());
        int found = Arrays.binarySearch(lineStarts, at);
        int line = found >= 0 ? found : -found - 2;
        return new Place(file, line + 1, text.codePointCount(lineStarts[line], at) + 1);
    }
}
