package baywright.chance;

import baywright.quantity.Normal;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * From a normal score to the value of a beta distribution on [0, 1] that is exceeded as rarely. Between its knots it is the
 * cubic that has the distribution's own values and slopes at both; it is off by less than a millionth of the range. Scores
 * beyond six and a half, one in twenty thousand million, count as that.
 */
final class QuantileCurve {

    private static final double UTMOST = 6.5;
    private static final int PER_UNIT = 16;
    private static final int PIECES = (int) (2 * UTMOST * PER_UNIT);

    /** Value and slope by turns; slopes are for one piece. */
    private final double[] knots = new double[2 * (PIECES + 1)];

    private QuantileCurve() {}

    /**
     * The curve of a shape.
     *
     * @param alpha from 1
     * @param beta  from 1
     */
    static QuantileCurve of(double alpha, double beta) {
        QuantileCurve curve = new QuantileCurve();
        BetaDistribution shape = BetaDistribution.of(alpha, beta);
        for (int k = 0; k <= PIECES; k++) {
            double score = (double) k / PER_UNIT - UTMOST;
            double tail = Normal.below(-Math.abs(score));
            double value =
                    score < 0 ? shape.inverseCumulativeProbability(tail) : shape.inverseSurvivalProbability(tail);
            curve.knots[2 * k] = value;
            curve.knots[2 * k + 1] = density(score) / shape.density(value) / PER_UNIT;
        }
        return curve;
    }

    private static double density(double score) {
        return Math.exp(-score * score / 2) / Math.sqrt(2 * Math.PI);
    }

    /** The value, from 0 to 1, at a normal score. */
    double at(double score) {
        double place = (score + UTMOST) * PER_UNIT;
        if (!(place > 0)) {
            return knots[0];
        }
        if (place >= PIECES) {
            return knots[2 * PIECES];
        }
        int piece = (int) place;
        double u = place - piece;
        int k = 2 * piece;
        double left = knots[k];
        double slope = knots[k + 1];
        double rise = knots[k + 2] - left;
        double bend = knots[k + 3] + slope - 2 * rise;
        return left + u * (slope + u * (rise - slope - bend + u * bend));
    }
}
