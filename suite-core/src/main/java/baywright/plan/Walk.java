package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.RuleCheck.Speech;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Walks the steps of one plan along the simple clock and notes what does not hold. */
final class Walk {

    /** A condition of a step that fails on a row, with the plain states at fault; -1 stands for an undeclared one. */
    record Failure(int step, int row, Condition condition, List<Fault> faults) {}

    /** A state at fault and what is known of it when the step comes; {@code bay} when the bay should have given it. */
    record Fault(String id, int state, int home, List<Cause> causes) {}

    /** A wait that is not kept between a step and an earlier one. */
    record Lapse(int step, int after, int row, boolean late, long waited, long bound, String why) {}

    /** Someone who looks on while a plan is walked and changes nothing. */
    interface Witness {

        /** A condition of a step is met on a row; {@code bay} is where it is done, or empty. */
        void met(int step, int row, Condition condition, long[] found, String bay);

        /** A condition of a step fails on a row; parts of it, or other zones, may still be as they should. */
        void missed(int step, int row, Condition condition);

        /** A zone that a step does not work on is spared its effect, as the first of these states holds there. */
        void spared(int step, int row, Change change, long[] sparing);

        /** A step is about to act. */
        void before(int step);

        /** A step has acted. */
        void after(int step);
    }

    /** Why a state was last found missing: rows on which the same happened to it share the causes. */
    private record Told(int step, int home, List<Cause> causes) {}

    /** A wait can uncover another; a chain longer than this is left to the findings. */
    private static final int MOST_TURNS = 16;

    private static final int[] NO_ROWS = {};

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final BayIndex bays;
    private final List<CompiledStep> steps;
    private final List<String> ids;
    private final long[] fixed;

    private final Tracks tracks;
    private final int[] standsBy;
    private final long[] standsFrom;
    private final CompiledTerms[] stands;
    private final Optional<RuleCheck> rules;
    private final long[] none;
    private final long[] everywhere;
    private final long[] anywhere;
    private final long[] onAll;
    private final long[] onAny;
    private final long[] coming;
    private final long[] going;
    private final Told[] told;

    final long[] starts;
    final long[] ends;
    final long[] waits;
    final List<Failure> failures = new ArrayList<>();
    final List<Lapse> lapses = new ArrayList<>();
    final List<int[]> overlaps = new ArrayList<>();
    final List<Integer> withoutBay = new ArrayList<>();
    private Optional<Witness> witness = Optional.empty();
    private long now;

    /**
     * Sets out.
     *
     * @param fixed start of each step in ticks, {@link Ticks#NEVER} where the plan leaves it open
     * @param withRules whether the library's rules are asked
     */
    Walk(Prover prover, List<CompiledStep> steps, List<String> ids, long[] fixed, boolean withRules) {
        states = prover.states();
        vehicle = prover.vehicle();
        bays = prover.bays();
        this.steps = steps;
        this.ids = ids;
        this.fixed = fixed;
        tracks = new Tracks(states, vehicle);
        tracks.copyFrom(prover.surveyed());
        standsBy = new int[vehicle.rows()];
        Arrays.fill(standsBy, Tracks.NOBODY);
        standsFrom = new long[vehicle.rows()];
        stands = new CompiledTerms[vehicle.rows()];
        none = new long[states.width()];
        everywhere = new long[states.width()];
        anywhere = new long[states.width()];
        onAll = new long[states.width()];
        onAny = new long[states.width()];
        coming = new long[states.width()];
        going = new long[states.width()];
        told = new Told[states.count()];
        starts = new long[steps.size()];
        ends = new long[steps.size()];
        waits = new long[steps.size()];
        rules = withRules && !prover.rules().isEmpty()
                ? Optional.of(new RuleCheck(prover, steps, tracks, ends))
                : Optional.empty();
    }

    Tracks tracks() {
        return tracks;
    }

    /** What the rules said, where they were asked. */
    List<Speech> speeches() {
        return rules.map(RuleCheck::speeches).orElse(List.of());
    }

    /** Lets someone look on; to be said before {@link #run}. */
    void watchedBy(Witness looker) {
        witness = Optional.of(looker);
    }

