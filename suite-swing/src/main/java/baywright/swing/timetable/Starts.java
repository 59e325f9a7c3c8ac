package baywright.swing.timetable;

import baywright.library.Stage;
import baywright.plan.Edit;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.site.OpenShop;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.workspace.Job;
import java.time.LocalDateTime;
import java.util.Optional;

/** Fixes starts of steps and takes them away, with undo. */
final class Starts {

    private final Desk desk;

    Starts(Desk desk) {
        this.desk = desk;
    }

    /** The step of a job as it is on the desk. */
    Optional<Step> step(String job, String step) {
        return desk.state()
                .shop()
                .flatMap(s -> s.job(job))
                .flatMap(j -> j.plan().step(step));
    }

    /** Gives a step another start; empty: as soon as it can. Nudges of one step one after the other are taken back together. */
    void fix(String job, String step, Optional<LocalDateTime> at) {
        desk.change(new Change(
                TimetableWorkbench.TEXTS.of(at.isPresent() ? "change.fix" : "change.release", title(job, step)),
                at.isPresent() ? "timetable.start." + job + "." + step : "",
                shop -> with(shop, job, step, at)));
    }

    private String title(String job, String step) {
        String stage = step(job, step).map(Step::stage).orElse(step);
        return desk.state()
                .shop()
                .flatMap(shop ->
                        Optional.ofNullable(shop.site().library().stageById().get(stage)))
                .map(Stage::title)
                .orElse(stage);
    }

    private static OpenShop with(OpenShop shop, String id, String step, Optional<LocalDateTime> at) {
        Optional<Job> job = shop.job(id).filter(j -> j.plan().step(step).isPresent());
        if (job.isEmpty() || job.get().plan().step(step).orElseThrow().at().equals(at)) {
            return shop;
        }
        Plan plan = new Edit.Delay(step, at).applyTo(job.get().plan());
        return shop.withJob(job.get().withPlan(plan));
    }
}
