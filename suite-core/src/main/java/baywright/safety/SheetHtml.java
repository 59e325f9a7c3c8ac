package baywright.safety;

import baywright.plan.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes a hazard sheet as a page of XHTML that needs nothing beside it. */
public final class SheetHtml {

    private static final String STYLE = """
            body { font: 9.5pt/1.35 Roboto, Helvetica, Arial, sans-serif; color: #111; max-width: 190mm; margin: 0 auto }
            h1 { font-size: 17pt; margin: 0 0 1mm }
            h2 { font-size: 12.5pt; margin: 6mm 0 2mm; border-bottom: 0.5pt solid #111; page-break-after: avoid }
            h3 { font-size: 11pt; margin: 4mm 0 1mm; page-break-after: avoid }
            table { border-collapse: collapse; width: 100%; table-layout: fixed; -fs-table-paginate: paginate }
            thead { display: table-header-group }
            th, td { text-align: left; vertical-align: top; padding: 1mm 1.5mm; border-bottom: 0.4pt solid #999; word-wrap: break-word }
            th { background: #eee } tr { page-break-inside: avoid; page-break-after: auto }
            td.n, th.n { text-align: right }
            .keep { page-break-inside: avoid }
            .product { page-break-inside: avoid; border: 0.5pt solid #777; padding: 2mm 3mm; margin: 0 0 3mm }
            .product td { border: 0; padding: 0 3mm 0 0 } .signs { width: 33mm } .signs svg { margin: 0 1mm 1mm 0 }
            .word { font-weight: bold; font-size: 11pt } ul { margin: 0.5mm 0 1mm; padding-left: 5mm } p { margin: 1mm 0 }
            .stop { font-weight: bold } .small { font-size: 8pt; color: #333 }
            .lead { border: 1pt solid #111; padding: 2mm 3mm; margin: 3mm 0 }
            """;

    private static final int SIGN = 50;
    private static final int MINUTES = 60;
    private static final int ROWS_KEPT = 8;

    private final HazardSheet sheet;
    private final SheetWords words;
    private final StringBuilder page = new StringBuilder();

    private SheetHtml(HazardSheet sheet) {
        this.sheet = sheet;
        words = new SheetWords(sheet.locale());
    }

    /** The page. */
    public static String of(HazardSheet sheet) {
        SheetHtml html = new SheetHtml(sheet);
        html.write();
        return html.page.toString();
    }

    private void write() {
        String title = words.say(sheet.ofDay() ? "title.day" : "title");
        add("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
                + text(sheet.locale().toLanguageTag()) + "\"><head><meta charset=\"UTF-8\"/><title>");
        add(text(title + ": " + sheet.title()) + "</title><style>" + paper() + STYLE + "</style></head><body>");
        add("<h1>" + text(title) + "</h1><p>" + text(words.say("for", sheet.title(), sheet.shop())) + "</p>");
        add("<p class=\"lead\"><b>" + text(words.say("advice")) + "</b> " + text(words.say("lead")) + "</p>");
        findings();
        exposures();
        tasks();
        products();
        apart();
        controls();
        add("<p class=\"small\">" + text(Statements.LICENCE) + ". " + text(words.say("drawn"))
                + "</p></body></html>\n");
    }

    private String paper() {
        return "@page { size: A4; margin: 14mm 14mm 17mm 14mm; @bottom-left { content: \""
                + words.say("advice").replace("\\", "").replace("\"", "'")
                + "\"; width: 75%; font: 8pt Roboto, sans-serif; color: #333 } @bottom-right { content: "
                + words.plain("page")
                + "; font: 8pt Roboto, sans-serif; color: #333; text-align: right } }\n";
    }

    private void heading(String key) {
        add("<h2>" + text(words.say(key)) + "</h2>");
    }

    /** A table's beginning: keys of its columns with their widths in percent, {@code >} before the key: to the right. */
    private void table(String... columns) {
        StringBuilder widths = new StringBuilder();
        StringBuilder heads = new StringBuilder();
        for (String column : columns) {
            String[] parts = column.split(" ", -1);
            boolean right = parts[0].startsWith(">");
            widths.append("<col style=\"width: ").append(parts[1]).append("%\"/>");
            heads.append(right ? "<th class=\"n\">" : "<th>")
                    .append(text(words.say(right ? parts[0].substring(1) : parts[0])))
                    .append("</th>");
        }
        add("<table><colgroup>" + widths + "</colgroup><thead><tr>" + heads + "</tr></thead><tbody>");
    }

