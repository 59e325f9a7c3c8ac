package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a hazard sheet as a page of XHTML that needs nothing beside it. */
public final class SheetHtml {

    private static final String STYLE = """
            @page { size: A4; margin: 14mm 14mm 16mm 14mm;
              @bottom-left { content: "Check the current safety data sheet; local law and licensed practice rule."; font: 8pt sans-serif; color: #333 }
              @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt sans-serif; color: #333 } }
            body { font: 10pt/1.35 Helvetica, Arial, sans-serif; color: #111; max-width: 190mm; margin: 0 auto }
            h1 { font-size: 17pt; margin: 0 0 1mm } h2 { font-size: 12.5pt; margin: 6mm 0 2mm; border-bottom: 0.5pt solid #111; page-break-after: avoid }
            h3 { font-size: 11pt; margin: 4mm 0 1mm; page-break-after: avoid }
            table { border-collapse: collapse; width: 100%; -fs-table-paginate: paginate } thead { display: table-header-group }
            th, td { text-align: left; vertical-align: top; padding: 1mm 2mm; border-bottom: 0.4pt solid #999 } th { background: #eee }
            tr { page-break-inside: avoid } td.n, th.n { text-align: right; white-space: nowrap }
            .product { page-break-inside: avoid; border: 0.5pt solid #777; padding: 2mm 3mm; margin: 0 0 3mm }
            .product td { border: 0; padding: 0 3mm 0 0 } .signs { width: 46mm } .signs svg { margin-right: 1mm }
            .word { font-weight: bold; font-size: 11pt } ul { margin: 0.5mm 0 1mm; padding-left: 5mm } p { margin: 1mm 0 }
            .stop { font-weight: bold } .small { font-size: 8.5pt; color: #333 } .lead { border: 1pt solid #111; padding: 2mm 3mm; margin: 3mm 0 }
            """;

    private static final int SIGN = 52;
    private static final int MINUTES = 60;

    private final HazardSheet sheet;
    private final FindingText sentences;
    private final StringBuilder page = new StringBuilder();

    private SheetHtml(HazardSheet sheet, FindingText sentences) {
        this.sheet = sheet;
        this.sentences = sentences;
    }

    /** The page. */
    public static String of(HazardSheet sheet, FindingText sentences) {
        SheetHtml html = new SheetHtml(sheet, sentences);
        html.write();
        return html.page.toString();
    }

    private void write() {
        add(
                "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><meta charset=\"UTF-8\"/><title>");
        add(text("Hazard sheet: " + sheet.job()) + "</title><style>" + STYLE + "</style></head><body>");
        add("<h1>Hazard sheet</h1><p>" + text(sheet.job()) + " · " + text(sheet.shop()) + "</p>");
        add("<p class=\"lead\">" + HazardSheet.ADVICE
                + " This sheet gathers what the shop has written down; it is no risk assessment and no proof that anything is"
                + " lawful.</p>");
        findings();
        exposures();
        tasks();
        products();
        apart();
        controls();
        add("<p class=\"small\">" + text(Statements.LICENCE)
                + ". Places to fill in were left out or filled in. Pictograms are drawn after the open shapes of the UN system;"
                + " the product's own label goes first.</p></body></html>\n");
    }

    private void findings() {
        add("<h2>What to mind on this job</h2>");
        if (sheet.findings().isEmpty()) {
            add("<p>The check found nothing beyond what follows.</p>");
            return;
        }
        add("<table><thead><tr><th>Grade</th><th>Finding</th></tr></thead><tbody>");
        for (Finding finding : sheet.findings()) {
            String grade = finding.severity().name().toLowerCase(Locale.ROOT);
            String mark = finding.severity() == Severity.STOP ? " class=\"stop\"" : "";
            add("<tr><td" + mark + ">" + grade + "</td><td>" + text(sentences.of(finding)) + "</td></tr>");
        }
        add("</tbody></table>");
    }

    private void exposures() {
        add("<h2>Who takes in what</h2>");
        add(
                "<table><thead><tr><th>Day</th><th>Person</th><th class=\"n\">Vibration A(8)</th><th class=\"n\">Points</th>"
                        + "<th class=\"n\">Noise LEX,8h</th><th class=\"n\">Under protector</th></tr></thead><tbody>");
        for (PersonDay day : sheet.days()) {
            boolean noise = !day.noise().isEmpty();
            add("<tr><td>" + day.day() + "</td><td>hand " + day.hand() + "</td>" + number(day.dailyVibration(), "m/s²")
                    + number(day.vibrationPoints(), "")
                    + (noise
                            ? number(day.dailyNoise(), "dB(A)") + number(day.protectedNoise(), "dB(A)")
                            : "<td class=\"n\">-</td><td class=\"n\">-</td>")
                    + "</tr>");
        }
        add("</tbody></table>");
        SafetySettings settings = sheet.settings();
        add("<p class=\"small\">Reckoned from the order of the steps, "
                + settings.day().minutes() / MINUTES
                + " h a day, with the "
                + settings.day().reckoning().name().toLowerCase(Locale.ROOT) + " time and "
                + Math.round(100 * settings.vibration().triggerShare())
                + " % of it at the trigger. Vibration: action value "
                + plain(settings.vibration().action())
                + ", limit " + plain(settings.vibration().limit()) + " m/s². Noise: "
                + plain(settings.noise().lower())
                + " offered, " + plain(settings.noise().upper()) + " worn, "
                + plain(settings.noise().limit())
                + " dB(A) limit under a protector that takes off "
                + plain(settings.noise().protector())
                + " dB. Figures of machines are from test benches and often too low; measure in use.</p>");
    }

