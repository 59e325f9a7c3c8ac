package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import java.util.Arrays;
import java.util.IdentityHashMap;

/** What a step does to one state on one row, read off its terms without walking, and remembered. */
final class RepairEffects {

    /** What a step does to a state on a row. */
    enum Effect {
        NONE,
        SETS,
        CLEARS,
        /** Clears it unless the row holds a state that shields it. */
        MAY_CLEAR
    }

    private static final int REMEMBERED = 1_000;

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final IdentityHashMap<CompiledStep, Effect[]> known = new IdentityHashMap<>();

    RepairEffects(StateIndex states, VehicleIndex vehicle) {
        this.states = states;
        this.vehicle = vehicle;
    }

    /** What is left of a state on its row after the step, and after all that the step lets arrive. */
    Effect of(CompiledStep step, int row, int state) {
        if (known.size() > REMEMBERED) {
            known.clear();
        }
        Effect[] table = known.computeIfAbsent(step, s -> new Effect[vehicle.rows() * states.count()]);
        int cell = row * states.count() + state;
        if (table[cell] == null) {
            table[cell] = workedOut(step, row, state);
        }
        return table[cell];
    }

    private Effect workedOut(CompiledStep step, int row, int state) {
        Effect effect = Effect.NONE;
        for (Part part : step.parts()) {
            for (Change change : part.terms().clears) {
                if (Bits.has(states.clears(change.state()), state) && reaches(change, part, row, state)) {
                    boolean spares = !change.unless().isEmpty() && Arrays.binarySearch(step.rows(), row) < 0;
                    effect = spares && effect != Effect.CLEARS ? Effect.MAY_CLEAR : Effect.CLEARS;
                }
            }
        }
        for (Part part : step.parts()) {
            for (Change change : part.terms().sets) {
                boolean sets = Bits.has(states.brings(change.state()), state);
                if ((sets || Bits.has(states.ends(change.state()), state)) && reaches(change, part, row, state)) {
                    effect = sets ? Effect.SETS : Effect.CLEARS;
                }
            }
        }
        return effect;
    }

    /** Whether the step touches the row at all. */
    boolean worksOn(CompiledStep step, int row) {
        return step.vehicle() || Arrays.binarySearch(step.rows(), row) >= 0;
    }

    private boolean reaches(Change change, Part part, int row, int state) {
        int[] rows = Walk.rowsOf(change, part, states, vehicle);
        if (!states.isZoneScope(state)) {
            return rows.length > 0;
        }
        for (int r : rows) {
            if (r == row || r == vehicle.vehicle()) {
                return true;
            }
        }
        return false;
    }
}
