package baywright.editor;

import baywright.editor.Token.Kind;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Lays a script out as the shipped ones are: four blanks for each pair of braces, eight for a line that goes on with the
 * one before, one blank behind a comma, a colon and around an operator, none at the ends of lines, no two empty lines in
 * a row. No line is joined or parted, so every text has the same meaning afterwards; comments and the blanks before a
 * comment at the end of a line stay.
 */
public final class Format {

    private static final int INDENT = 4;
    private static final int GOES_ON = 8;
    private static final Set<String> OPERATORS =
            Set.of("==", "!=", "<=", ">=", "<", ">", "&&", "||", "?:", "->", "**", "=", "?", "/", "%", "*");
    private static final Set<String> SIGNED = Set.of("+", "-");
    private static final Set<String> BEFORE_ROUND = Set.of("if", "for", "while", "switch");
    private static final Set<String> ENDS_OPEN = Set.of(",", ".", "..", "\\");
    /** Blanks before a byte-order mark go, so that the mark stands where the next reader looks for it. */
    private static final Pattern BEFORE_MARK = Pattern.compile("^[ \\t\\f\\r\\n]+(?=\uFEFF)");

    private static final Set<String> STARTS_OPEN = Set.of(".", "?", ":", "&&", "||", "?:");

    /** A bracket that is open. */
    private static final class Open {
        private final String sign;
        private final int indent;
        private final boolean isSwitch;
        private boolean inCase;

        Open(String sign, int indent, boolean isSwitch) {
            this.sign = sign;
            this.indent = indent;
            this.isSwitch = isSwitch;
        }
    }

    private final String text;
    private final StringBuilder made = new StringBuilder();
    private final Deque<Open> open = new ArrayDeque<>();
    private int emptyLines;
    private int indent;
    private boolean goesOn;
    private boolean begun;

    private Format(String text) {
        this.text = text;
    }

    /** The text laid out; any text gives one, and formatting twice changes nothing more. */
    public static String of(String text) {
        return new Format(BEFORE_MARK.matcher(text).replaceFirst("")).run();
    }

    private String run() {
        if (text.startsWith("\uFEFF")) {
            made.append('\uFEFF');
        }
        List<Token> tokens = Scan.of(text);
        int at = 0;
        while (at < tokens.size()) {
            int end = at;
            while (end < tokens.size() && tokens.get(end).kind() != Kind.LINE_END) {
                end++;
            }
            if (end == at) {
                emptyLines++;
            } else {
                beginLine();
                wholeLine(tokens.subList(at, end));
            }
            at = end + 1;
        }
        boolean ended = made.length() == 0 || made.charAt(made.length() - 1) == '\n';
        return ended ? made.toString() : made.append('\n').toString();
    }

    private void wholeLine(List<Token> line) {
        Token first = line.get(0);
        boolean led = first.kind() == Kind.SIGN && STARTS_OPEN.contains(first.text());
        boolean more = goesOn || led;
        if (isInside()) {
            indent = open.peek().indent;
        } else if (!more) {
            indent = statementIndent(first);
        }
        boolean closes = isInside() && (first.is(")") || first.is("]"));
        made.append(" ".repeat(indent + (!closes && (more || isInside()) ? GOES_ON : 0)));
        line(line);
        goesOn = goesOn(line);
    }

    private void beginLine() {
        if (begun) {
            made.append('\n');
            if (emptyLines > 0) {
                made.append('\n');
            }
        }
        begun = true;
        emptyLines = 0;
    }

    /** Whether a round or square bracket is open. */
    private boolean isInside() {
        return !open.isEmpty() && !open.peek().sign.equals("{");
    }

    private int statementIndent(Token first) {
        Open braces = open.peek();
        if (braces == null) {
            return 0;
        }
        if (first.is("}")) {
            return braces.indent;
        }
        boolean label = first.is("case") || first.is("default");
        braces.inCase |= label;
        boolean deeper = braces.isSwitch && braces.inCase && !label;
        return braces.indent + INDENT + (deeper ? INDENT : 0);
    }

