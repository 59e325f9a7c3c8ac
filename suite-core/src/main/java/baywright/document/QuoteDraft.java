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
        List<Part> parts = quote.parts();
        boolean hasBase = !parts.isEmpty() && parts.get(0).priority() == Priority.MUST;
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
                hasBase ? chapters(parts.get(0)) : List.of(),
                choices(
                        hasBase ? parts.subList(1, parts.size()) : parts,
                        hasBase ? Optional.of(parts.get(0)) : Optional.empty()),
                new Exclusions(site.shop(), worked, shape, zones, texts).all(),
                new Risks(worked, quote, zones, words, texts).all(),
                sums(),
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

    /** Exact net amounts of one priority by step, or by the family or item of the whole job. */
    private Map<String, BigDecimal> exact(Priority priority, boolean ofSteps) {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        for (LedgerLine line : quote.ledger().lines()) {
            boolean counts = line.priority() == priority
                    && line.kind().column() == LineKind.Column.PRICE
                    && line.step().isPresent() == ofSteps;
            if (counts) {
                sums.merge(line.step().orElse(line.subject()), line.amount(), BigDecimal::add);
            }
        }
        return sums;
    }

    /** Steps of a priority by their stage, in order of first use. */
    private Map<String, List<StepWork>> byStage(Priority priority) {
        Map<String, List<StepWork>> byStage = new LinkedHashMap<>();
        works.values().stream()
                .filter(work -> steps.get(work.step()).priority() == priority)
                .forEach(work -> byStage.computeIfAbsent(work.stage(), s -> new ArrayList<>())
                        .add(work));
        return byStage;
    }

    private List<Chapter> chapters(Part base) {
        Map<String, List<Task>> tasks = new LinkedHashMap<>();
        Map<String, BigDecimal> nets = new LinkedHashMap<>();
        Map<String, BigDecimal> ofSteps = exact(base.priority(), true);
        byStage(base.priority()).forEach((stage, uses) -> {
            String family = uses.get(0).family();
            tasks.computeIfAbsent(family, f -> new ArrayList<>()).add(task(stage, uses));
            uses.forEach(use -> nets.merge(family, ofSteps.getOrDefault(use.step(), BigDecimal.ZERO), BigDecimal::add));
        });
        exact(base.priority(), false)
                .forEach((subject, net) -> nets.merge(tasks.containsKey(subject) ? subject : "", net, BigDecimal::add));
        List<Money> coins = Coins.shared(base.upTo().low().net(), List.copyOf(nets.values()));
        List<Chapter> chapters = new ArrayList<>();
        for (String family : nets.keySet()) {
            String title = family.isEmpty() ? texts.of("work.extra") : family(family);
            chapters.add(new Chapter(title, tasks.getOrDefault(family, List.of()), coins.get(chapters.size())));
        }
        return chapters;
    }

    private List<Choice> choices(List<Part> parts, Optional<Part> base) {
        List<Choice> choices = new ArrayList<>();
        Optional<Price> before = base.map(part -> part.upTo().low());
        for (Part part : parts) {
            Price total = part.upTo().low();
            Amounts adds = before.map(b -> new Amounts(
                            total.net().minus(b.net()),
                            total.tax().minus(b.tax()),
                            total.gross().minus(b.gross())))
                    .orElseGet(() -> amounts(total));
            choices.add(choice(part.priority(), adds, amounts(total)));
            before = Optional.of(total);
        }
        return choices;
    }

    private Choice choice(Priority priority, Amounts adds, Amounts total) {
        Map<String, BigDecimal> ofSteps = exact(priority, true);
        List<Task> tasks = new ArrayList<>();
        List<BigDecimal> nets = new ArrayList<>();
        byStage(priority).forEach((stage, uses) -> {
            tasks.add(task(stage, uses));
            nets.add(uses.stream()
                    .map(use -> ofSteps.getOrDefault(use.step(), BigDecimal.ZERO))
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
        });
        nets.add(exact(priority, false).values().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Money> coins = Coins.shared(adds.net(), nets);
        List<Priced> priced = new ArrayList<>();
        tasks.forEach(task -> priced.add(new Priced(task, coins.get(priced.size()))));
        return new Choice(priority, priced, coins.get(tasks.size()), adds, total);
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

    private QuoteDocument.Sums sums() {
        Price all = quote.price();
        Price base = quote.parts().isEmpty() ? all : quote.parts().get(0).upTo().low();
        Money high = quote.parts().isEmpty()
                ? quote.range().high().gross()
                : quote.parts().get(0).upTo().high().gross();
        return new QuoteDocument.Sums(
                amounts(base),
                amounts(all),
                high,
                quote.range().high().gross(),
                quote.range().contingencyPercent(),
                quote.terms().tax().name(),
                quote.terms().tax().percent(),
                quote.terms().depositPercent(),
                deposit(base),
                quote.deposit());
    }

    private Money deposit(Price price) {
        return Rounding.toCoins(
                price.gross().getCurrencyUnit(),
                price.gross()
                        .getAmount()
                        .multiply(quote.terms().depositPercent().movePointLeft(2)),
                TaxRule.PRICES);
    }

    private static Amounts amounts(Price price) {
        return new Amounts(price.net(), price.tax(), price.gross());
    }
}
