package baywright.plan;

import baywright.library.Family;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.ComposeDomain.Action;
import baywright.plan.RepairChoice.Use;
import java.math.BigDecimal;
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
import java.util.function.ToLongFunction;

/**
 * The zones with wishes, by what makes them alike: surface, facts, states found, wishes, and what rules forbid on them in
 * every plan. For each class the cheapest row of stages, seen by itself; and what every plan costs at least.
 */
final class ComposeKinds {

    private static final int MOST_STATES = 400_000;

    /** Zones that are alike. */
    private record Kin(String surface, Map<String, String> facts, List<String> found, List<Wish> wishes) {}

    /** A class with its wanted states and its cheapest row. */
    static final class Kind {
        private final ComposeDomain domain;
        private List<Wish> wishes;
        private Optional<ComposeSearch.Path> path = Optional.empty();
        private long[] given = new long[0];

        Kind(ComposeDomain domain, List<Wish> wishes) {
            this.domain = domain;
            this.wishes = wishes;
        }

        List<Action> row() {
            return path.orElseThrow().actions();
        }
    }

    private final Setting setting;
    private final Costing costing;
    private final boolean careful;
    private final Prover prover;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final RepairStages stages;
    private final StandingBans bans;
    private final ComposeWishes wishes;
    private final Map<String, Long> onces = new HashMap<>();

    ComposeKinds(Prover prover, RepairStages stages, ComposeWishes wishes, Costing costing, boolean careful) {
        this.prover = prover;
        this.stages = stages;
        this.wishes = wishes;
        this.costing = costing;
        this.careful = careful;
        setting = prover.setting();
        states = prover.states();
        vehicle = prover.vehicle();
        bans = new StandingBans(prover, stages);
        for (Family family : setting.library().families()) {
            BigDecimal minutes = family.setUp().inBase();
            if (minutes.signum() > 0) {
                onces.put(family.id(), CostUnits.of(minutes.multiply(costing.minute()), minutes));
            }
        }
        costing.opened()
                .forEach((item, price) -> onces.put(ComposeDomain.pack(item), CostUnits.of(price, BigDecimal.ZERO)));
    }

    /** What is paid once a visit. */
    Map<String, Long> onces() {
        return onces;
    }

    /** The classes that need work, the dearest first. What cannot be granted is noted among the wishes. */
    List<Kind> solved() {
        List<Kind> kinds = kinds();
        kinds.forEach(k -> k.given = given(k, kinds));
        List<Kind> uniform = new ArrayList<>();
        kinds.forEach(k -> solveApart(k, uniform));
        return uniform.stream()
                .filter(k -> k.path.isPresent() && !k.row().isEmpty())
                .sorted(Comparator.comparingLong((Kind k) -> k.path.get().cost())
                        .reversed())
                .toList();
    }

    private List<Kind> kinds() {
        Map<Kin, BitSet> rows = new LinkedHashMap<>();
        for (int row : vehicle.real()) {
            List<Wish> own = wishes.on(row);
            if (!own.isEmpty()) {
                String id = vehicle.id(row);
                Kin kin = new Kin(
                        vehicle.zone(row).orElseThrow().surface(),
                        setting.survey().zone(id).facts(),
                        setting.survey().zone(id).states().stream().sorted().toList(),
                        own);
                rows.computeIfAbsent(kin, k -> new BitSet()).set(row);
            }
        }
        List<Kind> kinds = new ArrayList<>();
        rows.forEach((kin, set) -> kinds.add(kind(set, kin.wishes())));
        return kinds;
    }

