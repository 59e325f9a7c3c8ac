package baywright.swing.plan;

import baywright.plan.Mends;
import baywright.plan.Plan;
import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.plan.Severity;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Timer;

/** Looks for repairs of a stopped plan whenever it has been left alone for a moment. An edit calls the search off. */
final class RepairWatch {

    private static final int PAUSE_MS = 400;
    private static final Duration UNASKED = Duration.ofSeconds(2);

    /** Repairs of a plan, and which single edit mends what. */
    record Found(Plan plan, RepairResult result, Mends mends) {}

    private final Desk desk;
    private final Consumer<Optional<Found>> tell;
    private final Timer pause;
    private Optional<WorkedJob> stopped = Optional.empty();
    private Optional<Plan> looked = Optional.empty();
    private Optional<TaskHandle> running = Optional.empty();

    /** {@code tell} gets what was found, on the event thread; empty when that holds no more. */
    RepairWatch(Desk desk, Consumer<Optional<Found>> tell) {
        this.desk = desk;
        this.tell = tell;
        pause = new Timer(PAUSE_MS, e -> look(UNASKED));
        pause.setRepeats(false);
    }

    void show(DeskState state) {
        Optional<WorkedJob> now = state.worked()
                .filter(w -> state.job()
                        .filter(job -> job.plan().equals(w.job().plan()))
                        .isPresent());
        Optional<Plan> plan = now.map(w -> w.job().plan());
        if (plan.isPresent() && plan.equals(looked)) {
            return;
        }
        pause.stop();
        running.ifPresent(TaskHandle::cancel);
        running = Optional.empty();
        if (looked.isPresent()) {
            looked = Optional.empty();
            tell.accept(Optional.empty());
        }
        stopped = now.filter(w -> w.proof().findings().stream().anyMatch(f -> f.severity() == Severity.STOP));
        if (stopped.isPresent()) {
            pause.restart();
        }
    }

    /** Looks at once, for so long at most. */
    void look(Duration longest) {
        pause.stop();
        running.ifPresent(TaskHandle::cancel);
        stopped.ifPresent(worked -> {
            Plan plan = worked.job().plan();
            looked = Optional.of(plan);
            running = Optional.of(desk.run(new Task<>(
                    Words.of("mend.task"),
                    progress -> {
                        RepairResult result = Repair.find(
                                worked.setting(),
                                plan,
                                Repair.Options.USUAL.within(longest).cancelledBy(progress::cancelled));
                        return new Found(
                                plan, result, Mends.of(worked.setting(), plan, result.repairs(), progress::cancelled));
                    },
                    found -> {
                        if (looked.filter(plan::equals).isPresent()) {
                            tell.accept(Optional.of(found));
                        }
                    },
                    fault -> desk.say(Notice.failed(Words.of("mend.failed", String.valueOf(fault.getMessage())))))));
        });
    }
}