    void run() {
        for (int i = 0; i < steps.size(); i++) {
            step(i, steps.get(i));
        }
        for (int row = 0; row < vehicle.rows(); row++) {
            boolean real = row != vehicle.vehicle() || vehicle.real().length == 0;
            if (real && standsBy[row] >= 0 && stands[row].mostWait != Ticks.NEVER) {
                lapses.add(new Lapse(
                        standsBy[row], Tracks.NOBODY, row, true, 0, stands[row].mostWait, stands[row].waitWhy));
            }
            tracks.settle(row, now);
        }
    }

    private void step(int i, CompiledStep step) {
        if (step.parts().isEmpty()) {
            starts[i] = now;
            ends[i] = now;
            return;
        }
        long bound = now;
        int rows = step.vehicle() ? vehicle.rows() : step.rows().length;
        for (int k = 0; k < rows; k++) {
            int row = step.vehicle() ? k : step.rows()[k];
            if (standsBy[row] >= 0) {
                bound = Math.max(bound, standsFrom[row] + stands[row].usualWait);
            }
        }
        boolean open = fixed[i] == Ticks.NEVER;
        long start = open ? bound : fixed[i];
        settle(step, start);
        for (int turn = 0; open && tracks.hasPromises() && turn < MOST_TURNS; turn++) {
            long later = promised(step, start);
            if (later <= start) {
                break;
            }
            start = later;
            settle(step, start);
        }
        starts[i] = start;
        waits[i] = Math.max(0, (open ? start : Math.min(start, bound)) - now);
        ends[i] = start + step.elapsed();
        for (int k = 0; k < rows; k++) {
            timing(i, step.vehicle() ? k : step.rows()[k], start);
        }
        if (!open && start < now) {
            overlaps.add(new int[] {i, running(i, start)});
        }
        for (Part part : step.parts()) {
            judge(i, step, part, start);
        }
        act(i, step, ends[i]);
        if (rules.isPresent()) {
            rules.get().done(i);
        }
        for (Part part : step.parts()) {
            for (int row : part.rows()) {
                stand(i, row, part.terms(), ends[i]);
            }
        }
        now = Math.max(now, ends[i]);
    }

    /** The last step before that still takes time at {@code start}, if possible one that shares a zone. */
    private int running(int i, long start) {
        int other = Tracks.NOBODY;
        for (int j = i - 1; j >= 0; j--) {
            if (ends[j] > start && ends[j] > starts[j]) {
                if (share(steps.get(i), steps.get(j))) {
                    return j;
                }
                other = other < 0 ? j : other;
            }
        }
        return other;
    }

    /** Whether two steps work on one zone; one on the vehicle as a whole shares every zone. */
    static boolean share(CompiledStep a, CompiledStep b) {
        if (a.vehicle() || b.vehicle()) {
            return true;
        }
        int[] rows = b.rows();
        return Arrays.stream(a.rows()).anyMatch(row -> Arrays.binarySearch(rows, row) >= 0);
    }

    private void stand(int i, int row, CompiledTerms terms, long from) {
        if (row == vehicle.vehicle()) {
            for (int real : vehicle.real()) {
                standOn(i, real, terms, from);
            }
        }
        standOn(i, row, terms, from);
    }

    private void standOn(int i, int row, CompiledTerms terms, long from) {
        standsBy[row] = terms.stands() ? i : Tracks.NOBODY;
        standsFrom[row] = from;
        stands[row] = terms;
    }

    private void settle(CompiledStep step, long at) {
        tracks.settle(vehicle.vehicle(), at);
        if (step.vehicle()) {
            for (int row : vehicle.real()) {
                tracks.settle(row, at);
            }
        } else {
            for (int row : step.rows()) {
                tracks.settle(row, at);
            }
        }
    }

    private void timing(int i, int row, long start) {
        int by = standsBy[row];
        if (by < 0 || (row == vehicle.vehicle() && vehicle.real().length > 0)) {
            return;
        }
        long waited = start - standsFrom[row];
        CompiledTerms terms = stands[row];
        if (waited < terms.leastWait) {
            lapses.add(new Lapse(i, by, row, false, waited, terms.leastWait, terms.waitWhy));
        } else if (waited > terms.mostWait) {
            lapses.add(new Lapse(i, by, row, true, waited, terms.mostWait, terms.waitWhy));
        }
    }

    // ---- what a step finds

