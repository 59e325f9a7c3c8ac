package baywright.vehicle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * From which film a shop draws which conclusion, µm. All usual values are common practice without a source; a shop sets
 * its own in {@code shop.json}.
 *
 * @param stopBelow    thinner than this nothing abrasive is done; also the floor that must be left, above 0
 * @param careBelow    thinner than this only the least aggressive is done; not below {@code stopBelow}
 * @param repaintAbove thicker than this on metal is held for a repaint until shown otherwise
 * @param fillerAbove  thicker than this there is filler below
 * @param gauge        how far the shop's gauge may be off
 * @param shares       how much of a topcoat may ever be used up
 * @param readings     how many readings a zone should have
 */
public record FilmLimits(
        BigDecimal stopBelow,
        BigDecimal careBelow,
        BigDecimal repaintAbove,
        BigDecimal fillerAbove,
        GaugeError gauge,
        TopcoatShares shares,
        ReadingCounts readings) {

    /** 60, 90, 200 and 600 µm, common practice, no source. */
    public static final FilmLimits USUAL = of(BigDecimal.valueOf(60), BigDecimal.valueOf(90));

    /** Fewer readings than this say less about a zone: from memory. */
    public static final int ENOUGH_READINGS = 5;

    /** What is taken off the lowest of too few readings at least, µm: from memory. */
    private static final BigDecimal FEW_ALLOWANCE = BigDecimal.valueOf(3);

    private static final int DECIMALS = 2;

    public FilmLimits {
        if (stopBelow.signum() <= 0 || stopBelow.compareTo(careBelow) > 0) {
            throw new IllegalArgumentException("film limits need 0 < stopBelow <= careBelow, got "
                    + stopBelow.toPlainString() + " and " + careBelow.toPlainString());
        }
        if (careBelow.compareTo(repaintAbove) > 0 || repaintAbove.compareTo(fillerAbove) > 0) {
            throw new IllegalArgumentException("film limits need careBelow <= repaintAbove <= fillerAbove, got "
                    + careBelow.toPlainString() + ", " + repaintAbove.toPlainString() + " and "
                    + fillerAbove.toPlainString());
        }
    }

    /** The two limits of a shop with the usual others, moved up where they would lie below. */
    public static FilmLimits of(BigDecimal stopBelow, BigDecimal careBelow) {
        return new FilmLimits(
                stopBelow,
                careBelow,
                careBelow.max(BigDecimal.valueOf(200)),
                careBelow.max(BigDecimal.valueOf(600)),
                GaugeError.USUAL,
                TopcoatShares.USUAL,
                ReadingCounts.USUAL);
    }

    /**
     * What is surely there where the lowest reading was taken: the reading less its expanded uncertainty; of fewer than
     * {@link #ENOUGH_READINGS} readings at least 3 µm less. Rounded down to 0.01 µm, not below zero.
     */
    public BigDecimal sure(BigDecimal lowest, int readings) {
        BigDecimal off = BigDecimal.valueOf(GaugeError.COVERAGE * gauge.standard(lowest.doubleValue()));
        BigDecimal allowance = readings < ENOUGH_READINGS ? off.max(FEW_ALLOWANCE) : off;
        return lowest.subtract(allowance, MathContext.DECIMAL64)
                .setScale(DECIMALS, RoundingMode.FLOOR)
                .max(BigDecimal.ZERO);
    }

    /** What the budget counts from: the lowest reading; of fewer than {@link #ENOUGH_READINGS} readings 3 µm less. */
    public BigDecimal countedFrom(BigDecimal lowest, int readings) {
        return readings < ENOUGH_READINGS ? lowest.subtract(FEW_ALLOWANCE).max(BigDecimal.ZERO) : lowest;
    }
}
