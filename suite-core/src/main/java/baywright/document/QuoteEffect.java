package baywright.document;

import java.math.BigDecimal;

/**
 * What a change makes of the figures of a quote.
 *
 * @param net   change of the price without tax, unrounded
 * @param gross change of the price with tax, in coins
 * @param cost  change of what the job costs the shop, unrounded
 */
public record QuoteEffect(BigDecimal net, BigDecimal gross, BigDecimal cost) {

    static final QuoteEffect NONE = new QuoteEffect(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    QuoteEffect minus(QuoteEffect other) {
        return new QuoteEffect(net.subtract(other.net), gross.subtract(other.gross), cost.subtract(other.cost));
    }

    /** Whether it is less than a hundredth of everything. */
    public boolean isNothing() {
        BigDecimal cent = new BigDecimal("0.005");
        return net.abs().compareTo(cent) < 0
                && gross.signum() == 0
                && cost.abs().compareTo(cent) < 0;
    }
}
