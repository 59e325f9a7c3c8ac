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
}
