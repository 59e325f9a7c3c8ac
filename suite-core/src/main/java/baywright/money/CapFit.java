package baywright.money;

import org.joda.money.Money;

/**
 * A price against the most that the customer pays, both with tax.
 *
 * @param cap   the most
 * @param asked the price
 */
public record CapFit(Money cap, Money asked) {

    public boolean fits() {
        return !asked.isGreaterThan(cap);
    }

    /** By how much the price is over; zero when it fits. */
    public Money over() {
        return fits() ? Money.zero(cap.getCurrencyUnit()) : asked.minus(cap);
    }

    /** How much is left; zero when it is over. */
    public Money spare() {
        return fits() ? cap.minus(asked) : Money.zero(cap.getCurrencyUnit());
    }
}
