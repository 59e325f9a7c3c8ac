package baywright.script;

import groovyjarjarantlr4.v4.runtime.CharStreams;
import groovyjarjarantlr4.v4.runtime.Token;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.groovy.parser.antlr4.GroovyLangLexer;
import org.apache.groovy.parser.antlr4.GroovyLexer;
import org.apache.groovy.parser.antlr4.GroovySyntaxError;

/**
 * Looks at a text before Groovy's parser does: one pass of Groovy's own lexer with limits on everything whose cost grows
 * faster than its length, and a refusal of what can never be right. The parser must not see a text that was refused.
 */
final class Guard {

    /** Tokens that may begin a statement after a new line; anything else goes on with the statement before. */
    private static final Set<Integer> STARTS = Set.of(
            GroovyLexer.Identifier,
            GroovyLexer.CapitalizedIdentifier,
            GroovyLexer.StringLiteral,
            GroovyLexer.GStringBegin,
            GroovyLexer.IntegerLiteral,
            GroovyLexer.FloatingPointLiteral,
            GroovyLexer.BooleanLiteral,
            GroovyLexer.NullLiteral,
            GroovyLexer.DEF,
            GroovyLexer.IF,
            GroovyLexer.FOR,
            GroovyLexer.SWITCH,
            GroovyLexer.CASE,
            GroovyLexer.DEFAULT,
            GroovyLexer.BREAK);

    /** Tokens after which a new line may end a statement. */
    private static final Set<Integer> ENDS = Set.of(
            GroovyLexer.Identifier,
            GroovyLexer.CapitalizedIdentifier,
            GroovyLexer.StringLiteral,
            GroovyLexer.GStringEnd,
            GroovyLexer.GStringPathPart,
            GroovyLexer.IntegerLiteral,
            GroovyLexer.FloatingPointLiteral,
            GroovyLexer.BooleanLiteral,
            GroovyLexer.NullLiteral,
            GroovyLexer.BREAK,
            GroovyLexer.RPAREN,
            GroovyLexer.RBRACK,
            GroovyLexer.RBRACE,
            GroovyLexer.COLON);

    private static final Set<Integer> OPERATORS = Set.of(
            GroovyLexer.ADD,
            GroovyLexer.SUB,
            GroovyLexer.MUL,
            GroovyLexer.DIV,
            GroovyLexer.MOD,
            GroovyLexer.POWER,
            GroovyLexer.AND,
            GroovyLexer.OR,
            GroovyLexer.NOT,
            GroovyLexer.QUESTION,
            GroovyLexer.ELVIS,
            GroovyLexer.ASSIGN,
            GroovyLexer.EQUAL,
            GroovyLexer.NOTEQUAL,
            GroovyLexer.GT,
            GroovyLexer.LE,
            GroovyLexer.GE,
            GroovyLexer.IN,
            GroovyLexer.ELSE,
            GroovyLexer.RANGE_INCLUSIVE);

    /** What was counted of the statement at hand in one pair of braces. */
    private static final class Statement {
        private String firstWord = "";
        private int tokens;
        private int arrows;
        private int operators;
        private int angles;
        private int assignments;

        private void startAnew() {
            firstWord = "";
            tokens = 0;
            arrows = 0;
            operators = 0;
            angles = 0;
            assignments = 0;
        }
    }

    private record Open(String bracket, String word, Place place, int indent) {}

    private final SourceText source;
    private final Problems problems;
    private final Set<Integer> badLines = new TreeSet<>();
    private final BlockFinder blocks;
    private final Deque<Open> open = new ArrayDeque<>();
    private final Deque<Statement> statements = new ArrayDeque<>();
    private Optional<Open> suspect = Optional.empty();
    private boolean fatal;
    private int count;

    /** Whether only names were met since the last opening brace. */
    private boolean namesOfBlock;

    /** A name with a capital letter that the token at hand may turn into a type; null when there is none. */
    private Token capital;

    /** The two tokens before the one at hand. */
    private int before = GroovyLexer.NL;

    private int beforeThat = GroovyLexer.NL;

    private Guard(SourceText source, Problems problems) {
        this.source = source;
        this.problems = problems;
        blocks = new BlockFinder(source);
        statements.push(new Statement());
    }

    /**
     * What a pass found.
     *
     * @param fatal    whether the parser must not see the text
     * @param badLines lines that must be emptied first
     * @param tokens   how many were counted
     * @param blocks   what can be read apart, inner blocks first
     */
    record Verdict(boolean fatal, Set<Integer> badLines, int tokens, List<BlockFinder.Block> blocks) {}

    static Verdict look(SourceText source, Problems problems) {
        Guard guard = new Guard(source, problems);
        guard.characters();
        if (!guard.fatal && guard.badLines.isEmpty()) {
            guard.tokens();
        }
        return new Verdict(guard.fatal, guard.badLines, guard.count, guard.blocks.found());
    }

