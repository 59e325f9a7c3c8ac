package baywright.site;

import baywright.money.Offer;
import baywright.money.Outlook;
import baywright.plan.Finding;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Setting;
import baywright.safety.SafetyCase;
import baywright.safety.SafetyReport;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A job, proved and priced.
 *
 * @param judged with its proof and the check of its safety
 * @param offer  a quote, or a refusal when a finding stops the plan
 * @param simulated with the usual seed and runs, where the shop asks for a contingency of so much confidence
 */
public record WorkedJob(JudgedJob judged, Offer offer, Optional<Outlook> simulated) {

    public Job job() {
        return judged.job();
    }

    /** What its plan was proved against. */
    public Setting setting() {
        return judged.setting();
    }

    /** What was found about the order of its steps. */
    public Proof proof() {
        return judged.proof();
    }

    /** What each step takes. */
    public PlanWork work() {
        return judged.work();
    }

    /** What its safety was judged by. */
    public SafetyCase safe() {
        return judged.safe();
    }

    /** What may hurt people, and ways out. */
    public SafetyReport safety() {
        return judged.safety();
    }

    /** Findings about order and safety together, in the order of the proof. */
    public List<Finding> findings() {
        return judged.findings();
    }

    /** Mean hands-on minutes with set-ups, of all the vehicles. */
    public BigDecimal minutes() {
        return work().attendedMinutes().mean().multiply(BigDecimal.valueOf(job().vehicles()));
    }
}
