package baywright.quantity;

/** The standard normal distribution. */
public final class Normal {

    private static final double ROOT_OF_TWO = Math.sqrt(2);

    /** From here on the tail is worked out by its continued fraction, as one less a sum would lose its digits. */
    private static final double FAR = 3;

    private static final int FRACTION_DEPTH = 60;
    private static final double UTMOST = 39;
    private static final int HALVINGS = 120;

    private Normal() {}

    /**
     * Chance of a value not above {@code z}, to about 1e-11 relative. Series and continued fraction of the error
     * function: Abramowitz, Stegun, Handbook of Mathematical Functions (1964), 7.1.6 and 7.1.14.
     *
     * @param z standard deviations from the mean; infinite values give 0 and 1
     */
    public static double below(double z) {
        double x = -z / ROOT_OF_TWO;
        return x >= 0 ? tail(x) / 2 : 1 - tail(-x) / 2;
    }

    /**
     * The value that is not exceeded with a chance.
     *
     * @param chance above 0 and below 1
     * @throws IllegalArgumentException for any other chance
     */
    public static double quantile(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("a quantile needs a chance above 0 and below 1, got " + chance);
        }
        double low = -UTMOST;
        double high = UTMOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Complement of the error function for x from 0. */
    private static double tail(double x) {
        if (Double.isInfinite(x)) {
            return 0;
        }
        return x < FAR ? 1 - series(x) : fraction(x);
    }

    private static double series(double x) {
        double term = x;
        double sum = x;
        for (int n = 1; term > sum * 1e-17; n++) {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }

    private static double fraction(double x) {
        double below = x;
        for (int n = FRACTION_DEPTH; n > 0; n--) {
            below = x + n / 2.0 / below;
        }
        return Math.exp(-x * x) / (Math.sqrt(Math.PI) * below);
    }
}
