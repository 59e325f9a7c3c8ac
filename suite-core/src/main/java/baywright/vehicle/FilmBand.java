package baywright.vehicle;

import java.math.BigDecimal;

/**
 * What the total film of a zone says. Common practice, no source; the limits are the shop's.
 *
 * <p>The two thin bands are judged on what is surely there; the thick ones on the lowest reading itself, as taking
 * something off would hide a repaint.
 */
public enum FilmBand {
    /** Nothing abrasive: clean and protect only. */
    STOP,
    /** Only the least aggressive, and a word with the customer. */
    CARE,
    /** As the factory makes it. */
    ORDINARY,
    /** Held for a repaint until shown otherwise. */
    REPAINT,
    /** Filler below. */
    FILLER,
    /** No reading, or one that says nothing: to be treated as thin. */
    UNKNOWN;

    /**
     * The band of a zone.
     *
     * @param sure   what is surely there, µm
     * @param lowest the lowest reading, µm
     * @param plastic whether it is painted plastic or carbon, which carries less
     */
    static FilmBand of(BigDecimal sure, BigDecimal lowest, boolean plastic, FilmLimits limits) {
        if (sure.compareTo(limits.stopBelow()) < 0) {
            return STOP;
        }
        if (sure.compareTo(limits.careBelow()) < 0) {
            return CARE;
        }
        if (lowest.compareTo(limits.fillerAbove()) > 0) {
            return FILLER;
        }
        return lowest.compareTo(repaintAbove(plastic, limits)) > 0 ? REPAINT : ORDINARY;
    }

    /** Plastic over 150 µm where metal is suspected over 200: three quarters, from memory. */
    private static BigDecimal repaintAbove(boolean plastic, FilmLimits limits) {
        return plastic ? limits.repaintAbove().multiply(new BigDecimal("0.75")) : limits.repaintAbove();
    }

    /** Whether the paint may at most be treated with the least aggressive method. */
    public boolean isThin() {
        return this == STOP || this == CARE || this == UNKNOWN;
    }
}
