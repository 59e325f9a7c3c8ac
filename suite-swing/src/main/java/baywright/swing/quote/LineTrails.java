package baywright.swing.quote;

import baywright.money.BuildUp.Bar;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.LineKind.Column;
import baywright.money.Origin;
import baywright.money.Price;
import baywright.money.Quote;
import baywright.plan.Trail;
import baywright.swing.api.Destination;
import baywright.swing.parts.TrailLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Tells where the bars of a quote come from: each line as a product, below it where each number is written. */
final class LineTrails {

    private static final String IN = "    ";

    private final Quote quote;
    private final Figures figures;

    LineTrails(Quote quote, Figures figures) {
        this.quote = quote;
        this.figures = figures;
    }

    List<TrailLine> of(Bar bar) {
        List<TrailLine> lines = new ArrayList<>();
        switch (bar.what()) {
            case LINES -> bar.lines().forEach(line -> add(line, lines));
            case ROUNDING ->
                say(
                        lines,
                        "trail.rounding",
                        figures.exact(bar.from()),
                        figures.money(quote.price().net()));
            case NET ->
                say(
                        lines,
                        "trail.net",
                        figures.exact(quote.ledger().net()),
                        figures.money(quote.price().net()));
            case TAX -> tax(bar, lines);
            case PRICE ->
                say(
                        lines,
                        "trail.price",
                        figures.money(quote.price().net()),
                        figures.money(quote.price().tax()),
                        figures.money(quote.price().gross()));
            case CONTINGENCY ->
                say(
                        lines,
                        "trail.contingency",
                        figures.exact(quote.range().contingencyPercent()),
                        figures.exact(quote.ledger().labourNet()),
                        figures.money(bar.amount()));
            case MOST ->
                say(lines, "trail.most", figures.money(quote.range().high().gross()));
            case COST ->
                say(
                        lines,
                        "trail.cost",
                        figures.exact(quote.ledger().cost()),
                        figures.money(quote.margin().floor()));
            case LEFT -> left(lines);
        }
        return lines;
    }

    private static void say(List<TrailLine> lines, String key, Object... values) {
        lines.add(TrailLine.of(Words.of(key, values)));
    }

    private void tax(Bar bar, List<TrailLine> lines) {
        var rule = quote.terms().tax();
        for (Price.Tax tax : quote.price().taxes()) {
            if (tax.percent().toPlainString().equals(bar.of())) {
                say(
                        lines,
                        "trail.tax",
                        rule.name(),
                        figures.exact(tax.percent()),
                        figures.money(tax.net()),
                        figures.money(tax.tax()));
            }
        }
        lines.add(TrailLine.of(IN + Words.of("tax-on", rule.on())));
    }

    private void left(List<TrailLine> lines) {
        say(
                lines,
                "trail.left",
                figures.money(quote.price().net()),
                figures.exact(quote.ledger().cost()),
                quote.margin().afterAll().map(figures::percent).orElse(Words.of("none")));
        quote.margin().afterDirect().ifPresent(p -> say(lines, "trail.after-direct", figures.percent(p)));
        quote.margin().target().ifPresent(net -> say(lines, "trail.target", figures.money(net)));
        if (quote.margin().ownerSigns()) {
            say(lines, "trail.owner");
        }
    }

    private void add(LedgerLine line, List<TrailLine> lines) {
        String text = Words.of("trail.line", about(line), product(line));
        lines.add(line.step()
                .map(step -> TrailLine.of(text, Destination.step(step)))
                .orElseGet(() -> TrailLine.of(text)));
        line.trail().forEach(origin -> add(origin, line, IN, lines));
    }

    /** The step that it is about, and what of it where that is not the stage itself. */
    private String about(LedgerLine line) {
        boolean ofItem = line.kind() == LineKind.MATERIAL || line.kind() == LineKind.MATERIAL_COST;
        String subject = ofItem ? figures.item(line.subject()) : figures.stage(line.subject());
        return line.step()
                .map(step -> ofItem ? Words.of("trail.of", figures.step(step), subject) : figures.step(step))
                .orElse(subject);
    }

