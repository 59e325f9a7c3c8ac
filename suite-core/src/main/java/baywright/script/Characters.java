package baywright.script;

/** Characters that a text may not hold, since they hide or reorder what a person sees. */
public final class Characters {

    private Characters() {}

    /**
     * Whether a code point is a control character other than tab and line end, a lone surrogate, a character that turns
     * the direction of reading (Unicode Standard Annex 9, table of explicit formatting characters and marks), a
     * zero-width character or a private one.
     */
    public static boolean isForbidden(int point) {
        if (point == '\t' || point == '\n' || point == '\r') {
            return false;
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

    /** Whether any character of the text is forbidden. */
    public static boolean hasForbidden(String text) {
        return text.codePoints().anyMatch(Characters::isForbidden);
    }
}
