package baywright.vehicle;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How far a film gauge may be off: ±(fixed + percent of the reading), as its maker states it. Within these limits every
 * error counts as equally likely (a rectangle), so that the standard uncertainty is the limit over the root of three.
 * Source: JCGM 100:2008 (GUM) 4.2.3, 4.3.7, 5.1.2, 6.2.
 *
 * @param fixed   µm, not negative
 * @param percent of the reading, 0 to 100
 */
public record GaugeError(BigDecimal fixed, BigDecimal percent) {

    /** ±(1 µm + 1 %): from memory, the usual figure for magnetic and eddy-current gauges. */
    public static final GaugeError USUAL = new GaugeError(BigDecimal.ONE, BigDecimal.ONE);

    /** Coverage factor of expanded uncertainties; 95.45 % for a normal distribution (GUM, table G.1). */
    public static final int COVERAGE = 2;

    private static final double ROOT_OF_THREE = Math.sqrt(3);

    public GaugeError {
        if (fixed.signum() < 0 || percent.signum() < 0 || percent.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw new IllegalArgumentException("a gauge error needs fixed >= 0 and percent from 0 to 100, got "
                    + fixed.toPlainString() + " and " + percent.toPlainString());
        }
    }

    /** The most that a reading may be off, µm. */
    public BigDecimal limit(BigDecimal reading) {
        return fixed.add(percent.multiply(reading).movePointLeft(2), MathContext.DECIMAL64);
    }

    /** Standard uncertainty of a reading from the gauge alone, µm. */
    public double standard(double reading) {
        return limit(BigDecimal.valueOf(reading)).doubleValue() / ROOT_OF_THREE;
    }

    /**
     * Standard uncertainty of the mean of several readings on one spot, µm: gauge and repeatability, root of the sum of
     * squares.
     *
     * @param mean      of the readings, µm
     * @param deviation their standard deviation, µm
     * @param count     how many, at least 1
     */
    public double standardOfSpot(double mean, double deviation, int count) {
        return Math.hypot(standard(mean), deviation / Math.sqrt(count));
    }

    /** Expanded uncertainty of such a mean, µm: {@link #COVERAGE} times the standard one. */
    public double expandedOfSpot(double mean, double deviation, int count) {
        return COVERAGE * standardOfSpot(mean, deviation, count);
    }
}
