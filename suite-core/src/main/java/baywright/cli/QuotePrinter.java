package baywright.cli;

import baywright.library.Item;
import baywright.library.Stage;
import baywright.money.CapFit;
import baywright.money.Margin;
import baywright.money.Part;
import baywright.money.Position;
import baywright.money.Price;
import baywright.money.Quote;
import baywright.money.Range;
import baywright.plan.Finding;
import baywright.plan.Reason;
import baywright.plan.Severity;
import baywright.safety.SafetyCodes;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/** A quote on the terminal. */
final class QuotePrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final Site site;
    private final WorkedJob worked;
    private final Quote quote;
    private final Numbers numbers;

    QuotePrinter(Session session, Site site, WorkedJob worked, Quote quote) {
        this.session = session;
        this.site = site;
        this.worked = worked;
        this.quote = quote;
        this.numbers = new Numbers(site.shop().locale());
    }

    void print(FindingPrinter findings, OutlookPrinter outlook) {
        Console console = session.console();
        console.out()
                .println(console.paint(
                        Ink.HEAD,
                        session.text(
                                "quote.title",
                                worked.job().title(),
                                site.shop().name(),
                                quote.ledger().currency().getCode())));
        printPositions();
        console.out().println();
        printParts();
        console.out().println();
        printFigures(outlook);
        long warnings = worked.findings().stream()
                .filter(f -> f.severity() == Severity.WARN)
                .count();
        List<Finding> answeredFor = worked.findings().stream()
                .filter(f -> f.code().equals(SafetyCodes.ACKNOWLEDGED) || isSoftened(f))
                .toList();
        if (!answeredFor.isEmpty()) {
            console.out().println();
            findings.print(answeredFor);
        }
        if (warnings > 0) {
            console.out().println();
            session.say("quote.warnings", findings.summary(worked.findings()));
        }
    }

    /** The shop's reason for a rule that it has softened stays on the quote. */
    private static boolean isSoftened(Finding finding) {
        return finding.reason() instanceof Reason.RuleSpeaks rule
                && !rule.note().isEmpty();
    }

    private void printPositions() {
        Table table = new Table(
                session.text("quote.step"),
                "~" + session.text("quote.line"),
                session.text("quote.priority"),
                ">" + session.text("quote.net"));
        for (Position position : quote.positions()) {
            table.add(
                    position.step().orElse(""),
                    title(position),
                    session.text("priority." + Answers.word(position.priority())),
                    numbers.coins(position.net()));
        }
        table.print(session.console(), INDENT);
    }

    private String title(Position position) {
        String subject = position.subject();
        if (position.step().isPresent()) {
            return stage(subject);
        }
        return site.library().families().stream()
                .filter(f -> f.id().equals(subject))
                .findFirst()
                .map(f -> session.text("quote.set-up", f.title()))
                .orElseGet(() -> Optional.ofNullable(site.library().itemById().get(subject))
                        .map(Item::title)
                        .map(title -> session.text("quote.rest-of-pack", title))
                        .orElse(subject));
    }

    private String stage(String id) {
        Stage stage = site.library().stageById().get(id);
        return stage == null ? id : stage.title();
    }

    private void printParts() {
        boolean capped = quote.cap().isPresent();
        Table table = new Table(
                session.text("quote.priority"),
                ">" + session.text("quote.hands-on"),
                ">" + session.text("quote.adds-net"),
                ">" + session.text("quote.adds-price"),
                ">" + session.text("quote.up-to"),
                ">" + session.text("quote.with-contingency"),
                capped ? session.text("quote.cap") : "");
        for (Part part : quote.parts()) {
            boolean alone = !worked.judged().leaning().broken().contains(part.priority());
            table.add(
                    session.text("priority." + Answers.word(part.priority())),
                    numbers.duration(part.minutes()),
                    numbers.coins(part.alone().net()),
                    numbers.coins(part.alone().gross()),
                    alone ? numbers.coins(part.upTo().low().gross()) : "–",
                    alone ? numbers.coins(part.upTo().high().gross()) : "–",
                    alone
                            ? part.cap().map(fit -> fit(fit, numbers::coins)).orElse("")
                            : session.text("quote.not-alone"));
        }
        table.print(session.console(), INDENT);
    }

    private String fit(CapFit fit, Function<Money, String> written) {
        return fit.fits()
                ? session.text("quote.fits", written.apply(fit.spare()))
                : session.text("quote.over", written.apply(fit.over()));
    }

    private void printFigures(OutlookPrinter outlook) {
        Table table = new Table("", ">", "~");
        Range range = quote.range();
        Margin margin = quote.margin();
        table.add(session.text("figure.net"), numbers.money(quote.price().net()), "");
        boolean several = quote.price().taxes().size() > 1;
        for (Price.Tax tax : quote.price().taxes()) {
            String percent = numbers.number(tax.percent(), 3);
            table.add(
                    session.text("figure.tax", quote.terms().tax().name()),
                    numbers.money(tax.tax()),
                    several
                            ? session.text("figure.tax.note-of", percent, numbers.money(tax.net()))
                            : session.text("figure.tax.note", percent));
        }
        table.add(
                session.text("figure.price"),
                numbers.money(quote.price().gross()),
                session.text("figure.valid", numbers.day(quote.validUntil())));
        table.add(
                session.text("figure.high"),
                numbers.money(range.high().gross()),
                session.text("figure.high.note", numbers.number(range.contingencyPercent(), 2), why()));
        quote.cap()
                .ifPresent(fit ->
                        table.add(session.text("figure.cap"), numbers.money(fit.cap()), fit(fit, numbers::money)));
        table.add(session.text("figure.deposit"), numbers.money(quote.deposit()), "");
        table.add(
                session.text("figure.floor"),
                numbers.money(margin.floor()),
                margin.loss() ? session.console().paint(Ink.STOP, loss()) : "");
        table.add(session.text("figure.after-direct"), percent(margin.afterDirect()), "");
        table.add(
                session.text("figure.after-all"),
                percent(margin.afterAll()),
                margin.ownerSigns() ? session.console().paint(Ink.WARN, session.text("figure.owner")) : "");
        margin.target()
                .ifPresent(target -> table.add(
                        session.text("figure.target"),
                        numbers.money(target),
                        quote.price().net().isLessThan(target) ? session.text("figure.target.below") : ""));
        outlook.addTo(table);
        table.print(session.console(), INDENT);
    }

    /** Whether it is a loss at all, or one because of what is let off. */
    private String loss() {
        BigDecimal let = quote.ledger().discount();
        BigDecimal whole = quote.price().net().getAmount().subtract(let);
        boolean byDiscount =
                let.signum() < 0 && whole.compareTo(quote.margin().floor().getAmount()) >= 0;
        return byDiscount
                ? session.text("figure.loss-by-discount", numbers.fixed(let.negate(), 2))
                : session.text("figure.loss");
    }

    /** What the contingency follows. */
    private String why() {
        return quote.terms()
                .rates()
                .contingency()
                .confidencePercent()
                .map(percent -> session.text("confidence.asked", numbers.number(percent, 1)))
                .orElseGet(() -> session.text(
                        "confidence." + Answers.word(quote.ledger().terms().confidence())));
    }

    private String percent(Optional<BigDecimal> percent) {
        return percent.map(p -> numbers.fixed(p, 1) + " %").orElse("–");
    }
}
