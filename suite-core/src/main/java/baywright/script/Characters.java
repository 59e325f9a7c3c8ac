package baywright.script;

import java.util.regex.Pattern;

/** Characters that a text may not hold, since they hide or reorder what a person sees. */
public final class Characters {

    /** No living script needs more marks on one letter than four. */
    private static final Pattern PILE = Pattern.compile("[\\p{Mn}\\p{Me}]{5}");

    private Characters() {}

    /**
     * Whether a code point is a control character other than tab and line end, a lone surrogate, a character that turns
     * the direction of reading (Unicode Standard Annex 9, table of explicit formatting characters and marks), a
     * zero-width character, a private one or a code that is no character.
     */
    public static boolean isForbidden(int point) {
        if (point == '\t' || point == '\n' || point == '\r') {
            return false;
        }
        if ((point & 0xfffe) == 0xfffe || (point >= 0xfdd0 && point <= 0xfdef)) {
            return true;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }

    /** Whether a text holds a forbidden character, or so many marks on one letter that they cover the lines around. */
    public static boolean hasForbidden(String text) {
        return text.codePoints().anyMatch(Characters::isForbidden)
                || PILE.matcher(text).find();
    }
}
