package baywright.script;

import java.time.Duration;

/**
 * How large a script and its values may be. Groovy's parser cannot be stopped once it runs, so the limits on text are
 * checked before it sees the text; they keep the slowest known constructs of Groovy 5.0.8 below a second.
 */
public final class Limits {

    /** Characters of one file. */
    static final int TEXT = 64 * 1024;

    /** Tokens of one file. */
    static final int TOKENS = 4_000;

    /** Tokens of one statement, not counting what stands in its own braces. */
    static final int STATEMENT_TOKENS = 400;

    /** Brackets in brackets. */
    static final int DEPTH = 24;

    /** Arrows, casts and type arguments of one statement, each; their cost grows fastest. */
    static final int ARROWS = 8;

    /** Operators of one statement; {@code else} of one {@code if}. */
    static final int CHAIN = 100;

    /** Characters of one token. */
    static final int TOKEN_LENGTH = 4_000;

    /** Digits of a number as written. */
    static final int DIGITS = 30;

    /** Places before or behind the decimal point of a number as written. */
    static final int SCALE = 30;

    /** Decimal places before or behind the point of a worked-out number. */
    static final int COMPUTED_SCALE = 100;

    /** Characters of a worked-out text. */
    static final int TEXT_RESULT = 10_000;

    /** Entries of a list or a map, numbers in a range that is walked. */
    static final int LIST = 1_000;

    /** Steps of one evaluation. */
    static final int STEPS = 200_000;

    /** Steps of all evaluations that one file's checking takes. */
    static final int FILE_STEPS = 1_000_000;

    /** Declarations of one file, stages among them. */
    public static final int DECLARATIONS = 500;

    /** Stages of one file. */
    public static final int STAGES = 100;

    /** Examples of one stage. */
    public static final int EXAMPLES = 50;

    /** Lines of one file. */
    static final int LINES = 5_000;

    /** Helpers that are being worked out at the same time. */
    static final int HELPERS = 16;

    /** Syntax errors looked for in one file. */
    static final int SYNTAX_ERRORS = 10;

    /** Tokens given to the parser in all the rounds that look for further syntax errors; the first round is free. */
    static final int TOKENS_AGAIN = 4_000;

    /** Tries of Groovy's parser for one file, in all rounds; see {@link Effort}. */
    static final long TRIES = 12_000_000;

    /** Processor time of the parser for one file; never reached as long as a try takes what it took when measured. */
    static final Duration LONGEST_READING = Duration.ofSeconds(20);

    /** Problems kept of one file. */
    static final int PROBLEMS = 200;

    /** Characters of a message. */
    static final int MESSAGE = 1_000;

    /** Characters of a script's text that a message quotes. */
    static final int QUOTED = 80;

    /** Lines above all the blocks that are read apart, together; their ends are passed over for each block again. */
    static final int LINES_ABOVE_BLOCKS = 500_000;

    /** Stack of a thread that parses, bytes. */
    static final long STACK = 16L * 1024 * 1024;

    private Limits() {}
}
