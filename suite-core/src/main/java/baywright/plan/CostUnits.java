package baywright.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Costs as whole millionths, so that a search adds and compares exactly. A minute weighs one of them besides what it
 * costs: of two plans that cost the same, the shorter is the cheaper.
 */
final class CostUnits {

    private static final int DIGITS = 6;
    private static final BigDecimal LIMIT = new BigDecimal("1000000000");

    private CostUnits() {}

    static long of(BigDecimal cost, BigDecimal minutes) {
        return cost.min(LIMIT)
                        .setScale(DIGITS, RoundingMode.HALF_UP)
                        .unscaledValue()
                        .longValueExact()
                + minutes.min(LIMIT).setScale(0, RoundingMode.DOWN).longValueExact();
    }

    /** Rounded down: a bound from below stays one. */
    static BigDecimal cost(long units) {
        return BigDecimal.valueOf(units, DIGITS).setScale(4, RoundingMode.DOWN);
    }
}
