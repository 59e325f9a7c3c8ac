package baywright.share;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How figures of a job move.
 *
 * @param attended change of the hands-on minutes
 * @param whole    change of the minutes from first to last
 * @param cost     change of what it costs the shop; empty where something stops the job before or after
 * @param price    change of what the customer is asked for; empty where something stops the job before or after
 */
public record ImpactEffect(
        BigDecimal attended, BigDecimal whole, Optional<BigDecimal> cost, Optional<BigDecimal> price) {

    static ImpactEffect between(ImpactFigures before, ImpactFigures after) {
        return new ImpactEffect(
                after.attended().subtract(before.attended()),
                after.whole().subtract(before.whole()),
                less(after.cost(), before.cost()),
                less(after.price(), before.price()));
    }

    /** What is left of this without another. */
    ImpactEffect minus(ImpactEffect other) {
        return new ImpactEffect(
                attended.subtract(other.attended),
                whole.subtract(other.whole),
                less(cost, other.cost),
                less(price, other.price));
    }

    private static Optional<BigDecimal> less(Optional<BigDecimal> of, Optional<BigDecimal> what) {
        return of.flatMap(a -> what.map(a::subtract));
    }

    /** Whether no figure that can be told moves. */
    public boolean isNothing() {
        return attended.signum() == 0
                && whole.signum() == 0
                && cost.map(BigDecimal::signum).orElse(0) == 0
                && price.map(BigDecimal::signum).orElse(0) == 0;
    }
}
