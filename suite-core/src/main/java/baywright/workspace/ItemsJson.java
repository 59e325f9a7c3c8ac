package baywright.workspace;

import baywright.library.Item;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;

/** {@code items.json} to the price list. */
final class ItemsJson {

    static final String KIND = "items";
    static final int VERSION = 1;

    private static final List<Unit> PACKS =
            List.of(Unit.MILLILITRE, Unit.LITRE, Unit.GRAM, Unit.KILOGRAM, Unit.METRE, Unit.SQUARE_METRE, Unit.EACH);
    private static final Pattern HAZARD = Pattern.compile("(EUH|H)\\d{3}[A-Za-z]{0,2}(\\+H\\d{3})*");

    /** The items with the currency of their prices. */
    record PriceList(CurrencyUnit currency, List<Item> items, int currencyOffset) {}

    private ItemsJson() {}

    static Optional<PriceList> read(Report report) {
        return Fields.ofDocument(report, KIND, VERSION).flatMap(ItemsJson::read);
    }

    private static Optional<PriceList> read(Fields in) {
        Optional<CurrencyUnit> currency = ShopJson.currency(in);
        List<Fields> all = in.objects("items");
        List<Read> items = all.stream().map(ItemsJson::item).toList();
        Fields.refuseRepeated(all, items.stream().map(Read::id).toList());
        in.done();
        return in.report()
                .whenSound(() -> new PriceList(
                        currency.orElseThrow(),
                        items.stream().map(i -> i.item().orElseThrow()).toList(),
                        in.offset("currency")));
    }

    /** The items of a pack: with prices when there is a currency, without when there is none. */
    static Optional<SharedItems> readShared(Fields in) {
        boolean priced = !in.text("currency", "").isEmpty();
        Optional<CurrencyUnit> currency = priced ? ShopJson.currency(in) : Optional.empty();
        List<Fields> all = in.objects("items");
        List<Read> items = all.stream().map(one -> item(one, priced)).toList();
        Fields.refuseRepeated(all, items.stream().map(Read::id).toList());
        in.done();
        return in.whenSound(() -> new SharedItems(
                currency,
                items.stream()
                        .map(i -> i.item().orElseThrow())
                        .map(i -> new SharedItem(i, currency.map(c -> i.price())))
                        .toList()));
    }

    private record Read(String id, Optional<Item> item) {}

    private static Read item(Fields in) {
        return item(in, true);
    }

    private static Read item(Fields in, boolean priced) {
        String id = in.id("id");
        String title = in.title("title");
        Quantity pack =
                in.quantity("pack", "an amount above zero in ml, l, g, kg, m, m2 or each such as \"5000 ml\"", PACKS);
        BigDecimal price = priced ? in.number("price", Span.AMOUNT) : BigDecimal.ZERO;
        boolean spoils = in.yesNo("spoils", false);
        Optional<BigDecimal> density = in.numberIfGiven("density", Span.above(0, 25));
        List<String> hazards = in.texts("hazards", HAZARD, "a code such as \"H319\" or \"EUH208\"");
        List<String> protection = in.texts("protection");
        List<String> groups = in.ids("groups");
        String note = in.text("note", "");
        in.done();
        return new Read(
                id,
                in.report()
                        .whenSound(() ->
                                new Item(id, title, pack, price, spoils, density, hazards, protection, groups, note)));
    }
}
