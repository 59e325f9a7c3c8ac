package baywright.chance;

import baywright.quantity.Normal;
import java.util.Arrays;

/** Many values of one figure, such as the finish of each simulated run. Never changes. */
public final class Sample {

    private static final double WHOLE = 1e-6;

    private final double[] sorted;
    private final double mean;
    private final double deviation;

    /**
     * An interval for a figure that a finite number of runs leaves a little open.
     *
     * @param low  its lower end
     * @param high its upper end
     */
    public record Band(double low, double high) {}

    private Sample(double[] sorted, double mean, double deviation) {
        this.sorted = sorted;
        this.mean = mean;
        this.deviation = deviation;
    }

    /**
     * A sample of some values, in any order.
     *
     * @throws IllegalArgumentException when there are none, or one is no number
     */
    public static Sample of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("a sample needs at least one value");
        }
        double mean = 0;
        double squares = 0;
        // running update of Welford, Technometrics 4 (1962) 419
        for (int i = 0; i < values.length; i++) {
            double off = values[i] - mean;
            mean += off / (i + 1);
            squares += off * (values[i] - mean);
        }
        if (!Double.isFinite(mean)) {
            throw new IllegalArgumentException("a sample needs finite numbers, got a mean of " + mean);
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Sample(sorted, mean, values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0);
    }

    public int size() {
        return sorted.length;
    }

    public double mean() {
        return mean;
    }

    /** Standard deviation with one less than the size; zero for one value. */
    public double deviation() {
        return deviation;
    }

    /** Standard error of the mean. */
    public double errorOfMean() {
        return deviation / Math.sqrt(sorted.length);
    }

    /**
     * The value that a share of the values does not exceed, linear between neighbours: definition 7 of Hyndman, Fan, The
     * American Statistician 50 (1996) 361.
     *
     * @param share from 0 (the least) to 1 (the most)
     */
    public double quantile(double share) {
        requireShare(share);
        double rank = (sorted.length - 1) * share;
        int below = (int) rank;
        double low = sorted[below];
        return below + 1 < sorted.length ? low + (rank - below) * (sorted[below + 1] - low) : low;
    }

    /**
     * The least of the values that a share of them does not exceed: definition 1 of Hyndman and Fan. For values between
     * which nothing lies, such as moments of opening hours.
     *
     * @param share from 0 to 1
     */
    public double reached(double share) {
        requireShare(share);
        // a product such as 0.95 × 20 may be a hair above the whole number that it is
        int rank = (int) Math.ceil(sorted.length * share - WHOLE);
        return sorted[Math.max(1, rank) - 1];
    }

    /**
     * Where a quantile lies with a confidence: the values at the ranks {@code np ± z √(np(1−p))}, rounded (binomial ranks;
     * Hahn, Meeker, Statistical Intervals).
     *
     * @param share      from 0 to 1
     * @param confidence two-sided, above 0 and below 1, such as 0.95
     */
    public Band band(double share, double confidence) {
        return new Band(sorted[rank(share, confidence, -1) - 1], sorted[rank(share, confidence, 1) - 1]);
    }

    /** The rank, from 1, of one end of a band; {@code side} −1 for the lower end, 1 for the upper. */
    int rank(double share, double confidence, int side) {
        requireShare(share);
        double n = sorted.length;
        double z = Normal.quantile((1 + confidence) / 2);
        long rank = Math.round(n * share + side * z * Math.sqrt(n * share * (1 - share)));
        return (int) Math.max(1, Math.min(sorted.length, rank));
    }

    /** Share of the values that are at most so much. */
    public double within(double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) low / sorted.length;
    }

    /**
     * Where the chance to be at most so much lies with a confidence (score interval: Wilson, J. American Statistical
     * Association 22 (1927) 209).
     *
     * @param confidence two-sided, above 0 and below 1
     */
    public Band withinBand(double value, double confidence) {
        double n = sorted.length;
        double p = within(value);
        double z = Normal.quantile((1 + confidence) / 2);
        double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
        double half = z / (1 + z * z / n) * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        return new Band(Math.max(0, middle - half), Math.min(1, middle + half));
    }

    /** The values in order of size. */
    public double[] sorted() {
        return sorted.clone();
    }

    private static void requireShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a quantile needs a share from 0 to 1, got " + share);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sample sample
                && Arrays.equals(sorted, sample.sorted)
                && Double.compare(mean, sample.mean) == 0
                && Double.compare(deviation, sample.deviation) == 0;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(sorted);
    }

    @Override
    public String toString() {
        return "Sample of " + sorted.length + ", mean " + mean + ", deviation " + deviation;
    }
}
