package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.script.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds the line of a step's stage that makes or ends a state on a row. */
final class EffectPlaces {

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;

    EffectPlaces(StateIndex states, VehicleIndex vehicle, List<CompiledStep> steps) {
        this.states = states;
        this.vehicle = vehicle;
        this.steps = steps;
    }

    /** The last line that does it; empty when none does. */
    Optional<Place> of(int step, int row, int state, boolean makes) {
        Optional<Place> last = Optional.empty();
        for (Part part : steps.get(step).parts()) {
            for (Change change : part.terms().clears) {
                last = !makes && does(change, state, false) && reaches(change, part, row) ? at(change) : last;
            }
        }
        for (Part part : steps.get(step).parts()) {
            for (Change change : part.terms().sets) {
                last = does(change, state, makes) && reaches(change, part, row) ? at(change) : last;
            }
        }
        return last;
    }

    private boolean does(Change change, int state, boolean makes) {
        int changed = change.state();
        long[] touched = makes ? states.brings(changed) : change.sets() ? states.ends(changed) : states.clears(changed);
        return Bits.has(touched, state);
    }

    private boolean reaches(Change change, Part part, int row) {
        return Arrays.stream(Walk.rowsOf(change, part, states, vehicle))
                .anyMatch(r -> r == row || r == vehicle.vehicle() || row == vehicle.vehicle());
    }

    private static Optional<Place> at(Change change) {
        return Optional.of(change.effect().origin().place());
    }
}
