package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.Walk.Failure;
import baywright.plan.Walk.Fault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.ListIterator;

/**
 * Completes the causes of failures with what comes only later in the plan. Goes through the steps from the last to the
 * first, so that a plan of any length is gone through once.
 */
final class Later {

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;
    private final List<String> ids;
    private final int[] sets;
    private final int[] clears;

    Later(Prover prover, List<CompiledStep> steps, List<String> ids) {
        states = prover.states();
        vehicle = prover.vehicle();
        this.steps = steps;
        this.ids = ids;
        sets = new int[vehicle.rows() * states.count()];
        clears = new int[sets.length];
        Arrays.fill(sets, Tracks.NOBODY);
        Arrays.fill(clears, Tracks.NOBODY);
    }

    /** Causes of each failure, in the order of the failures, which is that of the steps. */
    List<List<Cause>> causesOf(List<Failure> failures) {
        List<List<Cause>> causes = new ArrayList<>();
        ListIterator<Failure> next = failures.listIterator(failures.size());
        int step = steps.size();
        Failure last = null;
        while (next.hasPrevious()) {
            Failure failure = next.previous();
            while (step - 1 > failure.step()) {
                step--;
                note(step, steps.get(step));
            }
            boolean same = last != null && sameCauses(last, failure);
            causes.add(same ? causes.get(causes.size() - 1) : causes(failure));
            last = failure;
        }
        Collections.reverse(causes);
        return causes;
    }

    /** Whether two failures share their causes, as those of one condition on rows that were treated alike do. */
    private boolean sameCauses(Failure a, Failure b) {
        if (a.step() != b.step()
                || !a.condition().equals(b.condition())
                || a.faults().size() != b.faults().size()) {
            return false;
        }
        boolean absent = a.condition().need().absent();
        for (int f = 0; f < a.faults().size(); f++) {
            Fault one = a.faults().get(f);
            Fault two = b.faults().get(f);
            if (one.state() != two.state()
                    || !one.id().equals(two.id())
                    || !one.causes().equals(two.causes())
                    || later(one, absent) != later(two, absent)) {
                return false;
            }
        }
        return true;
    }

    /** The next step that makes (or ends) what a failure lacks (or must not find), or {@link Tracks#NOBODY}. */
    private int later(Fault fault, boolean absent) {
        return fault.state() < 0
                ? Tracks.NOBODY
                : (absent ? clears : sets)[fault.home() * states.count() + fault.state()];
    }

    private List<Cause> causes(Failure failure) {
        boolean absent = failure.condition().need().absent();
        List<Cause> all = new ArrayList<>();
        for (Fault fault : failure.faults()) {
            all.addAll(fault.causes());
            int later = later(fault, absent);
            boolean bay = fault.state() >= 0 && states.isCondition(fault.state());
            if (later >= 0 && !bay) {
                String step = ids.get(later);
                all.add(absent ? new Cause.ClearedLater(fault.id(), step) : new Cause.SetLater(fault.id(), step));
            } else if (!absent && fault.causes().isEmpty()) {
                all.add(new Cause.NeverSet(fault.id()));
            }
        }
        return all;
    }

    private void note(int i, CompiledStep step) {
        for (Part part : step.parts()) {
            for (Change change : part.terms().clears) {
                note(i, part, change, clears, states.clears(change.state()));
            }
            for (Change change : part.terms().sets) {
                note(i, part, change, clears, states.ends(change.state()));
                note(i, part, change, sets, states.brings(change.state()));
            }
        }
    }

    private void note(int i, Part part, Change change, int[] into, long[] changed) {
        for (int row : Walk.rowsOf(change, part, states, vehicle)) {
            for (int w = 0; w < changed.length; w++) {
                for (long bits = changed[w]; bits != 0; bits &= bits - 1) {
                    note(i, row, (w << 6) + Long.numberOfTrailingZeros(bits), into);
                }
            }
        }
    }

    private void note(int i, int row, int state, int[] into) {
        if (!states.isZoneScope(state)) {
            into[vehicle.vehicle() * states.count() + state] = i;
        } else if (row == vehicle.vehicle()) {
            for (int real : vehicle.real()) {
                into[real * states.count() + state] = i;
            }
        } else {
            into[row * states.count() + state] = i;
        }
    }
}
