package baywright.document;

import baywright.document.QuoteDocument.Amounts;
import baywright.document.QuoteDocument.Chapter;
import baywright.document.QuoteDocument.Choice;
import baywright.document.QuoteDocument.PanelFilm;
import baywright.document.QuoteDocument.Priced;
import baywright.document.QuoteDocument.Risk;
import baywright.document.QuoteDocument.Task;
import baywright.document.QuoteDocument.ZoneNote;
import baywright.site.Numbers;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/** Writes a quote as a page for screen and paper. */
public final class QuoteHtml {

    private final QuoteDocument quote;
    private final Texts texts;
    private final Numbers numbers;
    private final Page page;

    private QuoteHtml(QuoteDocument quote, Paper paper) {
        this.quote = quote;
        Locale locale = Locale.forLanguageTag(quote.language());
        texts = new Texts(locale);
        numbers = new Numbers(locale);
        page = new Page(
                locale,
                title(),
                quote.from().name(),
                paper,
                quote.from().name() + " · " + title(),
                texts.of("page.count"));
    }

    /** The page. */
    public static String of(QuoteDocument quote, Paper paper) {
        QuoteHtml html = new QuoteHtml(quote, paper);
        html.write();
        return html.page.end();
    }

    private String title() {
        return quote.reference()
                .number()
                .map(number ->
                        texts.of("quote.title.kept", number, quote.reference().version()))
                .orElseGet(() -> texts.of("quote.title.draft", quote.title()));
    }

    private void write() {
        letterhead();
        reference();
        wishes();
        found();
        work();
        choices();
        price();
        exclusions();
        risks();
        acceptance();
    }

    private void letterhead() {
        QuoteDocument.From from = quote.from();
        page.raw("<table class=\"head\"><tr>").put("td class=\"name\"", from.name());
        String reach = Stream.concat(
                        from.address().stream(), Stream.of(from.phone(), from.email(), from.web(), from.taxNumber()))
                .filter(line -> !line.isBlank())
                .collect(Collectors.joining("\n"));
        page.put("td class=\"reach\"", reach).raw("</tr></table>\n");
    }

    private void reference() {
        page.put("h1", texts.of("quote.heading"));
        page.put("p class=\"about\"", quote.title());
        page.raw("<table class=\"to\"><tr><td class=\"who\">");
        page.say("h3", quote.customer());
        QuoteDocument.Vehicle vehicle = quote.vehicle();
        page.put("p", joined(" · ", vehicle.shape(), vehicle.colour(), vehicle.description()));
        vehicle.vin().ifPresent(vin -> page.put("p", texts.of("vehicle.vin", vin)));
        if (vehicle.count() > 1) {
            page.put("p", texts.of("vehicle.count", vehicle.count()));
        }
        page.raw("</td><td><table class=\"meta\">\n");
        QuoteDocument.Reference reference = quote.reference();
        reference.number().ifPresent(number -> {
            meta("meta.number", number);
            meta("meta.version", Integer.toString(reference.version()));
        });
        meta("meta.issued", numbers.day(reference.issued()));
        meta("meta.valid", numbers.day(reference.validUntil()));
        quote.arrives().ifPresent(at -> meta("meta.arrives", numbers.moment(at)));
        quote.wanted().ifPresent(at -> meta("meta.wanted", numbers.moment(at)));
        page.raw("</table></td></tr></table>\n");
        if (reference.number().isEmpty()) {
            page.put("p class=\"banner\"", texts.of("quote.draft"));
        }
    }

    private void meta(String key, String value) {
        page.open("tr").put("td class=\"k\"", texts.of(key)).put("td", value).shut("tr");
    }

    private void wishes() {
        if (!quote.wishes().isEmpty()) {
            page.put("h2", texts.of("wishes.heading")).open("ul");
            quote.wishes().forEach(wish -> page.put("li", wish));
            page.shut("ul");
        }
    }

    private void found() {
        QuoteDocument.Found found = quote.found();
        if (found.films().isEmpty() && found.notes().isEmpty() && found.facts().isEmpty()) {
            return;
        }
        page.put("h2", texts.of("found.heading"));
        found.facts().forEach(fact -> page.put("p", texts.of("found.fact", fact.what(), fact.value())));
        notes();
        if (found.films().stream().anyMatch(film -> film.count() > 0)) {
            films();
        }
    }

    private void notes() {
        if (!quote.found().notes().isEmpty()) {
            page.open("ul");
            for (ZoneNote note : quote.found().notes()) {
                page.put("li", texts.of("found.note", capital(note.zones()), note.note()));
            }
            page.shut("ul");
        }
    }

    private void films() {
        page.put("h3", texts.of("film.heading")).put("p class=\"small\"", texts.of("film.why"));
        page.raw("<table><thead>").open("tr");
        page.put("th", texts.of("film.zone")).put("th class=\"n\"", texts.of("film.count"));
        page.put("th class=\"n\"", texts.of("film.lowest")).put("th class=\"n\"", texts.of("film.mean"));
        page.put("th class=\"n\"", texts.of("film.highest"));
        page.raw("<th class=\"mark\"></th>")
                .put("th", texts.of("film.says"))
                .shut("tr")
                .raw("</thead><tbody>\n");
        quote.found().films().forEach(this::film);
        page.raw("</tbody></table>\n");
    }

