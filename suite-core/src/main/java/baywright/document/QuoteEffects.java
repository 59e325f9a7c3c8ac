package baywright.document;

import baywright.document.KeptQuote.ItemPin;
import baywright.document.KeptQuote.Line;
import baywright.document.KeptQuote.PlannedStep;
import baywright.library.Item;
import baywright.library.Library;
import baywright.money.JobTerms;
import baywright.money.Ledger;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Origin;
import baywright.money.Price;
import baywright.money.Quote;
import baywright.money.Quoting;
import baywright.money.Rates;
import baywright.money.RollUp;
import baywright.money.SiteTerms;
import baywright.money.TaxRule;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * What single changes since a quote was kept make of today's price and cost: today's figures less those with that one thing
 * as it was. What several make only together is what is left of the whole difference.
 */
final class QuoteEffects {

    private static final String RATES = "rates.";
    private static final String CHARGE = RATES + "charge.";

    /** What grows with the hands-on and set-up time of a step. */
    private static final Set<LineKind> BY_TIME = Set.of(
            LineKind.HANDS_ON,
            LineKind.SET_UP,
            LineKind.LABOUR_COST,
            LineKind.IDLE_COST,
            LineKind.OVERHEAD,
            LineKind.REWORK,
            LineKind.MACHINE,
            LineKind.LABOUR,
            LineKind.DISCOUNT);

    /** A job's figures. */
    private record Figures(BigDecimal net, Money gross, BigDecimal cost) {
        QuoteEffect over(Figures was) {
            return new QuoteEffect(net.subtract(was.net), gross.minus(was.gross).getAmount(), cost.subtract(was.cost));
        }
    }

    private final KeptQuote kept;
    private final WorkedJob worked;
    private final Quote quote;
    private final SiteTerms site;
    private final Ledger ledger;
    private final Figures today;
    private final Map<String, PlannedStep> before = new LinkedHashMap<>();
    private final Map<String, PlannedStep> now = new LinkedHashMap<>();

    QuoteEffects(KeptQuote kept, WorkedJob worked, Quote quote) {
        this.kept = kept;
        this.worked = worked;
        this.quote = quote;
        site = quote.terms();
        ledger = quote.ledger();
        kept.plan().forEach(step -> before.put(step.id(), step));
        KeptQuote.plan(worked).forEach(step -> now.put(step.id(), step));
        today = figures(worked.job().plan(), ledger, site);
    }

    /** Everything together. */
    QuoteEffect all() {
        BigDecimal net = BigDecimal.ZERO;
        BigDecimal cost = BigDecimal.ZERO;
        for (Line line : kept.lines()) {
            BigDecimal amount = line.quantity().multiply(line.rate());
            net = line.kind().column() == LineKind.Column.PRICE ? net.add(amount) : net;
            cost = line.kind().column() == LineKind.Column.COST ? cost.add(amount) : cost;
        }
        return today.over(new Figures(net, kept.document().sums().all().gross(), cost));
    }

    // one thing as it was

    /** Price and pack of an item, or one of the two. */
    QuoteEffect item(String id, boolean price, boolean pack) {
        Library library = worked.setting().library();
        Item is = library.itemById().get(id);
        ItemPin was = kept.pins().items().get(id);
        Item other = new Item(
                is.id(),
                is.title(),
                pack ? quantity(was.pack()) : is.pack(),
                price ? was.price() : is.price(),
                is.spoils(),
                is.density(),
                is.hazards(),
                is.protection(),
                is.groups(),
                is.note());
        List<Item> items = library.items().stream()
                .map(item -> item.id().equals(id) ? other : item)
                .toList();
        Library as = Library.of(
                library.states(),
                library.surfaces(),
                library.families(),
                library.facts(),
                library.factors(),
                items,
                library.stages(),
                library.rules(),
                library.hash());
        return since(
                worked.job().plan(), RollUp.of(worked.job().plan(), worked.work(), as, site.rates(), terms()), site);
    }

    private static Quantity quantity(String text) {
        int blank = text.indexOf(' ');
        return Quantity.of(
                text.substring(0, blank), Unit.of(text.substring(blank + 1)).orElseThrow());
    }

    /** A field of rates, tax or terms; empty when it is not there on both sides. */
    Optional<QuoteEffect> term(String field, BigDecimal was) {
        if (was == null) {
            return Optional.empty();
        }
        return switch (field) {
            case "contingency", "quote.depositPercent" -> Optional.of(QuoteEffect.NONE);
            case "tax.percent" -> Optional.of(since(worked.job().plan(), ledger, taxed(was)));
            case "price.discountLabourPercent" -> Optional.of(discounted(was, terms().discountPercent()));
            case "price.discountPercent" -> Optional.of(discounted(terms().discountLabourPercent(), was));
            default -> rates(field, was).map(rates -> rolled(rates, terms()));
        };
    }

    private QuoteEffect discounted(BigDecimal labour, BigDecimal all) {
        return rolled(
                site.rates(), new JobTerms(terms().grade(), terms().vehicles(), labour, all, terms().confidence()));
    }

    private SiteTerms taxed(BigDecimal percent) {
        TaxRule tax = site.tax();
        return new SiteTerms(
                site.rates(),
                new TaxRule(
                        tax.name(), percent, tax.rounding(), tax.on(), tax.others(), tax.lineStep(), tax.priceStep()),
                site.validDays(),
                site.depositPercent());
    }

