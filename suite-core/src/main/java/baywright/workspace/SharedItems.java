package baywright.workspace;

import baywright.library.Item;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * The items of a pack.
 *
 * @param currency of the prices; empty when there are none
 * @param items    in order of id
 */
public record SharedItems(Optional<CurrencyUnit> currency, List<SharedItem> items) {

    /** No items at all. */
    public static final SharedItems NONE = new SharedItems(Optional.empty(), List.of());

    static final String KIND = "shared-items";
    static final int VERSION = 1;

    public SharedItems {
        items = List.copyOf(items);
        for (SharedItem item : items) {
            if (item.price().isPresent() != currency.isPresent()) {
                throw new IllegalArgumentException("prices and a currency go together, got " + currency + " and item '"
                        + item.likeness().id() + "' with price " + item.price());
            }
        }
    }

    /** Items of a price list, with their prices only when a currency is given. */
    public static SharedItems of(List<Item> items, Optional<CurrencyUnit> currency) {
        return new SharedItems(
                currency,
                items.stream()
                        .sorted(Comparator.comparing(Item::id))
                        .map(item -> new SharedItem(item, currency.map(c -> item.price())))
                        .toList());
    }

    /** Reads the file of items of a pack. */
    public static JsonText<SharedItems> read(String file, byte[] bytes) {
        return JsonText.read(file, bytes, KIND, VERSION, ItemsJson::readShared);
    }

    /** The file: the same items give the same bytes. */
    public byte[] bytes() {
        return JsonForm.of(ShopDraft.of(this).onto(null)).getBytes(StandardCharsets.UTF_8);
    }
}
