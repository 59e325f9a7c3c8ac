package baywright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The one door from exact amounts to coins. */
public final class Rounding {

    /**
     * Decimals that an amount is cut to before it is rounded. A third of an hour leaves a tail of threes or nines; cut
     * back, half a penny is half a penny again.
     */
    private static final int BEYOND_DOUBT = 8;

    private Rounding() {}

    /**
     * Rounds an exact amount to the minor units of its currency (ISO 4217: pound 2, yen 0, dinar 3).
     *
     * @param mode how; named by the caller, never implied
     */
    public static Money toCoins(CurrencyUnit currency, BigDecimal exact, RoundingMode mode) {
        return Money.of(currency, exact.setScale(BEYOND_DOUBT, RoundingMode.HALF_EVEN), mode);
    }

    /**
     * Rounds an exact amount to whole multiples of a step, such as a tenth of a penny or five pounds.
     *
     * @param step above zero
     * @param mode how; named by the caller, never implied
     */
    static BigDecimal toStep(BigDecimal exact, BigDecimal step, RoundingMode mode) {
        return exact.setScale(BEYOND_DOUBT, RoundingMode.HALF_EVEN)
                .divide(step, BEYOND_DOUBT, RoundingMode.HALF_EVEN)
                .setScale(0, mode)
                .multiply(step);
    }
}
