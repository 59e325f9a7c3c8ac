package baywright.vehicle;

import java.math.BigDecimal;

/**
 * How much of the film is topcoat, and how much of that may be used up over the vehicle's life. All usual values are
 * common practice or from memory, no source; the shop's own figures replace them.
 *
 * @param factory     clear coat of factory paint as a share of the film, 0 to 1
 * @param factoryMost the most that a factory clear coat is taken for, µm
 * @param repaint     clear coat of a proven repaint, µm; never a share, as the rest may be filler
 * @param single      colour coat of single-stage paint as a share of the film, 0 to 1
 * @param singleMost  the most that such a coat is taken for, µm
 * @param life        what may ever be used up of the topcoat, as a share, 0 to 1
 */
public record TopcoatShares(
        BigDecimal factory,
        BigDecimal factoryMost,
        BigDecimal repaint,
        BigDecimal single,
        BigDecimal singleMost,
        BigDecimal life) {

    /** 0.35 up to 45 µm, 50 µm, 0.40 up to 50 µm, a quarter. */
    public static final TopcoatShares USUAL = new TopcoatShares(
            new BigDecimal("0.35"),
            BigDecimal.valueOf(45),
            BigDecimal.valueOf(50),
            new BigDecimal("0.40"),
            BigDecimal.valueOf(50),
            new BigDecimal("0.25"));

    public TopcoatShares {
        share("factory", factory);
        share("single", single);
        share("life", life);
        thickness("factoryMost", factoryMost);
        thickness("repaint", repaint);
        thickness("singleMost", singleMost);
    }

    private static void share(String name, BigDecimal value) {
        if (value.signum() < 0 || value.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException(
                    "the share '" + name + "' must be from 0 to 1, got " + value.toPlainString());
        }
    }

    private static void thickness(String name, BigDecimal value) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(
                    "the thickness '" + name + "' must not be negative, got " + value.toPlainString());
        }
    }

    /** Estimate of a factory clear coat, µm. */
    public BigDecimal factoryClear(BigDecimal film) {
        return factory.multiply(film).min(factoryMost);
    }

    /** Estimate of the colour coat of single-stage paint, µm. */
    public BigDecimal singleStage(BigDecimal film) {
        return single.multiply(film).min(singleMost);
    }
}
