package baywright.remote;

import baywright.remote.Watch.Step;
import org.eclipse.jgit.lib.ProgressMonitor;

/** What JGit tells of its progress, passed on. */
final class Steps implements ProgressMonitor {

    private final Watch watch;
    private final Step step;
    private int all;
    private int done;

    Steps(Watch watch, Step step) {
        this.watch = watch;
        this.step = step;
    }

    @Override
    public void start(int tasks) {
        watch.at(step, 0, 0);
    }

    @Override
    public void beginTask(String title, int work) {
        all = work;
        done = 0;
        watch.at(step, 0, all);
    }

    @Override
    public void update(int more) {
        done += more;
        watch.at(step, done, all);
    }

    @Override
    public void endTask() {
        watch.at(step, done, all);
    }

    @Override
    public boolean isCancelled() {
        return watch.cancelled();
    }

    @Override
    public void showDuration(boolean enabled) {
        // whoever watches has a clock
    }
}
