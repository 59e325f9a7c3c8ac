package baywright.cli;

import baywright.document.KeptQuote;
import baywright.document.KeptQuotes;
import baywright.document.QuoteChange;
import baywright.document.QuoteDocument;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.site.Numbers;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Shows a kept quote, and what would be otherwise today. */
final class KeptQuotePrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final OpenedJob opened;
    private final QuoteFiles files;
    private final Numbers numbers;
    private final KeptQuote kept;

    KeptQuotePrinter(Session session, OpenedJob opened, QuoteFiles files) {
        this.session = session;
        this.opened = opened;
        this.files = files;
        numbers = new Numbers(opened.site().shop().locale());
        KeptQuotes quotes = new KeptQuotes(opened.site(), opened.file().folder());
        List<KeptQuotes.Name> names = quotes.names();
        if (names.isEmpty()) {
            throw session.badInput("kept.none", opened.job().id());
        }
        String said = files.kept().orElseThrow();
        kept = quotes.read(quotes.find(said)
                .orElseThrow(() -> session.badInput(
                        "kept.not",
                        said,
                        names.stream().map(KeptQuotes.Name::toString).collect(Collectors.joining(", ")))));
    }

    int print() {
        WorkedJob now = opened.site().work(opened.job());
        if (session.json()) {
            Answers.print(session, json(now));
        } else {
            figures();
            today(now);
        }
        files.write(session, kept);
        return ExitStatus.FINE;
    }

    private void figures() {
        QuoteDocument document = kept.document();
        session.say(
                "kept.title",
                kept.number(),
                kept.version(),
                document.from().name(),
                numbers.day(kept.keptAt().toLocalDate()));
        QuoteDocument.Sums sums = document.sums();
        Table table = new Table("", ">", "~");
        if (!document.options().isEmpty() && !document.work().isEmpty()) {
            table.add(session.text("kept.base"), numbers.money(sums.base().gross()), "");
        }
        table.add(session.text("figure.net"), numbers.money(sums.all().net()), "");
        table.add(
                session.text("figure.tax", sums.taxName()),
                numbers.money(sums.all().tax()),
                session.text("figure.tax.note", numbers.number(sums.taxPercent(), 3)));
        LocalDate until = document.reference().validUntil();
        LocalDate day =
                LocalDate.now(session.clock().withZone(opened.site().shop().timeZone()));
        String stands = session.text(day.isAfter(until) ? "kept.over" : "kept.stands", numbers.day(until));
        table.add(session.text("figure.price"), numbers.money(sums.all().gross()), stands);
        table.add(session.text("figure.high"), numbers.money(sums.allHigh()), "");
        table.add(session.text("figure.deposit"), numbers.money(sums.allDeposit()), "");
        table.print(session.console(), INDENT);
        session.console().out().println();
    }

    private void today(WorkedJob now) {
        if (!(now.offer() instanceof Quote quote)) {
            session.say("kept.today-stopped", ((Refusal) now.offer()).stops().size());
            return;
        }
        List<QuoteChange> changes = QuoteChange.since(kept, now, quote);
        if (changes.isEmpty()) {
            session.say("kept.same");
        } else {
            session.say("kept.changes");
            Table table = new Table(
                    "~" + session.text("kept.what"),
                    ">" + session.text("kept.was"),
                    ">" + session.text("kept.is"),
                    ">" + session.text("kept.by"),
                    ">" + session.text("kept.by-price"),
                    ">" + session.text("kept.by-cost"));
            changes.forEach(change -> table.add(
                    session.text("kept." + change.kind(), named(change)),
                    shown(change, change.was()),
                    shown(change, change.is()),
                    change.by().map(by -> signed(by.net())).orElse(""),
                    change.by().map(by -> signed(by.gross())).orElse(""),
                    change.by().map(by -> signed(by.cost())).orElse("")));
            table.print(session.console(), INDENT);
        }
        Money more = quote.price().gross().minus(kept.document().sums().all().gross());
        String price = numbers.money(quote.price().gross());
        session.say(
                more.isZero() ? "kept.today-same" : "kept.today",
                price,
                numbers.money(more.abs()),
                more.getAmount().signum());
    }

    private String shown(QuoteChange change, String value) {
        if (change.kind() == QuoteChange.Kind.TOGETHER) {
            return "";
        }
        return change.kind() == QuoteChange.Kind.SURVEY
                ? (value.equals(change.is()) ? session.text("kept.changed") : "")
                : value.isEmpty() ? "–" : value;
    }

    private String signed(BigDecimal by) {
        BigDecimal coins = by.setScale(2, RoundingMode.HALF_UP);
        return (coins.signum() > 0 ? "+" : "") + numbers.fixed(coins, 2);
    }

    private String named(QuoteChange change) {
        return switch (change.kind()) {
            case ITEM_PRICE, ITEM_PACK ->
                opened.site().library().itemById().get(change.subject()).title();
            case STAGE_REVISION, STAGE_WORDS, STAGE_MINUTES ->
                opened.site().library().stageById().get(change.subject()).title();
            default -> change.subject();
        };
    }

    private ObjectNode json(WorkedJob now) {
        ObjectNode answer = Answers.object();
        answer.put("job", kept.job());
        answer.put("number", kept.number());
        answer.put("version", kept.version());
        answer.put("keptAt", kept.keptAt().toString());
        answer.set("price", amounts(kept.document().sums().all()));
        answer.set("base", amounts(kept.document().sums().base()));
        answer.put("deposit", kept.document().sums().allDeposit().getAmount());
        answer.put("validUntil", kept.document().reference().validUntil().toString());
        if (now.offer() instanceof Quote quote) {
            ArrayNode changes = answer.putArray("changes");
            for (QuoteChange change : QuoteChange.since(kept, now, quote)) {
                ObjectNode one = changes.addObject();
                one.put("kind", Answers.word(change.kind()));
                one.put("subject", change.subject());
                one.put("was", change.was());
                one.put("is", change.is());
                change.by().ifPresent(by -> {
                    one.put("net", Answers.figure(by.net()));
                    one.put("price", Answers.figure(by.gross()));
                    one.put("cost", Answers.figure(by.cost()));
                });
            }
            answer.put("today", quote.price().gross().getAmount());
        } else {
            answer.putNull("today");
        }
        return answer;
    }

    private static ObjectNode amounts(QuoteDocument.Amounts amounts) {
        ObjectNode one = Answers.object();
        one.put("net", amounts.net().getAmount());
        one.put("tax", amounts.tax().getAmount());
        one.put("gross", amounts.gross().getAmount());
        return one;
    }
}
