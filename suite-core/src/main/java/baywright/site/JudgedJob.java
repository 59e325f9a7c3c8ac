package baywright.site;

import baywright.plan.Finding;
import baywright.plan.GoalEnd;
import baywright.plan.Leaning;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.safety.SafetyCase;
import baywright.safety.SafetyReport;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A job with the proof of its plan and the check of its safety, without a price.
 *
 * @param job     as its folder describes it
 * @param setting what its plan was proved against
 * @param proof   what was found
 * @param work    what each step takes
 * @param leaning which steps lean on steps that are wanted less
 * @param safe    what its safety was judged by
 * @param safety  what may hurt people, and ways out
 */
public record JudgedJob(
        Job job, Setting setting, Proof proof, PlanWork work, Leaning leaning, SafetyCase safe, SafetyReport safety) {

    /** All findings, what is missing of the job's goals included, in the order of the proof: by step, what belongs to no step first; the gravest first. */
    public List<Finding> findings() {
        Map<String, Integer> order = new HashMap<>();
        for (Step step : job.plan().steps()) {
            order.putIfAbsent(step.id(), order.size());
        }
        List<Finding> all = new ArrayList<>(Stream.concat(proof.findings().stream(), safety.findings().stream())
                .toList());
        all.addAll(leaning.findings());
        all.addAll(GoalEnd.findings(setting, job.goals(), proof));
        all.sort(Comparator.comparing((Finding f) ->
                        f.step().map(s -> order.getOrDefault(s, order.size())).orElse(-1))
                .thenComparing(Finding::severity));
        return all;
    }

    /** Whether no finding stops the plan. */
    public boolean holds() {
        return proof.holds() && safety.holds();
    }
}
