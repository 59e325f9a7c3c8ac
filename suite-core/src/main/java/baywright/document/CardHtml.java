package baywright.document;

import baywright.document.JobCard.CardPhoto;
import baywright.document.JobCard.Day;
import baywright.document.JobCard.StepCard;
import baywright.document.JobCard.ThinZone;
import baywright.document.JobCard.Wait;
import baywright.document.QuoteDocument.ZoneNote;
import baywright.quantity.Quantity;
import baywright.safety.Glyphs;
import baywright.site.Numbers;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a job card as a page for paper: large type, a frame for each step that no page end cuts through. */
public final class CardHtml {

    private static final int SIGN = 34;

    private final JobCard card;
    private final Texts texts;
    private final Numbers numbers;
    private final Page page;

    private CardHtml(JobCard card, Paper paper) {
        this.card = card;
        Locale locale = Locale.forLanguageTag(card.language());
        texts = new Texts(locale);
        numbers = new Numbers(locale);
        String title = texts.of("card.title", card.title());
        page = new Page(locale, title, card.shop(), paper, card.shop() + " · " + title, texts.of("page.count"));
    }

    /** The page. */
    public static String of(JobCard card, Paper paper) {
        CardHtml html = new CardHtml(card, paper);
        html.write();
        return html.page.end();
    }

    private void write() {
        page.raw("<div class=\"crew\">\n").put("h1", texts.of("card.heading"));
        page.put("p", card.title());
        QuoteDocument.Vehicle vehicle = card.vehicle();
        page.put(
                "p",
                List.of(vehicle.shape(), vehicle.colour(), vehicle.description()).stream()
                        .filter(word -> !word.isBlank())
                        .collect(Collectors.joining(" · ")));
        vehicle.vin().ifPresent(vin -> page.put("p", texts.of("vehicle.vin", vin)));
        if (vehicle.count() > 1) {
            page.put("p class=\"warn\"", texts.of("card.count", vehicle.count()));
        }
        card.arrives().ifPresent(at -> field("meta.arrives", numbers.moment(at)));
        card.wanted().ifPresent(at -> field("meta.wanted", numbers.moment(at)));
        page.put("p class=\"small\"", texts.of("card.read-first"));
        page.put("p class=\"hash\"", texts.of("proof.library", card.library()));
        if (!card.notes().isEmpty()) {
            page.put("h2", texts.of("card.notes")).open("ul");
            for (ZoneNote note : card.notes()) {
                page.put("li", texts.of("found.note", capital(note.zones()), note.note()));
            }
            page.shut("ul");
        }
        card.days().forEach(this::day);
        photos();
        page.raw("</div>\n");
    }

    /** Two beside each other; a pair stays on one sheet, and the heading with the first. */
    private void photos() {
        List<CardPhoto> photos = card.photos();
        for (int i = 0; i < photos.size(); i += 2) {
            page.raw("<div class=\"keeptogether\">");
            if (i == 0) {
                page.put("h2", texts.of("photos.heading"));
            }
            page.raw("<table class=\"photos\"><tr>");
            photo(photos.get(i));
            if (i + 1 < photos.size()) {
                photo(photos.get(i + 1));
            } else {
                page.raw("<td></td>");
            }
            page.raw("</tr></table></div>\n");
        }
    }

