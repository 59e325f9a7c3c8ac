package baywright.site;

import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a plan by how much its steps are wanted: a plan of its own, to be proved and priced by itself.
 *
 * @param upTo the least of the priorities in it
 * @param plan its steps, in the whole plan's order
 */
public record PlanOption(Priority upTo, Plan plan) {

    /** The parts of a plan that differ, from what must be to everything; none of a plan without steps. */
    public static List<PlanOption> of(Plan whole) {
        List<PlanOption> options = new ArrayList<>();
        int before = 0;
        for (Priority last : Priority.values()) {
            List<Step> steps = whole.steps().stream()
                    .filter(step -> step.priority().compareTo(last) <= 0)
                    .toList();
            if (steps.size() > before) {
                options.add(new PlanOption(last, new Plan(steps)));
            }
            before = steps.size();
        }
        return options;
    }
}