    private void tasks() {
        add("<h2>Tasks by day and bay</h2>");
        for (HazardSheet.BayDay one : sheet.bayDays()) {
            add("<h3>" + one.day() + (one.bay().isEmpty() ? "" : ", " + text(one.bay())) + "</h3>");
            add(
                    "<table><thead><tr><th>Task</th><th>Products</th><th>Dangers</th><th>Wear</th><th class=\"n\">People</th>"
                            + "<th class=\"n\">Minutes</th></tr></thead><tbody>");
            for (HazardSheet.Task task : one.tasks()) {
                add("<tr><td>" + text(task.title()) + " (" + text(task.step()) + ")</td><td>" + joined(task.items())
                        + "</td><td>" + joined(task.risks()) + "</td><td>" + joined(task.wear())
                        + "</td><td class=\"n\">" + task.people() + "</td><td class=\"n\">" + task.minutes()
                        + "</td></tr>");
            }
            add("</tbody></table>");
        }
    }

    private void products() {
        add("<h2>Products</h2>");
        for (HazardSheet.Product product : sheet.products()) {
            Label label = product.label();
            add("<div class=\"product\"><table><tr><td class=\"signs\">");
            label.pictograms().forEach(p -> add(Glyphs.svg(p, SIGN)));
            add("</td><td><p><b>" + text(product.title()) + "</b>");
            if (label.signal() != Signal.NONE) {
                String word = label.signal() == Signal.DANGER ? "Danger" : "Warning";
                add(" · <span class=\"word\">" + word + "</span>");
            }
            String signs = label.pictograms().stream()
                    .map(p -> p.name() + " " + p.title() + (label.optional().contains(p) ? " (optional)" : ""))
                    .collect(Collectors.joining(", "));
            add((signs.isEmpty() ? "" : " · <span class=\"small\">" + signs + "</span>") + "</p>");
            list("", product.statements());
            if (!product.thinned().isEmpty()) {
                add("<p>Used thinned " + text(product.thinned())
                        + "; the statements are those of what comes from the pack, and hold while it is poured.</p>");
            }
            list("Wear: ", List.of(joined(product.protection())));
            list("First aid", product.firstAid());
            list("Fire and spill", product.spill());
            add((product.note().isEmpty() ? "" : "<p>" + text(product.note()) + "</p>"));
            add("<p class=\"small\">Safety data sheet: reference ____________________ issued ______________</p>");
            add("</td></tr></table></div>");
        }
    }

    /** A heading with its lines; one line stands beside the heading when that ends in a blank. */
    private void list(String heading, List<String> lines) {
        List<String> said =
                lines.stream().filter(l -> !l.isBlank() && !l.equals("-")).toList();
        if (said.isEmpty()) {
            return;
        }
        if (heading.endsWith(" ")) {
            add("<p><b>" + heading.strip() + "</b> " + said.get(0) + "</p>");
            return;
        }
        add(heading.isEmpty() ? "" : "<p><b>" + heading + "</b></p>");
        add("<ul>");
        said.forEach(line -> add("<li>" + text(line) + "</li>"));
        add("</ul>");
    }

    private void apart() {
        if (!sheet.apart().isEmpty()) {
            add("<h2>Keep apart</h2><ul>");
            sheet.apart().forEach(a -> add("<li>" + text(a) + "</li>"));
            add("</ul>");
        }
    }

    private void controls() {
        add("<h2>Controls</h2><ul>"
                + "<li>Read the safety data sheet of the bottle in hand before the first use; it goes before this sheet.</li>"
                + "<li>Air the bay while solvent is used and until it has gone; no flame, heater or charger near it.</li>"
                + "<li>Rinse with plain water between products. Eyewash and running water within reach.</li>"
                + "<li>Cords, lamps and machines off wet floors, behind a residual-current device.</li>"
                + "<li>Take turns at the machine; stop when fingers tingle. Keep hands warm and dry.</li>"
                + "<li>Spill: keep people away, air, take up with absorbent, keep out of drains, bag as hazardous waste.</li>"
                + "<li>Solvent cloths into a closed metal bin; wash water only to the drain that is permitted for it.</li>"
                + "</ul>");
    }

    private static String joined(List<String> texts) {
        return texts.isEmpty() ? "-" : text(String.join(", ", texts));
    }

    private static String number(double value, String unit) {
        return "<td class=\"n\">" + DoseRule.rounded(value, 1) + (unit.isEmpty() ? "" : " " + unit) + "</td>";
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
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