    private void look(int row, long[] gives, boolean bayKnown) {
        if (row == vehicle.vehicle()) {
            tracks.findOnVehicle(everywhere, anywhere);
        } else {
            tracks.findOn(row, everywhere);
            System.arraycopy(everywhere, 0, anywhere, 0, anywhere.length);
        }
        long[] conditions = states.conditions();
        for (int w = 0; w < everywhere.length; w++) {
            everywhere[w] |= bayKnown ? gives[w] : conditions[w];
            anywhere[w] |= gives[w];
        }
    }

    private boolean fails(Condition condition) {
        boolean absent = condition.need().absent();
        for (long[] alternative : condition.alternatives()) {
            if (Bits.contains(absent ? anywhere : everywhere, alternative)) {
                return absent;
            }
        }
        return !absent;
    }

    /** Looks at all rows of a part at once: what each of them finds, and what any of them does, without the bay. */
    private void lookAtAll(int[] rows) {
        Arrays.fill(onAll, -1L);
        Arrays.fill(onAny, 0);
        for (int row : rows) {
            look(row, none, true);
            for (int w = 0; w < onAll.length; w++) {
                onAll[w] &= everywhere[w];
                onAny[w] |= anywhere[w];
            }
        }
    }

    /**
     * Whether some row may fail a condition; when not, none does. Spares a look at each row for the many conditions that
     * hold on all of them.
     */
    private boolean mayFail(Condition condition, long[] gives, boolean bayKnown) {
        long[] conditions = states.conditions();
        for (int w = 0; w < onAll.length; w++) {
            everywhere[w] = onAll[w] | (bayKnown ? gives[w] : conditions[w]);
            anywhere[w] = onAny[w] | gives[w];
        }
        return fails(condition);
    }

    private void judge(int i, CompiledStep step, Part part, long start) {
        CompiledTerms terms = part.terms();
        String kind = terms.terms.where().bay();
        List<BayIndex.Place> candidates = bays.of(kind);
        boolean known = !candidates.isEmpty() || kind.isEmpty();
        if (!known) {
            withoutBay.add(i);
        }
        lookAtAll(part.rows());
        BayIndex.Place bay = candidates.isEmpty() ? null : choose(candidates, part);
        long[] gives = bay == null ? none : bay.gives();
        for (Condition condition : terms.conditions) {
            for (int row : witness.isPresent() || mayFail(condition, gives, known) ? part.rows() : NO_ROWS) {
                look(row, gives, known);
                if (fails(condition)) {
                    fail(i, row, condition, bay == null ? "" : bay.id(), start);
                    witness.ifPresent(w -> w.missed(i, row, condition));
                } else if (witness.isPresent()) {
                    witness.get().met(i, row, condition, everywhere, bay == null ? "" : bay.id());
                }
            }
        }
        if (rules.isPresent()) {
            rules.get().judge(i, step, part, start, bay == null ? "" : bay.id(), known ? gives : states.conditions());
        }
    }

    private BayIndex.Place choose(List<BayIndex.Place> candidates, Part part) {
        BayIndex.Place best = candidates.get(0);
        if (!part.terms().asksBay || candidates.size() == 1) {
            return best;
        }
        int least = Integer.MAX_VALUE;
        for (BayIndex.Place candidate : candidates) {
            int lacks = 0;
            for (Condition condition : part.terms().conditions) {
                if (condition.asksBay() && mayFail(condition, candidate.gives(), true)) {
                    lacks += failing(condition, part.rows(), candidate.gives()) * (condition.wish() ? 1 : 1 << 10);
                }
            }
            if (lacks < least) {
                least = lacks;
                best = candidate;
            }
        }
        return best;
    }

    private int failing(Condition condition, int[] rows, long[] gives) {
        int failing = 0;
        for (int row : rows) {
            look(row, gives, true);
            failing += fails(condition) ? 1 : 0;
        }
        return failing;
    }

    // ---- waiting for what comes by itself

    /** The earliest time from which what this step lacks, and only waits for, is there; {@code start} if nothing. */
    private long promised(CompiledStep step, long start) {
        long latest = start;
        tracks.awaited(coming, going);
        if (Bits.isEmpty(coming)) {
            return start;
        }
        for (Part part : step.parts()) {
            lookAtAll(part.rows());
            for (Condition condition : part.terms().conditions) {
                if (!condition.wish() && mayAnswer(condition) && mayFail(condition, none, false)) {
                    latest = Math.max(latest, promised(condition, part.rows(), start));
                }
            }
        }
        return latest;
    }

