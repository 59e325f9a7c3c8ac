package baywright.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks a sentence between words. */
final class Wrap {

    private Wrap() {}

    /** Characters that a text takes on a terminal; escapes of colour take none. */
    static int width(String text) {
        String plain = text.replaceAll("\033\\[[0-9;]*m", "");
        return plain.codePointCount(0, plain.length());
    }

    /**
     * The lines of a text.
     *
     * @param width widest line; only a single word may be wider
     * @return at least one line
     */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        boolean begun = false;
        for (String word : text.split(" ", -1)) {
            if (begun && width(line.toString()) + 1 + width(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
                begun = false;
            }
            // a line may begin with a space of the text: it has begun although it has no letter yet
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        lines.add(line.toString());
        return lines;
    }
}
