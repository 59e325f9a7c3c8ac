package baywright.script.hostile;

import java.util.Locale;

/** What a hostile script does to a program that simply runs it. */
public enum Danger {
    /** The file {@code marker} exists afterwards: the script acted as it liked. */
    MARKER,
    /** A file, a property of the system, the locale, the terminal or a shared name is no longer what it was. */
    HARMS,
    /** A secret of the host reached a text that people see. */
    LEAKS,
    /** Something was written to the terminal. */
    PRINTS,
    /** A connection to the listener was opened. */
    CONTACTS,
    /** A transformation from the class path was run on the script. */
    TRANSFORMS,
    /** A thread is left. */
    THREAD,
    /** The process is gone. */
    EXITS,
    /** The script fails on purpose. */
    THROWS,
    /** It has not come back after the deadline. */
    HANGS,
    /** The memory is used up. */
    MEMORY,
    /** The stack is used up. */
    STACK,
    /** Two runs say different things. */
    VARIES,
    /** A text starts as Swing's markup does. */
    HTML,
    /** A text or the script itself turns the direction of reading. */
    BIDI,
    /** A text holds characters that a terminal obeys or that nobody sees. */
    CONTROL,
    /** A word looks like another one. */
    LOOKALIKE,
    /** A text is not what the bytes of the file say. */
    GARBLED;

    static Danger of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** Whether it uses up time, stack or memory; which of them comes first depends on the machine. */
    boolean exhausts() {
        return this == HANGS || this == MEMORY || this == STACK;
    }
}
