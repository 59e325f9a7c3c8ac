package baywright.script;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.Optional;

/**
 * What reading one file may still take of Groovy's parser, counted in tries: a word looked at, or a place of the grammar
 * that it could belong to. A try takes about a millionth of a second. The count is the bound; the time is there for what
 * nobody has foreseen, and it is the processor's, so that a busy machine reads what an idle one does. For one thread.
 */
final class Effort {

    private static final int TRIES_BETWEEN_CLOCKS = 1 << 8;

    /** Ends the parser from within; says nothing by itself. */
    static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Spent() {
            super(null, null, false, false);
        }
    }

    private final long most;
    private final Duration longest;
    private final long started = System.nanoTime();
    private long tries;
    private long processorThen = -1;
    private boolean late;

    /** What a file may take. */
    Effort() {
        this(Limits.TRIES, Limits.LONGEST_READING);
    }

    Effort(long most, Duration longest) {
        this.most = most;
        this.longest = longest;
    }

    /**
     * Counts a try.
     *
     * @throws Spent when there is none left, from then on with every call
     */
    void take() {
        tries++;
        if (tries % TRIES_BETWEEN_CLOCKS == 0 && System.nanoTime() - started > longest.toNanos()) {
            late |= processorNanos() > longest.toNanos();
        }
        if (late || tries > most) {
            throw new Spent();
        }
    }

    long tries() {
        return tries;
    }

    /** Why the reading was ended, with what to do; empty while it was not. */
    Optional<String> spent() {
        if (late) {
            return Optional.of("reading the file took longer than " + longest.toSeconds()
                    + " s and was ended here; split the file, or this statement");
        }
        return tries > most
                ? Optional.of("the file is too intricate to be read any further; split it, or write this statement as"
                        + " several simpler ones")
                : Optional.empty();
    }

    /** Of this thread since it was asked for the first time; where nobody counts that, the time that has gone by. */
    private long processorNanos() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        if (!threads.isCurrentThreadCpuTimeSupported()) {
            return System.nanoTime() - started;
        }
        long now = threads.getCurrentThreadCpuTime();
        processorThen = processorThen < 0 ? now : processorThen;
        return now - processorThen;
    }
}
