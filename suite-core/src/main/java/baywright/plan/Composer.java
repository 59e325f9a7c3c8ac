package baywright.plan;

import baywright.library.Family;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.ComposeDomain.Action;
import baywright.plan.ComposeMerge.Joint;
import baywright.plan.Composition.Because;
import baywright.plan.RepairChoice.Use;
import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes a plan from wishes. Zones that are alike (surface, facts, states found, wishes) form a class. For each class the
 * cheapest row of stages is found exactly, seen by itself; the rows are joined, doing together what is the same; the
 * whole is proved, mended where the classes disturb each other, and rid of every step that nothing needs.
 *
 * <p>What a class costs at least is what only it pays: time by area and by piece, and set-ups of stages that no other
 * class can use; the class with the most work pays what all share, and the families' set-ups. The sum is a bound from below on every plan
 * for the wishes. When the plan takes no more, it is proved to be the cheapest.
 */
public final class Composer {

    private static final int MOST_STATES = 400_000;
    private static final Duration MEND = Duration.ofMillis(1500);

    /** Zones that are alike. */
    private record Kin(String surface, Map<String, String> facts, List<String> found, List<Wish> wishes) {}

    /** A class with its wanted states and its cheapest row. */
    private static final class Kind {
        private final ComposeDomain domain;
        private List<Wish> wishes;
        private Optional<ComposeSearch.Path> path = Optional.empty();
        private long[] given = new long[0];

        Kind(ComposeDomain domain, List<Wish> wishes) {
            this.domain = domain;
            this.wishes = wishes;
        }
    }

    private final Setting setting;
    private final Prover prover;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final RepairStages stages;
    private final List<Wish> wishes;
    private final boolean careful;
    private final Set<Wish> unmet = new HashSet<>();
    private final Map<String, Long> setUps = new HashMap<>();
    private final long started = System.nanoTime();

    private Composer(Setting setting, List<Wish> wishes, boolean careful) {
        this.setting = setting;
        this.wishes = List.copyOf(wishes);
        this.careful = careful;
        prover = Prover.forSetting(setting);
        states = prover.states();
        vehicle = prover.vehicle();
        stages = new RepairStages(prover);
        for (Family family : setting.library().families()) {
            long ticks = Ticks.of(family.setUp().inBase());
            if (ticks > 0) {
                setUps.put(family.id(), ticks);
            }
        }
    }

    /**
     * The cheapest plan found for the wishes.
     *
     * @param careful whether what stages only prefer to find is seen to as well
     */
    public static Composition compose(Setting setting, List<Wish> wishes, boolean careful) {
        return new Composer(setting, wishes, careful).run();
    }

    private Composition run() {
        List<Kind> kinds = kinds();
        kinds.forEach(k -> k.given = given(k, kinds));
        kinds.forEach(this::solve);
        List<Kind> solved = kinds.stream()
                .filter(k -> k.path.isPresent() && !k.path.get().actions().isEmpty())
                .sorted(Comparator.comparingLong((Kind k) -> k.path.get().cost())
                        .reversed())
                .toList();
        Plan plan = joined(solved);
        plan = mended(plan);
        plan = ruled(plan);
        plan = pruned(plan);
        return composition(plan, solved);
    }

    // ---- classes

    private List<Kind> kinds() {
        Map<Kin, BitSet> rows = new LinkedHashMap<>();
        for (int row : vehicle.real()) {
            int at = row;
            List<Wish> own = wishes.stream()
                    .filter(w -> !vehicleWide(w) && concerned(w).get(at))
                    .toList();
            if (!own.isEmpty()) {
                List<Wish> all = wishes.stream()
                        .filter(w -> vehicleWide(w) || own.contains(w))
                        .toList();
                String id = vehicle.id(row);
                Kin kin = new Kin(
                        vehicle.zone(row).orElseThrow().surface(),
                        setting.survey().zone(id).facts(),
                        setting.survey().zone(id).states().stream().sorted().toList(),
                        all);
                rows.computeIfAbsent(kin, k -> new BitSet()).set(row);
            }
        }
        List<Kind> kinds = new ArrayList<>();
        rows.forEach((kin, set) -> kinds.add(new Kind(new ComposeDomain(prover, stages, set, careful), kin.wishes())));
        return kinds;
    }

