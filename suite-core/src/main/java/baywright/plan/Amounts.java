package baywright.plan;

import java.math.BigDecimal;
import java.util.Optional;

/** Bounds that keep arithmetic on amounts from outside exact and small. */
final class Amounts {

    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000L);
    private static final int DIGITS = 20;

    private Amounts() {}

    /** Whether a number is within a thousand million and has at most twenty digits after the point. */
    static boolean isSane(BigDecimal number) {
        return number.scale() <= DIGITS
                && number.scale() >= -DIGITS
                && number.abs().compareTo(MOST) <= 0;
    }

    /** The number that a text writes, when it is one within those bounds. */
    static Optional<BigDecimal> sane(String text) {
        try {
            return Optional.of(new BigDecimal(text.strip())).filter(Amounts::isSane);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
