package baywright.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The result of proving a plan.
 *
 * @param findings in stable order: by step, then severity, code, zone
 * @param clock    when each step starts and ends, in the plan's order
 * @param ends     states that hold at the end, by zone id (vehicle-wide ones under {@code vehicle})
 */
public record Proof(List<Finding> findings, List<Slot> clock, Map<String, Set<String>> ends) {

    /**
     * A step on the simple clock: one step after the other, waits respected.
     *
     * @param step    step id
     * @param start   minutes after the setting's start
     * @param end     end of the hands-on time, minutes after the setting's start
     * @param waited  minutes that passed idle before it because something had to stand
     */
    public record Slot(String step, BigDecimal start, BigDecimal end, BigDecimal waited) {}

    public Proof {
        findings = List.copyOf(findings);
        clock = List.copyOf(clock);
        ends = Map.copyOf(ends);
    }

    /** Whether no finding stops the plan. */
    public boolean holds() {
        return findings.stream().noneMatch(f -> f.severity() == Severity.STOP);
    }
}