    private static boolean vehicleWide(Wish wish) {
        return wish.zones().equals(List.of(VehicleIndex.VEHICLE));
    }

    private BitSet concerned(Wish wish) {
        BitSet rows = new BitSet();
        ZoneChoice.resolve(wish.zones(), setting.shape()).forEach(z -> rows.set(vehicle.row(z)));
        rows.clear(vehicle.vehicle());
        return rows;
    }

    /** States of the vehicle that only the work on other zones can bring. */
    private long[] given(Kind kind, List<Kind> kinds) {
        BitSet own = brought(kind);
        BitSet others = new BitSet();
        kinds.forEach(k -> others.or(brought(k)));
        others.andNot(own);
        others.and(BitSet.valueOf(states.vehicleScope()));
        BitSet refused = new BitSet();
        for (Action action : kind.domain.actions) {
            for (Condition condition : kind.domain.conditions(action)) {
                if (condition.need().absent()) {
                    condition.alternatives().forEach(a -> refused.or(BitSet.valueOf(a)));
                }
            }
        }
        others.andNot(refused);
        return states.setOf(others.stream().toArray());
    }

    private BitSet brought(Kind kind) {
        BitSet brought = new BitSet();
        for (Action action : kind.domain.actions) {
            for (Change change : action.terms.sets) {
                brought.or(BitSet.valueOf(states.brings(change.state())));
            }
        }
        return brought;
    }

    /** The cheapest row for the class; wishes that cannot be are given up, the least wanted first. */
    private void solve(Kind kind) {
        while (!kind.wishes.isEmpty()) {
            kind.path = search(kind).cheapest(Action::cost, setUps);
            if (kind.path.isPresent()) {
                return;
            }
            Wish least = kind.wishes.stream()
                    .max(Comparator.comparing(Wish::priority).thenComparing(w -> vehicleWide(w) ? 0 : 1))
                    .orElseThrow();
            Wish drop = single(kind).orElse(least);
            unmet.add(drop);
            kind.wishes = kind.wishes.stream().filter(w -> !w.equals(drop)).toList();
        }
    }

    /** A wish that cannot be even alone. */
    private Optional<Wish> single(Kind kind) {
        return kind.wishes.stream()
                .filter(w -> search(kind, List.of(w))
                        .cheapest(Action::cost, Map.of())
                        .isEmpty())
                .max(Comparator.comparing(Wish::priority));
    }

    private ComposeSearch search(Kind kind) {
        return search(kind, kind.wishes);
    }

    private ComposeSearch search(Kind kind, List<Wish> of) {
        long[] work = goal(of.stream().filter(w -> !vehicleWide(w)).toList());
        long[] closing = goal(of.stream().filter(Composer::vehicleWide).toList());
        return new ComposeSearch(kind.domain, states, work, closing, kind.given, MOST_STATES);
    }

    private long[] goal(List<Wish> of) {
        long[] goal = new long[states.width()];
        for (Wish wish : of) {
            int state = states.of(wish.state());
            if (state >= 0) {
                ComposeDomain.add(goal, states.setOf(states.parts(state)));
            }
        }
        return goal;
    }

    // ---- one plan

    private Plan joined(List<Kind> solved) {
        ComposeMerge merge = new ComposeMerge();
        Set<Use> shared = new HashSet<>();
        Map<String, Long> unpaid = new HashMap<>(setUps);
        for (Kind kind : solved) {
            List<Action> row = shared.isEmpty()
                    ? kind.path.get().actions()
                    : search(kind)
                            .cheapest(a -> 1 + a.each + (shared.contains(a.use) ? 0 : a.whole), unpaid)
                            .orElseThrow()
                            .actions();
            row.forEach(a -> shared.add(a.use));
            row.forEach(a -> unpaid.remove(a.family));
            merge.add(row);
        }
        List<Step> steps = new ArrayList<>();
        for (Joint joint : merge.joints()) {
            BitSet rows = (BitSet) joint.rows().clone();
            if (stages.rowsOf(joint.use().stage()).get(vehicle.vehicle())) {
                rows.set(vehicle.vehicle());
            }
            steps.add(stages.inserted("s" + (steps.size() + 1), joint.use(), rows, Priority.MUST));
        }
        return new Plan(steps);
    }