    private void film(PanelFilm film) {
        page.open("tr")
                .put("td", capital(film.zone()))
                .put("td class=\"n\"", film.count() == 0 ? "–" : "" + film.count());
        number(film.lowest());
        number(film.mean());
        number(film.highest());
        String word = texts.of(film.readable() ? "band." + film.band() : "band.unreadable");
        String signs = film.signs().stream()
                .flatMap(sign -> texts.find("sign." + sign).stream())
                .map(sign -> "; " + sign)
                .collect(Collectors.joining());
        page.raw("<td class=\"mark\">" + Signs.svg(film.band(), film.readable()) + "</td>");
        page.put("td", word + signs).shut("tr");
    }

    private void number(Optional<BigDecimal> film) {
        page.put("td class=\"n\"", film.map(f -> numbers.number(f, 0)).orElse("–"));
    }

    // what is done

    private void work() {
        if (quote.work().isEmpty()) {
            return;
        }
        page.put("h2", texts.of("work.heading"));
        quote.work().forEach(this::chapter);
        boolean discounted = quote.sums().base().discount().isPresent();
        page.put(
                "p class=\"small\"",
                texts.of(
                        discounted ? "work.net.discounted" : "work.net",
                        quote.sums().taxName()));
    }

    /** The heading is kept with the first task by a table of their own; a row alone would be left at a sheet's end. */
    private void chapter(Chapter chapter) {
        List<Task> tasks = chapter.tasks();
        page.raw("<div class=\"keeptogether\"><table class=\"work\"><tr class=\"chapter\">");
        page.put("td class=\"what\"", chapter.title());
        page.put("td class=\"n\"", numbers.currency(chapter.net())).shut("tr");
        tasks.stream().limit(1).forEach(this::row);
        page.raw("</table></div>\n");
        if (tasks.size() > 1) {
            page.raw("<table class=\"work\">\n");
            tasks.subList(1, tasks.size()).forEach(this::row);
            page.raw("</table>\n");
        }
    }

    private void row(Task task) {
        page.open("tr");
        task(task);
        page.put("td", capital(task.zones())).shut("tr");
    }

    private void task(Task task) {
        String title = task.times() == 1 ? task.title() : texts.of("task.times", task.title(), task.times());
        page.raw("<td class=\"what\"><b>" + Page.text(title) + "</b>");
        page.raw(task.about().isEmpty() ? "" : "<br/>" + Page.text(task.about()));
        page.raw("</td>");
    }

    private void choices() {
        if (quote.options().isEmpty()) {
            return;
        }
        page.put("h2", texts.of("choice.heading"))
                .put("p", texts.of("choice.lead", quote.sums().taxName()));
        quote.options().forEach(this::choice);
    }

    private void choice(Choice choice) {
        page.put("h3", texts.of("choice." + choice.priority()));
        page.raw("<table class=\"choice\"><tbody>\n");
        for (Priced priced : choice.tasks()) {
            page.open("tr");
            task(priced.task());
            page.put("td", capital(priced.task().zones()));
            page.put("td class=\"n\"", numbers.currency(priced.net())).shut("tr");
        }
        if (!choice.extra().isZero()) {
            sum("keep", texts.of("work.extra"), choice.extra());
        }
        choice.adds().discount().ifPresent(letOff -> {
            sum("sum keep", texts.of("sum.before"), choice.adds().undiscounted());
            sum("sum keep", texts.of("sum.discount"), letOff.negated());
        });
        sum("sum keep", texts.of("choice.net"), choice.adds().net());
        sum("sum keep", tax(), choice.adds().tax());
        sum("total", texts.of("choice.adds"), choice.adds().gross());
        sum("sum", texts.of("choice.total"), choice.total().gross());
        page.raw("</tbody></table>\n");
    }

    private void sum(String kind, String what, Money amount) {
        page.raw("<tr class=\"" + kind + "\">").put("td colspan=\"2\"", what);
        page.put("td class=\"n\"", numbers.currency(amount)).shut("tr");
    }

    private String tax() {
        return texts.of(
                "sum.tax", quote.sums().taxName(), numbers.number(quote.sums().taxPercent(), 3));
    }

    // price

