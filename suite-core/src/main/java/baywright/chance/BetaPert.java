package baywright.chance;

import baywright.quantity.ThreePoint;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The distribution that a three-point estimate is drawn from: a beta distribution on [least, most] with
 * {@code alpha = 1 + 4 (likely − least)/(most − least)} and {@code beta = 1 + 4 (most − likely)/(most − least)}.
 *
 * <p>Its mean is the textbook's {@code (least + 4 likely + most)/6} (Malcolm, Roseboom, Clark, Fazar, Operations Research
 * 7 (1959) 646). Its variance is {@code (mean − least)(most − mean)/7} and not the textbook's
 * {@code ((most − least)/6)²}; {@link ThreePoint#variance()} is the latter. Whatever is simulated uses this one.
 *
 * @param points the estimate; three equal points are a constant
 */
public record BetaPert(ThreePoint points) {

    /** How much the likely value weighs against the two ends; alpha and beta add up to it and two. */
    static final double WEIGHT = 4;

    public double least() {
        return points.least().doubleValue();
    }

    public double most() {
        return points.most().doubleValue();
    }

    /** Whether it is one value only. */
    public boolean constant() {
        return points.least().compareTo(points.most()) == 0;
    }

    /** First parameter, from 1 to 5; 3 for a constant. */
    public double alpha() {
        return constant()
                ? 1 + WEIGHT / 2
                : 1 + WEIGHT * (points.likely().doubleValue() - least()) / (most() - least());
    }

    /** Second parameter, from 1 to 5. */
    public double beta() {
        return 2 + WEIGHT - alpha();
    }

    public double mean() {
        return points.mean().doubleValue();
    }

    public double variance() {
        return (mean() - least()) * (most() - mean()) / (3 + WEIGHT);
    }

    public double deviation() {
        return Math.sqrt(variance());
    }

    /** Chance of a value not above {@code value}. */
    public double below(double value) {
        if (constant()) {
            return value < least() ? 0 : 1;
        }
        return shape().cumulativeProbability((value - least()) / (most() - least()));
    }

    /**
     * The value that is not exceeded with a chance.
     *
     * @param chance from 0 to 1
     * @throws IllegalArgumentException for any other chance
     */
    public double quantile(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("a quantile needs a chance from 0 to 1, got " + chance);
        }
        return constant() ? least() : least() + (most() - least()) * shape().inverseCumulativeProbability(chance);
    }

    private BetaDistribution shape() {
        return BetaDistribution.of(alpha(), beta());
    }
}
