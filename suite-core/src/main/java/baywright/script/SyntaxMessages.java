package baywright.script;

import baywright.quantity.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Messages for text that cannot be read, made from the place alone. Groovy's own message quotes the whole statement,
 * which for a stage is the whole script, and speaks of grammar rules.
 */
final class SyntaxMessages {

    private SyntaxMessages() {}

    private static final Pattern AMOUNT_WITH_GAP = Pattern.compile("(\\d+) +(\\w+)\\s*$");

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
        Matcher gap = AMOUNT_WITH_GAP.matcher(source.line(where.line()).substring(0, before(source, where)));
        if (gap.find() && Unit.of(gap.group(2)).isPresent()) {
            return "an amount is a number, a dot and a unit: " + gap.group(1) + "." + gap.group(2);
        }
        return "'" + token(rest)
                + "' is not expected here; a comma, an operator or a new line may be missing before it";
    }

    private static int before(SourceText source, Place where) {
        String line = source.line(where.line());
        int points = Math.min(where.column() - 1, line.codePointCount(0, line.length()));
        return line.offsetByCodePoints(0, points);
    }

    private static String token(String rest) {
        int end = 0;
        while (end < rest.length() && end < 30 && Character.isJavaIdentifierPart(rest.charAt(end))) {
            end++;
        }
        return end == 0 ? new String(Character.toChars(rest.codePointAt(0))) : rest.substring(0, end);
    }
}
