package baywright.cli;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Tells on a terminal that something takes time, once it has taken half a second, and takes the words away again at its
 * end. Elsewhere it is silent.
 */
final class Progress {

    private static final Duration PATIENCE = Duration.ofMillis(500);
    private static final String ERASE = "\r\033[K";

    private final Session session;
    private final Thread ticker;
    private final BooleanSupplier quiet;
    private boolean told;

    private Progress(Session session, String words, BooleanSupplier quiet) {
        this.session = session;
        this.quiet = quiet;
        ticker = new Thread(() -> tick(words), "progress");
        ticker.setDaemon(true);
    }

    /** What the work gives; meanwhile the words are told, a key of the sentences with the seconds so far as their value. */
    static <T> T during(Session session, String words, Supplier<T> work) {
        return during(session, words, () -> false, work);
    }

    /** The same, silent while somebody is being asked something on the same terminal. */
    static <T> T during(Session session, String words, BooleanSupplier quiet, Supplier<T> work) {
        Progress progress = new Progress(session, words, quiet);
        if (session.json() || !"yes".equals(System.getProperty("baywright.terminal"))) {
            return work.get();
        }
        progress.ticker.start();
        try {
            return work.get();
        } finally {
            progress.end();
        }
    }

    private void tick(String words) {
        long began = System.nanoTime();
        try {
            Thread.sleep(PATIENCE.toMillis());
            while (true) {
                tell(ERASE
                        + session.text(
                                words,
                                Duration.ofNanos(System.nanoTime() - began).toSeconds()));
                Thread.sleep(Duration.ofSeconds(1).toMillis());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void tell(String text) {
        if (!Thread.currentThread().isInterrupted() && !quiet.getAsBoolean()) {
            told = true;
            session.console().err().print(text);
            session.console().err().flush();
        }
    }

    private void end() {
        ticker.interrupt();
        try {
            ticker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (told) {
            session.console().err().print(ERASE);
            session.console().err().flush();
        }
    }
}
