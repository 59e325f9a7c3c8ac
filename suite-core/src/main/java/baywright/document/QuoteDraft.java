package baywright.document;

import baywright.document.QuoteDocument.Amounts;
import baywright.document.QuoteDocument.Chapter;
import baywright.document.QuoteDocument.Choice;
import baywright.document.QuoteDocument.Priced;
import baywright.document.QuoteDocument.Task;
import baywright.library.Family;
import baywright.library.Stage;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Part;
import baywright.money.Price;
import baywright.money.Quote;
import baywright.money.Range;
import baywright.money.Rounding;
import baywright.money.TaxRule;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import baywright.plan.ZoneNames;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import baywright.workspace.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/** Makes the document of a quote. */
final class QuoteDraft {

    private final Site site;
    private final WorkedJob worked;
    private final Job job;
    private final Quote quote;
    private final Locale locale;
    private final Texts texts;
    private final Words words;
    private final Shape shape;
    private final ZoneNames zones;
    private final Map<String, Step> steps = new HashMap<>();
    private final Map<String, StepWork> works = new LinkedHashMap<>();

    QuoteDraft(Site site, WorkedJob worked, Quote quote, String language) {
        this.site = site;
        this.worked = worked;
        this.quote = quote;
        job = worked.job();
        locale = site.shop().localeOf(language);
        texts = new Texts(locale);
        words = site.workspace().words(locale.getLanguage());
        shape = words.of(worked.setting().shape());
        zones = new ZoneNames(shape, locale);
        job.plan().steps().forEach(step -> steps.put(step.id(), step));
        worked.work().steps().forEach(work -> works.put(work.step(), work));
    }

    QuoteDocument document() {
        Found found = new Found(worked, shape, zones, words, texts);
        List<Offered> offers = offers();
        boolean hasBase = !offers.isEmpty() && offers.get(0).first() == Priority.MUST;
        Optional<Offered> base = hasBase ? Optional.of(offers.get(0)) : Optional.empty();
        return new QuoteDocument(
                locale.toLanguageTag(),
                from(site.shop()),
                new QuoteDocument.Reference(
                        Optional.empty(), 0, quote.proof().at().toLocalDate(), quote.validUntil()),
                job.customer(),
                job.title(),
                vehicle(),
                job.arrives(),
                job.wanted(),
                job.wishes(),
                found.all(),
                base.map(this::chapters).orElse(List.of()),
                choices(hasBase ? offers.subList(1, offers.size()) : offers, base),
                new Exclusions(site.shop(), worked, shape, zones, texts).all(),
                new Risks(worked, quote, zones, words, texts).all(),
                sums(offers),
                new QuoteDocument.Proof(
                        quote.proof().library(),
                        quote.proof().inputs(),
                        quote.proof().at(),
                        quote.proof().softened()));
    }

    private static QuoteDocument.From from(Shop shop) {
        Shop.Letterhead head = shop.letterhead();
        return new QuoteDocument.From(
                shop.name(), head.address(), head.phone(), head.email(), head.web(), head.taxNumber());
    }

    private QuoteDocument.Vehicle vehicle() {
        return new QuoteDocument.Vehicle(
                shape.title(),
                job.vehicle().description(),
                job.vehicle().colour(),
                job.vehicle().vin().map(v -> v.text()),
                job.vehicles());
    }

    // work and options

    /**
     * What the customer may say yes to by itself: one priority, or several where the first cannot be done without what is
     * wanted less.
     *
     * @param priorities in order
     * @param upTo       the price with everything before
     * @param total      its figures
     */
    private record Offered(List<Priority> priorities, Range upTo, Amounts total) {
        private Priority first() {
            return priorities.get(0);
        }
    }

    private List<Offered> offers() {
        List<Offered> offers = new ArrayList<>();
        List<Priority> together = new ArrayList<>();
        for (Part part : quote.parts()) {
            together.add(part.priority());
            boolean last = part.priority()
                    == quote.parts().get(quote.parts().size() - 1).priority();
            if (last || !worked.judged().leaning().broken().contains(part.priority())) {
                offers.add(new Offered(
                        List.copyOf(together), part.upTo(), amounts(part.upTo().low(), discount(part.priority()))));
                together.clear();
            }
        }
        return offers;
    }

    /** What is let off a priority and those before it, to the coin. */
    private Money discount(Priority last) {
        BigDecimal exact = quote.ledger()
                .totalUpTo(LineKind.DISCOUNT, last)
                .add(quote.ledger().totalUpTo(LineKind.MATERIAL_DISCOUNT, last));
        return Rounding.toCoins(quote.price().net().getCurrencyUnit(), exact.negate(), TaxRule.PRICES);
    }

    /** Exact net amounts before discount of some priorities by step, or by the family or item of the whole job. */
    private Map<String, BigDecimal> exact(List<Priority> priorities, boolean ofSteps) {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        for (LedgerLine line : quote.ledger().lines()) {
            boolean counts = priorities.contains(line.priority())
                    && line.kind().column() == LineKind.Column.PRICE
                    && line.kind() != LineKind.DISCOUNT
                    && line.kind() != LineKind.MATERIAL_DISCOUNT
                    && line.step().isPresent() == ofSteps;
            if (counts) {
                sums.merge(line.step().orElse(line.subject()), line.amount(), BigDecimal::add);
            }
        }
        return sums;
    }

