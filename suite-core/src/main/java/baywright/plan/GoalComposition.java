package baywright.plan;

import baywright.plan.Composition.Because;
import java.math.BigDecimal;
import java.util.List;

/**
 * A plan made from goals.
 *
 * @param setting     what it was made for
 * @param goals       all goals that were asked for
 * @param composition the plan, with why each step is there and what is not granted
 */
public record GoalComposition(Setting setting, List<AskedGoal> goals, Composition composition) {

    public GoalComposition {
        goals = List.copyOf(goals);
    }

    /** Composes a plan that grants the goals. */
    public static GoalComposition of(Setting setting, List<AskedGoal> goals, Composer.Options options) {
        return new GoalComposition(setting, goals, Composer.compose(setting, wishes(goals), options));
    }

    /**
     * What every plan that grants the goals costs at least, as far as that can be told without making one.
     *
     * @see Composer#least
     */
    public static BigDecimal least(Setting setting, List<AskedGoal> goals, boolean careful, Costing costing) {
        return Composer.least(setting, wishes(goals), careful, costing);
    }

    static List<Wish> wishes(List<AskedGoal> goals) {
        return goals.stream().flatMap(g -> g.wishes().stream()).distinct().toList();
    }

    /** Goals that asked for the state for which a step is there; empty when the step is there for another step. */
    public List<AskedGoal> askedBy(Because because) {
        return because.forStep().isEmpty()
                ? goals.stream()
                        .filter(g -> g.wants(because.state(), because.zones(), setting))
                        .toList()
                : List.of();
    }

    /** What is not granted of a goal. */
    public List<Unmet> unmet(AskedGoal goal) {
        return composition.unmet().stream()
                .filter(u -> u.wish().priority() == goal.priority())
                .filter(u ->
                        goal.wants(u.wish().state(), ZoneChoice.resolve(u.wish().zones(), setting.shape()), setting))
                .toList();
    }

    /** Whether a goal is granted in full. */
    public boolean grants(AskedGoal goal) {
        return composition.composed() && !goal.wishes().isEmpty() && unmet(goal).isEmpty();
    }

    /** Goals that the plan does not grant in full. */
    public List<AskedGoal> missed() {
        return goals.stream().filter(g -> !grants(g)).toList();
    }

    /** Whether the plan proves and grants every goal that must be. */
    public boolean grantsAllMusts() {
        return composition.composed()
                && goals.stream().noneMatch(g -> g.priority() == Step.Priority.MUST && !grants(g));
    }
}
