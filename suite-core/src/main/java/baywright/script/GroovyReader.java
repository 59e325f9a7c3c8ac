package baywright.script;

import java.util.List;
import java.util.Optional;
import org.apache.groovy.parser.antlr4.AstBuilder;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.control.CompilationFailedException;
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
    record Result(Optional<List<Node>> body, int errorLine, Problems problems) {}

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

    static Result read(SourceText source) {
        Problems problems = new Problems();
        CompilerConfiguration configuration = new CompilerConfiguration();
        FirstError errors = new FirstError(configuration);
        SourceUnit unit = new SourceUnit(source.file(), source.text(), configuration, null, errors);
        ModuleNode module;
        try {
            module = new AstBuilder(unit, false, false).buildAST();
        } catch (CompilationFailedException e) {
            return failed(source, problems, errors.first, e);
        } catch (RuntimeException | AssertionError | StackOverflowError e) {
            return failed(source, problems, errors.first, e);
        }
        if (errors.first != null) {
            return failed(source, problems, errors.first, null);
        }
        TreeMaker maker = new TreeMaker(source, problems);
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
