package baywright.money;

import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * How uncertain a job is beyond its three points. The usual figures are from memory, to be tuned to the shop's own records.
 *
 * @param shared      part of the variance of a step's time that it shares with all steps of the same cause, 0 to 1
 * @param material    what is used of an item, as a share of what the script says
 * @param reworkShare part of a step's time that is spent again when it is done again, above 0
 */
public record Uncertainty(double shared, ThreePoint material, BigDecimal reworkShare) {

    /** Half of the variance is shared; a fifth more or less of an item; half of a step is done again. */
    public static final Uncertainty USUAL =
            new Uncertainty(0.5, ThreePoint.of("0.8", "1", "1.2"), new BigDecimal("0.5"));

    public Uncertainty {
        Objects.requireNonNull(material, "material");
        if (!(shared >= 0 && shared <= 1)) {
            throw new IllegalArgumentException("the shared part of a variance must be from 0 to 1, got " + shared);
        }
        if (reworkShare.signum() <= 0) {
            throw new IllegalArgumentException("the share done again must be above 0, got " + reworkShare);
        }
    }
}
