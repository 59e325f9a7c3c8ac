package baywright.plan;

import baywright.plan.ComposeDomain.Action;
import baywright.plan.ComposeKinds.Kind;
import baywright.plan.ComposeMerge.Joint;
import baywright.plan.RepairChoice.Use;
import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * Makes a plan from wishes. Zones that are alike (surface, facts, states found, wishes, standing bans of rules) form a
 * class. For each class the cheapest row of stages is found exactly, seen by itself; the rows are joined, doing together
 * what is the same; the whole is proved, mended where the classes disturb each other or a rule forbids it, and rid of
 * every step that nothing needs. Where a rule forbids it and nothing mends that, the wish that leads there is given up on
 * those zones.
 *
 * <p>What a class costs at least is what only it pays: time and materials by area and by piece, and set-ups of stages that
 * no other class can use; the class with the most work pays what all share, and what is paid once a visit. The sum is a
 * bound from below on every plan for the wishes. When the plan costs no more, it is proved to be the cheapest. Rules are
 * part of the bound only as far as they forbid in every plan; where they ask for more work the bound may lie lower than
 * any plan can.
 */
public final class Composer {

    private static final Duration MEND = Duration.ofMillis(1500);

    /** How often wishes are given up for what a rule forbids, and the rest composed again. */
    private static final int MOST_ROUNDS = 12;

    /** Two steps that only undo each other, such as wetting and drying, stand so near each other. */
    private static final int MOST_APART = 3;

    private final Prover prover;
    private final VehicleIndex vehicle;
    private final RepairStages stages;
    private final ComposeWishes wishes;
    private final Costing costing;
    private final boolean careful;
    private final ComposeKinds kinds;
    private final Options options;
    private final ComposeDelay delay;
    private final long started = System.nanoTime();

    /**
     * How to compose.
     *
     * @param careful   whether what stages only prefer to find is seen to as well
     * @param costing   what work costs
     * @param delays    when work may be done that a rule forbids at first
     * @param known     a plan for these wishes and more; what of it serves these is taken where that is cheaper
     * @param cancelled asked again and again; soon after it turns true a {@link CancellationException} is thrown
     */
    public record Options(
            boolean careful, Costing costing, Delays delays, Optional<Plan> known, BooleanSupplier cancelled) {

        /** Work that a rule forbids at first is not put off, no plan is known, and nobody cancels. */
        public Options(boolean careful, Costing costing) {
            this(careful, costing, Delays.NONE, Optional.empty(), () -> false);
        }
    }

    private Composer(Setting setting, List<Wish> all, Options options) {
        this.options = options;
        careful = options.careful();
        costing = options.costing();
        prover = Prover.forSetting(setting);
        vehicle = prover.vehicle();
        stages = new RepairStages(prover);
        wishes = new ComposeWishes(prover, all);
        kinds = new ComposeKinds(prover, stages, wishes, costing, careful);
        delay = new ComposeDelay(prover, options.delays());
    }

    /**
     * The plan for the wishes that takes the fewest attended minutes, as far as was found.
     *
     * @param careful whether what stages only prefer to find is seen to as well
     */
    public static Composition compose(Setting setting, List<Wish> wishes, boolean careful) {
        return compose(setting, wishes, new Options(careful, Costing.MINUTES));
    }

    /** The cheapest plan found for the wishes. */
    public static Composition compose(Setting setting, List<Wish> wishes, Options options) {
        return new Composer(setting, wishes, options).run();
    }

    /**
     * What every plan for the wishes costs at least, as far as that can be told without making one; of wishes that cannot
     * be granted nothing is reckoned.
     */
    public static BigDecimal least(Setting setting, List<Wish> wishes, boolean careful, Costing costing) {
        Composer composer = new Composer(setting, wishes, new Options(careful, costing));
        return composer.kinds.least(composer.kinds.solved());
    }

