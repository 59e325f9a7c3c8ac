package baywright.swing.shell;

import baywright.swing.api.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Runs work off the event thread and tells on it how far it is. */
final class Tasks {

    private final List<RunningTask> running = new ArrayList<>();
    private final AtomicBoolean toldSoon = new AtomicBoolean();
    private final Consumer<List<RunningTask>> changed;
    private final Consumer<Throwable> broken;
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "baywright task");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Runs nothing yet.
     *
     * @param changed hears of what is under way, on the event thread
     * @param broken  hears of errors that no task may handle, on the event thread
     */
    Tasks(Consumer<List<RunningTask>> changed, Consumer<Throwable> broken) {
        this.changed = changed;
        this.broken = broken;
    }

    <T> RunningTask run(Task<T> task) {
        RunningTask running = new RunningTask(task.title(), this::tellSoon);
        this.running.add(running);
        threads.execute(() -> work(task, running));
        tellSoon();
        return running;
    }

    boolean areRunning() {
        return !running.isEmpty();
    }

    private <T> void work(Task<T> task, RunningTask run) {
        Runnable told;
        try {
            T result = task.work().run(run);
            told = () -> task.done().accept(result);
        } catch (Exception e) {
            told = () -> task.failed().accept(e);
        } catch (Error e) {
            told = () -> broken.accept(e);
        }
        Runnable last = told;
        SwingUtilities.invokeLater(() -> {
            running.remove(run);
            run.end();
            if (!run.cancelled()) {
                last.run();
            }
        });
    }

    /** Many calls within one turn of the event thread are one. */
    private void tellSoon() {
        if (toldSoon.compareAndSet(false, true)) {
            SwingUtilities.invokeLater(() -> {
                toldSoon.set(false);
                changed.accept(List.copyOf(running));
            });
        }
    }
}
