package baywright.script;

import baywright.quantity.Unit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Messages for text that cannot be read, made from the place alone. Groovy's own message quotes the whole statement,
 * which for a stage is the whole script, and speaks of grammar rules.
 */
final class SyntaxMessages {

    private SyntaxMessages() {}

    private static final Pattern AMOUNT_WITH_GAP = Pattern.compile("(\\d+) +(\\w+)\\s*$");
    private static final Pattern APOSTROPHE = Pattern.compile("\\p{L}'\\p{L}");
    private static final String WORD_PROCESSOR_MARKS = "‘’‚‛“”„‟‹›«»´`";

    static String at(SourceText source, Place where) {
        String rest = source.from(where.line(), where.column()).strip();
        if (rest.isEmpty()) {
            return where.line() >= source.lastLine()
                    ? "the file ends in the middle of a statement"
                    : "the line ends in the middle of a statement";
        }
        char first = rest.charAt(0);
        if (first == '\'' || first == '"') {
            boolean apostrophe = first == '\''
                    && APOSTROPHE.matcher(source.line(where.line())).find();
            return "this text has no closing " + first + ", or a comma is missing before it"
                    + (apostrophe ? "; a text with an apostrophe in it stands in double marks: \"don't\"" : "");
        }
        if (WORD_PROCESSOR_MARKS.indexOf(first) >= 0) {
            return "a text stands between straight marks, 'so'; this " + first + " comes from a word processor";
        }
        if (first == '}') {
            return "this } closes nothing, or something is missing before it"
                    + notOpened(source, where)
                            .map(line -> "; perhaps a { at the end of line " + line)
                            .orElse("");
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

    /**
     * The line that most likely lacks its brace: the first } that begins a line and closes the brace of a line that is
     * indented otherwise was meant for the nearest line above that is indented alike and opens none. Braces in texts may
     * mislead it, which is why it is only a hint.
     */
    private static Optional<Integer> notOpened(SourceText source, Place where) {
        Deque<Integer> open = new ArrayDeque<>();
        for (int number = 1; number <= where.line(); number++) {
            String line = source.line(number);
            if (line.strip().startsWith("}") && !open.isEmpty() && open.peek() != indent(line)) {
                return alike(source, number);
            }
            for (int i = 0; i < line.length(); i++) {
                if (line.charAt(i) == '{') {
                    open.push(indent(line));
                } else if (line.charAt(i) == '}' && !open.isEmpty()) {
                    open.pop();
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Integer> alike(SourceText source, int number) {
        int indent = indent(source.line(number));
        for (int above = number - 1; above > 0; above--) {
            String line = source.line(above);
            if (!line.isBlank() && indent(line) == indent) {
                return line.contains("{") || line.contains("}") ? Optional.empty() : Optional.of(above);
            }
        }
        return Optional.empty();
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
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