    private Composition run() {
        for (int round = 0; ; round++) {
            List<Kind> solved = kinds.solved();
            Plan plan = pruned(settled(delayed(ruled(mended(joined(solved))))));
            if (holds(plan) || round == MOST_ROUNDS || !givesUp(plan)) {
                return composition(orKnown(plan), solved);
            }
        }
    }

    /** What serves the wishes of a plan that is known, where that is cheaper. */
    private Plan orKnown(Plan plan) {
        return options.known()
                .map(this::serving)
                .filter(this::holds)
                .map(this::pruned)
                .filter(other -> !holds(plan) || cost(other).compareTo(cost(plan)) < 0)
                .orElse(plan);
    }

    private Plan serving(Plan known) {
        BitSet serves = ComposeReasons.of(prover, known, wishes, wishes.open()).served();
        return new Plan(serves.stream().mapToObj(known.steps()::get).toList());
    }

    private BigDecimal cost(Plan plan) {
        return costing.of(prover.work(plan));
    }

    private boolean holds(Plan plan) {
        if (options.cancelled().getAsBoolean()) {
            throw new CancellationException("composing was cancelled");
        }
        return prover.stops(plan).isEmpty() && grants(plan);
    }

    private boolean grants(Plan plan) {
        return wishes.granted(prover.prove(plan).ends());
    }