    private Optional<Rates> rates(String field, BigDecimal was) {
        Rates is = site.rates();
        Map<String, BigDecimal> charge = new LinkedHashMap<>(is.charge());
        Map<String, BigDecimal> others = new LinkedHashMap<>();
        others.put("wage", is.wage());
        others.put("employerPercent", is.employerPercent());
        others.put("utilisationPercent", is.utilisationPercent());
        others.put("overhead", is.overhead());
        others.put("machine", is.machine());
        others.put("wastePerJob", is.wastePerJob());
        others.put("reworkPercent", is.reworkPercent());
        others.put("materialMarkupPercent", is.materialMarkupPercent());
        boolean known = field.startsWith(CHARGE)
                ? charge.replace(field.substring(CHARGE.length()), was) != null
                : field.startsWith(RATES) && others.replace(field.substring(RATES.length()), was) != null;
        return known
                ? Optional.of(new Rates(
                        is.currency(),
                        charge,
                        others.get("wage"),
                        others.get("employerPercent"),
                        others.get("utilisationPercent"),
                        others.get("overhead"),
                        others.get("machine"),
                        others.get("wastePerJob"),
                        others.get("reworkPercent"),
                        others.get("materialMarkupPercent"),
                        is.margins(),
                        is.contingency(),
                        is.bySkill()))
                : Optional.empty();
    }

    /** What a stage takes, in the steps that are planned as they were. */
    QuoteEffect stage(String id) {
        Set<String> steps = now.values().stream()
                .filter(step -> step.stage().equals(id) && step.equals(before.get(step.id())))
                .map(PlannedStep::id)
                .collect(Collectors.toSet());
        return since(worked.job().plan(), with(steps), site);
    }

    /** A step that was added, removed or planned otherwise. */
    QuoteEffect step(String id) {
        if (!now.containsKey(id)) {
            PlannedStep was = before.get(id);
            List<Step> steps = new ArrayList<>(worked.job().plan().steps());
            steps.add(new Step(
                    id, was.stage(), was.zones(), Map.of(), Priority.valueOf(was.priority()), was.at(), was.drivers()));
            return since(new Plan(steps), with(Set.of(id)), site);
        }
        return since(worked.job().plan(), with(Set.of(id)), site);
    }

    /** Today's ledger with the lines of some steps as they were kept, at today's rates where today has such a line. */
    private Ledger with(Set<String> steps) {
        List<LedgerLine> lines = new ArrayList<>();
        for (LedgerLine line : ledger.lines()) {
            if (line.step().filter(steps::contains).isEmpty()) {
                lines.add(line);
            }
        }
        for (String step : steps) {
            lines.addAll(asKept(step));
        }
        return new Ledger(ledger.currency(), ledger.terms(), lines, ledger.purchases());
    }

    private List<LedgerLine> asKept(String step) {
        List<LedgerLine> is = ledger.linesOf(step);
        List<Line> was = kept.lines().stream()
                .filter(line -> line.step().filter(step::equals).isPresent())
                .toList();
        BigDecimal minutesNow = sum(is.stream()
                .filter(line -> isTime(line.kind()))
                .map(line -> line.quantity().multiply(line.rate()))
                .toList());
        BigDecimal minutesWas = sum(was.stream()
                .filter(line -> isTime(line.kind()))
                .map(line -> line.quantity().multiply(line.rate()))
                .toList());
        boolean sameStage = now.containsKey(step)
                && before.containsKey(step)
                && now.get(step).stage().equals(before.get(step).stage());
        List<LedgerLine> lines = new ArrayList<>();
        if (sameStage && minutesNow.signum() > 0) {
            BigDecimal share = minutesWas.divide(minutesNow, MathContext.DECIMAL128);
            is.stream()
                    .filter(line -> BY_TIME.contains(line.kind()))
                    .forEach(line -> lines.add(line(line, line.quantity().multiply(share), line.rate())));
        }
        for (Line line : was) {
            if (sameStage && minutesNow.signum() > 0 && BY_TIME.contains(line.kind())) {
                continue;
            }
            Optional<LedgerLine> same = is.stream()
                    .filter(l -> l.kind() == line.kind()
                            && l.subject().equals(line.subject())
                            && l.unit().equals(line.unit()))
                    .findFirst();
            lines.add(new LedgerLine(
                    line.kind(),
                    line.step(),
                    Priority.valueOf(line.priority()),
                    line.subject(),
                    line.quantity(),
                    line.unit(),
                    same.map(LedgerLine::rate).orElse(line.rate()),
                    List.of(new Origin.Term(kept.number(), line.quantity()))));
        }
        return lines;
    }

    private static boolean isTime(LineKind kind) {
        return kind == LineKind.HANDS_ON || kind == LineKind.SET_UP;
    }

    private static BigDecimal sum(List<BigDecimal> all) {
        return all.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static LedgerLine line(LedgerLine like, BigDecimal quantity, BigDecimal rate) {
        return new LedgerLine(
                like.kind(), like.step(), like.priority(), like.subject(), quantity, like.unit(), rate, like.trail());
    }

    // figures

    private JobTerms terms() {
        return ledger.terms();
    }

    private QuoteEffect rolled(Rates rates, JobTerms terms) {
        Ledger as =
                RollUp.of(worked.job().plan(), worked.work(), worked.setting().library(), rates, terms);
        return since(
                worked.job().plan(), as, new SiteTerms(rates, site.tax(), site.validDays(), site.depositPercent()));
    }

    private QuoteEffect since(Plan plan, Ledger as, SiteTerms terms) {
        return today.over(figures(plan, as, terms));
    }

    private Figures figures(Plan plan, Ledger of, SiteTerms terms) {
        Price price = Quoting.range(
                        worked.setting(), plan, of, terms, quote.range().contingencyPercent())
                .low();
        return new Figures(of.net(), price.gross(), of.cost());
    }
}
