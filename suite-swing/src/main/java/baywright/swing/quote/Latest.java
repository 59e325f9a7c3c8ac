package baywright.swing.quote;

import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import java.util.Optional;
import java.util.function.Consumer;

/** Work of which only the newest counts: whatever runs is called off when something newer is asked. */
final class Latest {

    private final Desk desk;
    private Optional<TaskHandle> running = Optional.empty();

    Latest(Desk desk) {
        this.desk = desk;
    }

    /** Calls off what runs. */
    void cancel() {
        running.ifPresent(TaskHandle::cancel);
        running = Optional.empty();
    }

    <T> void run(String title, Task.Work<T> work, Consumer<T> done) {
        cancel();
        running = Optional.of(desk.run(new Task<>(
                title,
                work,
                done,
                fault -> desk.say(Notice.failed(Words.of("task.failed", String.valueOf(fault.getMessage())))))));
    }
}
