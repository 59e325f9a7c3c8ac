package baywright.document;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.money.Fingerprint;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Purchase;
import baywright.money.Quote;
import baywright.money.Rates;
import baywright.money.SiteTerms;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A quote as it was handed out, with everything that it rested on that day. Its figures are never worked out again.
 *
 * @param number   year and running number in the workspace, such as {@code 2026-001}
 * @param version  from 1
 * @param job      id of the job
 * @param keptAt   local time of the site
 * @param document what the customer was given
 * @param pins     what it rested on
 * @param plan     the steps
 * @param lines    the ledger
 */
public record KeptQuote(
        String number,
        int version,
        String job,
        LocalDateTime keptAt,
        QuoteDocument document,
        Pins pins,
        List<PlannedStep> plan,
        List<Line> lines) {

    public KeptQuote {
        plan = List.copyOf(plan);
        lines = List.copyOf(lines);
        if (version < 1) {
            throw new IllegalArgumentException("a version counts from 1, got " + version);
        }
    }

    /**
     * What the figures rested on.
     *
     * @param library  SHA-256 of the library
     * @param inputs   SHA-256 of everything else that the proof rested on
     * @param survey   fingerprint of vehicle and survey
     * @param stages   by stage id
     * @param items    by item id
     * @param terms    rates, tax and terms by the field that they stand in
     */
    public record Pins(
            String library,
            String inputs,
            String survey,
            Map<String, StagePin> stages,
            Map<String, ItemPin> items,
            Map<String, BigDecimal> terms) {
        public Pins {
            stages = Collections.unmodifiableMap(new TreeMap<>(stages));
            items = Collections.unmodifiableMap(new TreeMap<>(items));
            terms = Collections.unmodifiableMap(new TreeMap<>(terms));
        }
    }

    /** A stage's revision, a fingerprint of what it says with everything as usual, and its hands-on minutes in the plan. */
    public record StagePin(int revision, String fingerprint, BigDecimal minutes) {}

    /** What a pack held and cost, and how many packs, or parts of one, were charged. */
    public record ItemPin(String pack, BigDecimal price, BigDecimal charged) {}

    /** A step as it was planned. */
    public record PlannedStep(
            String id,
            String stage,
            List<String> zones,
            Map<String, String> with,
            String priority,
            Optional<LocalDateTime> at,
            Map<String, BigDecimal> drivers) {
        public PlannedStep {
            zones = List.copyOf(zones);
            with = Collections.unmodifiableMap(new TreeMap<>(with));
            drivers = Collections.unmodifiableMap(new TreeMap<>(drivers));
        }
    }

    /** A line of the ledger, exact. */
    public record Line(
            Optional<String> step,
            String priority,
            LineKind kind,
            String subject,
            BigDecimal quantity,
            String unit,
            BigDecimal rate) {}

    /** A quote as it is kept now. */
    static KeptQuote of(
            String number, int version, LocalDateTime at, WorkedJob worked, Quote quote, QuoteDocument document) {
        return new KeptQuote(
                number,
                version,
                worked.job().id(),
                at,
                document.under(number, version),
                pins(worked, quote),
                plan(worked),
                quote.ledger().lines().stream().map(KeptQuote::line).toList());
    }

    static Line line(LedgerLine line) {
        return new Line(
                line.step(),
                line.priority().name(),
                line.kind(),
                line.subject(),
                line.quantity(),
                line.unit(),
                line.rate());
    }

    static List<PlannedStep> plan(WorkedJob worked) {
        return worked.job().plan().steps().stream().map(KeptQuote::planned).toList();
    }

    private static PlannedStep planned(Step step) {
        Map<String, String> with = new TreeMap<>();
        step.with().forEach((name, value) -> with.put(name, String.valueOf(value.raw())));
        return new PlannedStep(
                step.id(), step.stage(), step.zones(), with, step.priority().name(), step.at(), step.drivers());
    }

    static Pins pins(WorkedJob worked, Quote quote) {
        Library library = worked.setting().library();
        Map<String, StagePin> stages = new LinkedHashMap<>();
        for (StepWork work : worked.work().steps()) {
            Stage stage = library.stageById().get(work.stage());
            BigDecimal minutes = work.attendedMinutes()
                    .mean()
                    .add(work.setUpMinutes())
                    .multiply(BigDecimal.valueOf(worked.job().vehicles()));
            stages.merge(
                    stage.id(),
                    new StagePin(stage.revision(), Fingerprint.of(stage.usualTerms()), minutes),
                    (a, b) -> new StagePin(
                            a.revision(), a.fingerprint(), a.minutes().add(b.minutes())));
        }
        Map<String, ItemPin> items = new LinkedHashMap<>();
        for (Purchase purchase : quote.ledger().purchases()) {
            Item item = library.itemById().get(purchase.item());
            items.put(item.id(), new ItemPin(item.pack().toString(), item.price(), purchase.charged()));
        }
        return new Pins(
                quote.proof().library(),
                quote.proof().inputs(),
                Fingerprint.of(worked.setting().shape(), worked.setting().survey()),
                stages,
                items,
                terms(quote));
    }

    /** Field names are those of the shop's and the job's files. */
    private static Map<String, BigDecimal> terms(Quote quote) {
        SiteTerms site = quote.terms();
        Rates rates = site.rates();
        Map<String, BigDecimal> terms = new TreeMap<>();
        rates.charge().forEach((grade, rate) -> terms.put("rates.charge." + grade, rate));
        terms.put("rates.wage", rates.wage());
        terms.put("rates.employerPercent", rates.employerPercent());
        terms.put("rates.utilisationPercent", rates.utilisationPercent());
        terms.put("rates.overhead", rates.overhead());
        terms.put("rates.machine", rates.machine());
        terms.put("rates.wastePerJob", rates.wastePerJob());
        terms.put("rates.reworkPercent", rates.reworkPercent());
        terms.put("rates.materialMarkupPercent", rates.materialMarkupPercent());
        terms.put("contingency", quote.range().contingencyPercent());
        terms.put("tax.percent", site.tax().percent());
        terms.put("quote.depositPercent", site.depositPercent());
        terms.put("price.discountLabourPercent", quote.ledger().terms().discountLabourPercent());
        terms.put("price.discountPercent", quote.ledger().terms().discountPercent());
        return terms;
    }
}
