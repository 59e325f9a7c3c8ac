package baywright.swing.sites;

import baywright.pack.PackRefused;
import baywright.site.SiteTrouble;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.workspace.WorkspaceException;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Runs work in the background and tells how it went wrong in one sentence. */
final class Working {

    private Working() {}

    /**
     * Runs work.
     *
     * @param done    gets what came of it
     * @param stopped called on the event thread when nothing comes of it, because it failed or was cancelled
     */
    static <T> TaskHandle run(Desk desk, String title, Task.Work<T> work, Consumer<T> done, Runnable stopped) {
        return desk.run(new Task<>(
                title,
                progress -> {
                    try {
                        return work.run(progress);
                    } finally {
                        if (progress.cancelled()) {
                            SwingUtilities.invokeLater(stopped);
                        }
                    }
                },
                done,
                fault -> {
                    desk.say(Notice.failed(sentence(fault)));
                    stopped.run();
                }));
    }

    /** What went wrong, as the user is told. */
    static String sentence(Exception fault) {
        boolean isSaid =
                fault instanceof PackRefused || fault instanceof WorkspaceException || fault instanceof SiteTrouble;
        return isSaid ? fault.getMessage() : Words.of("failed", String.valueOf(fault.getMessage()));
    }
}
