package baywright.money;

import java.math.BigDecimal;

/**
 * Gain as a share of the cost (markup) against gain as a share of the price (margin):
 * {@code margin = markup / (1 + markup)}.
 *
 * @param percent gain in percent of the cost, above −100
 */
public record Markup(BigDecimal percent) {

    public Markup {
        if (percent.compareTo(Percent.HUNDRED.negate()) <= 0) {
            throw new IllegalArgumentException("a markup must be above -100 %, got " + percent.toPlainString());
        }
    }

    /**
     * The markup that leaves a margin.
     *
     * @param marginPercent gain in percent of the price, below 100
     * @throws IllegalArgumentException at 100 or more: no price has such a margin
     */
    public static Markup leaving(BigDecimal marginPercent) {
        if (marginPercent.compareTo(Percent.HUNDRED) >= 0) {
            throw new IllegalArgumentException(
                    "a margin must be below 100 % of the price, got " + marginPercent.toPlainString());
        }
        return new Markup(marginPercent
                .multiply(Percent.HUNDRED)
                .divide(Percent.HUNDRED.subtract(marginPercent), Rates.PRECISION));
    }

    /**
     * The margin of a price over its cost in percent of the price.
     *
     * @param price not zero
     */
    public static BigDecimal marginPercent(BigDecimal price, BigDecimal cost) {
        return price.subtract(cost).multiply(Percent.HUNDRED).divide(price, Rates.PRECISION);
    }

    /** Gain in percent of the price. */
    public BigDecimal marginPercent() {
        return percent.multiply(Percent.HUNDRED).divide(Percent.HUNDRED.add(percent), Rates.PRECISION);
    }

    /** Cost with the markup on it. */
    public BigDecimal on(BigDecimal cost) {
        return cost.multiply(Percent.raised(percent));
    }
}
