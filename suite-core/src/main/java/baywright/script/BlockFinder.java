package baywright.script;

import groovyjarjarantlr4.v4.runtime.Token;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.groovy.parser.antlr4.GroovyLexer;

/**
 * Finds, from the tokens of a text, the blocks that can be read apart from what is around them: behind a word or its
 * arguments in round brackets, the opening brace last on its line, the closing brace first on its own. Nothing of a
 * text or of a comment reaches over such braces, so that the lines between them hold whole statements.
 */
final class BlockFinder {

    /**
     * A block.
     *
     * @param brace where its opening brace stands
     * @param end   line of its closing brace, at least two after the opening one
     */
    record Block(Place brace, int end) {}

    /** An open bracket, and whether it stands directly behind a word. */
    private record Open(boolean behindWord, boolean apart, Place place) {}

    private final SourceText source;
    private final Deque<Open> open = new ArrayDeque<>();
    private final List<Block> found = new ArrayList<>();
    private int before = Token.EOF;
    private boolean argumentsOfWord;

    BlockFinder(SourceText source) {
        this.source = source;
    }

    /** Takes the next token of the text; those between statements and comments are not shown to it. */
    void see(Token token) {
        int type = token.getType();
        boolean behindWord = before == GroovyLexer.Identifier;
        switch (type) {
            case GroovyLexer.LPAREN, GroovyLexer.LBRACK, GroovyLexer.SAFE_INDEX ->
                open.push(new Open(behindWord && type == GroovyLexer.LPAREN, false, place(token)));
            case GroovyLexer.LBRACE -> {
                boolean ofWord = behindWord || (before == GroovyLexer.RPAREN && argumentsOfWord);
                open.push(new Open(false, ofWord && endsLine(place(token)), place(token)));
            }
            case GroovyLexer.RPAREN, GroovyLexer.RBRACK ->
                argumentsOfWord = !open.isEmpty() && open.pop().behindWord();
            case GroovyLexer.RBRACE -> close(token);
            default -> {}
        }
        before = type;
    }

    /** Blocks that were closed, each after those inside it. */
    List<Block> found() {
        return List.copyOf(found);
    }

    private void close(Token token) {
        if (open.isEmpty()) {
            return;
        }
        Open opened = open.pop();
        boolean beginsLine = before(place(token)).isBlank();
        if (opened.apart() && beginsLine && token.getLine() > opened.place().line() + 1) {
            found.add(new Block(opened.place(), token.getLine()));
        }
    }

    private boolean endsLine(Place brace) {
        String rest = source.from(brace.line(), brace.column() + 1).strip();
        return rest.isEmpty() || rest.startsWith("//");
    }

    private String before(Place brace) {
        String line = source.line(brace.line());
        return line.substring(0, line.offsetByCodePoints(0, brace.column() - 1));
    }

    private Place place(Token token) {
        return source.place(token.getLine(), token.getCharPositionInLine() + 1);
    }
}
