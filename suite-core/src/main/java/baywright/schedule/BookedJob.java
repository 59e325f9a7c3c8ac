package baywright.schedule;

import baywright.plan.Plan;
import baywright.plan.Setting;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A job to be timed.
 *
 * @param id       stable id
 * @param setting  what its plan is proved against; work begins at its start at the earliest
 * @param plan     its steps
 * @param vehicles how many alike, from 1
 * @param wanted   when it must be ready, local time of the shop
 */
public record BookedJob(String id, Setting setting, Plan plan, int vehicles, Optional<LocalDateTime> wanted) {
    public BookedJob {
        if (vehicles < 1) {
            throw new IllegalArgumentException("vehicles of a job count from 1, got " + vehicles);
        }
    }
}
