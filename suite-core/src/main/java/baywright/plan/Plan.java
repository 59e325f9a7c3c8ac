package baywright.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Steps in the order in which they are done.
 *
 * @param steps ids are unique
 */
public record Plan(List<Step> steps) {

    public Plan {
        steps = List.copyOf(steps);
    }

    /** The step of an id; of steps that share it, the first. */
    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The place of a step from 0, or -1. */
    public int indexOf(String id) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** An id that no step has: {@code s} and the least number above the count of the steps. */
    public String freeId() {
        Set<String> taken = steps.stream().map(Step::id).collect(Collectors.toSet());
        int number = steps.size() + 1;
        while (taken.contains("s" + number)) {
            number++;
        }
        return "s" + number;
    }

    /** The plan with a step in place of the one of the same id; without such a step it stays. */
    public Plan with(Step step) {
        List<Step> changed = new ArrayList<>(steps);
        int at = indexOf(step.id());
        if (at >= 0) {
            changed.set(at, step);
        }
        return new Plan(changed);
    }

    /** The plan without some steps; ids that it does not have are passed over. */
    public Plan without(Collection<String> ids) {
        return new Plan(steps.stream().filter(s -> !ids.contains(s.id())).toList());
    }

    /**
     * The plan with some steps moved together, in the order that they have. Those that change places with another step give
     * up a fixed start, as with {@link Edit.Move}.
     *
     * @param ids    of the steps; those that the plan does not have are passed over
     * @param before place, from 0, of the step before which they then stand, as the plan is now; the number of steps: at the end
     */
    public Plan moved(Collection<String> ids, int before) {
        List<Step> block = steps.stream().filter(s -> ids.contains(s.id())).toList();
        List<Step> order = new ArrayList<>();
        for (int i = 0; i <= steps.size(); i++) {
            if (i == Math.max(0, Math.min(before, steps.size()))) {
                order.addAll(block);
            }
            if (i < steps.size() && !ids.contains(steps.get(i).id())) {
                order.add(steps.get(i));
            }
        }
        if (order.equals(steps)) {
            return this;
        }
        return new Plan(order.stream()
                .map(s -> ids.contains(s.id()) ? Steps.withStart(s, Optional.empty()) : s)
                .toList());
    }
}
