package baywright.script;

import groovyjarjarantlr4.v4.runtime.Token;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.control.CompilerConfiguration;
import org.codehaus.groovy.control.ErrorCollector;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.control.messages.Message;
import org.codehaus.groovy.control.messages.SyntaxErrorMessage;
import org.codehaus.groovy.syntax.SyntaxException;

/**
 * Runs Groovy's parser alone, without any later phase of its compiler: no transformation is run, no class looked up, no
 * network touched. Only text that {@link Guard} let through may come here.
 */
final class GroovyReader {

    static {
        // Otherwise the parser's cache cleaner may wait for a lock that one slow parse holds and block all others.
        if (System.getProperty("groovy.antlr4.cache.threshold") == null) {
            System.setProperty("groovy.antlr4.cache.threshold", "-1");
        }
    }

    private GroovyReader() {}

    /**
     * What came of one text.
     *
     * @param body      its statements; empty after a syntax error
     * @param errorLine line of the syntax error; 0 when there is none or nobody knows where
     */
    record Result(Optional<List<Node>> body, int errorLine, Problems problems) {
        boolean clean() {
            return body.isPresent() && problems.sorted().isEmpty();
        }
    }

    /** Keeps the place of the first error and nothing of its text. */
    private static final class FirstError extends ErrorCollector {
        private static final long serialVersionUID = 1L;
        private transient SyntaxException first;

        FirstError(CompilerConfiguration configuration) {
            super(configuration);
        }

        private void keep(Message message) {
            if (first == null && message instanceof SyntaxErrorMessage syntax) {
                first = syntax.getCause();
            }
        }

        @Override
        public void addFatalError(Message message) {
            keep(message);
            super.addFatalError(message);
        }

        @Override
        public void addError(Message message) {
            keep(message);
        }

        @Override
        public void addErrorAndContinue(Message message) {
            keep(message);
        }
    }

    static Result read(SourceText source, Effort effort) {
        return read(source, source.text(), new HashMap<>(), effort);
    }

    /**
     * Reads a text block by block. Groovy's parser looks ahead to the end of a statement at each of its words, which for
     * a stage is the end of the file: read apart, its blocks take about a fourth of the time.
     *
     * @param blocks inner ones first
     * @return the same as of the whole text; empty when anything at all is wrong with it, and the whole has to be read to
     *     say what
     */
    static Optional<Result> read(SourceText source, List<BlockFinder.Block> blocks, Effort effort) {
        long above = blocks.stream().mapToLong(b -> b.brace().line()).sum();
        if (blocks.isEmpty() || above > Limits.LINES_ABOVE_BLOCKS) {
            return Optional.empty();
        }
        Map<Place, List<Node>> read = new HashMap<>();
        List<String> lines = new ArrayList<>(source.lines());
        for (BlockFinder.Block block : blocks) {
            int first = block.brace().line();
            List<String> inside = lines.subList(first, block.end() - 1);
            String text = "/*" + "\n".repeat(first - 1) + "*/\n" + String.join("\n", inside);
            Result result = read(source, text, read, effort);
            if (effort.spent().isPresent()) {
                return Optional.of(result);
            }
            if (!result.clean()) {
                return Optional.empty();
            }
            read.put(block.brace(), result.body().orElseThrow());
            // One comment is read more quickly than many empty lines.
            int last = inside.size() - 1;
            Collections.fill(inside, "");
            if (last > 0) {
                inside.set(0, "/*");
                inside.set(last, "*/");
            }
        }
        Result whole = read(source, String.join("\n", lines), read, effort);
        boolean done = effort.spent().isPresent() || (whole.clean() && read.isEmpty());
        return done ? Optional.of(whole) : Optional.empty();
    }

    /**
     * Reads a text whose lines and columns are those of the source.
     *
     * @param blocks what stands in braces that are empty in the text, by the place of the opening one; those met are
     *               taken out
     */
    private static Result read(SourceText source, String text, Map<Place, List<Node>> blocks, Effort effort) {
        Problems problems = new Problems();
        CompilerConfiguration configuration = new CompilerConfiguration();
        FirstError errors = new FirstError(configuration);
        SourceUnit unit = new SourceUnit(source.file(), text, configuration, null, errors);
        WatchedParser parser = new WatchedParser(unit, effort);
        ModuleNode module;
        try {
            module = parser.read();
        } catch (RuntimeException | AssertionError | StackOverflowError e) {
            Optional<String> spent = effort.spent();
            if (spent.isPresent()) {
                Token at = parser.at();
                Place where = source.place(at.getLine(), at.getCharPositionInLine() + 1);
                problems.error(where, "limit", spent.get());
                return new Result(Optional.empty(), 0, problems);
            }
            return failed(source, problems, errors.first, e);
        }
        if (errors.first != null) {
            return failed(source, problems, errors.first, null);
        }
        TreeMaker maker = new TreeMaker(source, problems, blocks);
        return new Result(Optional.of(maker.script(module)), 0, problems);
    }

    private static Result failed(SourceText source, Problems problems, SyntaxException first, Throwable thrown) {
        for (Throwable t = thrown; t != null; t = t.getCause()) {
            if (t instanceof StackOverflowError || t instanceof OutOfMemoryError) {
                problems.error(Place.ofFile(source.file()), "limit", "the file is nested too deeply; split it");
                return new Result(Optional.empty(), 0, problems);
            }
        }
        if (first == null) {
            problems.error(Place.ofFile(source.file()), "syntax", "the file cannot be read as a script");
            return new Result(Optional.empty(), 0, problems);
        }
        Place where = source.place(first.getStartLine(), first.getStartColumn());
        problems.error(where, "syntax", SyntaxMessages.at(source, where));
        return new Result(Optional.empty(), where.line(), problems);
    }
}