    /** Whether anything that is still to come can answer a condition. */
    private boolean mayAnswer(Condition condition) {
        for (long[] alternative : condition.alternatives()) {
            if (Bits.meet(condition.need().absent() ? going : coming, alternative)) {
                return true;
            }
        }
        return false;
    }

    private long promised(Condition condition, int[] rows, long start) {
        long latest = start;
        for (int row : rows) {
            look(row, none, false);
            if (fails(condition)) {
                long due = condition.need().absent() ? gone(row, condition) : come(row, condition);
                latest = due == Ticks.NEVER ? latest : Math.max(latest, due);
            }
        }
        return latest;
    }

    private long come(int row, Condition condition) {
        long first = Ticks.NEVER;
        for (long[] alternative : condition.alternatives()) {
            long last = 0;
            for (int state : Bits.members(alternative)) {
                for (int at : lacking(row, state)) {
                    last = Math.max(last, tracks.comes(at, state));
                }
            }
            first = Math.min(first, last);
        }
        return first;
    }

    private long gone(int row, Condition condition) {
        long last = 0;
        for (long[] alternative : condition.alternatives()) {
            if (Bits.contains(anywhere, alternative)) {
                long first = Ticks.NEVER;
                for (int state : Bits.members(alternative)) {
                    long all = 0;
                    for (int at : holding(row, state)) {
                        all = Math.max(all, tracks.goes(at, state));
                    }
                    first = Math.min(first, all);
                }
                last = Math.max(last, first);
            }
        }
        return last;
    }

    /** Rows to blame for a plain state that a step on a row does not find. */
    private List<Integer> lacking(int row, int state) {
        if (Bits.has(everywhere, state)) {
            return List.of();
        }
        if (row != vehicle.vehicle() || !states.isZoneScope(state)) {
            return List.of(row);
        }
        List<Integer> rows = new ArrayList<>();
        for (int real : vehicle.real()) {
            if (tracks.concerns(real, state) && !tracks.holds(real, state)) {
                rows.add(real);
            }
        }
        return rows.isEmpty() ? List.of(row) : rows;
    }

    /** Rows on which a plain state holds that a step on a row must not find. */
    private List<Integer> holding(int row, int state) {
        if (row != vehicle.vehicle() || !states.isZoneScope(state)) {
            return List.of(row);
        }
        List<Integer> rows = new ArrayList<>();
        for (int real : vehicle.real()) {
            if (tracks.holds(real, state)) {
                rows.add(real);
            }
        }
        return rows;
    }

    // ---- why it fails

    private void fail(int i, int row, Condition condition, String bay, long start) {
        boolean absent = condition.need().absent();
        List<Integer> seen = atFault(condition);
        for (int at : blamed(row, seen, absent)) {
            List<Fault> faults = new ArrayList<>(seen.size());
            for (int state : seen) {
                int home = tracks.home(at, state);
                boolean holds = tracks.holds(home, state);
                if (absent == holds || states.isCondition(state)) {
                    List<Cause> causes = absent ? held(home, state, bay) : lost(i, home, state, bay, start);
                    faults.add(new Fault(states.id(state), state, home, causes));
                }
            }
            if (!absent) {
                condition.undeclared().forEach(id -> faults.add(new Fault(id, -1, at, List.of())));
            }
            failures.add(new Failure(i, at, condition, faults));
        }
    }

    /** The plain states that are missing, or there although they must not be; each once, in the order of the condition. */
    private List<Integer> atFault(Condition condition) {
        boolean absent = condition.need().absent();
        List<Integer> seen = new ArrayList<>();
        for (long[] alternative : condition.alternatives()) {
            if (!absent || Bits.contains(anywhere, alternative)) {
                for (int state : Bits.members(alternative)) {
                    if ((absent || !Bits.has(everywhere, state)) && !seen.contains(state)) {
                        seen.add(state);
                    }
                }
            }
        }
        return seen;
    }

