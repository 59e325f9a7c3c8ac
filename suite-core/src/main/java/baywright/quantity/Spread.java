package baywright.quantity;

import java.util.Collection;

/**
 * Mean and standard deviation of a sample, by the running update of Welford, Technometrics 4 (1962) 419, which does not
 * lose digits where a sum of squares does.
 *
 * @param count     how many values, at least one
 * @param mean      arithmetic mean
 * @param deviation sample standard deviation with {@code count - 1}; zero for a single value
 */
public record Spread(int count, double mean, double deviation) {

    public Spread {
        if (count < 1 || !Double.isFinite(mean) || !(deviation >= 0)) {
            throw new IllegalArgumentException("a spread needs a count from 1, a mean and a deviation from 0, got "
                    + count + ", " + mean + ", " + deviation);
        }
    }

    /**
     * The spread of some values.
     *
     * @throws IllegalArgumentException when there are none
     */
    public static Spread of(Collection<? extends Number> values) {
        int count = 0;
        double mean = 0;
        double squares = 0;
        for (Number value : values) {
            count++;
            double off = value.doubleValue() - mean;
            mean += off / count;
            squares += off * (value.doubleValue() - mean);
        }
        return new Spread(count, mean, count > 1 ? Math.sqrt(squares / (count - 1)) : 0);
    }

    /** Standard deviation of the mean: the deviation over the root of the count (GUM, JCGM 100:2008, 4.2.3). */
    public double ofMean() {
        return deviation / Math.sqrt(count);
    }
}