    /** Classes were seen alone; where they disturb each other the plan is mended, without leaving anything out. */
    private Plan mended(Plan plan) {
        if (prover.stops(plan).isEmpty()) {
            return plan;
        }
        return new RepairSearch(prover, plan, Repair.Options.USUAL.within(MEND), false)
                .run().repairs().stream()
                        .map(Repair::plan)
                        .filter(this::grants)
                        .findFirst()
                        .orElse(plan);
    }

    /** The search for a class knows states, not rules: what rules forbid of the whole is put right here. */
    private Plan ruled(Plan plan) {
        Plan ruled = new RuleMend(prover, stages).mended(plan);
        return grants(ruled) ? ruled : plan;
    }

    private boolean grants(Plan plan) {
        Map<String, Set<String>> ends = prover.prove(plan).ends();
        return wishes.stream().filter(w -> !unmet.contains(w)).allMatch(w -> grants(w, ends));
    }

    private boolean grants(Wish wish, Map<String, Set<String>> ends) {
        int state = states.of(wish.state());
        if (state < 0) {
            return false;
        }
        if (!states.isZoneScope(state)) {
            return ends.get(VehicleIndex.VEHICLE).contains(wish.state());
        }
        return concerned(wish).stream()
                .allMatch(row -> ends.get(vehicle.id(row)).contains(wish.state()));
    }

    /** Without the steps that nothing needs. */
    private Plan pruned(Plan plan) {
        if (!prover.stops(plan).isEmpty() || !grants(plan)) {
            return plan;
        }
        Plan now = plan;
        for (int i = now.steps().size() - 1; i >= 0; i--) {
            Plan without = new Edit.Drop(now.steps().get(i).id()).applyTo(now);
            if (prover.stops(without).isEmpty() && grants(without) && warns(without) <= warns(now)) {
                now = without;
                i = now.steps().size();
            }
        }
        return now;
    }

    private long warns(Plan plan) {
        return careful
                ? prover.prove(plan).findings().stream()
                        .filter(f -> f.severity() == Severity.WARN)
                        .count()
                : 0;
    }

    // ---- what is told of it

    private Composition composition(Plan plan, List<Kind> solved) {
        List<Wish> granted = wishes.stream().filter(w -> !unmet.contains(w)).toList();
        List<Because> reasons = reliance(plan, granted).reasons();
        List<Because> byRule = byRule(plan, reasons);
        Plan weighed = asGrave(
                new Plan(plan.steps().stream()
                        .map(s -> weighed(s, plan, granted))
                        .toList()),
                byRule);
        Proof proof = prover.prove(weighed);
        boolean composed = proof.holds() && !weighed.steps().isEmpty() && grants(weighed);
        BigDecimal minutes = prover.work(weighed).attendedMinutes().mean();
        List<Wish> given = wishes.stream().filter(unmet::contains).toList();
        return new Composition(
                weighed,
                proof,
                composed,
                inOrder(weighed, reasons, byRule),
                given,
                minutes,
                least(solved),
                Duration.ofNanos(System.nanoTime() - started));
    }

    private Reliance reliance(Plan plan, List<Wish> of) {
        Reliance reliance = new Reliance(prover, plan);
        for (Wish wish : of) {
            BitSet rows = concerned(wish);
            if (rows.isEmpty()) {
                rows.set(vehicle.vehicle());
            }
            rows.stream().forEach(row -> reliance.note(states.of(wish.state()), row));
        }
        return reliance;
    }

    private Step weighed(Step step, Plan plan, List<Wish> granted) {
        int index = plan.steps().indexOf(step);
        Priority gravest = Priority.COULD;
        for (Priority priority : Priority.values()) {
            List<Wish> of =
                    granted.stream().filter(w -> w.priority() == priority).toList();
            if (!of.isEmpty() && reliance(plan, of).served().get(index) && priority.compareTo(gravest) < 0) {
                gravest = priority;
            }
        }
        return new Step(step.id(), step.stage(), step.zones(), step.with(), gravest, step.at(), step.drivers());
    }

