package baywright.script;

import groovyjarjarantlr4.v4.runtime.CommonTokenStream;
import groovyjarjarantlr4.v4.runtime.Parser;
import groovyjarjarantlr4.v4.runtime.ParserRuleContext;
import groovyjarjarantlr4.v4.runtime.Token;
import groovyjarjarantlr4.v4.runtime.TokenSource;
import groovyjarjarantlr4.v4.runtime.TokenStream;
import groovyjarjarantlr4.v4.runtime.atn.ATNConfig;
import groovyjarjarantlr4.v4.runtime.atn.ATNConfigSet;
import groovyjarjarantlr4.v4.runtime.atn.ParserATNSimulator;
import groovyjarjarantlr4.v4.runtime.atn.PredictionContextCache;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.util.Set;
import org.apache.groovy.parser.antlr4.AstBuilder;
import org.apache.groovy.parser.antlr4.GroovyLangParser;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.control.SourceUnit;

/**
 * Groovy's parser with its work counted. It heeds no interruption and has no limit of its own, but it takes its words from
 * a stream and its decisions from a simulator of its grammar, and both can be replaced before it starts. Ours are its own
 * with a count, which end it from within: its thread ends and its locks are given back as after any error.
 */
final class WatchedParser {

    /** Not public in Groovy 5.0.8, which is pinned; without it nothing is read at all. */
    private static final VarHandle PARSER;

    static {
        try {
            PARSER = MethodHandles.privateLookupIn(AstBuilder.class, MethodHandles.lookup())
                    .findVarHandle(AstBuilder.class, "parser", GroovyLangParser.class);
        } catch (ReflectiveOperationException e) {
            throw new ExceptionInInitializerError(e);
        }
    }

    private final AstBuilder builder;
    private final GroovyLangParser parser;
    private final CountedDecisions decisions;

    WatchedParser(SourceUnit unit, Effort effort) {
        builder = new AstBuilder(unit, false, false);
        parser = (GroovyLangParser) PARSER.get(builder);
        parser.setInputStream(new CountedTokens(parser.getInputStream().getTokenSource(), effort));
        decisions = new CountedDecisions(parser, effort);
        parser.setInterpreter(decisions);
    }

    /** The tree; what is wrong with the text goes to the source unit's collector or is thrown, as by Groovy's own. */
    ModuleNode read() {
        return builder.buildAST();
    }

    /** Where the parser was when its effort was spent: at the beginning of what it could not make out in time. */
    Token at() {
        return parser.getInputStream().get(decisions.from);
    }

    private static final class CountedTokens extends CommonTokenStream {
        private final Effort effort;

        CountedTokens(TokenSource lexer, Effort effort) {
            super(lexer);
            this.effort = effort;
        }

        @Override
        public Token LT(int ahead) {
            effort.take();
            return super.LT(ahead);
        }
    }

    private static final class CountedDecisions extends ParserATNSimulator {
        private final Effort effort;
        private int from;

        CountedDecisions(Parser parser, Effort effort) {
            super(parser, parser.getATN());
            this.effort = effort;
        }

        /** Groovy's parser begins anew after any error; that must not hide where the effort was spent. */
        @Override
        public int adaptivePredict(TokenStream input, int decision, ParserRuleContext around) {
            if (effort.spent().isEmpty()) {
                from = input.index();
            }
            return super.adaptivePredict(input, decision, around);
        }

        @Override
        protected void closure(
                ATNConfig from,
                ATNConfigSet reached,
                ATNConfigSet between,
                Set<ATNConfig> busy,
                boolean collectPredicates,
                boolean moreContext,
                PredictionContextCache contexts,
                int depth,
                boolean treatEofAsEpsilon) {
            effort.take();
            super.closure(
                    from, reached, between, busy, collectPredicates, moreContext, contexts, depth, treatEofAsEpsilon);
        }
    }
}
