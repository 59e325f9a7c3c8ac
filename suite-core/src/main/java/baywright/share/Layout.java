package baywright.share;

import baywright.editor.Pieces;

/**
 * A script apart from how its file is written: a mark at its beginning, its line ends, and whether its last line has one.
 *
 * @param pieces of the text with plain line ends, the last line included
 */
record Layout(boolean mark, boolean crlf, boolean open, Pieces pieces) {

    private static final String MARK = "\uFEFF";

    static final Layout NONE = new Layout(false, false, false, Pieces.of(""));

    static Layout of(String text) {
        boolean mark = text.startsWith(MARK);
        String plain = mark ? text.substring(1) : text;
        boolean crlf = plain.contains("\r\n")
                && !plain.replace("\r\n", "").contains("\n")
                && !plain.replace("\r\n", "").contains("\r");
        plain = crlf ? plain.replace("\r\n", "\n") : plain;
        boolean open = !plain.isEmpty() && !plain.endsWith("\n");
        return new Layout(mark, crlf, open, Pieces.of(open ? plain + "\n" : plain));
    }

    /** A text written like this file. */
    String written(String plain) {
        String text = open && plain.endsWith("\n") ? plain.substring(0, plain.length() - 1) : plain;
        return (mark ? MARK : "") + (crlf ? text.replace("\n", "\r\n") : text);
    }
}
