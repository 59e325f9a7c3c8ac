package baywright.quantity;

import java.math.BigDecimal;

/**
 * A three-point estimate in a base unit (minutes for times, µm for film).
 *
 * <p>Mean and variance are those of Malcolm, Roseboom, Clark, Fazar, Operations Research 7 (1959) 646:
 * {@code (a + 4m + b)/6} and {@code ((b − a)/6)²}. The distribution that a simulation draws from has the same mean and
 * another variance.
 *
 * @param least  smallest value seen in practice, not negative
 * @param likely most frequent value, from {@code least} to {@code most}
 * @param most   largest value seen in practice
 */
public record ThreePoint(BigDecimal least, BigDecimal likely, BigDecimal most) {

    public static final ThreePoint ZERO = new ThreePoint(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    private static final BigDecimal FOUR = BigDecimal.valueOf(4);
    private static final BigDecimal SIX = BigDecimal.valueOf(6);

    public ThreePoint {
        if (least.signum() < 0 || likely.compareTo(least) < 0 || most.compareTo(likely) < 0) {
            throw new IllegalArgumentException("a three-point estimate needs 0 <= least <= likely <= most, got "
                    + least.toPlainString() + ", " + likely.toPlainString() + ", " + most.toPlainString());
        }
    }

    public static ThreePoint of(String least, String likely, String most) {
        return new ThreePoint(new BigDecimal(least), new BigDecimal(likely), new BigDecimal(most));
    }

    /** The mean, to 16 significant digits. */
    public BigDecimal mean() {
        return least.add(likely.multiply(FOUR)).add(most).divide(SIX, Quantity.PRECISION);
    }

    /** The variance in the square of the unit, to 16 significant digits. */
    public BigDecimal variance() {
        BigDecimal deviation = most.subtract(least).divide(SIX, Quantity.PRECISION);
        return deviation.multiply(deviation, Quantity.PRECISION);
    }

    /** Sum of fully correlated estimates: point by point. */
    public ThreePoint plus(ThreePoint other) {
        return new ThreePoint(least.add(other.least), likely.add(other.likely), most.add(other.most));
    }

    /** All three points multiplied by a factor that is not negative. */
    public ThreePoint times(BigDecimal factor) {
        return new ThreePoint(least.multiply(factor), likely.multiply(factor), most.multiply(factor));
    }
}
