package baywright.money;

import baywright.library.Item;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Arithmetic of packs. */
public final class Packs {

    /** A part of a pack that a division left over is no reason to open another. */
    private static final int BEYOND_DOUBT = 12;

    private Packs() {}

    /**
     * An amount as a fraction of the item's packs, to 34 significant digits. Mass and volume convert where the item
     * states its density.
     *
     * @throws IllegalArgumentException when the pack does not hold what is used
     */
    public static BigDecimal fraction(Item item, Quantity used) {
        return inPackDimension(item, used).divide(item.pack().inBase(), Rates.PRECISION);
    }

    /** Whole packs that a fraction opens. */
    public static BigDecimal whole(BigDecimal packs) {
        return packs.setScale(BEYOND_DOUBT, RoundingMode.HALF_EVEN).setScale(0, RoundingMode.CEILING);
    }

    private static BigDecimal inPackDimension(Item item, Quantity used) {
        Dimension pack = item.pack().dimension();
        if (used.dimension() == pack) {
            return used.inBase();
        }
        if (used.dimension() == Dimension.MASS && pack == Dimension.VOLUME) {
            return used.inBase().divide(density(item, used), Rates.PRECISION);
        }
        if (used.dimension() == Dimension.VOLUME && pack == Dimension.MASS) {
            return used.inBase().multiply(density(item, used));
        }
        throw misfit(item, used, "");
    }

    private static BigDecimal density(Item item, Quantity used) {
        return item.density().orElseThrow(() -> misfit(item, used, "; its density in g/ml would tell"));
    }

    private static IllegalArgumentException misfit(Item item, Quantity used, String hint) {
        return new IllegalArgumentException(
                "item '" + item.id() + "' comes in packs of " + item.pack() + " but " + used + " is used" + hint);
    }
}
