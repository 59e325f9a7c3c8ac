package baywright.plan;

import baywright.library.StageTerms.Reach;
import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.RepairChoice.Use;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What can be done to zones that are alike, seen from one of them: states that come by themselves are taken as come,
 * nothing runs out, and what other zones' work does to these is left out. So every real plan for these zones is a path
 * here, and the cheapest path costs no more than their share of any plan.
 */
final class ComposeDomain {

    /** A use of a stage on these zones, or on the vehicle as a whole. */
    static final class Action {
        final Use use;
        final BitSet rows;
        final CompiledTerms terms;
        final long whole;
        final long each;
        final String family;
        final boolean glued;
        final boolean global;

        Action(Use use, BitSet rows, CompiledTerms terms, long whole, long each, String family, boolean global) {
            this.use = use;
            this.rows = rows;
            this.terms = terms;
            this.whole = whole;
            this.each = each;
            this.family = family;
            this.global = global;
            glued = terms.mostWait != Ticks.NEVER;
        }

        /** Ticks of hands-on time and set-up. */
        long cost() {
            return whole + each;
        }
    }

    final BitSet rows;
    final List<Action> actions = new ArrayList<>();
    final long[] start;

    private final Prover prover;
    private final StateIndex states;
    private final boolean careful;

    ComposeDomain(Prover prover, RepairStages stages, BitSet rows, boolean careful) {
        this.prover = prover;
        this.rows = rows;
        this.careful = careful;
        states = prover.states();
        start = new long[states.width()];
        prover.surveyed().findOn(rows.nextSetBit(0), start);
        Set<Use> uses = new HashSet<>();
        for (int s = 0; s < states.count(); s++) {
            stages.setters(s).stream().filter(uses::add).forEach(u -> enter(stages, u));
            stages.clearers(s).stream().filter(uses::add).forEach(u -> enter(stages, u));
        }
    }

    private void enter(RepairStages stages, Use use) {
        BitSet fitting = stages.rowsOf(use.stage());
        BitSet whole = new BitSet();
        whole.set(prover.vehicle().vehicle());
        BitSet mine = (BitSet) rows.clone();
        mine.and(fitting);
        if (mine.equals(rows)) {
            boolean one = reachesAll(stages, use);
            enter(stages, use, one ? first() : rows, one, false);
        } else if (fitting.equals(whole)) {
            enter(stages, use, whole, true, true);
        }
    }

    private BitSet first() {
        BitSet one = new BitSet();
        one.set(rows.nextSetBit(0));
        return one;
    }

    /** Whether one zone is enough for all of them. */
    private boolean reachesAll(RepairStages stages, Use use) {
        return stages.compiled(use, rows).parts().stream()
                .flatMap(p -> p.terms().sets.stream())
                .anyMatch(c -> c.reach() == Reach.VEHICLE && states.isZoneScope(c.state()));
    }

    private void enter(RepairStages stages, Use use, BitSet on, boolean shared, boolean global) {
        Step step = stages.inserted("", use, on, Step.Priority.MUST);
        CompiledStep compiled = prover.compile(step);
        int row = on.nextSetBit(0);
        for (Part part : compiled.parts()) {
            if (part.rows()[0] == row && compiled.work().isPresent()) {
                StepWork work = compiled.work().get();
                BigDecimal fixed = work.setUpMinutes();
                BigDecimal each = BigDecimal.ZERO;
                for (StepWork.Attended line : work.attended()) {
                    boolean vehicle = shared || line.trail().driver().equals("vehicle");
                    fixed = vehicle ? fixed.add(line.minutes().mean()) : fixed;
                    each = vehicle ? each : each.add(line.minutes().mean());
                }
                actions.add(new Action(use, on, part.terms(), Ticks.of(fixed), Ticks.of(each), work.family(), global));
            }
        }
    }

    /** What holds after an action; empty when it finds what it must not, or lacks what it needs. */
    long[] after(long[] found, Action action) {
        List<BayIndex.Place> bays = prover.bays().of(action.terms.terms.where().bay());
        boolean can = bays.isEmpty()
                ? action.terms.terms.where().bay().isEmpty() && meets(found, action, new long[found.length])
                : bays.stream().anyMatch(b -> meets(found, action, b.gives()));
        if (!can) {
            return null;
        }
        long[] next = found.clone();
        for (Change change : action.terms.clears) {
            remove(next, states.clears(change.state()));
        }
        for (int arriving = 0; arriving < 2; arriving++) {
            for (Change change : action.terms.sets) {
                if (change.after() > 0 == arriving > 0) {
                    remove(next, states.ends(change.state()));
                    add(next, states.brings(change.state()));
                }
            }
        }
        return next;
    }

    private boolean meets(long[] found, Action action, long[] gives) {
        for (Condition condition : action.terms.conditions) {
            if (condition.wish() && !careful) {
                continue;
            }
            boolean any = false;
            for (long[] alternative : condition.alternatives()) {
                any |= holds(found, gives, alternative);
            }
            if (any == condition.need().absent()) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(long[] found, long[] gives, long[] alternative) {
        for (int w = 0; w < alternative.length; w++) {
            if ((alternative[w] & ~(found[w] | gives[w])) != 0) {
                return false;
            }
        }
        return true;
    }

    static void add(long[] to, long[] more) {
        for (int w = 0; w < to.length; w++) {
            to[w] |= more[w];
        }
    }

    static void remove(long[] from, long[] less) {
        for (int w = 0; w < from.length; w++) {
            from[w] &= ~less[w];
        }
    }

    /** Conditions that count. */
    List<Condition> conditions(Action action) {
        return action.terms.conditions.stream()
                .filter(c -> careful || !c.wish())
                .toList();
    }
}
