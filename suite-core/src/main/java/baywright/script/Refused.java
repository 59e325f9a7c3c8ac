package baywright.script;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.groovy.parser.antlr4.GroovyLexer;

/** Signs and words of Groovy that the stage language does not have, each with what to write instead. */
final class Refused {

    private static final String TYPES = "a script declares states, facts and stages, never types";
    /** Said of a second value. */
    static final String ONCE = "a name gets its value once: def name = value";

    /** Said of a local with a type. */
    static final String TYPED = "a local is declared as def name = value, without a type and one at a time";

    private static final String WALK = "walk a list with for (x in list) { } or list.each { }";
    private static final String ARITHMETIC = "numbers know + - * / % and **";
    private static final String NOTHING_THROWN = "a script has nothing to throw or to catch";
    private static final String COMPARE = "compare with == != < <= > >= or in";
    private static final String DOT = "write a plain dot";
    private static final String KINDS = "values keep their kind; none is turned into another";
    private static final String OWN_WORDS = "every word of the language is there without it";
    private static final String LAST = "the last value of a block is its result";

    private static final Map<Integer, String> INSTEAD = new HashMap<>(Map.ofEntries(
            entry(GroovyLexer.IMPORT, OWN_WORDS),
            entry(GroovyLexer.PACKAGE, OWN_WORDS),
            entry(GroovyLexer.AT, "notes for people are comments: // …"),
            entry(GroovyLexer.CLASS, TYPES),
            entry(GroovyLexer.INTERFACE, TYPES),
            entry(GroovyLexer.ENUM, TYPES),
            entry(GroovyLexer.TRAIT, TYPES),
            entry(GroovyLexer.EXTENDS, TYPES),
            entry(GroovyLexer.IMPLEMENTS, TYPES),
            entry(GroovyLexer.NEW, "write values as they are: 3.min, 'text', [1, 2]"),
            entry(GroovyLexer.TRY, NOTHING_THROWN),
            entry(GroovyLexer.CATCH, NOTHING_THROWN),
            entry(GroovyLexer.FINALLY, NOTHING_THROWN),
            entry(GroovyLexer.THROW, NOTHING_THROWN),
            entry(GroovyLexer.THROWS, NOTHING_THROWN),
            entry(GroovyLexer.ASSERT, "say what must come out in an example"),
            entry(GroovyLexer.WHILE, WALK),
            entry(GroovyLexer.DO, WALK),
            entry(GroovyLexer.CONTINUE, WALK),
            entry(GroovyLexer.GOTO, WALK),
            entry(GroovyLexer.RETURN, LAST),
            entry(GroovyLexer.YIELD, LAST),
            entry(GroovyLexer.SYNCHRONIZED, "a script is always alone"),
            entry(GroovyLexer.THIS, OWN_WORDS),
            entry(GroovyLexer.SUPER, OWN_WORDS),
            entry(GroovyLexer.AS, KINDS),
            entry(GroovyLexer.INSTANCEOF, KINDS),
            entry(GroovyLexer.NOT_INSTANCEOF, KINDS),
            entry(GroovyLexer.METHOD_POINTER, "write a block: { it }"),
            entry(GroovyLexer.METHOD_REFERENCE, "write a block: { it }"),
            entry(GroovyLexer.REGEX_FIND, COMPARE),
            entry(GroovyLexer.REGEX_MATCH, COMPARE),
            entry(GroovyLexer.SPACESHIP, COMPARE),
            entry(GroovyLexer.IDENTICAL, COMPARE),
            entry(GroovyLexer.NOT_IDENTICAL, COMPARE),
            entry(GroovyLexer.IMPLIES, COMPARE),
            entry(GroovyLexer.NOT_IN, "write !(x in list)"),
            entry(GroovyLexer.SPREAD_DOT, "write list.collect { }"),
            entry(GroovyLexer.SAFE_DOT, DOT),
            entry(GroovyLexer.SAFE_CHAIN_DOT, DOT),
            entry(GroovyLexer.SAFE_INDEX, "write list[0]"),
            entry(GroovyLexer.ELLIPSIS, "a range is written with two dots: 1..3"),
            entry(GroovyLexer.RANGE_EXCLUSIVE_LEFT, "a range has both its ends: 1..3"),
            entry(GroovyLexer.RANGE_EXCLUSIVE_RIGHT, "a range has both its ends: 1..3"),
            entry(GroovyLexer.RANGE_EXCLUSIVE_FULL, "a range has both its ends: 1..3"),
            entry(GroovyLexer.BITNOT, ARITHMETIC),
            entry(GroovyLexer.BITAND, ARITHMETIC),
            entry(GroovyLexer.BITOR, ARITHMETIC),
            entry(GroovyLexer.XOR, ARITHMETIC)));

    static {
        for (int type : new int[] {
            GroovyLexer.INC,
            GroovyLexer.DEC,
            GroovyLexer.ADD_ASSIGN,
            GroovyLexer.SUB_ASSIGN,
            GroovyLexer.MUL_ASSIGN,
            GroovyLexer.DIV_ASSIGN,
            GroovyLexer.AND_ASSIGN,
            GroovyLexer.OR_ASSIGN,
            GroovyLexer.XOR_ASSIGN,
            GroovyLexer.MOD_ASSIGN,
            GroovyLexer.LSHIFT_ASSIGN,
            GroovyLexer.RSHIFT_ASSIGN,
            GroovyLexer.URSHIFT_ASSIGN,
            GroovyLexer.POWER_ASSIGN,
            GroovyLexer.ELVIS_ASSIGN,
            GroovyLexer.VOID,
            GroovyLexer.BuiltInPrimitiveType,
            GroovyLexer.STATIC,
            GroovyLexer.FINAL,
            GroovyLexer.ABSTRACT,
            GroovyLexer.CONST,
            GroovyLexer.NATIVE,
            GroovyLexer.PUBLIC,
            GroovyLexer.PRIVATE,
            GroovyLexer.PROTECTED,
            GroovyLexer.STRICTFP,
            GroovyLexer.TRANSIENT,
            GroovyLexer.VOLATILE,
            GroovyLexer.THREADSAFE,
            GroovyLexer.VAR
        }) {
            INSTEAD.put(type, ONCE);
        }
    }

    private Refused() {}

    /** What to write instead of a token of this type; empty when the language may have it. */
    static Optional<String> instead(int tokenType) {
        return Optional.ofNullable(INSTEAD.get(tokenType));
    }
}
