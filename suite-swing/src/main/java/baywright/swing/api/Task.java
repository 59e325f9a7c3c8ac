package baywright.swing.api;

import java.util.function.Consumer;

/**
 * Work that lasts.
 *
 * @param title what is being done, for the user
 * @param work  off the event thread; it ends soon after {@link Progress#cancelled} turns true
 * @param done  gets the result on the event thread, unless cancelled
 * @param failed gets what it threw on the event thread, unless cancelled
 */
public record Task<T>(String title, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {

    /** What is done off the event thread. */
    @FunctionalInterface
    public interface Work<T> {
        T run(Progress progress) throws Exception;
    }

    /** Where the work tells how far it is. Safe to call from any thread. */
    public interface Progress {

        /** How much is done, from 0 to 1. */
        void at(double share);

        /** What is done just now, in words. */
        void says(String text);

        boolean cancelled();
    }
}
