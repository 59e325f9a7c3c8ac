package baywright.money;

import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * {@code quantity × rate = amount}, exact. Minutes for the time kinds, the site's currency for cost and price.
 *
 * @param kind     what it counts
 * @param step     id of the step; empty for what the job as a whole needs
 * @param priority priority of the step; for the job as a whole the highest one that needs it
 * @param subject  id of the stage, the family or the item
 * @param quantity how much, negative only for what is given back
 * @param unit     what the quantity counts: a driver, h, pack, job, or the currency for a share of a sum
 * @param rate     amount for each
 * @param trail    where the numbers come from
 */
public record LedgerLine(
        LineKind kind,
        Optional<String> step,
        Priority priority,
        String subject,
        BigDecimal quantity,
        String unit,
        BigDecimal rate,
        List<Origin> trail) {

    public LedgerLine {
        trail = List.copyOf(trail);
        if (trail.isEmpty()) {
            throw new IllegalArgumentException("line " + kind + " of " + subject + " has no trail");
        }
    }

    /** The product, unrounded. */
    public BigDecimal amount() {
        return quantity.multiply(rate);
    }
}
