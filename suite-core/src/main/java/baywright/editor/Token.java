package baywright.editor;

/**
 * A piece of a text.
 *
 * @param kind what it is
 * @param from offset of its first character
 * @param to   offset behind its last character
 * @param text as written, quotes included
 */
record Token(Kind kind, int from, int to, String text) {

    /** What a piece of a text can be. */
    enum Kind {
        NAME,
        NUMBER,
        TEXT,
        SIGN,
        COMMENT,
        LINE_END
    }

    boolean is(String sign) {
        return (kind == Kind.SIGN || kind == Kind.NAME) && text.equals(sign);
    }

    boolean isName() {
        return kind == Kind.NAME;
    }

    boolean isText() {
        return kind == Kind.TEXT;
    }

    /** How many characters its quotes have at each end: 1 or 3. */
    private int quotes() {
        boolean three = text.startsWith("'''") || text.startsWith("\"\"\"");
        return three ? 3 : 1;
    }

    /** Whether a text has its closing quotes. */
    boolean closed() {
        int n = quotes();
        return text.length() >= 2 * n && text.endsWith(text.substring(0, n)) && !escaped(text.length() - n);
    }

    private boolean escaped(int at) {
        int slashes = 0;
        while (at - 1 - slashes >= 0 && text.charAt(at - 1 - slashes) == '\\') {
            slashes++;
        }
        return slashes % 2 == 1;
    }

    /** Where the characters between the quotes begin. */
    int contentFrom() {
        return from + quotes();
    }

    /** Where the characters between the quotes end. */
    int contentTo() {
        return closed() ? to - quotes() : to;
    }

    /** The characters between the quotes, as written. */
    String content() {
        return text.substring(contentFrom() - from, contentTo() - from);
    }

    /** Whether parts of the text are worked out. */
    boolean hasParts() {
        return text.startsWith("\"") && text.contains("$");
    }
}
