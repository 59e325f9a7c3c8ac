package baywright.site;

import baywright.money.Offer;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Setting;
import baywright.safety.SafetyCase;
import baywright.safety.SafetyReport;
import baywright.workspace.Job;
import java.math.BigDecimal;

/**
 * A job, proved and priced.
 *
 * @param job     as its folder describes it
 * @param setting what its plan was proved against
 * @param proof   what was found
 * @param work    what each step takes
 * @param safe    what its safety was judged by
 * @param safety  what may hurt people, and ways out
 * @param offer   a quote, or a refusal when a finding stops the plan
 */
public record WorkedJob(
        Job job, Setting setting, Proof proof, PlanWork work, SafetyCase safe, SafetyReport safety, Offer offer) {

    /** Mean hands-on minutes with set-ups, of all the vehicles. */
    public BigDecimal minutes() {
        return work.attendedMinutes().mean().multiply(BigDecimal.valueOf(job.vehicles()));
    }
}