    private void characters() {
        if (source.text().length() > Limits.TEXT) {
            stop(
                    Place.ofFile(source.file()),
                    "a file holds at most " + Limits.TEXT + " characters, this one "
                            + source.text().length() + "; put some of its stages into another file");
            return;
        }
        if (source.lastLine() > Limits.LINES) {
            stop(
                    Place.ofFile(source.file()),
                    "a file holds at most " + Limits.LINES + " lines, this one " + source.lastLine()
                            + "; put some of its stages into another file");
            return;
        }
        for (int line = 1; line <= source.lastLine(); line++) {
            int column = 0;
            for (int point : source.line(line).codePoints().toArray()) {
                column++;
                if (Characters.isForbidden(point)) {
                    refuse(
                            source.place(line, column),
                            String.format(
                                    "the invisible character U+%04X is not allowed; delete it or write it in words",
                                    point));
                    break;
                }
            }
        }
    }

    private void tokens() {
        GroovyLangLexer lexer = new GroovyLangLexer(CharStreams.fromString(source.text()));
        lexer.removeErrorListeners();
        boolean newLine = true;
        Token token = null;
        try {
            for (token = lexer.nextToken(); token.getType() != Token.EOF && !fatal; token = lexer.nextToken()) {
                int type = token.getType();
                if (++count > Limits.TOKENS) {
                    stop(
                            place(token),
                            "a file holds at most " + Limits.TOKENS + " words and signs; put some of its"
                                    + " stages into another file");
                    return;
                }
                length(token);
                if (token.getChannel() != Token.DEFAULT_CHANNEL || type == GroovyLexer.NL) {
                    newLine |= type == GroovyLexer.NL || type == GroovyLexer.SH_COMMENT;
                    continue;
                }
                boolean starts = type == GroovyLexer.SEMI
                        || (newLine && STARTS.contains(type) && ENDS.contains(before) && !insideRoundOrSquare());
                if (starts) {
                    statements.element().startAnew();
                }
                count(token);
                typed(token, newLine);
                bracket(token, newLine);
                blocks.see(token);
                beforeThat = before;
                before = type;
                newLine = false;
            }
        } catch (GroovySyntaxError | RuntimeException e) {
            unreadable(e, token);
            return;
        }
        unclosed();
    }

    /** Groovy's lexer meets a sign that it does not know, or a text without an end. */
    private void unreadable(Throwable e, Token last) {
        Place where;
        if (e instanceof GroovySyntaxError error && error.getLine() > 0) {
            where = source.place(error.getLine(), error.getColumn());
        } else {
            where = last == null ? source.place(1, 1) : place(last);
        }
        refuse(where, "syntax", SyntaxMessages.at(source, where));
    }

    private boolean insideRoundOrSquare() {
        return !open.isEmpty() && !open.element().bracket().equals("{");
    }

    private void length(Token token) {
        int type = token.getType();
        String text = token.getText();
        if (text.length() > Limits.TOKEN_LENGTH) {
            stop(place(token), "a text or a comment holds at most " + Limits.TOKEN_LENGTH + " characters");
        }
        boolean number = type == GroovyLexer.IntegerLiteral || type == GroovyLexer.FloatingPointLiteral;
        if (number && text.chars().filter(Character::isDigit).count() > Limits.DIGITS) {
            stop(place(token), "a number has at most " + Limits.DIGITS + " digits");
        }
    }

    private void count(Token token) {
        int type = token.getType();
        Refused.instead(type)
                .ifPresent(instead -> refuse(
                        place(token), "'" + token.getText() + "' is not part of the stage language; " + instead));
        name(token);
        arrow(token);
        Statement statement = statements.element();
        if (statement.tokens++ == 0) {
            statement.firstWord = token.getText();
        }
        if (type == GroovyLexer.ARROW) {
            statement.arrows++;
        }
        if (type == GroovyLexer.LT) {
            statement.angles++;
        }
        if (OPERATORS.contains(type)) {
            statement.operators++;
        }
        if (type == GroovyLexer.ASSIGN && ++statement.assignments > 1) {
            refuse(place(token), Refused.ONCE);
        }
        if (statement.tokens > Limits.STATEMENT_TOKENS) {
            stop(
                    place(token),
                    "a statement holds at most " + Limits.STATEMENT_TOKENS
                            + " words and signs outside its braces; split it");
        } else if (statement.arrows > Limits.ARROWS || statement.angles > Limits.ARROWS) {
            stop(
                    place(token),
                    "a statement holds at most " + Limits.ARROWS + " times '" + token.getText() + "'; split it");
        } else if (statement.operators > Limits.CHAIN) {
            stop(place(token), "a statement holds at most " + Limits.CHAIN + " operators; split it");
        }
    }

