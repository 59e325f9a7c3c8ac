package baywright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Which single edit of a plan takes which stop away by itself.
 *
 * @param edits edits by the stop that they take away, in the order of the repairs that they come from
 */
public record Mends(Map<Finding, List<Edit>> edits) {

    public static final Mends NONE = new Mends(Map.of());

    public Mends {
        edits = Map.copyOf(edits);
    }

    /** Edits that take a stop away; none for a finding that is no stop, or that takes more than one edit. */
    public List<Edit> of(Finding finding) {
        return edits.getOrDefault(finding, List.of());
    }

    /**
     * Tries each edit of some repairs alone. One that leaves as many stops as before, or more, is left out.
     *
     * @param repairs   of this plan
     * @param cancelled asked before each try; true ends it with what was found so far
     */
    public static Mends of(Setting setting, Plan plan, List<Repair> repairs, BooleanSupplier cancelled) {
        Set<Edit> all = new LinkedHashSet<>();
        for (Repair repair : repairs) {
            repair.edits().stream().filter(e -> stands(e, plan)).forEach(e -> all.add(alone(e, plan, repair.plan())));
        }
        Prover prover = Prover.forSetting(setting);
        List<Finding> before = prover.stops(plan);
        Map<Finding, List<Edit>> mends = new LinkedHashMap<>();
        for (Edit edit : all) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            List<Finding> after = prover.stops(edit.applyTo(plan));
            if (after.size() < before.size()) {
                before.stream()
                        .filter(f -> !after.contains(f))
                        .forEach(f ->
                                mends.computeIfAbsent(f, k -> new ArrayList<>()).add(edit));
            }
        }
        mends.replaceAll((finding, some) -> List.copyOf(some));
        return new Mends(mends);
    }

    /** An edit of a step that an earlier edit of its repair inserts cannot stand alone. */
    private static boolean stands(Edit edit, Plan plan) {
        return edit instanceof Edit.Insert == (plan.indexOf(edit.stepId()) < 0);
    }

    /** The edit as it is without the others of its repair: the step stands before the same step of the plan as in the repaired one. */
    private static Edit alone(Edit edit, Plan plan, Plan repaired) {
        if (edit instanceof Edit.Insert insert) {
            return new Edit.Insert(insert.step(), place(insert.stepId(), plan, repaired));
        }
        if (edit instanceof Edit.Move move) {
            int own = plan.indexOf(move.stepId());
            int place = place(move.stepId(), plan, repaired);
            return new Edit.Move(move.stepId(), place > own ? place - 1 : place);
        }
        return edit;
    }

    private static int place(String id, Plan plan, Plan repaired) {
        for (int i = repaired.indexOf(id) + 1; i < repaired.steps().size(); i++) {
            int there = plan.indexOf(repaired.steps().get(i).id());
            if (there >= 0) {
                return there;
            }
        }
        return plan.steps().size();
    }
}
