package baywright.share;

import baywright.money.Fingerprint;
import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.Proof;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a job comes to.
 *
 * @param holds    whether nothing stops it
 * @param findings about its plan, its safety and its goals, in the order of the proof
 * @param attended mean hands-on minutes with set-ups, of all its vehicles
 * @param whole    minutes from the start of the first step to the end of the last one's hands-on time, of one vehicle on the
 *                 simple clock: one step after the other, waits kept, by day and by night
 * @param cost     what it costs the shop, unrounded, in the site's currency; empty while something stops it
 * @param price    what the customer is asked for, with tax, in coins, without contingency; empty while something stops it
 */
public record ImpactFigures(
        boolean holds,
        List<Finding> findings,
        BigDecimal attended,
        BigDecimal whole,
        Optional<BigDecimal> cost,
        Optional<BigDecimal> price) {

    public ImpactFigures {
        findings = List.copyOf(findings);
    }

    /** The figures of a job as it was worked. */
    public static ImpactFigures of(WorkedJob worked) {
        Optional<Quote> quote = worked.offer() instanceof Quote priced ? Optional.of(priced) : Optional.empty();
        return new ImpactFigures(
                quote.isPresent(),
                worked.findings(),
                worked.minutes(),
                worked.proof().clock().stream()
                        .map(Proof.Slot::end)
                        .max(BigDecimal::compareTo)
                        .orElse(BigDecimal.ZERO),
                quote.map(q -> q.ledger().cost()),
                quote.map(q -> q.price().gross().getAmount()));
    }

    /** Whether a reader finds the same figures and findings; where something is declared does not count. */
    public boolean saysTheSame(ImpactFigures other) {
        return holds == other.holds
                && same(attended, other.attended)
                && same(whole, other.whole)
                && same(cost, other.cost)
                && same(price, other.price)
                && without(other).isEmpty()
                && other.without(this).isEmpty();
    }

    private static boolean same(Optional<BigDecimal> a, Optional<BigDecimal> b) {
        return a.isPresent() == b.isPresent() && (a.isEmpty() || same(a.get(), b.get()));
    }

    private static boolean same(BigDecimal a, BigDecimal b) {
        return a.compareTo(b) == 0;
    }

    /** The findings that another has not, each as often as it is here more often. */
    public List<Finding> without(ImpactFigures other) {
        if (findings.equals(other.findings)) {
            return List.of();
        }
        Map<Finding, Integer> alike = new HashMap<>();
        other.findings.forEach(f -> alike.merge(f, 1, Integer::sum));
        List<Finding> own = findings.stream().filter(f -> !takeOne(alike, f)).toList();
        Map<String, Integer> there = new HashMap<>();
        alike.forEach((finding, times) -> there.merge(Fingerprint.of(finding), times, Integer::sum));
        List<Finding> more = new ArrayList<>();
        for (Finding finding : own) {
            if (!takeOne(there, Fingerprint.of(finding))) {
                more.add(finding);
            }
        }
        return more;
    }

    private static <T> boolean takeOne(Map<T, Integer> from, T one) {
        boolean there = from.containsKey(one);
        from.computeIfPresent(one, (f, times) -> times == 1 ? null : times - 1);
        return there;
    }
}