    /** Letters beyond ASCII in a name may look like others or like nothing at all. */
    private void name(Token token) {
        boolean isName =
                token.getType() == GroovyLexer.Identifier || token.getType() == GroovyLexer.CapitalizedIdentifier;
        if (isName && token.getText().chars().anyMatch(c -> c > 127)) {
            String odd = token.getText()
                    .codePoints()
                    .filter(c -> c > 127)
                    .mapToObj(c -> String.format("U+%04X", c))
                    .findFirst()
                    .orElseThrow();
            refuse(place(token), "a name has only letters a to z and A to Z, digits and _; this one has " + odd);
        }
    }

    /** An arrow anywhere else makes a function without braces, which the parser takes very long to read in a row. */
    private void arrow(Token token) {
        int type = token.getType();
        if (type == GroovyLexer.ARROW && !namesOfBlock) {
            refuse(place(token), "'->' stands only behind the names of a block, as in list.collect { a -> a + 1 }");
        }
        boolean isName = type == GroovyLexer.Identifier || type == GroovyLexer.COMMA;
        namesOfBlock = type == GroovyLexer.LBRACE || (namesOfBlock && isName);
    }

    /** A type before a name: a row of such declarations takes the parser longer than anything else. */
    private void typed(Token token, boolean newLine) {
        int type = token.getType();
        boolean isName = before == GroovyLexer.CapitalizedIdentifier
                && (type == GroovyLexer.Identifier || type == GroovyLexer.CapitalizedIdentifier);
        boolean ofArray = type == GroovyLexer.RBRACK && before == GroovyLexer.LBRACK;
        if (capital != null && !newLine && (isName || ofArray)) {
            refuse(place(capital), Refused.TYPED);
        }
        boolean isUnit = before == GroovyLexer.DOT
                && (beforeThat == GroovyLexer.IntegerLiteral || beforeThat == GroovyLexer.FloatingPointLiteral);
        if (type == GroovyLexer.CapitalizedIdentifier && !isUnit) {
            capital = token;
        } else if (newLine || type != GroovyLexer.LBRACK || before != GroovyLexer.CapitalizedIdentifier) {
            capital = null;
        }
    }

    private void bracket(Token token, boolean firstOfLine) {
        switch (token.getType()) {
            case GroovyLexer.LBRACE -> open(token, "{");
            case GroovyLexer.LPAREN -> open(token, "(");
            case GroovyLexer.LBRACK -> open(token, "[");
            case GroovyLexer.RBRACE, GroovyLexer.RPAREN, GroovyLexer.RBRACK -> close(token, firstOfLine);
            default -> {
                return;
            }
        }
        if (open.size() > Limits.DEPTH) {
            stop(place(token), "brackets stand at most " + Limits.DEPTH + " deep in each other");
        }
    }

    private void open(Token token, String bracket) {
        Place where = place(token);
        open.push(new Open(bracket, statements.element().firstWord, where, indent(where.line())));
        if (bracket.equals("{")) {
            statements.push(new Statement());
        }
    }

    private void close(Token token, boolean firstOfLine) {
        if (open.isEmpty()) {
            return;
        }
        Open closed = open.pop();
        if (closed.bracket().equals("{")) {
            statements.pop();
        }
        boolean outdented = firstOfLine && indent(token.getLine()) < closed.indent();
        if (suspect.isEmpty() && outdented && token.getType() == GroovyLexer.RBRACE) {
            suspect = Optional.of(closed);
        }
    }

    private int indent(int line) {
        String text = source.line(line);
        return text.length() - text.stripLeading().length();
    }

    /** A missing bracket is only noticed at the end of the file: name the block that stayed open instead. */
    private void unclosed() {
        if (open.isEmpty() || fatal || !badLines.isEmpty()) {
            return;
        }
        Open guilty = suspect.filter(s -> open.element().bracket().equals("{")).orElse(open.element());
        String shape = guilty.bracket().equals("{") ? "}" : guilty.bracket().equals("(") ? ")" : "]";
        String what = guilty.word().isEmpty() || guilty.word().equals(guilty.bracket())
                ? "this " + guilty.bracket()
                : "the " + guilty.bracket() + " of '" + guilty.word() + "'";
        fatal = true;
        problems.error(guilty.place(), "syntax", what + " is not closed; a " + shape + " is missing");
    }

    private Place place(Token token) {
        return source.place(token.getLine(), token.getCharPositionInLine() + 1);
    }

    private void refuse(Place where, String message) {
        refuse(where, "refused", message);
    }

    private void refuse(Place where, String code, String message) {
        badLines.add(where.line());
        problems.error(where, code, message);
    }

    private void stop(Place where, String message) {
        fatal = true;
        problems.error(where, "limit", message);
    }
}
