package baywright.workspace;

import java.util.Collection;
import java.util.List;

/** How strange text is shown in a message: short, on one line, without characters that act on a terminal. */
public final class Shown {

    private static final int LONGEST = 60;

    private Shown() {}

    /** At most {@value #LONGEST} characters between quotation marks. */
    public static String quoted(String text) {
        return "'" + plain(text) + "'";
    }

    /** At most {@value #LONGEST} characters; those that do not show are named. */
    public static String plain(String text) {
        return plain(text, LONGEST);
    }

    /** At most {@code longest} characters; those that do not show are named. */
    public static String plain(String text, int longest) {
        if (text.length() <= longest && isPlain(text)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        int count = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (count++ == longest) {
                return shown.append('…').toString();
            }
            int c = text.codePointAt(i);
            if (isPrintable(c)) {
                shown.appendCodePoint(c);
            } else {
                shown.append(named(c));
            }
        }
        return shown.toString();
    }

    /** Whether every character is a letter, digit or sign of ASCII; the quick answer for nearly every text. */
    static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    static String named(int codePoint) {
        return String.format("U+%04X", codePoint);
    }

    /** Whether a terminal and an editor show the character and nothing else happens. */
    public static boolean isPrintable(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }

    /** {@code a, b or c}. */
    public static String oneOf(List<String> choices) {
        if (choices.size() == 1) {
            return choices.get(0);
        }
        int last = choices.size() - 1;
        return String.join(", ", choices.subList(0, last)) + " or " + choices.get(last);
    }

    /** {@code ; nearest is 'x'} when a known word is at most two slips away, else nothing. */
    public static String nearest(String met, Collection<String> known) {
        String best = null;
        int least = 3;
        for (String word : known) {
            int distance = distance(met, word);
            if (distance < least && distance < word.length()) {
                least = distance;
                best = word;
            }
        }
        return best == null ? "" : "nearest is '" + best + "'";
    }

    /** Slips between two words: one character more, less, other, or two neighbours exchanged. */
    private static int distance(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 2) {
            return Integer.MAX_VALUE;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(d[i - 1][j - 1] + other, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                boolean exchanged =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                d[i][j] = exchanged ? Math.min(least, d[i - 2][j - 2] + 1) : least;
            }
        }
        return d[a.length()][b.length()];
    }
}
