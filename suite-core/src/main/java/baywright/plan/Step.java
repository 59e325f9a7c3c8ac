package baywright.plan;

import baywright.script.Value;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One use of a stage in a plan.
 *
 * @param id       unique in its plan, such as {@code s12}
 * @param stage    id of the stage
 * @param zones    ids of the zones worked on, in order; for a stage on the whole vehicle the zone {@code vehicle}
 * @param with     inputs that differ from their usual values; their place is the field in the job's file
 * @param priority how the customer's wish is weighed
 * @param at       when it starts, where the plan fixes it (local time of the site); else as soon as it can
 * @param drivers  amounts of drivers that replace the measured ones, such as {@code m} 16 or {@code chip} 80
 */
public record Step(
        String id,
        String stage,
        List<String> zones,
        Map<String, Value> with,
        Priority priority,
        Optional<LocalDateTime> at,
        Map<String, BigDecimal> drivers) {

    /** How the customer's wish is weighed. */
    public enum Priority {
        MUST,
        SHOULD,
        COULD
    }

    public Step {
        zones = List.copyOf(zones);
        with = Map.copyOf(with);
        drivers = Map.copyOf(drivers);
    }

    /** The same step, weighed otherwise. */
    public Step withPriority(Priority other) {
        return new Step(id, stage, zones, with, other, at, drivers);
    }

    /** The same step, starting at a moment. */
    public Step withAt(LocalDateTime moment) {
        return new Step(id, stage, zones, with, priority, Optional.of(moment), drivers);
    }

    /** The same work under another id. */
    public Step withId(String other) {
        return new Step(other, stage, zones, with, priority, at, drivers);
    }
}
