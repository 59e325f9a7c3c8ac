package baywright.swing.timetable;

import baywright.site.JudgedJob;
import baywright.site.Site;
import baywright.site.StartTrial;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.workspace.Job;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.Consumer;

/** Tries starts of steps in the background. One trial runs at a time, and only the newest wish waits. */
final class StartChecks {

    /** A start to try; empty: as soon as the step can. */
    record Wish(Site site, Job job, String step, Optional<LocalDateTime> at) {}

    /** What came out. */
    record Answer(Wish wish, StartTrial trial) {}

    /** A job as it is without the start that is tried. */
    private record Known(Site site, Job job, JudgedJob judged) {}

    private final Desk desk;
    private final Consumer<Answer> tell;
    private Optional<Wish> newest = Optional.empty();
    private Optional<TaskHandle> running = Optional.empty();

    /** Touched by one trial after the other only. */
    private volatile Optional<Known> known = Optional.empty();

    /** {@code tell} gets the answer to the newest wish on the event thread. */
    StartChecks(Desk desk, Consumer<Answer> tell) {
        this.desk = desk;
        this.tell = tell;
    }

    void ask(Wish wish) {
        newest = Optional.of(wish);
        if (running.map(TaskHandle::ended).orElse(true)) {
            begin(wish);
        }
    }

    /** Forgets what was asked. */
    void forget() {
        newest = Optional.empty();
    }

    private void begin(Wish wish) {
        running = Optional.of(desk.run(new Task<>(
                TimetableWorkbench.TEXTS.of("check.task"),
                progress -> answer(wish),
                answer -> ended(wish, Optional.of(answer)),
                fault -> {
                    desk.say(Notice.failed(TimetableWorkbench.TEXTS.of("failed", String.valueOf(fault.getMessage()))));
                    ended(wish, Optional.empty());
                })));
    }

    private void ended(Wish wish, Optional<Answer> answer) {
        running = Optional.empty();
        if (newest.filter(wish::equals).isPresent()) {
            answer.ifPresent(tell);
        } else {
            newest.ifPresent(this::begin);
        }
    }

    private Answer answer(Wish wish) {
        JudgedJob now = known.filter(
                        k -> k.site().equals(wish.site()) && k.job().equals(wish.job()))
                .map(Known::judged)
                .orElseGet(() -> wish.site().judge(wish.job()));
        known = Optional.of(new Known(wish.site(), wish.job(), now));
        return new Answer(wish, StartTrial.of(wish.site(), now, wish.step(), wish.at()));
    }
}