    /** The rows where it fails: the step's own, or for the vehicle as a whole those of its zones that are to blame. */
    private Collection<Integer> blamed(int row, List<Integer> seen, boolean absent) {
        if (row != vehicle.vehicle()) {
            return List.of(row);
        }
        Set<Integer> blamed = new LinkedHashSet<>();
        for (int state : seen) {
            blamed.addAll(absent ? holding(row, state) : lacking(row, state));
        }
        return blamed.isEmpty() ? List.of(row) : blamed;
    }

    private List<Cause> held(int home, int state, String bay) {
        String id = states.id(state);
        int by = tracks.setBy(home, state);
        if (by >= 0 && tracks.holds(home, state)) {
            return List.of(new Cause.SetBy(id, ids.get(by)));
        }
        return List.of(tracks.holds(home, state) ? new Cause.Surveyed(id) : new Cause.BayGives(id, bay));
    }

    private List<Cause> lost(int i, int home, int state, String bay, long start) {
        Told last = told[state];
        boolean same = last != null
                && last.step() == i
                && !states.isCondition(state)
                && tracks.isAlike(last.home(), home, state);
        if (!same) {
            told[state] = new Told(i, home, lost(home, state, bay, start));
        }
        return told[state].causes();
    }

    private List<Cause> lost(int home, int state, String bay, long start) {
        String id = states.id(state);
        List<Cause> causes = new ArrayList<>();
        int setter = tracks.setBy(home, state);
        int clearer = tracks.clearedBy(home, state);
        if (states.isCondition(state)) {
            causes.add(new Cause.BayLacks(id, bay));
        } else if (tracks.isPending(home, state)) {
            String by = ids.get(tracks.broughtBy(home, state));
            causes.add(new Cause.NotYet(id, by, Ticks.minutes(tracks.dueAt(home, state) - start)));
        } else if (tracks.hasPerished(home, state)) {
            causes.add(new Cause.Perished(
                    id,
                    setter >= 0 ? ids.get(setter) : "",
                    Ticks.minutes(start - tracks.setAt(home, state)),
                    Ticks.minutes(states.lasts(state))));
        } else if (clearer >= 0) {
            causes.add(new Cause.ClearedBy(id, ids.get(clearer)));
            int first = setter == Tracks.NOBODY ? tracks.broughtBy(home, state) : setter;
            if (first != Tracks.NOBODY) {
                causes.add(first >= 0 ? new Cause.SetBy(id, ids.get(first)) : new Cause.Surveyed(id));
            }
        }
        return causes;
    }

    // ---- what a step does

    private void act(int i, CompiledStep step, long end) {
        witness.ifPresent(w -> w.before(i));
        for (Part part : step.parts()) {
            for (Change change : part.terms().clears) {
                act(i, step, part, change, end);
            }
        }
        for (Part part : step.parts()) {
            for (Change change : part.terms().sets) {
                act(i, step, part, change, end);
            }
        }
        witness.ifPresent(w -> w.after(i));
    }

    private void act(int i, CompiledStep step, Part part, Change change, long end) {
        for (int row : rowsOf(change, part, states, vehicle)) {
            if (!change.unless().isEmpty()
                    && Arrays.binarySearch(step.rows(), row) < 0
                    && spared(i, row, change, end)) {
                continue;
            }
            if (!change.sets()) {
                tracks.clear(row, change.state(), i, end);
            } else if (change.after() == 0) {
                tracks.set(row, change.state(), i, end);
            } else {
                tracks.promise(row, change.state(), i, end + change.after());
            }
        }
    }

    /** The rows that a change goes to. */
    static int[] rowsOf(Change change, Part part, StateIndex states, VehicleIndex vehicle) {
        if (states.isOfVehicle(change.state())) {
            return vehicle.whole();
        }
        return switch (change.reach()) {
            case ZONE -> part.rows();
            case NEIGHBOURS -> part.around();
            case VEHICLE -> vehicle.real();
        };
    }

    private boolean spared(int i, int row, Change change, long end) {
        tracks.settle(row, end);
        tracks.findOn(row, everywhere);
        for (long[] alternative : change.unless()) {
            if (Bits.contains(everywhere, alternative)) {
                witness.ifPresent(w -> w.spared(i, row, change, alternative));
                return true;
            }
        }
        return false;
    }
}
