package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which steps of a plan must keep their order, how long they wait for each other, and which bays can take each: what a
 * timetable must respect so that the plan still proves. Steps that neither share a zone nor touch what the other finds
 * may change places.
 */
public final class PlanOrder {

    /**
     * A wait from the end of one step to the start of another.
     *
     * @param from  place of the earlier step in the plan
     * @param to    place of the later step
     * @param least minutes
     * @param most  minutes; empty: as long as it likes
     * @param why   reason in the words of the stage; may be empty
     */
    public record Wait(int from, int to, BigDecimal least, Optional<BigDecimal> most, String why) {}

    private final Prover prover;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<CompiledStep> steps;
    private final BitSet[] finds;
    private final BitSet[] changes;
    private final BitSet[] rows;
    private final Set<Wait> waits = new LinkedHashSet<>();
    private final boolean[] timed;

    /** Of each step that was asked about, when it changes each cell. */
    private final List<Map<Integer, Long>> arrivals;

    private PlanOrder(Prover prover, Plan plan) {
        this.prover = prover;
        states = prover.states();
        vehicle = prover.vehicle();
        steps = prover.compile(plan);
        int n = steps.size();
        finds = new BitSet[n];
        changes = new BitSet[n];
        rows = new BitSet[n];
        timed = new boolean[n];
        arrivals = new ArrayList<>(Collections.nCopies(n, null));
        for (int i = 0; i < n; i++) {
            finds[i] = found(steps.get(i));
            changes[i] = changed(steps.get(i));
            rows[i] = touched(steps.get(i));
        }
        order();
        for (int i = 0; i < n; i++) {
            standing(i);
            for (Part part : steps.get(i).parts()) {
                for (Condition condition : part.terms().conditions) {
                    comingAndGoing(i, part, condition);
                }
            }
        }
    }

    public static PlanOrder of(Prover prover, Plan plan) {
        return new PlanOrder(prover, plan);
    }

    /** All waits, by their later step. */
    public List<Wait> waits() {
        return waits.stream()
                .sorted(Comparator.comparingInt(Wait::to).thenComparingInt(Wait::from))
                .toList();
    }

    /** Whether a step runs against a clock: something stands after it, or it must follow another in time. */
    public boolean isTimed(int step) {
        return timed[step];
    }

    /** Ids of the bays that suit a step best, in the shop's order; empty when it can be done anywhere. */
    public List<String> bays(int step) {
        List<BayIndex.Place> all = prover.bays().of("");
        TreeSet<Integer> fitting = new TreeSet<>();
        for (int k = 0; k < all.size(); k++) {
            fitting.add(k);
        }
        boolean asks = false;
        for (Part part : steps.get(step).parts()) {
            List<BayIndex.Place> candidates =
                    prover.bays().of(part.terms().terms.where().bay());
            asks |= !part.terms().terms.where().bay().isEmpty() || part.terms().asksBay;
            int least = candidates.stream().mapToInt(c -> lacks(c, part)).min().orElse(0);
            List<BayIndex.Place> best =
                    candidates.stream().filter(c -> lacks(c, part) == least).toList();
            if (!best.isEmpty()) {
                fitting.removeIf(k -> !best.contains(all.get(k)));
            }
        }
        return asks ? fitting.stream().map(k -> all.get(k).id()).toList() : List.of();
    }

    private int lacks(BayIndex.Place bay, Part part) {
        int lacks = 0;
        for (Condition condition : part.terms().conditions) {
            if (condition.asksBay()) {
                boolean any = condition.alternatives().stream().anyMatch(a -> Bits.contains(bay.gives(), bayPart(a)));
                lacks += any == condition.need().absent() ? (condition.wish() ? 1 : 1 << 10) : 0;
            }
        }
        return lacks;
    }

    private long[] bayPart(long[] set) {
        long[] only = set.clone();
        for (int w = 0; w < only.length; w++) {
            only[w] &= states.conditions()[w];
        }
        return only;
    }

    // ---- what a step finds and changes, as cells of row and state

    private int cell(int row, int state) {
        return row * states.count() + state;
    }

    private void cells(int row, long[] set, BitSet into) {
        for (int state : BitSet.valueOf(set).stream().toArray()) {
            if (states.isCondition(state)) {
                continue;
            }
            if (!states.isZoneScope(state)) {
                into.set(cell(vehicle.vehicle(), state));
            } else if (row == vehicle.vehicle()) {
                for (int real : vehicle.real()) {
                    into.set(cell(real, state));
                }
            } else {
                into.set(cell(row, state));
            }
        }
    }

    private BitSet found(CompiledStep step) {
        BitSet cells = new BitSet();
        for (Part part : step.parts()) {
            for (Condition condition : part.terms().conditions) {
                for (long[] alternative : condition.alternatives()) {
                    Arrays.stream(part.rows()).forEach(row -> cells(row, alternative, cells));
                }
            }
        }
        return cells;
    }

