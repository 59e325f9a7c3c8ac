package baywright.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * A plan made from wishes.
 *
 * @param plan     steps in order, each with the priority of the gravest wish that relies on it
 * @param proof    its proof; holds whenever {@code composed} is true
 * @param composed whether the plan proves and grants every wish that is not in {@code unmet}
 * @param reasons  why each step is there, in the plan's order
 * @param putOff   steps that begin later than they could, as a rule forbids at first what follows
 * @param unmet    what was wanted and is not granted, with what stands against it
 * @param minutes  attended minutes with all set-ups, mean
 * @param cost     what it costs by the costing that it was composed with
 * @param least    what every such plan costs at least by that costing, as far as proved
 * @param time     how long it took
 */
public record Composition(
        Plan plan,
        Proof proof,
        boolean composed,
        List<Because> reasons,
        List<PutOff> putOff,
        List<Unmet> unmet,
        BigDecimal minutes,
        BigDecimal cost,
        BigDecimal least,
        Duration time) {

    /**
     * Why a step is there.
     *
     * @param step    step id
     * @param state   the state in question
     * @param ends    whether the step ends it for one that must not find it; else it makes it for one that needs it
     * @param zones   where
     * @param forStep id of the step that relies on it; empty: a wish
     * @param rule    title of the rule that forbids that step without this one, in place of a state; else empty
     */
    public record Because(String step, String state, boolean ends, List<String> zones, String forStep, String rule) {
        public Because {
            zones = List.copyOf(zones);
        }

        /** A step that is there for a state. */
        public Because(String step, String state, boolean ends, List<String> zones, String forStep) {
            this(step, state, ends, zones, forStep, "");
        }
    }

    /**
     * Work that was put off.
     *
     * @param step    id of the step that begins later; its start is fixed in the plan
     * @param forStep id of the step that a rule forbids before: the same one or one after it
     * @param stop    what would forbid it
     */
    public record PutOff(String step, String forStep, Finding stop) {}

    public Composition {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(proof, "proof");
        reasons = List.copyOf(reasons);
        putOff = List.copyOf(putOff);
        unmet = List.copyOf(unmet);
    }

    /** Whether no plan that grants the same wishes costs less. */
    public boolean provedCheapest() {
        return composed && cost.subtract(least).abs().compareTo(new BigDecimal("0.01")) <= 0;
    }
}
