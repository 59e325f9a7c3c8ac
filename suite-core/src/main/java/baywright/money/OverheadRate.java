package baywright.money;

import java.math.BigDecimal;

/**
 * Overhead spread over a base such as sold hours: estimated overhead / estimated base. The method is the predetermined
 * overhead rate of cost accounting.
 *
 * @param perUnit overhead for each unit of the base, not negative
 */
public record OverheadRate(BigDecimal perUnit) {

    public OverheadRate {
        if (perUnit.signum() < 0) {
            throw new IllegalArgumentException("an overhead rate must not be negative, got " + perUnit);
        }
    }

    /**
     * From a budget.
     *
     * @param overhead estimated overhead of the year
     * @param base     estimated base of the year (hours, or a sum of labour), above zero
     */
    public static OverheadRate of(BigDecimal overhead, BigDecimal base) {
        if (base.signum() <= 0) {
            throw new IllegalArgumentException("overhead needs a base above zero, got " + base);
        }
        return new OverheadRate(overhead.divide(base, Rates.PRECISION));
    }

    /** Overhead that the jobs carry. */
    public BigDecimal applied(BigDecimal base) {
        return perUnit.multiply(base);
    }

    /** How much more the jobs carried than there was; negative when they carried too little. */
    public BigDecimal overApplied(BigDecimal base, BigDecimal actualOverhead) {
        return applied(base).subtract(actualOverhead);
    }
}