    private boolean goesOn(List<Token> line) {
        Token last = null;
        for (Token token : line) {
            last = token.kind() == Kind.COMMENT ? last : token;
        }
        if (last == null) {
            return goesOn;
        }
        if (last.kind() != Kind.SIGN || last.is("->")) {
            return false;
        }
        boolean label = line.get(0).is("case") || line.get(0).is("default");
        return ENDS_OPEN.contains(last.text())
                || OPERATORS.contains(last.text())
                || SIGNED.contains(last.text())
                || (last.is(":") && !label);
    }

    private void line(List<Token> line) {
        int ternaries = 0;
        for (int i = 0; i < line.size(); i++) {
            Token token = line.get(i);
            if (i > 0) {
                made.append(between(line, i, ternaries));
            }
            if (token.kind() == Kind.SIGN) {
                ternaries += token.is("?") ? 1 : token.is(":") && ternaries > 0 ? -1 : 0;
                brackets(line, token);
            }
            made.append(token.kind() == Kind.COMMENT ? token.text().stripTrailing() : token.text());
        }
    }

    private void brackets(List<Token> line, Token token) {
        if (token.is("{") || token.is("(") || token.is("[")) {
            boolean isSwitch = token.is("{") && line.stream().anyMatch(t -> t.is("switch"));
            open.push(new Open(token.text(), indent, isSwitch));
        } else if ((token.is("}") || token.is(")") || token.is("]")) && !open.isEmpty()) {
            open.pop();
        }
    }

    /** What stands between a token and the one before it on the line. */
    private String between(List<Token> line, int i, int ternaries) {
        Token before = line.get(i - 1);
        Token token = line.get(i);
        String asWritten = text.substring(before.to(), token.from());
        if (token.kind() == Kind.COMMENT) {
            return asWritten.isEmpty() ? " " : asWritten.replace('\t', ' ');
        }
        if (before.kind() == Kind.COMMENT) {
            return asWritten.isEmpty() ? "" : " ";
        }
        if (token.is(",") || token.is(";") || token.is(")") || token.is("]") || isOpening(before)) {
            return "";
        }
        if (before.is(",") || before.is(";") || (token.is("{") && !before.is("."))) {
            return " ";
        }
        boolean control = token.is("(") && before.isName() && BEFORE_ROUND.contains(before.text());
        if (before.is("{") || token.is("}") || control || (before.is("}") && token.isName())) {
            return " ";
        }
        if (token.is(":") || before.is(":")) {
            return colon(line, i, ternaries);
        }
        if (isOperator(token, line, i) || isOperator(before, line, i - 1)) {
            return " ";
        }
        if (token.is("..") || before.is("..")) {
            return "";
        }
        return asWritten.isEmpty() ? "" : " ";
    }

    private static boolean isOpening(Token token) {
        return token.kind() == Kind.SIGN && (token.is("(") || token.is("["));
    }

    private static String colon(List<Token> line, int i, int ternaries) {
        if (line.get(i).is(":")) {
            return ternaries > 0 || line.get(i - 1).is("[") ? " " : "";
        }
        return line.get(i).is("]") ? "" : " ";
    }

    /** Whether a sign stands between two values; a minus that belongs to a number or might is left alone. */
    private static boolean isOperator(Token token, List<Token> line, int i) {
        if (token.kind() != Kind.SIGN) {
            return false;
        }
        if (OPERATORS.contains(token.text())) {
            return true;
        }
        if (!SIGNED.contains(token.text()) || i == 0) {
            return false;
        }
        Token before = line.get(i - 1);
        boolean value = before.kind() == Kind.NUMBER || before.is(")") || before.is("]") || before.isText();
        boolean member = before.isName() && i >= 2 && line.get(i - 2).is(".");
        return value || member;
    }
}
