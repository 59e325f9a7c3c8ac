package baywright.plan;

import baywright.plan.Composition.Because;
import baywright.plan.Step.Priority;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Why the steps of a composed plan are there, and how much each is wanted. */
final class ComposeReasons {

    private final Prover prover;
    private final ComposeWishes wishes;
    private final Plan plan;
    private final List<Because> reliance;
    private final List<Because> byRule;

    ComposeReasons(Prover prover, ComposeWishes wishes, Plan plan) {
        this.prover = prover;
        this.wishes = wishes;
        this.plan = plan;
        reliance = of(prover, plan, wishes, wishes.open()).reasons();
        byRule = byRule();
    }

    /** Who relies on whom, with some of the wishes as the end. */
    static Reliance of(Prover prover, Plan plan, ComposeWishes wishes, List<Wish> some) {
        Reliance reliance = new Reliance(prover, plan);
        for (Wish wish : some) {
            int state = prover.states().of(wish.state());
            if (state >= 0) {
                wishes.rows(wish).stream().forEach(row -> reliance.note(state, row));
            }
        }
        return reliance;
    }

    /** The plan with each step as much wanted as the gravest wish that relies on it. */
    Plan weighed() {
        Map<String, Priority> priorities = new HashMap<>();
        plan.steps().forEach(s -> priorities.put(s.id(), Priority.COULD));
        for (Priority priority : List.of(Priority.SHOULD, Priority.MUST)) {
            List<Wish> some =
                    wishes.open().stream().filter(w -> w.priority() == priority).toList();
            if (!some.isEmpty()) {
                BitSet served = of(prover, plan, wishes, some).served();
                served.stream().forEach(i -> priorities.put(plan.steps().get(i).id(), priority));
            }
        }
        byRule.forEach(
                b -> priorities.merge(b.step(), priorities.get(b.forStep()), (a, c) -> a.compareTo(c) <= 0 ? a : c));
        return new Plan(plan.steps().stream()
                .map(s -> new Step(s.id(), s.stage(), s.zones(), s.with(), priorities.get(s.id()), s.at(), s.drivers()))
                .toList());
    }

    /** Why the steps are there on whose states nothing relies: rules that forbid a later step without them. */
    private List<Because> byRule() {
        Set<String> known = new HashSet<>();
        reliance.forEach(r -> known.add(r.step()));
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

    /** In the plan's order. */
    List<Because> all() {
        List<Because> all = new ArrayList<>();
        for (Step step : plan.steps()) {
            reliance.stream().filter(r -> r.step().equals(step.id())).forEach(all::add);
            byRule.stream().filter(r -> r.step().equals(step.id())).forEach(all::add);
        }
        return all;
    }
}