    private Plan joined(List<Kind> solved) {
        ComposeMerge merge = new ComposeMerge();
        Set<Use> shared = new HashSet<>();
        Map<String, Long> unpaid = new HashMap<>(kinds.onces());
        for (Kind kind : solved) {
            List<Action> row = shared.isEmpty()
                    ? kind.row()
                    : kinds.row(kind, a -> 1 + a.each + (shared.contains(a.use) ? 0 : a.whole), unpaid);
            row.forEach(a -> shared.add(a.use));
            row.forEach(a -> a.onces.forEach(unpaid::remove));
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
        List<Finding> stops = prover.stops(plan);
        if (stops.stream().allMatch(s -> s.reason() instanceof Reason.RuleSpeaks)) {
            return plan;
        }
        return new RepairSearch(prover, plan, Repair.Options.USUAL.within(MEND), false)
                .run().repairs().stream()
                        .map(Repair::plan)
                        .filter(this::grants)
                        .findFirst()
                        .orElse(plan);
    }

    /** The search for a class knows what rules forbid in every plan; what they forbid of this one is put right here. */
    private Plan ruled(Plan plan) {
        Plan ruled = new RuleMend(prover, stages).mended(plan);
        return grants(ruled) ? ruled : plan;
    }

    /** What a rule forbids on the first days is done on the first day on which it may, where there is time for that. */
    private Plan delayed(Plan plan) {
        Plan delayed = delay.putOff(plan);
        return grants(delayed) ? delayed : plan;
    }

    /** Nothing stops the plan, but the work of one class ends what another has brought about: one of them comes later. */
    private Plan settled(Plan plan) {
        Plan now = plan;
        List<Wish> lost = lost(now);
        while (!lost.isEmpty() && prover.stops(now).isEmpty()) {
            Optional<Plan> better = better(now, lost);
            if (better.isEmpty()) {
                return now;
            }
            now = better.get();
            lost = lost(now);
        }
        return now;
    }

    private List<Wish> lost(Plan plan) {
        return wishes.lost(prover.prove(plan).ends());
    }

    private Optional<Plan> better(Plan plan, List<Wish> lost) {
        for (Step step : plan.steps()) {
            boolean touches = lost.stream().anyMatch(w -> touches(step, w));
            for (int to = plan.steps().size() - 1; touches && to >= 0; to--) {
                Plan moved = new Edit.Move(step.id(), to).applyTo(plan);
                if (lost(moved).size() < lost.size() && prover.stops(moved).isEmpty()) {
                    return Optional.of(moved);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a step begins or ends what is wished for. */
    private boolean touches(Step step, Wish wish) {
        int state = prover.states().of(wish.state());
        return state >= 0
                && prover.compile(step).parts().stream()
                        .flatMap(part -> Stream.concat(
                                part.terms().sets.stream()
                                        .map(c -> prover.states().brings(c.state())),
                                part.terms().clears.stream()
                                        .map(c -> prover.states().clears(c.state()))))
                        .anyMatch(bits -> Bits.meet(
                                bits, prover.states().setOf(prover.states().parts(state))));
    }

    /** Without the steps that nothing needs, and without pairs that only undo each other. */
    private Plan pruned(Plan plan) {
        if (!holds(plan)) {
            return plan;
        }
        Plan now = plan;
        Optional<Plan> fewer = Optional.of(plan);
        while (fewer.isPresent()) {
            now = fewer.get();
            fewer = fewer(now);
        }
        return now;
    }

    private Optional<Plan> fewer(Plan plan) {
        long warns = warns(plan);
        for (int apart = 0; apart <= MOST_APART; apart++) {
            for (int i = plan.steps().size() - 1 - apart; i >= 0; i--) {
                Plan without = without(plan, i, i + apart);
                if (holds(without) && warns(without) <= warns) {
                    return Optional.of(without);
                }
            }
        }
        return Optional.empty();
    }

    private static Plan without(Plan plan, int first, int second) {
        List<Step> left = new ArrayList<>(plan.steps());
        left.remove(second);
        if (first != second) {
            left.remove(first);
        }
        return new Plan(left);
    }

    private long warns(Plan plan) {
        return careful
                ? prover.prove(plan).findings().stream()
                        .filter(f -> f.severity() == Severity.WARN)
                        .count()
                : 0;
    }

    /** Gives up wishes whose work something stops, on the zones where it does; false when no wish leads there. */
    private boolean givesUp(Plan plan) {
        boolean any = false;
        Map<Wish, BitSet> given = new HashMap<>();
        for (Finding stop : prover.stops(plan)) {
            BitSet rows = new BitSet();
            stop.zones().forEach(zone -> rows.set(vehicle.row(zone)));
            Optional<Wish> wish = stop.step().flatMap(step -> leadingTo(plan, step, rows));
            if (wish.isPresent()) {
                BitSet before = given.computeIfAbsent(wish.get(), w -> new BitSet());
                rows.andNot(before);
                before.or(rows);
                wishes.giveUp(wish.get(), rows, new Hindrance.Stopped(stop, delay.from(plan, stop)));
                any = true;
            }
        }
        return any;
    }

    /** The wish on these rows that relies on the step: the least wanted, then the one that takes the most steps. */
    private Optional<Wish> leadingTo(Plan plan, String step, BitSet rows) {
        int index = plan.steps().stream().map(Step::id).toList().indexOf(step);
        Comparator<Wish> byPriority = Comparator.comparing(Wish::priority);
        return wishes.open().stream()
                .filter(w -> wishes.rows(w).intersects(rows))
                .filter(w -> served(plan, w).get(index))
                .max(byPriority.thenComparing(w -> served(plan, w).cardinality()));
    }

    private BitSet served(Plan plan, Wish wish) {
        return ComposeReasons.of(prover, plan, wishes, List.of(wish)).served();
    }

    private Composition composition(Plan found, List<Kind> solved) {
        List<Step> numbered = new ArrayList<>();
        Map<String, String> idOf = new HashMap<>();
        for (Step s : found.steps()) {
            idOf.put(s.id(), "s" + (numbered.size() + 1));
            numbered.add(s.withId(idOf.get(s.id())));
        }
        ComposeReasons reasons = new ComposeReasons(prover, wishes, new Plan(numbered));
        Plan plan = reasons.weighed();
        Proof proof = prover.prove(plan);
        boolean composed = proof.holds() && !plan.steps().isEmpty() && grants(plan);
        PlanWork work = prover.work(plan);
        return new Composition(
                plan,
                proof,
                composed,
                reasons.all(),
                delay.of(plan, idOf),
                wishes.unmet(),
                work.attendedMinutes().mean(),
                costing.of(work),
                kinds.least(solved),
                Duration.ofNanos(System.nanoTime() - started));
    }
}
