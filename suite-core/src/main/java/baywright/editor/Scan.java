package baywright.editor;

import baywright.editor.Token.Kind;
import java.util.ArrayList;
import java.util.List;

/** Cuts any text at all into tokens; blanks are left out. An unfinished text ends with its line. */
final class Scan {

    private static final List<String> SIGNS =
            List.of("==", "!=", "<=", ">=", "&&", "||", "?:", "..", "->", "**", "?.", "++", "--");

    private final String text;
    private final int end;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Scan(String text, int from, int end) {
        this.text = text;
        this.at = from;
        this.end = end;
    }

    static List<Token> of(String text) {
        return new Scan(text, text.startsWith("\uFEFF") ? 1 : 0, text.length()).run();
    }

    /** The code inside a text in double quotes: what stands in {@code ${ }} or behind {@code $}. */
    static List<List<Token>> parts(String text, Token token) {
        List<List<Token>> parts = new ArrayList<>();
        int at = token.contentFrom();
        while (token.hasParts() && at < token.contentTo()) {
            char c = text.charAt(at);
            if (c == '\\') {
                at += 2;
            } else if (c == '$' && at + 1 < token.contentTo()) {
                boolean braces = text.charAt(at + 1) == '{';
                int from = braces ? at + 2 : at + 1;
                int to = braces ? closing(text, from, token.contentTo()) : nameEnd(text, from, token.contentTo());
                parts.add(new Scan(text, from, to).run());
                at = Math.max(to, at + 1);
            } else {
                at++;
            }
        }
        return parts;
    }

    private static int nameEnd(String text, int from, int end) {
        int to = from;
        while (to < end && Character.isJavaIdentifierPart(text.charAt(to)) && text.charAt(to) != '$') {
            to++;
        }
        return to;
    }

    private static int closing(String text, int from, int end) {
        int depth = 1;
        for (int i = from; i < end; i++) {
            depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        return end;
    }

    private List<Token> run() {
        while (at < end) {
            char c = text.charAt(at);
            if (c == '\n' || c == '\r') {
                int length = c == '\r' && at + 1 < end && text.charAt(at + 1) == '\n' ? 2 : 1;
                take(Kind.LINE_END, at + length);
            } else if (c == ' ' || c == '\t' || c == '\f') {
                at++;
            } else if (text.startsWith("//", at) || (at == 0 && text.startsWith("#!"))) {
                take(Kind.COMMENT, lineEnd());
            } else if (text.startsWith("/*", at)) {
                int close = text.indexOf("*/", at + 2);
                take(Kind.COMMENT, close < 0 || close + 2 > end ? end : close + 2);
            } else if (c == '\'' || c == '"') {
                take(Kind.TEXT, textEnd(c));
            } else if (c >= '0' && c <= '9') {
                take(Kind.NUMBER, numberEnd());
            } else if (Character.isJavaIdentifierStart(c)) {
                take(Kind.NAME, wordEnd());
            } else {
                take(Kind.SIGN, at + signLength());
            }
        }
        return tokens;
    }

    private void take(Kind kind, int to) {
        tokens.add(new Token(kind, at, to, text.substring(at, to)));
        at = to;
    }

    private int lineEnd() {
        int to = at;
        while (to < end && text.charAt(to) != '\n' && text.charAt(to) != '\r') {
            to++;
        }
        return to;
    }

    private int textEnd(char quote) {
        String three = String.valueOf(quote).repeat(3);
        boolean manyLines = text.startsWith(three, at);
        String close = manyLines ? three : String.valueOf(quote);
        int i = at + close.length();
        while (i < end) {
            char c = text.charAt(i);
            if (c == '\\') {
                i += 2;
            } else if (text.startsWith(close, i)) {
                return i + close.length();
            } else if (!manyLines && (c == '\n' || c == '\r')) {
                return i;
            } else if (quote == '"' && text.startsWith("${", i)) {
                int to = closing(text, i + 2, manyLines ? end : endOfLine(i));
                i = Math.max(i + 2, to);
            } else {
                i++;
            }
        }
        return end;
    }

    private int endOfLine(int from) {
        int to = from;
        while (to < end && text.charAt(to) != '\n' && text.charAt(to) != '\r') {
            to++;
        }
        return to;
    }

    private int numberEnd() {
        int i = at;
        while (i < end && (Character.isDigit(text.charAt(i)) || text.charAt(i) == '_')) {
            i++;
        }
        if (i + 1 < end && text.charAt(i) == '.' && Character.isDigit(text.charAt(i + 1))) {
            i++;
            while (i < end && (Character.isDigit(text.charAt(i)) || text.charAt(i) == '_')) {
                i++;
            }
        }
        while (i < end && Character.isLetterOrDigit(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private int wordEnd() {
        int i = at;
        while (i < end && Character.isJavaIdentifierPart(text.charAt(i))) {
            i++;
        }
        return Math.max(i, at + 1);
    }

    private int signLength() {
        return SIGNS.stream().anyMatch(s -> text.startsWith(s, at) && at + 2 <= end)
                ? 2
                : Math.min(Character.charCount(text.codePointAt(at)), end - at);
    }
}
