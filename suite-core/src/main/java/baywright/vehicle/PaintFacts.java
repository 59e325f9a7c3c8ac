package baywright.vehicle;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the survey knows about the paint of a zone beside its readings.
 *
 * @param system  which paint it is
 * @param repaint whether it is the factory's
 * @param topcoat µm of the topcoat alone, where a layer gauge read it; above 0
 * @param removed µm that earlier jobs took off, not negative
 */
public record PaintFacts(Kind system, Repaint repaint, Optional<BigDecimal> topcoat, BigDecimal removed) {

    /** Ids of the facts as the library declares them. */
    public static final String PAINT = "paint";

    public static final String REPAINT = "repaint";
    public static final String REPAINTED_DAYS = "repainted-days";
    public static final String TOPCOAT = "topcoat";
    public static final String REMOVED = "film-removed";

    public static final PaintFacts UNSURVEYED =
            new PaintFacts(Kind.CLEAR_OVER_BASE, Repaint.UNKNOWN, Optional.empty(), BigDecimal.ZERO);

    public PaintFacts {
        if (removed.signum() < 0 || topcoat.filter(t -> t.signum() <= 0).isPresent()) {
            throw new IllegalArgumentException("paint facts need topcoat > 0 and removed >= 0, got "
                    + topcoat.map(BigDecimal::toPlainString).orElse("none") + " and " + removed.toPlainString());
        }
    }

    /** Paint systems. */
    public enum Kind {
        CLEAR_OVER_BASE,
        SINGLE_STAGE,
        /** Nothing abrasive at all: it turns patchy. */
        MATT,
        /** Film over paint; the gauge reads both. */
        WRAP,
        UNKNOWN;

        /** The system of that name in a survey; {@link #UNKNOWN} for a name that says nothing here. */
        public static Kind of(String text) {
            return switch (text) {
                case "clear-over-base" -> CLEAR_OVER_BASE;
                case "single-stage" -> SINGLE_STAGE;
                case "matt" -> MATT;
                case "wrap" -> WRAP;
                default -> UNKNOWN;
            };
        }
    }

    /** Whether a zone was painted again. */
    public enum Repaint {
        UNKNOWN,
        NONE,
        PROVEN;

        /** The answer of that name in a survey; {@link #UNKNOWN} for any other. */
        public static Repaint of(String text) {
            return switch (text) {
                case "none" -> NONE;
                case "proven" -> PROVEN;
                default -> UNKNOWN;
            };
        }
    }
}
