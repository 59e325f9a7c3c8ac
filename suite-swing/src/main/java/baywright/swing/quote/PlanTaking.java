package baywright.swing.quote;

import baywright.plan.Plan;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.workspace.Job;
import java.util.Optional;

/** Puts a part of a plan in place of the plan, as one edit that can be undone. */
final class PlanTaking {

    private PlanTaking() {}

    /**
     * Takes a plan.
     *
     * @param title what the user did, in words
     * @param made  the job that the plan was made of; when its plan has been edited meanwhile nothing is done and the user is told
     */
    static void take(Desk desk, String title, Job made, Plan plan) {
        Optional<Job> now = desk.state().shop().flatMap(shop -> shop.job(made.id()));
        if (now.isEmpty() || !now.get().plan().equals(made.plan())) {
            desk.say(new Notice(Notice.Weight.NOTE, Words.of("take.late"), Optional.empty()));
            return;
        }
        desk.change(
                title,
                shop -> shop.job(made.id())
                        .filter(job -> !job.plan().equals(plan))
                        .map(job -> shop.withJob(job.withPlan(plan, job.safety().kept(job.plan(), plan))))
                        .orElse(shop));
    }
}
