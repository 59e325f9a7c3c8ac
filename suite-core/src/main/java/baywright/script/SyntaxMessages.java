package baywright.script;

/**
 * Messages for text that cannot be read, made from the place alone. Groovy's own message quotes the whole statement,
 * which for a stage is the whole script, and speaks of grammar rules.
 */
final class SyntaxMessages {

    private SyntaxMessages() {}

    static String at(SourceText source, Place where) {
        String rest = source.from(where.line(), where.column()).strip();
        if (rest.isEmpty()) {
            return where.line() >= source.lastLine()
                    ? "the file ends in the middle of a statement"
                    : "the line ends in the middle of a statement";
        }
        char first = rest.charAt(0);
        if (first == '\'' || first == '"') {
            return "this text has no closing " + first + ", or a comma is missing before it";
        }
        if (first == '}') {
            return "this } closes nothing, or something is missing before it";
        }
        if (first == ')' || first == ']') {
            return "this " + first + " closes nothing, or something is missing before it";
        }
        return "'" + token(rest)
                + "' is not expected here; a comma, an operator or a new line may be missing before it";
    }

    private static String token(String rest) {
        int end = 0;
        while (end < rest.length() && end < 30 && Character.isJavaIdentifierPart(rest.charAt(end))) {
            end++;
        }
        return end == 0 ? new String(Character.toChars(rest.codePointAt(0))) : rest.substring(0, end);
    }
}
