package baywright.money;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * A price in coins, with the exact net amount that it came from.
 *
 * @param exactNet unrounded, without tax
 * @param net      without tax
 * @param tax      the tax
 * @param gross    what the customer pays; always {@code net + tax}
 * @param taxes    net and tax by rate; they add up to {@code net} and {@code tax}
 */
public record Price(BigDecimal exactNet, Money net, Money tax, Money gross, List<Tax> taxes) {

    /** Net and tax at one rate. */
    public record Tax(BigDecimal percent, Money net, Money tax) {}

    public Price {
        taxes = List.copyOf(taxes);
        if (!net.plus(tax).isEqual(gross)) {
            throw new IllegalArgumentException(
                    "net and tax must add up to gross, got " + net + " + " + tax + " = " + gross);
        }
    }
}
