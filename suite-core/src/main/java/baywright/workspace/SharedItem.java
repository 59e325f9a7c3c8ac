package baywright.workspace;

import baywright.library.Item;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * An item as it goes from site to site: what it is and what it may do to people, and its price only where that was asked for.
 *
 * @param likeness the item; its price is always 0, ask {@link #price}
 * @param price    what a pack costs the site that shares it, in the currency of the list
 */
public record SharedItem(Item likeness, Optional<BigDecimal> price) {

    /** What the item cost the site that it comes from is taken out of the likeness. */
    public SharedItem {
        likeness = priced(likeness, BigDecimal.ZERO);
    }

    /** The item as a site keeps it that pays {@code amount} for a pack, without tax, in its own currency. */
    public Item at(BigDecimal amount) {
        return priced(likeness, amount);
    }

    private static Item priced(Item likeness, BigDecimal amount) {
        return new Item(
                likeness.id(),
                likeness.title(),
                likeness.pack(),
                amount,
                likeness.spoils(),
                likeness.density(),
                likeness.hazards(),
                likeness.protection(),
                likeness.groups(),
                likeness.note());
    }
}
