package baywright.swing.plan;

import baywright.plan.Plan;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** One plan kept aside for each job while the window is open. */
final class Variants {

    private final Map<String, Plan> kept = new HashMap<>();

    void keep(String job, Plan plan) {
        kept.put(job, plan);
    }

    Optional<Plan> of(String job) {
        return Optional.ofNullable(kept.get(job));
    }
}
