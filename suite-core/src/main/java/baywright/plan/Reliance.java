package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.Composition.Because;
import baywright.plan.RepairEffects.Effect;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which step of a plan relies on which: who last made (or ended) what a step or a wish needs. */
final class Reliance {

    private record Link(int from, int state, boolean ends, int to) {}

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final RepairEffects effects;
    private final Plan plan;
    private final List<CompiledStep> steps;
    private final Map<Link, BitSet> links = new LinkedHashMap<>();

    Reliance(Prover prover, Plan plan) {
        states = prover.states();
        vehicle = prover.vehicle();
        effects = new RepairEffects(states, vehicle);
        this.plan = plan;
        steps = prover.compile(plan);
        for (int i = 0; i < steps.size(); i++) {
            for (Part part : steps.get(i).parts()) {
                for (Condition condition : part.terms().conditions) {
                    for (int row : part.rows()) {
                        note(i, row, condition);
                    }
                }
            }
        }
    }

    private void note(int i, int row, Condition condition) {
        for (long[] alternative : condition.alternatives()) {
            BitSet.valueOf(alternative).stream()
                    .filter(s -> !states.isCondition(s))
                    .forEach(s -> note(i, row, s, condition.need().absent() ? Effect.CLEARS : Effect.SETS));
        }
    }

    /** Notes what the end of the plan relies on for a wanted state. */
    void note(int state, int row) {
        for (int part : states.parts(state)) {
            note(steps.size(), row, part, Effect.SETS);
        }
    }

    private void note(int to, int row, int state, Effect wanted) {
        if (states.isZoneScope(state) && row == vehicle.vehicle()) {
            for (int real : vehicle.real()) {
                last(to, real, state, wanted);
            }
        } else {
            last(to, states.isZoneScope(state) ? row : vehicle.vehicle(), state, wanted);
        }
    }

    private void last(int to, int row, int state, Effect wanted) {
        for (int j = to - 1; j >= 0; j--) {
            Effect effect = effects.of(steps.get(j), row, state);
            if (effect == wanted && !(wanted == Effect.CLEARS && sets(steps.get(j), state))) {
                links.computeIfAbsent(new Link(j, state, wanted == Effect.CLEARS, to), l -> new BitSet())
                        .set(row);
            }
            if (effect != Effect.NONE) {
                return;
            }
        }
    }

    /** What a step ends that it has begun itself, nobody relies on it for. */
    private boolean sets(CompiledStep step, int state) {
        return step.parts().stream()
                .flatMap(part -> part.terms().sets.stream())
                .anyMatch(change -> Bits.has(states.brings(change.state()), state));
    }

    List<Because> reasons() {
        List<Because> reasons = new ArrayList<>();
        for (int j = 0; j < steps.size(); j++) {
            for (Map.Entry<Link, BitSet> entry : links.entrySet()) {
                Link link = entry.getKey();
                if (link.from() == j) {
                    String to = link.to() == steps.size() ? "" : id(link.to());
                    List<String> zones =
                            entry.getValue().stream().mapToObj(vehicle::id).toList();
                    reasons.add(new Because(id(j), states.id(link.state()), link.ends(), zones, to));
                }
            }
        }
        return reasons;
    }

    private String id(int i) {
        return plan.steps().get(i).id();
    }

    /** Steps that something at the end relies on, directly or not. */
    BitSet served() {
        BitSet served = new BitSet();
        served.set(steps.size());
        for (int to = steps.size(); to >= 0; to--) {
            for (Link link : links.keySet()) {
                if (link.to() == to && served.get(to)) {
                    served.set(link.from());
                }
            }
        }
        served.clear(steps.size());
        return served;
    }
}
