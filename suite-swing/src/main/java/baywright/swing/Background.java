package baywright.swing;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;

/** Work that would hold up the window: done elsewhere, told back on the event thread. */
final class Background {

    private Background() {}

    /**
     * Starts work and returns at once.
     *
     * @param work   runs off the event thread
     * @param done   gets its result on the event thread
     * @param failed gets what it threw, on the event thread
     */
    static <T> void run(Callable<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        new SwingWorker<T, Void>() {
            @Override
            protected T doInBackground() throws Exception {
                return work.call();
            }

            @Override
            protected void done() {
                try {
                    done.accept(get());
                } catch (ExecutionException e) {
                    failed.accept(e.getCause());
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            }
        }.execute();
    }
}
