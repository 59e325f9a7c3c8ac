package baywright.money;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * What the job takes of an item, beside the ledger: the shelf wants whole packs, the price mostly a part of one.
 *
 * @param item   id in the price list
 * @param pack   what a pack holds
 * @param price  of a pack, without tax
 * @param spoils whether an opened pack is lost after the job
 * @param used   packs used, as a fraction
 */
public record Purchase(String item, Quantity pack, BigDecimal price, boolean spoils, BigDecimal used) {

    /** Packs to have at hand when none is open. */
    public BigInteger wholePacks() {
        return Packs.whole(used).toBigIntegerExact();
    }

    /** Amount used in the pack's unit. */
    public Quantity amount() {
        return pack.times(used);
    }

    /** Packs charged: whole ones of what spoils, else the part used. */
    public BigDecimal charged() {
        return spoils ? Packs.whole(used) : used;
    }
}
