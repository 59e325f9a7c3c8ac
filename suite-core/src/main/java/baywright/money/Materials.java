package baywright.money;

import baywright.library.Item;
import baywright.library.Library;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What items cost and what they are sold for; collects them for the opened packs that spoil and for the shelf. */
final class Materials {

    private final Library library;
    private final Rates rates;
    private final JobTerms terms;
    private final BigDecimal vehicles;
    private final Map<String, Map<Priority, BigDecimal>> used = new LinkedHashMap<>();

    Materials(Library library, Rates rates, JobTerms terms) {
        this.library = library;
        this.rates = rates;
        this.terms = terms;
        vehicles = BigDecimal.valueOf(terms.vehicles());
    }

    /** Lines of the items of a step, by the part of a pack. */
    List<LedgerLine> use(StepWork step, Priority priority) {
        List<LedgerLine> lines = new ArrayList<>();
        for (StepWork.Use use : step.uses()) {
            Item item = library.itemById().get(use.item());
            if (item == null) {
                throw new IllegalArgumentException(use.trail().place() + ": stage '" + step.stage()
                        + "' uses the item '" + use.item() + "', which the price list does not have");
            }
            BigDecimal packs = Packs.fraction(item, use.amount()).multiply(vehicles);
            used.computeIfAbsent(item.id(), i -> new EnumMap<>(Priority.class)).merge(priority, packs, BigDecimal::add);
            lines.addAll(lines(item, Optional.of(step.step()), priority, packs, new Origin.Work(use.trail())));
        }
        return lines;
    }

    /**
     * Lines for what is left in opened packs of items that spoil, so that whole packs are charged. A lower priority that
     * uses up the rest of a pack gives that rest back.
     */
    List<LedgerLine> rests() {
        List<LedgerLine> lines = new ArrayList<>();
        used.forEach((id, byPriority) -> {
            Item item = library.itemById().get(id);
            if (item.spoils()) {
                BigDecimal soFar = BigDecimal.ZERO;
                BigDecimal charged = BigDecimal.ZERO;
                for (Map.Entry<Priority, BigDecimal> entry : byPriority.entrySet()) {
                    soFar = soFar.add(entry.getValue());
                    BigDecimal rest = Packs.whole(soFar).subtract(charged).subtract(entry.getValue());
                    charged = Packs.whole(soFar);
                    if (rest.signum() != 0) {
                        Origin opened = Origin.Lines.of(soFar.multiply(item.price()), LineKind.MATERIAL_COST);
                        lines.addAll(lines(item, Optional.empty(), entry.getKey(), rest, opened));
                    }
                }
            }
        });
        return lines;
    }

    /** Everything used, in order of first use. */
    List<Purchase> purchases() {
        return used.entrySet().stream()
                .map(entry -> {
                    Item item = library.itemById().get(entry.getKey());
                    BigDecimal packs = entry.getValue().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                    return new Purchase(item.id(), item.pack(), item.price(), item.spoils(), packs);
                })
                .toList();
    }

    private List<LedgerLine> lines(
            Item item, Optional<String> step, Priority priority, BigDecimal packs, Origin because) {
        Origin pack = new Origin.Pack(item.id(), item.pack(), item.price());
        Origin markup = new Origin.Term("rates.materialMarkupPercent", rates.materialMarkupPercent());
        BigDecimal sold = new Markup(rates.materialMarkupPercent()).on(item.price());
        List<LedgerLine> lines = new ArrayList<>();
        lines.add(new LedgerLine(
                LineKind.MATERIAL_COST,
                step,
                priority,
                item.id(),
                packs,
                "pack",
                item.price(),
                List.of(because, pack)));
        LedgerLine price = new LedgerLine(
                LineKind.MATERIAL, step, priority, item.id(), packs, "pack", sold, List.of(because, pack, markup));
        lines.add(price);
        if (terms.discountPercent().signum() > 0) {
            lines.add(new LedgerLine(
                    LineKind.MATERIAL_DISCOUNT,
                    step,
                    priority,
                    item.id(),
                    price.amount(),
                    rates.currency().getCode(),
                    Percent.share(terms.discountPercent()).negate(),
                    List.of(
                            Origin.Lines.of(price.amount(), LineKind.MATERIAL),
                            new Origin.Term("price.discountPercent", terms.discountPercent()))));
        }
        return lines;
    }
}
