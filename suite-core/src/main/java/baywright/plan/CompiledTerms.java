package baywright.plan;

import baywright.library.StageTerms;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Need;
import baywright.library.StageTerms.Reach;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The terms of a stage as bits and ticks, for walking a plan. */
final class CompiledTerms {

    /**
     * A need or a wish.
     *
     * @param alternatives each a set of plain states that together fulfil it; an undeclared state gives none
     * @param undeclared   ids that it names and the library does not declare
     */
    record Condition(Need need, boolean wish, List<long[]> alternatives, boolean asksBay, List<String> undeclared) {}

    /** An effect on one declared state; {@code after} in ticks, 0 for at once; {@code effect} is how it is written. */
    record Change(int state, boolean sets, long after, Reach reach, List<long[]> unless, Effect effect) {}

    final StageTerms terms;
    final List<Condition> conditions = new ArrayList<>();
    final List<Change> clears = new ArrayList<>();
    final List<Change> sets = new ArrayList<>();
    final long leastWait;
    final long usualWait;
    final long mostWait;
    final String waitWhy;
    final boolean asksBay;

    CompiledTerms(StageTerms terms, StateIndex states) {
        this.terms = terms;
        terms.needs().forEach(n -> conditions.add(condition(n, false, states)));
        terms.prefers().forEach(n -> conditions.add(condition(n, true, states)));
        asksBay = conditions.stream().anyMatch(Condition::asksBay);
        for (Effect effect : terms.effects()) {
            int state = states.of(effect.state());
            if (state >= 0) {
                change(effect, state, states);
            }
        }
        BigDecimal least = BigDecimal.ZERO;
        BigDecimal usual = BigDecimal.ZERO;
        BigDecimal most = BigDecimal.ZERO;
        boolean bounded = !terms.standing().isEmpty();
        StringBuilder why = new StringBuilder();
        for (StageTerms.Standing wait : terms.standing()) {
            least = least.add(wait.least());
            usual = usual.add(wait.usual());
            most = most.add(wait.most().orElse(BigDecimal.ZERO));
            bounded &= wait.most().isPresent();
            why.append(why.isEmpty() || wait.why().isEmpty() ? "" : "; ").append(wait.why());
        }
        leastWait = Ticks.of(least);
        usualWait = Ticks.of(usual);
        mostWait = bounded ? Ticks.of(most) : Ticks.NEVER;
        waitWhy = why.toString();
    }

    private static Condition condition(Need need, boolean wish, StateIndex states) {
        List<long[]> alternatives = alternatives(need.anyOf(), states);
        boolean asksBay = alternatives.stream().anyMatch(a -> Bits.meet(a, states.conditions()));
        List<String> undeclared =
                need.anyOf().stream().filter(id -> states.of(id) < 0).toList();
        return new Condition(need, wish, alternatives, asksBay, undeclared);
    }

    private static List<long[]> alternatives(List<String> anyOf, StateIndex states) {
        return anyOf.stream()
                .mapToInt(states::of)
                .filter(s -> s >= 0)
                .mapToObj(s -> states.setOf(states.parts(s)))
                .toList();
    }

    private void change(Effect effect, int state, StateIndex states) {
        List<long[]> unless = effect.unless().isEmpty() ? List.of() : alternatives(List.of(effect.unless()), states);
        long after = effect.after().map(q -> Ticks.of(q.inBase())).orElse(0L);
        Change change = new Change(state, effect.sets(), after, effect.reach(), unless, effect);
        (effect.sets() ? sets : clears).add(change);
    }

    boolean stands() {
        return usualWait > 0 || leastWait > 0 || mostWait != Ticks.NEVER;
    }
}
