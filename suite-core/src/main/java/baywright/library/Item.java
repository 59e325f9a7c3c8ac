package baywright.library;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A consumable in the price list.
 *
 * @param id          stable kebab-case id
 * @param title       words for people
 * @param pack        how much a pack holds: ml, g, m, m² or pieces
 * @param price       what a pack costs the shop, without tax, in the site's currency, not negative
 * @param spoils      whether an opened pack is lost after the job, so that whole packs are charged
 * @param density     g/ml where known
 * @param hazards     hazard statement codes of the product as it is poured, such as {@code H319}
 * @param protection  protective equipment that its data sheet asks for
 * @param groups      reactivity groups such as {@code acid}, {@code hypochlorite}
 * @param note        anything a person should know; may be empty
 */
public record Item(
        String id,
        String title,
        Quantity pack,
        BigDecimal price,
        boolean spoils,
        Optional<BigDecimal> density,
        List<String> hazards,
        List<String> protection,
        List<String> groups,
        String note) {

    public Item {
        if (pack.amount().signum() <= 0) {
            throw new IllegalArgumentException("item '" + id + "' needs a pack above zero, got " + pack);
        }
        if (price.signum() < 0) {
            throw new IllegalArgumentException("item '" + id + "' needs a price from 0, got " + price.toPlainString());
        }
        hazards = List.copyOf(hazards);
        protection = List.copyOf(protection);
        groups = List.copyOf(groups);
    }
}