    private String product(LedgerLine line) {
        boolean time = line.kind().column() == Column.MINUTES || line.kind().column() == Column.WAITING;
        return Words.of(
                "trail.product",
                figures.exact(line.quantity()),
                line.unit(),
                figures.exact(line.rate()),
                figures.exact(line.amount()),
                time ? Words.of("minutes") : figures.currency().getCode());
    }

    private void add(Origin origin, LedgerLine line, String in, List<TrailLine> lines) {
        if (origin instanceof Origin.Work work) {
            work(work.trail(), in, lines);
        } else if (origin instanceof Origin.FamilySetUp family) {
            lines.add(TrailLine.of(
                    in
                            + Words.of(
                                    "trail.family",
                                    family.family(),
                                    family.steps().stream().map(figures::step).collect(Collectors.joining(", "))),
                    family.place()));
        } else if (origin instanceof Origin.Pack pack) {
            lines.add(TrailLine.of(
                    in
                            + Words.of(
                                    "trail.pack",
                                    figures.item(pack.item()),
                                    pack.pack().toString(),
                                    figures.money(pack.price())),
                    new Destination("library", Map.of("item", pack.item()))));
        } else if (origin instanceof Origin.Term term) {
            lines.add(TrailLine.of(in + Words.of("trail.term", term.field(), figures.exact(term.value()))));
        } else if (origin instanceof Origin.Lines sum) {
            lines.add(TrailLine.of(in
                    + Words.of(
                            "trail.lines",
                            sum.kinds().stream()
                                    .map(kind -> Words.of("kind", kind))
                                    .collect(Collectors.joining(" + ")),
                            figures.exact(sum.sum()))));
            summed(sum, line, in + IN, lines);
        }
    }

    /** Times that were summed up lead on to their scripts; sums of money have bars of their own. */
    private void summed(Origin.Lines sum, LedgerLine of, String in, List<TrailLine> lines) {
        for (LedgerLine line : quote.ledger().lines()) {
            boolean same = line.step().equals(of.step())
                    && (of.step().isPresent() || line.subject().equals(of.subject()));
            if (same && sum.kinds().contains(line.kind()) && line.kind().column() == Column.MINUTES) {
                lines.add(TrailLine.of(in + Words.of("trail.line", Words.of("kind", line.kind()), product(line))));
                line.trail().forEach(origin -> add(origin, line, in + IN, lines));
            }
        }
    }

    private void work(Trail trail, String in, List<TrailLine> lines) {
        String source = Words.of("trail.source", trail.source());
        lines.add(TrailLine.of(
                in
                        + (trail.driver().isEmpty()
                                ? source
                                : Words.of("trail.driver", figures.exact(trail.amount()), trail.driver(), source)),
                trail.place()));
        if (trail.times().compareTo(BigDecimal.ONE) != 0) {
            lines.add(TrailLine.of(in + Words.of("trail.times", figures.exact(trail.times())), trail.place()));
        }
        for (Trail.Given given : trail.given()) {
            String text = in + Words.of("trail.given", given.name(), given.value(), Words.of("giver", given.giver()));
            lines.add(
                    given.giver() == Trail.Giver.SURVEY && !trail.zones().isEmpty()
                            ? TrailLine.of(text, Destination.zone(trail.zones().get(0)))
                            : TrailLine.of(text));
        }
        if (trail.source() == Trail.Source.SURVEY && !trail.zones().isEmpty()) {
            String zone = trail.zones().get(0);
            lines.add(TrailLine.of(in + Words.of("trail.zone", figures.zone(zone)), Destination.zone(zone)));
        }
        for (Trail.Applied factor : trail.factors()) {
            lines.add(TrailLine.of(
                    in
                            + Words.of(
                                    "trail.factor",
                                    factor.factor(),
                                    figures.exact(factor.by()),
                                    factor.fact(),
                                    factor.value()),
                    factor.place()));
        }
    }
}
