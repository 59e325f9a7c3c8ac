package baywright.plan;

import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.ComposeDomain.Action;
import baywright.plan.RepairChoice.Use;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What stands against a state on zones that are alike. What can be brought about when nothing is ever undone is worked
 * out first; the first need on the way back from the state that is not among it is the obstacle.
 */
final class ComposeObstacle {

    private final Prover prover;
    private final StateIndex states;
    private final RepairStages stages;
    private final StandingBans bans;
    private final ComposeDomain domain;
    private final long[] held;

    ComposeObstacle(Prover prover, RepairStages stages, StandingBans bans, ComposeDomain domain, long[] given) {
        this.prover = prover;
        this.stages = stages;
        this.bans = bans;
        this.domain = domain;
        states = prover.states();
        held = domain.start.clone();
        ComposeDomain.add(held, given);
        boolean more = true;
        while (more) {
            more = false;
            for (Action action : domain.actions) {
                if (missing(action).isEmpty() && bay(action).isEmpty()) {
                    for (Change change : action.terms.sets) {
                        more |= !Bits.contains(held, states.brings(change.state()));
                        ComposeDomain.add(held, states.brings(change.state()));
                    }
                }
            }
        }
    }

    /** What stands against a state, made of others or not; the library may lack it. */
    Hindrance of(int state) {
        if (state < 0) {
            return new Hindrance.NoWay();
        }
        for (int part : states.parts(state)) {
            if (!Bits.has(held, part)) {
                return of(part, new HashSet<>());
            }
        }
        return finds(state).orElse(new Hindrance.NoWay());
    }

    private Hindrance of(int part, Set<Integer> seen) {
        seen.add(part);
        List<Action> makers = makers(part);
        if (makers.isEmpty()) {
            return banned(part).orElse(new Hindrance.NoStage(states.id(part)));
        }
        Action easiest = makers.stream()
                .min(Comparator.comparingInt(a -> missing(a).size()))
                .orElseThrow();
        Optional<Hindrance> bay = bay(easiest);
        if (bay.isPresent()) {
            return bay.get();
        }
        List<Integer> missing = missing(easiest);
        for (int need : missing) {
            if (!states.isCondition(need) && !seen.contains(need)) {
                return deeper(easiest, need, seen);
            }
        }
        return missing.isEmpty()
                ? new Hindrance.NoWay()
                : new Hindrance.Lacks(
                        easiest.use.stage(), states.id(missing.get(0)), states.isCondition(missing.get(0)));
    }

    /** The nearest need is named when nothing at all brings it about, else what stands against that. */
    private Hindrance deeper(Action action, int need, Set<Integer> seen) {
        Hindrance under = of(need, seen);
        return under instanceof Hindrance.NoStage || under instanceof Hindrance.NoWay
                ? new Hindrance.Lacks(action.use.stage(), states.id(need), false)
                : under;
    }

    private List<Action> makers(int part) {
        return domain.actions.stream()
                .filter(a -> a.terms.sets.stream().anyMatch(c -> Bits.has(states.brings(c.state()), part)))
                .toList();
    }

    private Optional<Hindrance> banned(int part) {
        int row = domain.rows.nextSetBit(0);
        for (Use use : stages.setters(part)) {
            Map<Integer, Finding> of = bans.of(use);
            if (of.containsKey(row)) {
                return Optional.of(new Hindrance.Stopped(of.get(row)));
            }
        }
        return Optional.empty();
    }

    /** The stage finds what it must not, which was found and which nothing ends. */
    private Optional<Hindrance> finds(int state) {
        for (int part : states.parts(state)) {
            for (Action action : makers(part)) {
                for (Condition condition : domain.conditions(action)) {
                    if (condition.need().absent()
                            && condition.alternatives().stream().anyMatch(a -> Bits.contains(domain.start, a))) {
                        return Optional.of(new Hindrance.Finds(
                                action.use.stage(), condition.need().anyOf().get(0)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Hindrance> bay(Action action) {
        String kind = action.terms.terms.where().bay();
        return !kind.isEmpty() && prover.bays().of(kind).isEmpty()
                ? Optional.of(new Hindrance.NoBay(action.use.stage(), kind))
                : Optional.empty();
    }

    /** States that an action needs and that neither the work so far nor a bay gives. */
    private List<Integer> missing(Action action) {
        List<BayIndex.Place> places =
                prover.bays().of(action.terms.terms.where().bay());
        if (places.isEmpty()) {
            return missing(action, new long[held.length]);
        }
        return places.stream()
                .map(p -> missing(action, p.gives()))
                .min(Comparator.comparingInt(List::size))
                .orElseThrow();
    }

    private List<Integer> missing(Action action, long[] gives) {
        long[] all = held.clone();
        ComposeDomain.add(all, gives);
        return domain.conditions(action).stream()
                .filter(c -> !c.need().absent())
                .filter(c -> c.alternatives().stream().noneMatch(a -> Bits.contains(all, a)))
                .flatMap(c -> c.alternatives().stream().limit(1))
                .flatMap(a -> BitSet.valueOf(a).stream().boxed())
                .filter(s -> !Bits.has(all, s))
                .toList();
    }
}
