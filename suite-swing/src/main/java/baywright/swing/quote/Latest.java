package baywright.swing.quote;

import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Timer;

/**
 * Work of which only the newest counts: whatever runs is called off when something newer is asked. The user may call it off as well; as
 * nobody tells of that, it is looked for.
 */
final class Latest {

    private static final int LOOK_MILLIS = 400;

    private final Desk desk;
    private Optional<Running> running = Optional.empty();

    Latest(Desk desk) {
        this.desk = desk;
    }

    /** Work under way, and what is to be done when it ends without an answer. */
    private static final class Running {

        private final Runnable unanswered;
        private final Timer look = new Timer(LOOK_MILLIS, e -> look());
        private TaskHandle handle;
        private boolean over;
        private boolean ended;

        Running(Runnable unanswered) {
            this.unanswered = unanswered;
        }

        void begin(TaskHandle started) {
            handle = started;
            if (!over) {
                look.start();
            }
        }

        void end() {
            over = true;
            look.stop();
        }

        /** An answer may still be on its way to this thread when the work has ended, so that only the second look counts. */
        private void look() {
            if (handle.ended() && ended) {
                end();
                unanswered.run();
            }
            ended = handle.ended();
        }
    }

    /** Calls off what runs. */
    void cancel() {
        running.ifPresent(now -> {
            now.end();
            now.handle.cancel();
        });
        running = Optional.empty();
    }

    /** @param unanswered done when it fails, which is told, or when the user calls it off */
    <T> void run(String title, Task.Work<T> work, Consumer<T> done, Runnable unanswered) {
        cancel();
        Running now = new Running(unanswered);
        TaskHandle handle = desk.run(new Task<>(
                title,
                work,
                answer -> {
                    now.end();
                    done.accept(answer);
                },
                fault -> {
                    now.end();
                    unanswered.run();
                    desk.say(Notice.failed(Words.of("task.failed", String.valueOf(fault.getMessage()))));
                }));
        now.begin(handle);
        running = Optional.of(now);
    }
}