    private void findings() {
        heading("findings");
        if (sheet.told().isEmpty()) {
            add("<p>" + text(words.say("findings.none")) + "</p>");
            return;
        }
        if (sheet.ofDay()) {
            table("grade 9", "job 23", "finding 68");
        } else {
            table("grade 9", "finding 91");
        }
        for (HazardSheet.Told one : sheet.told()) {
            Severity severity = one.finding().severity();
            String mark = severity == Severity.STOP ? " class=\"stop\"" : "";
            String job = sheet.ofDay() ? "<td>" + text(one.job()) + "</td>" : "";
            add("<tr><td" + mark + ">" + text(words.say(severity.name().toLowerCase(Locale.ROOT))) + "</td>" + job
                    + "<td>" + text(capital(one.sentence())) + "</td></tr>");
        }
        add("</tbody></table>");
    }

    private boolean isTimed() {
        return sheet.exposed().stream().anyMatch(e -> !e.day().name().isEmpty());
    }

    private void exposures() {
        if (sheet.exposed().isEmpty()) {
            return;
        }
        heading("exposures");
        if (sheet.ofDay()) {
            table("job 27", "person 15", ">vibration 16", ">points 9", ">noise 16", ">worn 17");
        } else {
            table("day 20", "person 15", ">vibration 17", ">points 12", ">noise 18", ">worn 18");
        }
        for (HazardSheet.Exposed one : sheet.exposed()) {
            PersonDay day = one.day();
            boolean noise = !day.noise().isEmpty();
            boolean vibration = !day.vibration().isEmpty();
            boolean all = sheet.ofDay() && one.job().isEmpty();
            String first = sheet.ofDay() ? one.job() : words.date(day.day());
            add("<tr><td>" + text(all ? words.say("one-person") : first) + "</td><td>"
                    + text(all ? "" : day.name().isEmpty() ? words.say("hand", day.hand()) : day.name()) + "</td>"
                    + number(vibration, day.dailyVibration(), 1, " m/s²")
                    + number(vibration, day.vibrationPoints(), 0, "")
                    + number(noise, day.dailyNoise(), 1, " dB(A)")
                    + number(noise, day.protectedNoise(), 1, " dB(A)") + "</tr>");
        }
        add("</tbody></table>");
        SafetySettings settings = sheet.settings();
        add("<p class=\"small\">"
                + text(words.say(
                        isTimed() ? "reckoned-timed" : "reckoned",
                        words.figure(settings.day().minutes() / (double) MINUTES),
                        words.say(settings.day().reckoning().name().toLowerCase(Locale.ROOT)),
                        words.figure(100 * settings.vibration().triggerShare()),
                        words.figure(settings.vibration().action()),
                        words.figure(settings.vibration().limit()),
                        words.figure(settings.noise().lower()),
                        words.figure(settings.noise().upper()),
                        words.figure(settings.noise().limit()),
                        words.figure(settings.noise().protector())))
                + "</p>");
    }

    private void tasks() {
        heading("tasks");
        if (sheet.bayDays().isEmpty()) {
            add("<p>" + text(words.say("tasks.none")) + "</p>");
        }
        for (HazardSheet.BayDay one : sheet.bayDays()) {
            // a short table stays in one piece with its heading
            add(one.tasks().size() <= ROWS_KEPT ? "<div class=\"keep\">" : "<div>");
            add("<h3>" + text(words.day(one.day()) + ", " + (one.bay().isEmpty() ? words.say("any-bay") : one.bay()))
                    + "</h3>");
            table("task 22", "products 19", "dangers 15", "wear 24", ">people 10", ">minutes 10");
            for (HazardSheet.Task task : one.tasks()) {
                String job = task.job().isEmpty() ? "" : "<br/><span class=\"small\">" + text(task.job()) + "</span>";
                List<String> risks = task.risks().stream()
                        .map(r -> (words.sayOr("risk." + r.kind(), r.kind()) + " " + r.level()).strip())
                        .toList();
                add("<tr><td>" + text(task.title()) + " (" + text(task.step()) + ")" + job + "</td><td>"
                        + joined(task.items()) + "</td><td>" + joined(risks) + "</td><td>" + joined(task.wear())
                        + "</td><td class=\"n\">" + task.people() + "</td><td class=\"n\">" + task.minutes()
                        + "</td></tr>");
            }
            add("</tbody></table></div>");
        }
    }

