package baywright.plan;

import baywright.script.Value;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One change of a plan. Edits are applied one after the other; each speaks of the plan as it then is. */
public sealed interface Edit {

    /** Id of the step that it makes or changes. */
    String stepId();

    /**
     * The plan with this change.
     *
     * @throws IllegalArgumentException when the plan has no such step, or has the id of a step to insert already
     */
    Plan applyTo(Plan plan);

    /**
     * A step more.
     *
     * @param step     with an id that the plan does not have
     * @param position index at which it then stands; beyond the end: at the end
     */
    record Insert(Step step, int position) implements Edit {
        public Insert {
            notNegative(position);
        }

        @Override
        public String stepId() {
            return step.id();
        }

        @Override
        public Plan applyTo(Plan plan) {
            if (plan.steps().stream().anyMatch(s -> s.id().equals(step.id()))) {
                throw new IllegalArgumentException("the plan has a step '" + step.id() + "' already");
            }
            List<Step> steps = new ArrayList<>(plan.steps());
            steps.add(Math.min(position, steps.size()), step);
            return new Plan(steps);
        }
    }

    /**
     * A step at another place of the order. A fixed start is given up with the old place.
     *
     * @param stepId   the step
     * @param position index at which it then stands; beyond the end: at the end
     */
    record Move(String stepId, int position) implements Edit {
        public Move {
            notNegative(position);
        }

        @Override
        public Plan applyTo(Plan plan) {
            List<Step> steps = new ArrayList<>(plan.steps());
            Step step = steps.remove(indexOf(plan, stepId));
            steps.add(Math.min(position, steps.size()), Steps.withStart(step, Optional.empty()));
            return new Plan(steps);
        }
    }

    /** A step less. */
    record Drop(String stepId) implements Edit {
        @Override
        public Plan applyTo(Plan plan) {
            List<Step> steps = new ArrayList<>(plan.steps());
            steps.remove(indexOf(plan, stepId));
            return new Plan(steps);
        }
    }

    /** Another value of an input; empty: the usual one. */
    record ChangeInput(String stepId, String input, Optional<Value> value) implements Edit {
        @Override
        public Plan applyTo(Plan plan) {
            Step step = plan.steps().get(indexOf(plan, stepId));
            Map<String, Value> with = new HashMap<>(step.with());
            value.ifPresentOrElse(v -> with.put(input, v), () -> with.remove(input));
            return replace(
                    plan,
                    new Step(stepId, step.stage(), step.zones(), with, step.priority(), step.at(), step.drivers()));
        }
    }

    /** Other zones, written as a step writes them. */
    record ChangeZones(String stepId, List<String> zones) implements Edit {
        public ChangeZones {
            zones = List.copyOf(zones);
        }

        @Override
        public Plan applyTo(Plan plan) {
            return replace(plan, Steps.withZones(plan.steps().get(indexOf(plan, stepId)), zones));
        }
    }

    /** Another fixed start; empty: as soon as it can. */
    record Delay(String stepId, Optional<LocalDateTime> at) implements Edit {
        @Override
        public Plan applyTo(Plan plan) {
            return replace(plan, Steps.withStart(plan.steps().get(indexOf(plan, stepId)), at));
        }
    }

    private static void notNegative(int position) {
        if (position < 0) {
            throw new IllegalArgumentException("a position counts from 0, got " + position);
        }
    }

    private static Plan replace(Plan plan, Step step) {
        List<Step> steps = new ArrayList<>(plan.steps());
        steps.set(indexOf(plan, step.id()), step);
        return new Plan(steps);
    }

    private static int indexOf(Plan plan, String id) {
        for (int i = 0; i < plan.steps().size(); i++) {
            if (plan.steps().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("the plan has no step '" + id + "'");
    }
}
