package baywright.quantity;

/** Student's t distribution with a whole number of degrees of freedom. */
public final class StudentT {

    private static final int HALVINGS = 200;
    private static final double UTMOST = 1e6;
    private static final int LIKE_NORMAL = 100_000;

    private StudentT() {}

    /**
     * How many standard uncertainties to either side hold a value with a confidence: 4.303 for 95 % and 2 degrees of
     * freedom (GUM, JCGM 100:2008, table G.2).
     *
     * @param confidence two-sided, above 0 and below 1
     * @param degrees    of freedom, from 1
     * @throws IllegalArgumentException for anything else
     */
    public static double coverage(double confidence, int degrees) {
        if (degrees < 1 || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("a coverage factor needs a confidence above 0 and below 1 and degrees"
                    + " of freedom from 1, got " + confidence + " and " + degrees);
        }
        if (degrees > LIKE_NORMAL) {
            return Normal.quantile((1 + confidence) / 2);
        }
        double low = 0;
        double high = UTMOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (within(middle, degrees) < confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Chance of a value from -t to t. Finite sums: Abramowitz, Stegun, Handbook of Mathematical Functions (1964), 26.7.3
     * and 26.7.4.
     *
     * @param t       not negative
     * @param degrees of freedom, from 1
     */
    public static double within(double t, int degrees) {
        double angle = Math.atan(t / Math.sqrt(degrees));
        double cosine = Math.cos(angle);
        boolean odd = degrees % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = degrees == 1 ? 0 : term;
        for (int n = odd ? 3 : 2; n < degrees; n += 2) {
            term *= cosine * cosine * (n - 1) / n;
            sum += term;
        }
        double sine = Math.sin(angle) * sum;
        return odd ? 2 / Math.PI * (angle + sine) : sine;
    }
}