    /** Steps of some priorities by their stage, in order of first use. */
    private Map<String, List<StepWork>> byStage(List<Priority> priorities) {
        Map<String, List<StepWork>> byStage = new LinkedHashMap<>();
        works.values().stream()
                .filter(work -> priorities.contains(steps.get(work.step()).priority()))
                .forEach(work -> byStage.computeIfAbsent(work.stage(), s -> new ArrayList<>())
                        .add(work));
        return byStage;
    }

    private List<Chapter> chapters(Offered base) {
        Map<String, List<Task>> tasks = new LinkedHashMap<>();
        Map<String, BigDecimal> nets = new LinkedHashMap<>();
        Map<String, BigDecimal> ofSteps = exact(base.priorities(), true);
        byStage(base.priorities()).forEach((stage, uses) -> {
            String family = uses.get(0).family();
            tasks.computeIfAbsent(family, f -> new ArrayList<>()).add(task(stage, uses));
            uses.forEach(use -> nets.merge(family, ofSteps.getOrDefault(use.step(), BigDecimal.ZERO), BigDecimal::add));
        });
        exact(base.priorities(), false)
                .forEach((subject, net) -> nets.merge(tasks.containsKey(subject) ? subject : "", net, BigDecimal::add));
        List<Money> coins = Coins.shared(base.total().undiscounted(), List.copyOf(nets.values()));
        List<Chapter> chapters = new ArrayList<>();
        for (String family : nets.keySet()) {
            String title = family.isEmpty() ? texts.of("work.extra") : family(family);
            chapters.add(new Chapter(title, tasks.getOrDefault(family, List.of()), coins.get(chapters.size())));
        }
        return chapters;
    }

    private List<Choice> choices(List<Offered> offers, Optional<Offered> base) {
        List<Choice> choices = new ArrayList<>();
        Optional<Amounts> before = base.map(Offered::total);
        for (Offered offer : offers) {
            Amounts total = offer.total();
            Amounts adds = before.map(b -> new Amounts(
                            letOff(total.undiscounted()
                                    .minus(total.net())
                                    .minus(b.undiscounted().minus(b.net()))),
                            total.net().minus(b.net()),
                            total.tax().minus(b.tax()),
                            total.gross().minus(b.gross())))
                    .orElse(total);
            choices.add(choice(offer.priorities(), adds, total));
            before = Optional.of(total);
        }
        return choices;
    }

    private Choice choice(List<Priority> priorities, Amounts adds, Amounts total) {
        Map<String, BigDecimal> ofSteps = exact(priorities, true);
        List<Task> tasks = new ArrayList<>();
        List<BigDecimal> nets = new ArrayList<>();
        byStage(priorities).forEach((stage, uses) -> {
            tasks.add(task(stage, uses));
            nets.add(uses.stream()
                    .map(use -> ofSteps.getOrDefault(use.step(), BigDecimal.ZERO))
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
        });
        nets.add(exact(priorities, false).values().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Money> coins = Coins.shared(adds.undiscounted(), nets);
        List<Priced> priced = new ArrayList<>();
        tasks.forEach(task -> priced.add(new Priced(task, coins.get(priced.size()))));
        return new Choice(priorities.get(0), priced, coins.get(tasks.size()), adds, total);
    }

    private Task task(String id, List<StepWork> uses) {
        Stage stage = worked.setting().library().stageById().get(id);
        Set<String> where = new LinkedHashSet<>();
        uses.forEach(use -> where.addAll(use.zones()));
        List<String> inOrder =
                shape.zones().stream().map(Zone::id).filter(where::contains).toList();
        return new Task(words.title(stage), words.about(stage), zones.of(inOrder, Integer.MAX_VALUE - 1), uses.size());
    }

    private String family(String id) {
        return words.family(
                id,
                site.library().families().stream()
                        .filter(f -> f.id().equals(id))
                        .map(Family::title)
                        .findFirst()
                        .orElse(id));
    }

    // price

    private QuoteDocument.Sums sums(List<Offered> offers) {
        Amounts all = amounts(quote.price(), discount(Priority.COULD));
        Amounts base = offers.isEmpty() ? all : offers.get(0).total();
        Money high =
                (offers.isEmpty() ? quote.range() : offers.get(0).upTo()).high().gross();
        return new QuoteDocument.Sums(
                base,
                all,
                high,
                quote.range().high().gross(),
                quote.range().contingencyPercent(),
                quote.terms().tax().name(),
                quote.terms().tax().percent(),
                quote.terms().depositPercent(),
                deposit(base.gross()),
                quote.deposit());
    }

    private Money deposit(Money gross) {
        return Rounding.toCoins(
                gross.getCurrencyUnit(),
                gross.getAmount().multiply(quote.terms().depositPercent().movePointLeft(2)),
                TaxRule.PRICES);
    }

    private static Amounts amounts(Price price, Money discount) {
        return new Amounts(letOff(discount), price.net(), price.tax(), price.gross());
    }

    private static Optional<Money> letOff(Money discount) {
        return Optional.of(discount).filter(Money::isPositive);
    }
}
