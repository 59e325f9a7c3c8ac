package baywright.schedule;

import baywright.plan.Plan;
import baywright.plan.Setting;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;

/**
 * A job to be timed.
 *
 * @param id       stable id
 * @param setting  what its plan is proved against; work begins at its start at the earliest
 * @param plan     its steps
 * @param vehicles how many alike, from 1
 * @param wanted   when it must be ready, local time of the shop
 * @param loads    what its steps do to people and bays, by step id; a step without does nothing to them
 */
public record BookedJob(
        String id,
        Setting setting,
        Plan plan,
        int vehicles,
        Optional<LocalDateTime> wanted,
        Map<String, StepLoad> loads) {

    /** A job whose steps do nothing to people and bays. */
    public BookedJob(String id, Setting setting, Plan plan, int vehicles, Optional<LocalDateTime> wanted) {
        this(id, setting, plan, vehicles, wanted, Map.of());
    }

    public BookedJob {
        loads = Map.copyOf(loads);
        if (vehicles < 1) {
            throw new IllegalArgumentException("vehicles of a job count from 1, got " + vehicles);
        }
    }

    /** The same without what its steps do to people and bays. */
    public BookedJob withoutLoads() {
        return new BookedJob(id, setting, plan, vehicles, wanted);
    }
}