    private BitSet changed(CompiledStep step) {
        BitSet cells = new BitSet();
        for (Part part : step.parts()) {
            for (Change change : part.terms().clears) {
                changed(change, part, cells);
            }
            for (Change change : part.terms().sets) {
                changed(change, part, cells);
            }
        }
        return cells;
    }

    private void changed(Change change, Part part, BitSet cells) {
        for (int row : Walk.rowsOf(change, part, states, vehicle)) {
            if (change.sets()) {
                cells(row, states.brings(change.state()), cells);
                cells(row, states.ends(change.state()), cells);
            } else {
                cells(row, states.clears(change.state()), cells);
            }
        }
    }

    private BitSet touched(CompiledStep step) {
        BitSet all = new BitSet();
        Arrays.stream(step.rows()).forEach(all::set);
        if (step.vehicle()) {
            all.set(0, vehicle.rows());
        }
        return all;
    }

    // ---- waits

    private void order() {
        int n = steps.size();
        BitSet[] before = new BitSet[n];
        for (int j = 0; j < n; j++) {
            before[j] = new BitSet();
            for (int i = j - 1; i >= 0; i--) {
                if (!before[j].get(i) && depend(i, j)) {
                    waits.add(new Wait(i, j, BigDecimal.ZERO, Optional.empty(), ""));
                    before[j].set(i);
                    before[j].or(before[i]);
                }
            }
        }
    }

    private boolean depend(int i, int j) {
        return rows[i].intersects(rows[j])
                || changes[i].intersects(changes[j])
                || changes[i].intersects(finds[j])
                || finds[i].intersects(changes[j]);
    }

    /** What stands on a zone waits for the next step there. */
    private void standing(int i) {
        for (Part part : steps.get(i).parts()) {
            CompiledTerms terms = part.terms();
            if (!terms.stands()) {
                continue;
            }
            timed[i] = true;
            BitSet stands = new BitSet();
            Arrays.stream(part.rows()).forEach(stands::set);
            if (stands.get(vehicle.vehicle())) {
                Arrays.stream(vehicle.real()).forEach(stands::set);
            }
            for (int j = i + 1; j < steps.size() && !stands.isEmpty(); j++) {
                if (rows[j].intersects(stands)) {
                    stands.andNot(rows[j]);
                    boolean bounded = terms.mostWait != Ticks.NEVER;
                    timed[j] |= bounded;
                    waits.add(new Wait(
                            i,
                            j,
                            Ticks.minutes(Math.max(terms.usualWait, terms.leastWait)),
                            bounded ? Optional.of(Ticks.minutes(terms.mostWait)) : Optional.empty(),
                            terms.waitWhy));
                }
            }
        }
    }

    /** A state that comes by itself is waited for; one that perishes must be used in time. */
    private void comingAndGoing(int j, Part part, Condition condition) {
        BitSet cells = new BitSet();
        condition.alternatives().forEach(a -> Arrays.stream(part.rows()).forEach(row -> cells(row, a, cells)));
        boolean only = condition.alternatives().size() == 1
                && !condition.wish()
                && !condition.need().absent();
        cells.stream().forEach(cell -> last(j, cell, only));
    }

    private void last(int j, int cell, boolean needed) {
        for (int i = j - 1; i >= 0; i--) {
            if (!changes[i].get(cell)) {
                continue;
            }
            long after = arrival(i, cell);
            long lasts = needed && after >= 0 ? states.lasts(cell % states.count()) : Ticks.NEVER;
            if (after > 0 || lasts != Ticks.NEVER) {
                boolean perishes = lasts != Ticks.NEVER;
                timed[i] |= perishes;
                timed[j] |= perishes;
                waits.add(new Wait(
                        i,
                        j,
                        Ticks.minutes(Math.max(0, after)),
                        perishes ? Optional.of(Ticks.minutes(Math.max(0, after) + lasts)) : Optional.empty(),
                        states.id(cell % states.count())));
            }
            return;
        }
    }

    /** How long after a step a cell changes, in ticks; -1 when the step does not set it. */
    private long arrival(int i, int cell) {
        if (arrivals.get(i) == null) {
            arrivals.set(i, arrivals(steps.get(i)));
        }
        return arrivals.get(i).getOrDefault(cell, -1L);
    }

    private Map<Integer, Long> arrivals(CompiledStep step) {
        Map<Integer, Long> latest = new HashMap<>();
        for (Part part : step.parts()) {
            for (Change change : part.terms().sets) {
                BitSet cells = new BitSet();
                for (int row : Walk.rowsOf(change, part, states, vehicle)) {
                    cells(row, states.brings(change.state()), cells);
                    if (change.after() > 0) {
                        cells(row, states.ends(change.state()), cells);
                    }
                }
                cells.stream().forEach(cell -> latest.merge(cell, change.after(), Math::max));
            }
        }
        return latest;
    }
}
