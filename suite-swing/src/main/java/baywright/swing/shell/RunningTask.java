package baywright.swing.shell;

import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;

/** Work under way, as the line of tasks shows it. */
final class RunningTask implements TaskHandle, Task.Progress {

    private final String title;
    private final Runnable changed;
    private final long began = System.nanoTime();
    private volatile double share = -1;
    private volatile String says = "";
    private volatile boolean cancelled;
    private volatile boolean ended;

    /** @param changed told from any thread when something has changed */
    RunningTask(String title, Runnable changed) {
        this.title = title;
        this.changed = changed;
    }

    String title() {
        return title;
    }

    /** From 0 to 1; less than 0 while nobody knows. */
    double share() {
        return share;
    }

    String text() {
        return says;
    }

    long nanosSoFar() {
        return System.nanoTime() - began;
    }

    @Override
    public void at(double done) {
        share = Math.min(1, Math.max(0, done));
        changed.run();
    }

    @Override
    public void says(String text) {
        says = text;
        changed.run();
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }

    @Override
    public void cancel() {
        cancelled = true;
        changed.run();
    }

    @Override
    public boolean ended() {
        return ended;
    }

    void end() {
        ended = true;
        changed.run();
    }
}
