package baywright.site;

import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What a composed plan is held to.
 *
 * @param cap      the most that the customer pays, with tax, not negative; empty: nothing is said
 * @param firmOnly whether the price alone is held to the cap, else the price with contingency
 * @param wanted   local time of the shop by which the job must be ready; empty: nothing is said
 */
public record PlanLimits(Optional<BigDecimal> cap, boolean firmOnly, Optional<LocalDateTime> wanted) {

    /** Everything goes. */
    public static final PlanLimits NONE = new PlanLimits(Optional.empty(), false, Optional.empty());

    public PlanLimits {
        cap.filter(c -> c.signum() < 0).ifPresent(c -> {
            throw new IllegalArgumentException("cap must not be negative, got " + c.toPlainString());
        });
    }

    /** Those that a job says itself. */
    public static PlanLimits of(Job job) {
        return new PlanLimits(job.cap(), false, job.wanted());
    }

    public PlanLimits withCap(BigDecimal other) {
        return new PlanLimits(Optional.of(other), firmOnly, wanted);
    }

    public PlanLimits forPriceOnly(boolean only) {
        return new PlanLimits(cap, only, wanted);
    }
}