    private void products() {
        if (sheet.products().isEmpty()) {
            return;
        }
        boolean first = true;
        for (HazardSheet.Product product : sheet.products()) {
            if (first) {
                // the heading belongs to the first product and does not stand alone at the foot of a page
                add("<div class=\"keep\">");
                heading("items");
            }
            product(product);
            add(first ? "</div>" : "");
            first = false;
        }
    }

    private void product(HazardSheet.Product product) {
        Label label = product.label();
        add("<div class=\"product\"><table><colgroup><col style=\"width: 19%\"/><col style=\"width: 81%\"/></colgroup>"
                + "<tr><td class=\"signs\">");
        label.pictograms().forEach(p -> add(Glyphs.svg(p, SIGN)));
        add("</td><td><p><b>" + text(product.title()) + "</b>");
        if (label.signal() != Signal.NONE) {
            String word = words.say(label.signal() == Signal.DANGER ? "danger" : "warning");
            add(" · <span class=\"word\">" + text(word) + "</span>");
        }
        String signs = label.pictograms().stream()
                .map(p -> p.name() + " " + words.say(p.name())
                        + (label.optional().contains(p) ? " (" + words.say("optional") + ")" : ""))
                .collect(Collectors.joining(", "));
        add((signs.isEmpty() ? "" : " · <span class=\"small\">" + text(signs) + "</span>") + "</p>");
        list(product.statements());
        if (!product.thinned().isEmpty()) {
            add("<p>" + text(words.say("thinned", product.thinned())) + "</p>");
        }
        if (!product.protection().isEmpty()) {
            add("<p><b>" + text(words.say("wear.item")) + "</b> " + joined(product.protection()) + "</p>");
        }
        list("first-aid", product.firstAid());
        list("spill", product.spill());
        add(product.note().isEmpty() ? "" : "<p>" + text(capital(product.note())) + "</p>");
        add("<p class=\"small\">" + text(words.say("data-sheet")) + "</p></td></tr></table></div>");
    }

    private void list(String key, List<String> lines) {
        if (!lines.isEmpty()) {
            add("<p><b>" + text(words.say(key)) + "</b></p>");
            list(lines);
        }
    }

    private void list(List<String> lines) {
        if (!lines.isEmpty()) {
            add("<ul>");
            lines.forEach(line -> add("<li>" + text(line) + "</li>"));
            add("</ul>");
        }
    }

    private void apart() {
        if (sheet.apart().isEmpty()) {
            return;
        }
        add("<div class=\"keep\">");
        heading("apart");
        list(sheet.apart().stream()
                .map(a -> a.why().isEmpty()
                        ? words.say("apart.stage", a.stage(), a.what())
                        : words.say("apart.because", a.stage(), a.what(), a.why()))
                .toList());
        add("</div>");
    }

    /** Those that the dangers and products of this sheet ask for. */
    private void controls() {
        List<String> keys = new ArrayList<>();
        Set<String> risks = sheet.risks();
        if (!sheet.products().isEmpty()) {
            keys.addAll(List.of("data-sheet", "rinse", "spill"));
        }
        boolean burns = risks.contains("ignition")
                || sheet.products().stream()
                        .anyMatch(p -> p.label().pictograms().contains(Pictogram.GHS02));
        if (burns) {
            keys.add("flammable");
        }
        risks.stream().filter(r -> !r.equals("ignition")).forEach(keys::add);
        List<String> lines = keys.stream()
                .map(k -> words.sayOr("control." + k, ""))
                .filter(l -> !l.isEmpty())
                .toList();
        if (!lines.isEmpty()) {
            add("<div class=\"keep\">");
            heading("controls");
            list(lines);
            add("</div>");
        }
    }

    private static String joined(List<String> texts) {
        return texts.isEmpty() ? "–" : text(String.join(", ", texts));
    }

    private String number(boolean there, double value, int decimals, String unit) {
        return "<td class=\"n\">" + (there ? text(words.figure(value, decimals) + unit) : "–") + "</td>";
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? "" : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private void add(String html) {
        page.append(html);
    }

    private static String text(String plain) {
        return plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