    private void price() {
        QuoteDocument.Sums sums = quote.sums();
        page.raw("<div class=\"keeptogether\">").put("h2", texts.of("price.heading"));
        page.raw("<table><thead>").open("tr").put("th", "");
        boolean both = !quote.work().isEmpty() && !quote.options().isEmpty();
        if (both) {
            page.put("th class=\"n\"", texts.of("price.base")).put("th class=\"n\"", texts.of("price.all"));
        } else {
            page.put("th class=\"n\"", texts.of("price.total"));
        }
        page.shut("tr").raw("</thead><tbody>\n");
        Amounts base = both ? sums.base() : sums.all();
        if (base.discount().isPresent() || sums.all().discount().isPresent()) {
            row(
                    "",
                    texts.of("sum.before"),
                    both,
                    base.undiscounted(),
                    sums.all().undiscounted());
            row("", texts.of("sum.discount"), both, letOff(base), letOff(sums.all()));
        }
        row("", texts.of("sum.net"), both, base.net(), sums.all().net());
        row("", tax(), both, base.tax(), sums.all().tax());
        row("total", texts.of("sum.gross"), both, base.gross(), sums.all().gross());
        row(
                "",
                texts.of("sum.deposit", numbers.number(sums.depositPercent(), 2)),
                both,
                both ? sums.baseDeposit() : sums.allDeposit(),
                sums.allDeposit());
        page.raw("</tbody></table>\n");
        if (sums.contingencyPercent().signum() > 0) {
            Money high = both ? sums.high() : sums.allHigh();
            String upTo = both
                    ? texts.of("price.high.both", numbers.currency(high), numbers.currency(sums.allHigh()))
                    : texts.of("price.high", numbers.currency(high));
            page.put("p class=\"after\"", texts.of("price.range", numbers.number(sums.contingencyPercent(), 2), upTo));
        }
        page.put("p", texts.of("price.valid", numbers.day(quote.reference().validUntil())));
        page.raw("</div>\n");
    }

    private static Money letOff(Amounts amounts) {
        return amounts.net().minus(amounts.undiscounted());
    }

    private void row(String kind, String what, boolean both, Money base, Money all) {
        page.raw(kind.isEmpty() ? "<tr>" : "<tr class=\"" + kind + "\">").put("td", what);
        if (both) {
            page.put("td class=\"n\"", numbers.currency(base));
        }
        page.put("td class=\"n\"", numbers.currency(all)).shut("tr");
    }

    // what it does not hold, and what is to be known

    private void exclusions() {
        page.put("h2", texts.of("not.heading")).open("ul");
        quote.exclusions().forEach(sentence -> page.put("li", sentence));
        page.shut("ul");
    }

    private void risks() {
        if (quote.risks().isEmpty()) {
            return;
        }
        page.put("h2", texts.of("risk.heading")).put("p", texts.of("risk.lead"));
        page.raw("<table><tbody>\n");
        for (Risk risk : quote.risks()) {
            page.raw("<tr><td class=\"what\"><b>" + Page.text(risk.text()) + "</b>");
            page.raw(risk.because().isEmpty() ? "" : "<br/>" + Page.text(capital(risk.because())))
                    .raw("</td>");
            page.raw("<td>" + Page.text(capital(risk.zones()))).raw("</td>");
            String signed = risk.signedAt()
                    .map(at -> texts.of("risk.signed", risk.signedBy(), numbers.moment(at)))
                    .orElse("");
            page.raw((signed.isEmpty() ? "<td class=\"tick\">" : "<td>")
                            + (signed.isEmpty() ? box() + Page.text(texts.of("risk.read")) : Page.text(signed))
                            + "</td>")
                    .shut("tr");
        }
        page.raw("</tbody></table>\n");
    }

    private static String box() {
        return "<span class=\"box\">&#160;</span>";
    }

    private void acceptance() {
        page.raw("<div class=\"keeptogether\">").put("h2", texts.of("accept.heading"));
        page.put("p", texts.of("accept.lead"));
        if (!quote.work().isEmpty()) {
            page.raw("<p>" + box()
                    + Page.text(texts.of(
                            "accept.base", numbers.currency(quote.sums().base().gross()))) + "</p>\n");
        }
        for (Choice choice : quote.options()) {
            String adds = numbers.currency(choice.adds().gross());
            page.raw("<p>" + box() + Page.text(texts.of("accept." + choice.priority(), adds)) + "</p>\n");
        }
        page.raw(
                "<table><tr><td class=\"line\" style=\"width: 44%\">&#160;</td><td style=\"border: 0; width: 6%\"></td>"
                        + "<td class=\"line\">&#160;</td></tr><tr class=\"sum\">");
        page.put("td class=\"small\"", texts.of("accept.place")).raw("<td></td>");
        page.put("td class=\"small\"", texts.of("accept.signature")).raw("</tr></table>\n");
        proof();
        page.raw("</div>\n");
    }

    /** Stands with what is signed, so that it is never alone on a sheet. */
    private void proof() {
        QuoteDocument.Proof proof = quote.proof();
        page.raw("<div class=\"small\">").put("h3", texts.of("proof.heading"));
        page.put("p", texts.of("proof.lead", numbers.moment(proof.at())));
        page.put("p class=\"hash\"", texts.of("proof.library", proof.library()));
        page.put("p class=\"hash\"", texts.of("proof.inputs", proof.inputs()));
        proof.softened().forEach((rule, why) -> page.put("p", texts.of("proof.softened", rule, why)));
        page.raw("</div>\n");
    }

    private static String joined(String gap, String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(gap));
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
