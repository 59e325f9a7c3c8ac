package baywright.plan;

import java.util.List;

/**
 * Steps in the order in which they are done.
 *
 * @param steps ids are unique
 */
public record Plan(List<Step> steps) {
    public Plan {
        steps = List.copyOf(steps);
    }
}
