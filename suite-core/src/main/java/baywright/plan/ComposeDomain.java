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
        final List<String> onces;
        final boolean glued;

        /** One zone is enough for all, whoever's it is. */
        final boolean once;

        private final List<ComposeGate> gates;
        private final long[] ends;
        private final long[] brings;

        Action(
                Use use,
                BitSet rows,
                CompiledTerms terms,
                long whole,
                long each,
                List<String> onces,
                boolean once,
                List<ComposeGate> gates,
                int width) {
            this.use = use;
            this.rows = rows;
            this.terms = terms;
            this.whole = whole;
            this.each = each;
            this.onces = onces;
            this.once = once;
            this.gates = gates;
            ends = new long[width];
            brings = new long[width];
            glued = terms.mostWait != Ticks.NEVER;
        }

        /** What it costs but for what is paid once a visit. */
        long cost() {
            return whole + each;
        }
    }

    final BitSet rows;
    final List<Action> actions = new ArrayList<>();
    final long[] start;

    private final Prover prover;
    private final StateIndex states;
    private final StandingBans bans;
    private final Costing costing;
    private final boolean careful;

    ComposeDomain(
            Prover prover, RepairStages stages, StandingBans bans, Costing costing, BitSet rows, boolean careful) {
        this.prover = prover;
        this.bans = bans;
        this.costing = costing;
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
        if (mine.equals(rows)
                && !bans.of(use).keySet().containsAll(rows.stream().boxed().toList())) {
            boolean one = reachesAll(stages, use);
            enter(stages, use, one ? first() : rows, one);
        } else if (fitting.equals(whole)) {
            enter(stages, use, whole, true);
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

    private void enter(RepairStages stages, Use use, BitSet on, boolean shared) {
        Step step = stages.inserted("", use, on, Step.Priority.MUST);
        CompiledStep compiled = prover.compile(step);
        int row = on.nextSetBit(0);
        for (Part part : compiled.parts()) {
            if (part.rows()[0] == row && compiled.work().isPresent()) {
                StepWork work = compiled.work().get();
                Effort fixed = new Effort(work.setUpMinutes(), BigDecimal.ZERO);
                Effort each = Effort.NONE;
                for (StepWork.Attended line : work.attended()) {
                    Effort more = new Effort(line.minutes().mean(), BigDecimal.ZERO);
                    boolean vehicle = shared || isOfVehicle(line.trail());
                    fixed = vehicle ? fixed.plus(more) : fixed;
                    each = vehicle ? each : each.plus(more);
                }
                for (StepWork.Use used : work.uses()) {
                    Effort more = new Effort(BigDecimal.ZERO, costing.amount(used.item(), used.amount()));
                    boolean vehicle = shared || isOfVehicle(used.trail());
                    fixed = vehicle ? fixed.plus(more) : fixed;
                    each = vehicle ? each : each.plus(more);
                }
                Action action = new Action(
                        use,
                        on,
                        part.terms(),
                        units(fixed),
                        units(each),
                        onces(work),
                        shared,
                        gates(part.terms()),
                        states.width());
                settle(action);
                actions.add(action);
            }
        }
    }

    /** Minutes of work and what its materials cost. */
    private record Effort(BigDecimal minutes, BigDecimal materials) {
        static final Effort NONE = new Effort(BigDecimal.ZERO, BigDecimal.ZERO);

        Effort plus(Effort other) {
            return new Effort(minutes.add(other.minutes), materials.add(other.materials));
        }
    }

    private static boolean isOfVehicle(Trail trail) {
        return trail.driver().equals("vehicle");
    }

    private long units(Effort effort) {
        return CostUnits.of(effort.minutes().multiply(costing.minute()).add(effort.materials()), effort.minutes());
    }

    /** What is paid once a visit and this work brings with it: the tools of its family, packs that are charged whole. */
    private List<String> onces(StepWork work) {
        List<String> onces = new ArrayList<>();
        onces.add(work.family());
        work.uses().stream()
                .map(StepWork.Use::item)
                .filter(costing.opened()::containsKey)
                .map(ComposeDomain::pack)
                .distinct()
                .forEach(onces::add);
        return onces;
    }

    /** The name of an opened pack among what is paid once. */
    static String pack(String item) {
        return "item:" + item;
    }

    /** What holds after an action; null when it finds what it must not, or lacks what it needs. */
    long[] after(long[] found, Action action) {
        for (int i = 0; i < action.gates.size(); i++) {
            if (action.gates.get(i).isOpen(found)) {
                long[] next = found.clone();
                remove(next, action.ends);
                add(next, action.brings);
                return next;
            }
        }
        return null;
    }

    /** One gate for each bay that the work can be done in. */
    private List<ComposeGate> gates(CompiledTerms terms) {
        List<Condition> conditions = conditions(terms);
        List<BayIndex.Place> bays = prover.bays().of(terms.terms.where().bay());
        if (!bays.isEmpty()) {
            return bays.stream()
                    .map(b -> new ComposeGate(conditions, b.gives()))
                    .toList();
        }
        return terms.terms.where().bay().isEmpty()
                ? List.of(new ComposeGate(conditions, new long[states.width()]))
                : List.of();
    }

    /** All changes as one: what ends, then what holds. What arrives later is taken as come. */
    private void settle(Action action) {
        for (Change change : action.terms.clears) {
            add(action.ends, states.clears(change.state()));
        }
        for (int arriving = 0; arriving < 2; arriving++) {
            for (Change change : action.terms.sets) {
                if (change.after() > 0 == arriving > 0) {
                    add(action.ends, states.ends(change.state()));
                    remove(action.brings, states.ends(change.state()));
                    add(action.brings, states.brings(change.state()));
                }
            }
        }
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
        return conditions(action.terms);
    }

    private List<Condition> conditions(CompiledTerms terms) {
        return terms.conditions.stream().filter(c -> careful || !c.wish()).toList();
    }
}
