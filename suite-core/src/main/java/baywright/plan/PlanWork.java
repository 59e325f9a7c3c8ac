package baywright.plan;

import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a plan takes: its steps, and getting out the tools of each family once a visit. Steps whose stage is gone, cannot
 * be worked out or has no zone are left out; the proof reports them.
 *
 * @param steps    in the plan's order
 * @param families families used that have a set-up, in order of first use
 */
public record PlanWork(List<StepWork> steps, List<FamilySetUp> families) {

    public PlanWork {
        steps = List.copyOf(steps);
        families = List.copyOf(families);
    }

    /** Minutes to get out and put away a family's tools, and the steps that use them. */
    public record FamilySetUp(String family, BigDecimal minutes, Place place, List<String> steps) {
        public FamilySetUp {
            steps = List.copyOf(steps);
        }
    }

    /** What the plan takes in this setting. */
    public static PlanWork of(Setting setting, Plan plan) {
        return Prover.forSetting(setting).work(plan);
    }

    /** All hands-on minutes, set-ups of steps and families included; points are simply added. */
    public ThreePoint attendedMinutes() {
        ThreePoint hands = steps.stream().map(StepWork::attendedMinutes).reduce(ThreePoint.ZERO, ThreePoint::plus);
        BigDecimal fixed = steps.stream().map(StepWork::setUpMinutes).reduce(familyMinutes(), BigDecimal::add);
        return hands.plus(new ThreePoint(fixed, fixed, fixed));
    }

    /** Minutes of the families' set-ups. */
    public BigDecimal familyMinutes() {
        return families.stream().map(FamilySetUp::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Amount of each item, in order of first use. */
    public Map<String, Quantity> items() {
        Map<String, Quantity> sums = new LinkedHashMap<>();
        steps.forEach(s -> s.items().forEach((item, amount) -> sums.merge(item, amount, PlanWork::sum)));
        return sums;
    }

    /**
     * Adds two amounts of one item, in their unit when they share it, else in the dimension's base unit. Amounts of
     * different dimensions cannot be added, which the library's check refuses; the first then stands.
     */
    static Quantity sum(Quantity a, Quantity b) {
        if (a.unit() == b.unit()) {
            return new Quantity(a.amount().add(b.amount()), a.unit());
        }
        if (a.dimension() != b.dimension()) {
            return a;
        }
        return new Quantity(a.inBase().add(b.inBase()), base(a));
    }

    private static Unit base(Quantity like) {
        return Arrays.stream(Unit.values())
                .filter(u -> u.dimension() == like.dimension())
                .filter(u -> Quantity.of(1, u).inBase().compareTo(BigDecimal.ONE) == 0)
                .findFirst()
                .orElse(like.unit());
    }
}
