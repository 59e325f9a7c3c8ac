package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which steps of a plan surely stop it once others are left out: a state that a step needs, that no survey found and that no
 * step before it would bring there, does not hold. Where a need is not listed the plan may be stopped all the same: what clears a
 * state or runs out of time is not looked at.
 */
public final class StepNeeds {

    /**
     * One of some steps must stay for a step to stand.
     *
     * @param step  place of the step in the plan
     * @param anyOf places of steps before it; none: it never stands
     */
    public record Need(int step, Set<Integer> anyOf) {
        public Need {
            anyOf = Set.copyOf(anyOf);
        }
    }

    private final Prover prover;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;

    /** By step and row: what it would bring there. */
    private final List<BitSet[]> brought = new ArrayList<>();

    private StepNeeds(Prover prover, Plan plan) {
        this.prover = prover;
        states = prover.states();
        vehicle = prover.vehicle();
        steps = prover.compile(plan);
        for (CompiledStep step : steps) {
            BitSet[] brings = new BitSet[vehicle.rows()];
            Arrays.setAll(brings, row -> new BitSet());
            for (Part part : step.parts()) {
                for (Change change : part.terms().sets) {
                    for (int row : Walk.rowsOf(change, part, states, vehicle)) {
                        brings[row].or(BitSet.valueOf(states.brings(change.state())));
                    }
                }
            }
            brought.add(brings);
        }
    }

    /** The needs of all steps, in the order of the plan. */
    public static List<Need> of(Prover prover, Plan plan) {
        return new StepNeeds(prover, plan).all();
    }

    private List<Need> all() {
        Set<Need> needs = new LinkedHashSet<>();
        for (int i = 0; i < steps.size(); i++) {
            for (Part part : steps.get(i).parts()) {
                for (Condition condition : part.terms().conditions) {
                    if (!condition.wish() && !condition.need().absent()) {
                        for (int row : part.rows()) {
                            add(i, row, condition, needs);
                        }
                    }
                }
            }
        }
        return List.copyOf(needs);
    }

    /** With one way to be met each of its states is needed; with several, one state of each way at least. */
    private void add(int i, int row, Condition condition, Set<Need> needs) {
        Set<Integer> any = new LinkedHashSet<>();
        for (long[] alternative : condition.alternatives()) {
            List<Integer> open = BitSet.valueOf(alternative).stream()
                    .filter(s -> !states.isCondition(s) && !surveyed(row, s))
                    .boxed()
                    .toList();
            if (open.isEmpty()) {
                return;
            }
            for (int state : open) {
                List<Integer> bring = bringing(i, row, state);
                if (condition.alternatives().size() == 1) {
                    needs.add(new Need(i, Set.copyOf(bring)));
                }
                any.addAll(bring);
            }
        }
        if (condition.alternatives().size() > 1) {
            needs.add(new Need(i, any));
        }
    }

    private boolean surveyed(int row, int state) {
        return IntStream.of(homes(row, state))
                .anyMatch(home -> prover.surveyed().holds(home, state));
    }

    private List<Integer> bringing(int i, int row, int state) {
        List<Integer> bring = new ArrayList<>();
        for (int k = 0; k < i; k++) {
            BitSet[] brings = brought.get(k);
            if (IntStream.of(homes(row, state)).anyMatch(home -> brings[home].get(state))) {
                bring.add(k);
            }
        }
        return bring;
    }

    /** Rows from which a step on a row may find a state: a zone finds its own and what is said of the vehicle. */
    private int[] homes(int row, int state) {
        boolean own = row != vehicle.vehicle() && states.isZoneScope(state);
        return own
                ? new int[] {row, vehicle.vehicle()}
                : IntStream.range(0, vehicle.rows()).toArray();
    }
}
