package baywright.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDateTime;

/** Minutes as whole ten-thousandths, so that a clock adds and compares exactly; beyond ten thousand million it stays. */
final class Ticks {

    static final long NEVER = Long.MAX_VALUE;

    private static final int DIGITS = 4;
    private static final long PER_MINUTE = 10_000;
    private static final long LIMIT_MINUTES = 10_000_000_000L;
    private static final BigDecimal LIMIT = BigDecimal.valueOf(LIMIT_MINUTES);

    private Ticks() {}

    /** Rounded half up to a ten-thousandth of a minute. */
    static long of(BigDecimal minutes) {
        BigDecimal kept = minutes.min(LIMIT).max(LIMIT.negate());
        return kept.setScale(DIGITS, RoundingMode.HALF_UP).unscaledValue().longValueExact();
    }

    static long between(LocalDateTime from, LocalDateTime to) {
        long seconds = Duration.between(from, to).toSeconds();
        long kept = Math.max(-LIMIT_MINUTES, Math.min(LIMIT_MINUTES, seconds / 60));
        return kept == seconds / 60 ? kept * PER_MINUTE + (seconds % 60) * PER_MINUTE / 60 : kept * PER_MINUTE;
    }

    static BigDecimal minutes(long ticks) {
        BigDecimal exact = BigDecimal.valueOf(ticks, DIGITS).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }
}
