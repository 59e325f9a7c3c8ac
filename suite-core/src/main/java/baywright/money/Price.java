package baywright.money;

import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * A price in coins, with the exact net amount that it came from.
 *
 * @param exactNet unrounded, without tax
 * @param net      without tax
 * @param tax      the tax
 * @param gross    what the customer pays; always {@code net + tax}
 */
public record Price(BigDecimal exactNet, Money net, Money tax, Money gross) {
    public Price {
        if (!net.plus(tax).isEqual(gross)) {
            throw new IllegalArgumentException(
                    "net and tax must add up to gross, got " + net + " + " + tax + " = " + gross);
        }
    }
}