    private Kind kind(BitSet rows, List<Wish> of) {
        return new Kind(new ComposeDomain(prover, stages, bans, costing, rows, careful), of);
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

    /**
     * Solves a class. Where its row has a stage that rules forbid on some of its zones in every plan, these are a class of
     * their own, without that stage.
     */
    private void solveApart(Kind kind, List<Kind> into) {
        solve(kind);
        Map<Set<Use>, BitSet> apart = new LinkedHashMap<>();
        kind.domain.rows.stream()
                .forEach(row -> apart.computeIfAbsent(banned(kind, row), b -> new BitSet())
                        .set(row));
        if (apart.keySet().stream().allMatch(Set::isEmpty)) {
            into.add(kind);
            return;
        }
        for (BitSet rows : apart.values()) {
            Kind part = kind(rows, kind.wishes);
            part.given = kind.given;
            solveApart(part, into);
        }
    }

    private Set<Use> banned(Kind kind, int row) {
        Set<Use> banned = new HashSet<>();
        kind.path.ifPresent(path -> path.actions().stream()
                .map(a -> a.use)
                .filter(u -> bans.of(u).containsKey(row))
                .forEach(banned::add));
        return banned;
    }

    /** The cheapest row for the class; wishes that cannot be are given up, the least wanted first. */
    private void solve(Kind kind) {
        while (!kind.wishes.isEmpty()) {
            ComposeSearch search = search(kind, kind.wishes);
            kind.path = search.cheapest(Action::cost, onces);
            if (kind.path.isPresent()) {
                return;
            }
            Optional<Wish> single = single(kind);
            Wish drop = single.orElseGet(() -> leastWanted(kind));
            kind.wishes = kind.wishes.stream().filter(w -> !w.equals(drop)).toList();
            Hindrance why = search.gaveUp() ? new Hindrance.TooMany() : why(kind, drop, single.isPresent());
            wishes.giveUp(drop, kind.domain.rows, why);
        }
    }

    private static Wish leastWanted(Kind kind) {
        return kind.wishes.stream()
                .max(Comparator.comparing(Wish::priority).thenComparing(w -> ComposeWishes.vehicleWide(w) ? 0 : 1))
                .orElseThrow();
    }

    /** A wish that cannot be even alone. */
    private Optional<Wish> single(Kind kind) {
        return kind.wishes.stream()
                .filter(w -> search(kind, List.of(w))
                        .cheapest(Action::cost, Map.of())
                        .isEmpty())
                .max(Comparator.comparing(Wish::priority));
    }

    private Hindrance why(Kind kind, Wish drop, boolean evenAlone) {
        if (evenAlone) {
            return new ComposeObstacle(prover, stages, bans, kind.domain, kind.given).of(states.of(drop.state()));
        }
        List<String> against = kind.wishes.stream()
                .filter(w -> !ComposeWishes.vehicleWide(w))
                .filter(w -> search(kind, List.of(w, drop))
                        .cheapest(Action::cost, Map.of())
                        .isEmpty())
                .map(Wish::state)
                .toList();
        return new Hindrance.Against(
                against.isEmpty() ? kind.wishes.stream().map(Wish::state).toList() : against);
    }

    /** The cheapest row for a class in another measure. */
    List<Action> row(Kind kind, ToLongFunction<Action> cost, Map<String, Long> unpaid) {
        return search(kind, kind.wishes).cheapest(cost, unpaid).orElseThrow().actions();
    }

    private ComposeSearch search(Kind kind, List<Wish> of) {
        long[] work =
                goal(of.stream().filter(w -> !ComposeWishes.vehicleWide(w)).toList());
        long[] closing = goal(of.stream().filter(ComposeWishes::vehicleWide).toList());
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

    /**
     * What every plan for these classes costs at least: the class with the most work pays everything that classes could
     * share, the others only what no sharing saves.
     */
    BigDecimal least(List<Kind> solved) {
        if (solved.isEmpty()) {
            return BigDecimal.ZERO;
        }
        Kind main = solved.get(0);
        Set<String> shared = new HashSet<>();
        Set<String> paid = new HashSet<>();
        main.domain.actions.forEach(a -> shared.add(a.use.stage()));
        main.domain.actions.forEach(a -> paid.addAll(a.onces));
        long units = main.path.orElseThrow().cost();
        for (Kind kind : solved.subList(1, solved.size())) {
            units += search(kind, kind.wishes)
                    .cheapest(a -> a.each + (shared.contains(a.use.stage()) ? 0 : a.whole), Map.of())
                    .map(ComposeSearch.Path::cost)
                    .orElse(0L);
            kind.domain.actions.forEach(a -> shared.add(a.use.stage()));
        }
        Set<String> others = new TreeSet<>(onces.keySet());
        others.removeAll(paid);
        for (String once : others) {
            if (solved.stream().anyMatch(k -> !reachable(k, once))) {
                units += onces.get(once);
            }
        }
        return CostUnits.cost(units);
    }

    /** Whether the wishes can be reached without something when nothing is ever undone; no is certain. */
    private boolean reachable(Kind kind, String without) {
        long[] held = kind.domain.start.clone();
        ComposeDomain.add(held, kind.given);
        long[] goal = goal(kind.wishes);
        boolean more = true;
        while (more && !Bits.contains(held, goal)) {
            more = false;
            for (Action action : kind.domain.actions) {
                if (!action.onces.contains(without) && needed(kind, action, held)) {
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