    private void photo(CardPhoto photo) {
        String words = List.of(capital(photo.where()), photo.caption()).stream()
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(": "));
        page.raw("<td>");
        if (photo.jpeg().isEmpty()) {
            page.put("p class=\"warn\"", photo.trouble());
        } else {
            String alt = words.isEmpty() ? texts.of("photos.heading") : words;
            page.raw("<img alt=\"" + Page.text(alt).replace("<br/>", " ") + "\" src=\"data:image/jpeg;base64,"
                    + photo.jpeg() + "\"/>");
        }
        page.say("p", words).raw("</td>");
    }

    private void field(String key, String value) {
        page.put("p", texts.of("found.fact", texts.of(key), value));
    }

    private void day(Day day) {
        page.put("h2", numbers.weekday(day.day()));
        day.steps().forEach(this::step);
    }

    private void step(StepCard step) {
        page.raw("<div class=\"card\"><table><tr>");
        page.put("td class=\"no\"", Integer.toString(step.number()));
        page.raw("<td><span class=\"title\">" + Page.text(step.title()) + "</span><br/>");
        page.raw(Page.text(capital(step.zones())) + "</td><td class=\"signs\">");
        step.dangers().pictograms().forEach(p -> page.raw(Glyphs.svg(p, SIGN)));
        page.raw("</td><td class=\"n\">" + Page.text(texts.of("card.minutes", numbers.duration(step.minutes()))));
        page.raw("<br/>" + Page.text(texts.of("card.actual")) + "</td></tr></table>\n");
        thin(step);
        page.raw("<table class=\"halves\"><tr><td><table>\n");
        whatWith(step);
        page.raw("</table></td><td><table>\n");
        whatToHeed(step);
        page.raw("</table></td></tr></table></div>\n");
    }

    private void whatWith(StepCard step) {
        step.at().ifPresent(at -> row("card.at", numbers.moment(at)));
        row("card.bay", step.bay());
        if (step.people() > 1) {
            row("card.people", Integer.toString(step.people()));
        }
        row("card.inputs", String.join(", ", step.inputs()));
        row("card.equipment", String.join(", ", step.equipment()));
        row(
                "card.materials",
                step.materials().stream()
                        .map(m -> texts.of("card.material", m.title(), amount(m.amount()))
                                + (m.dilution().isEmpty() ? "" : " " + texts.of("card.dilution", m.dilution())))
                        .collect(Collectors.joining("; ")));
        row("card.wear", String.join(", ", step.dangers().wear()));
    }

    private void whatToHeed(StepCard step) {
        row("card.dangers", String.join(", ", step.dangers().risks()));
        row("card.keep-apart", String.join("; ", step.dangers().apart()));
        step.waits().forEach(this::standing);
        step.checks().forEach(check -> ticked("card.check", check));
        if (step.checker()) {
            ticked("card.second", texts.of("card.second.initials"));
        }
        row("card.avoid", String.join("; ", step.mistakes()));
    }

    private String amount(Quantity amount) {
        return texts.find("unit." + amount.unit().symbol())
                .map(unit -> numbers.number(amount.amount(), 3) + " " + unit)
                .orElseGet(() -> numbers.quantity(amount));
    }

    private void thin(StepCard step) {
        for (ThinZone zone : step.thin()) {
            zone.lowest()
                    .ifPresent(film -> page.put(
                            "p class=\"warn\"", texts.of("card.thin", capital(zone.zone()), numbers.number(film, 0))));
        }
        String unread = step.thin().stream()
                .filter(zone -> zone.lowest().isEmpty())
                .map(ThinZone::zone)
                .collect(Collectors.joining(", "));
        if (!unread.isEmpty()) {
            page.put("p class=\"warn\"", texts.of("card.unread", capital(unread)));
        }
    }

    private void standing(Wait wait) {
        String least = numbers.duration(wait.least());
        String time = wait.most()
                .map(most -> wait.least().signum() == 0
                        ? texts.of("card.wait.most", numbers.duration(most))
                        : texts.of("card.wait.between", least, numbers.duration(most)))
                .orElseGet(() -> texts.of("card.wait.least", least));
        ticked("card.wait", time + (wait.why().isEmpty() ? "" : " (" + wait.why() + ")") + texts.of("card.clock"));
    }

    private void ticked(String key, String what) {
        page.raw("<tr><td class=\"k\">" + Page.text(texts.of(key)) + "</td><td><span class=\"box\">&#160;</span>"
                + Page.text(what) + "</td></tr>\n");
    }

    private void row(String key, String what) {
        if (!what.isEmpty()) {
            page.open("tr").put("td class=\"k\"", texts.of(key)).put("td", what).shut("tr");
        }
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
