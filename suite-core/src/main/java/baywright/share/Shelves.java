package baywright.share;

import baywright.library.Item;
import baywright.workspace.SharedItem;
import baywright.workspace.SharedItems;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Merges the items of a pack into a site's price list. Price and pack size are always the site's. What else the list says of an item is
 * the site's as soon as it is not what the pack said before: an equivalent has a dilution and hazard data of its own.
 *
 * @param items    the price list afterwards; items of the site stay where they are, new ones come last
 * @param unpriced ids of new items that came without a price, which stands at nothing until somebody enters one
 * @param own      ids of items whose hazard data, protection or groups stay the site's though the pack says otherwise now
 */
record Shelves(List<Item> items, List<String> unpriced, List<String> own) {

    Shelves {
        items = List.copyOf(items);
        unpriced = List.copyOf(unpriced);
        own = List.copyOf(own);
    }

    /**
     * Merges.
     *
     * @param before what the pack brought when it was taken last
     * @param ours   the site's price list
     * @param theirs what it brings now
     * @param priced whether its prices are in the currency of the site
     * @param wanted tells by id which of its items are taken
     */
    static Shelves merge(
            SharedItems before, List<Item> ours, SharedItems theirs, boolean priced, Predicate<String> wanted) {
        Map<String, Item> was = likenesses(before);
        Map<String, Item> is = likenesses(theirs);
        List<Item> items = new ArrayList<>();
        List<String> own = new ArrayList<>();
        List<String> unpriced = new ArrayList<>();
        for (Item item : ours) {
            Item their = is.remove(item.id());
            if (their == null || !wanted.test(item.id())) {
                items.add(item);
                continue;
            }
            Item merged = merge(Optional.ofNullable(was.get(item.id())), item, their);
            items.add(merged);
            if (!merged.hazards().equals(their.hazards())
                    || !merged.protection().equals(their.protection())
                    || !merged.groups().equals(their.groups())) {
                own.add(item.id());
            }
        }
        for (SharedItem shared : theirs.items()) {
            String id = shared.likeness().id();
            boolean takenOut = was.containsKey(id);
            if (is.containsKey(id) && !takenOut && wanted.test(id)) {
                Optional<BigDecimal> price = shared.price().filter(p -> priced);
                items.add(shared.at(price.orElse(BigDecimal.ZERO)));
                if (price.isEmpty()) {
                    unpriced.add(id);
                }
            }
        }
        return new Shelves(items, unpriced, own);
    }

    private static Map<String, Item> likenesses(SharedItems items) {
        Map<String, Item> all = new LinkedHashMap<>();
        items.items().forEach(i -> all.put(i.likeness().id(), i.likeness()));
        return all;
    }

    private static Item merge(Optional<Item> before, Item ours, Item theirs) {
        return new Item(
                ours.id(),
                one(before, ours, theirs, Item::title),
                ours.pack(),
                ours.price(),
                one(before, ours, theirs, Item::spoils),
                one(before, ours, theirs, Item::density),
                one(before, ours, theirs, Item::hazards),
                one(before, ours, theirs, Item::protection),
                one(before, ours, theirs, Item::groups),
                one(before, ours, theirs, Item::note));
    }

    private static <T> T one(Optional<Item> before, Item ours, Item theirs, Function<Item, T> part) {
        T our = part.apply(ours);
        boolean untouched =
                before.map(part).filter(was -> Objects.equals(was, our)).isPresent();
        return untouched ? part.apply(theirs) : our;
    }
}
