package baywright.plan;

import baywright.quantity.Normal;
import baywright.quantity.Spread;
import baywright.quantity.ThreePoint;
import baywright.vehicle.FilmLimits;
import java.math.BigDecimal;
import java.util.Collection;

/**
 * What film will be left, taken as normally distributed: the film before the work less independent removals, variances
 * added.
 *
 * @param mean      expected film, µm; below zero when more is planned away than there is
 * @param deviation standard deviation, µm, not negative
 */
public record RemainingFilm(double mean, double deviation) {

    public RemainingFilm {
        if (!Double.isFinite(mean) || !(deviation >= 0)) {
            throw new IllegalArgumentException(
                    "remaining film needs a mean and a deviation from 0, got " + mean + " and " + deviation);
        }
    }

    /** Anywhere on the panel: mean and spread of the readings, and what the gauge may be off. */
    static RemainingFilm anywhere(Spread readings, FilmLimits limits) {
        return new RemainingFilm(readings.mean(), readings.deviation())
                .blurred(limits.gauge().standard(readings.mean()));
    }

    /** Where the lowest reading was taken: known but for what the gauge may be off. */
    static RemainingFilm at(BigDecimal reading, FilmLimits limits) {
        return new RemainingFilm(reading.doubleValue(), limits.gauge().standard(reading.doubleValue()));
    }

    private RemainingFilm blurred(double uncertainty) {
        return new RemainingFilm(mean, Math.hypot(deviation, uncertainty));
    }

    /** What is left after a removal with its own mean and deviation, both µm and not negative. */
    public RemainingFilm less(double removed, double spread) {
        return new RemainingFilm(mean - removed, Math.hypot(deviation, spread));
    }

    /**
     * What is left after several removals in whatever order: their means and variances are summed exactly first.
     *
     * @param removals three points each, µm
     */
    public RemainingFilm less(Collection<ThreePoint> removals) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal variance = BigDecimal.ZERO;
        for (ThreePoint removal : removals) {
            sum = sum.add(removal.mean());
            variance = variance.add(removal.variance());
        }
        return less(sum.doubleValue(), Math.sqrt(variance.doubleValue()));
    }

    /** Chance, 0 to 1, that less than the floor is left. */
    public double chanceBelow(double floor) {
        return deviation == 0 ? (mean < floor ? 1 : 0) : Normal.below((floor - mean) / deviation);
    }

    /**
     * The most that may still be taken off, at this deviation, for a chance of going below the floor.
     *
     * @param floor  µm
     * @param chance above 0 and below 1
     * @return µm; negative when even now the chance is larger
     */
    public double mostFor(double floor, double chance) {
        return mean - floor + Normal.quantile(chance) * deviation;
    }
}