    /** Why the steps are there on whose states nothing relies: rules that forbid a later step without them. */
    private List<Because> byRule(Plan plan, List<Because> reasons) {
        Set<String> known = new HashSet<>();
        reasons.forEach(r -> known.add(r.step()));
        List<Because> more = new ArrayList<>();
        for (Step step : plan.steps()) {
            if (!known.contains(step.id())) {
                for (Finding stop : prover.stops(new Edit.Drop(step.id()).applyTo(plan))) {
                    if (stop.reason() instanceof Reason.RuleSpeaks rule) {
                        more.add(new Because(step.id(), "", false, stop.zones(), rule.step(), rule.title()));
                    }
                }
            }
        }
        return more;
    }

    /** A step that a rule asks for is wanted as much as the step that it is asked for. */
    private static Plan asGrave(Plan plan, List<Because> byRule) {
        Map<String, Priority> priorities = new HashMap<>();
        plan.steps().forEach(s -> priorities.put(s.id(), s.priority()));
        byRule.forEach(
                b -> priorities.merge(b.step(), priorities.get(b.forStep()), (a, c) -> a.compareTo(c) <= 0 ? a : c));
        return new Plan(plan.steps().stream()
                .map(s -> new Step(s.id(), s.stage(), s.zones(), s.with(), priorities.get(s.id()), s.at(), s.drivers()))
                .toList());
    }

    private static List<Because> inOrder(Plan plan, List<Because> reasons, List<Because> byRule) {
        List<Because> all = new ArrayList<>();
        for (Step step : plan.steps()) {
            reasons.stream().filter(r -> r.step().equals(step.id())).forEach(all::add);
            byRule.stream().filter(r -> r.step().equals(step.id())).forEach(all::add);
        }
        return all;
    }

    private BigDecimal least(List<Kind> solved) {
        if (solved.isEmpty()) {
            return BigDecimal.ZERO;
        }
        Kind main = solved.get(0);
        Set<String> shared = new HashSet<>();
        Set<String> paid = new HashSet<>();
        main.domain.actions.forEach(a -> shared.add(a.use.stage()));
        main.domain.actions.forEach(a -> paid.add(a.family));
        long ticks = main.path.get().cost();
        for (Kind kind : solved.subList(1, solved.size())) {
            ticks += search(kind)
                    .cheapest(a -> a.each + (shared.contains(a.use.stage()) ? 0 : a.whole), Map.of())
                    .map(ComposeSearch.Path::cost)
                    .orElse(0L);
            kind.domain.actions.forEach(a -> shared.add(a.use.stage()));
        }
        Set<String> others = new TreeSet<>(setUps.keySet());
        others.removeAll(paid);
        for (String family : others) {
            if (solved.stream().anyMatch(k -> !reachable(k, family))) {
                ticks += setUps.get(family);
            }
        }
        return Ticks.minutes(ticks);
    }

    /** Whether the wishes can be reached without a family when nothing is ever undone; no is certain. */
    private boolean reachable(Kind kind, String without) {
        long[] held = kind.domain.start.clone();
        ComposeDomain.add(held, kind.given);
        long[] goal = goal(kind.wishes);
        boolean more = true;
        while (more && !Bits.contains(held, goal)) {
            more = false;
            for (Action action : kind.domain.actions) {
                if (!action.family.equals(without) && needed(kind, action, held)) {
                    for (Change change : action.terms.sets) {
                        more |= !Bits.contains(held, states.brings(change.state()));
                        ComposeDomain.add(held, states.brings(change.state()));
                    }
                }
            }
        }
        return Bits.contains(held, goal);
    }

    private boolean needed(Kind kind, Action action, long[] held) {
        long[] with = held.clone();
        ComposeDomain.add(with, states.conditions());
        return kind.domain.conditions(action).stream()
                .filter(c -> !c.need().absent())
                .allMatch(c -> c.alternatives().stream().anyMatch(a -> Bits.contains(with, a)));
    }
}
