package baywright.cli;

import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.LineKind.Column;
import baywright.money.Origin;
import baywright.money.Quote;
import baywright.plan.Trail;
import baywright.site.Numbers;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where each figure of a quote comes from: the ledger's lines with their trails, and how the totals are made of them. */
final class TrailPrinter {

    private static final String INDENT = "      ";

    /** Decimals of an amount in a trail; enough that a reader can add the lines up to the coin. */
    private static final int DECIMALS = 5;

    private final Session session;
    private final WorkedJob worked;
    private final Quote quote;
    private final Numbers numbers;

    TrailPrinter(Session session, Numbers numbers, WorkedJob worked, Quote quote) {
        this.session = session;
        this.worked = worked;
        this.quote = quote;
        this.numbers = numbers;
    }

    /**
     * Prints the trail.
     *
     * @param what id of a step, a stage, a family or an item, or a kind of line such as {@code labour}; empty: everything
     * @throws BadInput when no line is about that
     */
    void print(String what) {
        for (LedgerLine line : lines(what)) {
            session.console().out().println();
            session.say(
                    "trail.line",
                    line.step().orElse("–"),
                    line.subject(),
                    session.text("kind." + Answers.word(line.kind())),
                    product(line));
            line.trail().forEach(origin -> sentences(origin).forEach(this::printIndented));
        }
        if (what.isEmpty()) {
            printTotals();
        }
    }

    private List<LedgerLine> lines(String what) {
        List<LedgerLine> chosen = quote.ledger().lines().stream()
                .filter(line -> what.isEmpty()
                        || line.step().filter(what::equals).isPresent()
                        || line.subject().equals(what)
                        || Answers.word(line.kind()).equals(what))
                .toList();
        if (chosen.isEmpty()) {
            throw session.badInput("trail.nothing", what, worked.job().id());
        }
        return chosen;
    }

    private String product(LedgerLine line) {
        return session.text(
                "trail.product",
                numbers.number(line.quantity(), DECIMALS),
                line.unit(),
                numbers.number(line.rate(), DECIMALS),
                numbers.number(line.amount(), DECIMALS),
                unit(line.kind()));
    }

    private String unit(LineKind kind) {
        boolean time = kind.column() == Column.MINUTES || kind.column() == Column.WAITING;
        return time ? "min" : quote.ledger().currency().getCode();
    }

    private List<String> sentences(Origin origin) {
        List<String> sentences = new ArrayList<>();
        if (origin instanceof Origin.Work work) {
            addWork(work.trail(), sentences);
        } else if (origin instanceof Origin.FamilySetUp family) {
            sentences.add(session.text("trail.family", family.place(), String.join(", ", family.steps())));
        } else if (origin instanceof Origin.Pack pack) {
            sentences.add(session.text(
                    "trail.pack", pack.item(), numbers.quantity(pack.pack()), numbers.number(pack.price(), DECIMALS)));
        } else if (origin instanceof Origin.Term term) {
            sentences.add(session.text("trail.term", term.field(), numbers.number(term.value(), DECIMALS)));
        } else if (origin instanceof Origin.Lines lines) {
            sentences.add(session.text(
                    "trail.lines",
                    lines.kinds().stream()
                            .map(kind -> session.text("kind." + Answers.word(kind)))
                            .collect(Collectors.joining(" + ")),
                    numbers.number(lines.sum(), DECIMALS)));
        }
        return sentences;
    }

    private void addWork(Trail trail, List<String> sentences) {
        String source = session.text("trail.source." + Answers.word(trail.source()));
        sentences.add(session.text("trail.script", "stages/" + trail.place()));
        if (!trail.driver().isEmpty()) {
            sentences.add(session.text(
                    "trail.driver",
                    numbers.number(trail.amount(), DECIMALS),
                    trail.driver(),
                    source,
                    trail.zones().size()));
        }
        if (trail.times().compareTo(BigDecimal.ONE) != 0) {
            sentences.add(session.text("trail.times", numbers.number(trail.times(), DECIMALS)));
        }
        for (Trail.Given given : trail.given()) {
            sentences.add(session.text(
                    "trail.given",
                    given.name(),
                    given.value(),
                    session.text("trail.giver." + Answers.word(given.giver()))));
        }
        for (Trail.Applied factor : trail.factors()) {
            sentences.add(session.text(
                    "trail.factor",
                    factor.factor(),
                    numbers.number(factor.by(), DECIMALS),
                    factor.fact(),
                    factor.value(),
                    "stages/" + factor.place()));
        }
    }

    private void printIndented(String sentence) {
        Wrap.lines(sentence, Console.WIDTH - INDENT.length())
                .forEach(line -> session.console().out().println(INDENT + line));
    }

    private void printTotals() {
        var ledger = quote.ledger();
        session.console().out().println();
        session.say(
                "total.net",
                numbers.number(ledger.total(LineKind.LABOUR), DECIMALS),
                numbers.number(ledger.discount(), DECIMALS),
                numbers.number(ledger.total(LineKind.MATERIAL), DECIMALS),
                numbers.number(ledger.net(), DECIMALS),
                numbers.money(quote.price().net()));
        var tax = quote.terms().tax();
        session.say(
                "total.tax." + Answers.word(tax.on()),
                tax.name(),
                numbers.number(tax.percent(), DECIMALS),
                numbers.money(quote.price().tax()),
                numbers.money(quote.price().gross()),
                Answers.word(tax.rounding()));
        session.say(
                "total.high",
                numbers.number(quote.range().contingencyPercent(), DECIMALS),
                numbers.number(ledger.labourNet(), DECIMALS),
                numbers.money(quote.range().high().gross()));
        session.say(
                "total.floor",
                numbers.number(ledger.cost(), DECIMALS),
                numbers.money(quote.margin().floor()));
        session.say(
                "total.margin",
                numbers.number(ledger.directCost(), DECIMALS),
                numbers.number(ledger.cost(), DECIMALS),
                numbers.money(quote.price().net()));
        session.say(
                "total.deposit",
                numbers.number(quote.terms().depositPercent(), DECIMALS),
                numbers.money(quote.price().gross()),
                numbers.money(quote.deposit()));
    }

    ArrayNode json(String what) {
        ArrayNode all = Answers.array();
        for (LedgerLine line : lines(what)) {
            ObjectNode one = all.addObject();
            line.step().ifPresentOrElse(step -> one.put("step", step), () -> one.putNull("step"));
            one.put("subject", line.subject());
            one.put("kind", Answers.word(line.kind()));
            one.put("priority", Answers.word(line.priority()));
            one.put("quantity", Answers.figure(line.quantity()));
            one.put("unit", line.unit());
            one.put("rate", Answers.figure(line.rate()));
            one.put("amount", Answers.figure(line.amount()));
            ArrayNode from = one.putArray("from");
            line.trail().forEach(origin -> sentences(origin).forEach(from::add));
        }
        return all;
    }
}
