package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.document.PagePdf;
import baywright.plan.FindingText;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HazardSheetTest {

    private static HazardSheet.Part part(String title, SafetyCase all, Locale locale) {
        return new HazardSheet.Part(
                title, all, SafetyCheck.of(all), new FindingText(all.setting(), all.plan(), locale));
    }

    private static SafetyCase all() {
        return new Cases()
                .found("booked-in")
                .step("wheels-off-clean", "surface:wheel")
                .step("heavy-compound", "surface:paint")
                .build();
    }

    private static String page(Locale locale) {
        return SheetHtml.of(HazardSheet.of("Millrace & Works <1>", part("Estate", all(), locale), locale));
    }

    private static Document read(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new java.io.StringReader(xml.replace("<!DOCTYPE html>", ""))));
    }

    @Test
    void saysWhoDoesWhatWithWhatAndWhatToDoAfterAMishap() throws Exception {
        String said = read(page(Locale.UK)).getDocumentElement().getTextContent();
        assertThat(said)
                .contains("Millrace & Works <1>", HazardSheet.ADVICE, Statements.LICENCE)
                .contains("Wheels off and cleaned (s1)", "vibration 5 m/s²", "safety shoes")
                .contains("H302 Harmful if swallowed.", "GHS02 flame", "Danger", "Warning")
                .contains("Get medical advice/attention.", "Collect spillage.")
                .contains("toxic sulphide gas", "Safety data sheet: reference");
        assertThat(said.toLowerCase(Locale.ROOT)).doesNotContain("complies", "compliant", "compliance");
    }

    @Test
    void speaksTheShopsLanguage() throws Exception {
        assertThat(read(page(Locale.GERMANY)).getDocumentElement().getTextContent())
                .contains("H302 Gesundheitsschädlich bei Verschlucken.", "Gefahrenblatt", "Erste Hilfe", "Gefahr")
                .contains("Montag, 7. Dezember 2026", "Vibration 5 m/s²", "Sicherheitsdatenblatt prüfen")
                .doesNotContain("Hazard sheet", "First aid", "Who is exposed");
        assertThat(read(page(Locale.FRENCH)).getDocumentElement().getTextContent())
                .contains("H302 Nocif en cas d'ingestion.", "Attention");
    }

    @Test
    void isSaidInOtherWords() throws Exception {
        HazardSheet sheet = HazardSheet.of("Shop", part("Estate", all(), Locale.GERMANY), Locale.GERMANY)
                .inWords(
                        stage -> "Arbeit " + stage.length(),
                        item -> "Mittel " + item.length(),
                        said -> "<" + said + ">");
        assertThat(read(SheetHtml.of(sheet)).getDocumentElement().getTextContent())
                .contains("Arbeit 22 (s1)", "<safety shoes>", "<acid>", "Mittel 12")
                .doesNotContain("Iron remover");
    }

    /** Every key of the German words is one of the English, and none is missing. */
    @Test
    void bothLanguagesSayTheSame() {
        ResourceBundle english = ResourceBundle.getBundle("baywright.safety.sheet", Locale.ROOT);
        ResourceBundle german = ResourceBundle.getBundle("baywright.safety.sheet", Locale.GERMAN);
        assertThat(german.getLocale()).isEqualTo(Locale.GERMAN);
        for (String key : english.keySet()) {
            boolean same = List.of("for", "vibration", "person", "risk.vibration", "risk.airbag")
                    .contains(key);
            if (!same) {
                assertThat(german.getString(key)).as(key).isNotEqualTo(english.getString(key));
            }
        }
        assertThat(german.keySet()).isEqualTo(english.keySet());
    }

    @Test
    void aDayHasTheTasksOfAllItsJobsAndNoOthers() throws Exception {
        SafetyCase two = new Cases()
                .stage("today", "time { attended 60.min, 60.min, 60.min }", "hazards { risk 'vibration', 4.ms2 }")
                .stage("tomorrow", "hazards { risk 'heat' }")
                .step("today", "bonnet")
                .step("tomorrow", Optional.of(Cases.MONDAY.plusDays(1)), "bonnet")
                .build();
        HazardSheet day = HazardSheet.ofDay(
                "Shop", Cases.DAY, List.of(part("Estate", two, Locale.UK), part("Van", all(), Locale.UK)), Locale.UK);
        assertThat(day.bayDays()).extracting(HazardSheet.BayDay::day).containsOnly(Cases.DAY);
        assertThat(day.risks()).contains("vibration", "lifting").doesNotContain("heat");
        double each = day.exposed().stream()
                .filter(e -> !e.job().isEmpty())
                .mapToDouble(e -> e.day().vibrationPoints())
                .sum();
        assertThat(day.exposed().get(day.exposed().size() - 1).day().vibrationPoints())
                .isCloseTo(each, within(1e-6));
        String said = read(SheetHtml.of(day)).getDocumentElement().getTextContent();
        assertThat(said)
                .contains(
                        "Hazard sheet of the day",
                        "Monday, 7 December 2026",
                        "today (s1)",
                        "Wheels off and cleaned (s1)")
                .contains("one person for all jobs", "Take turns at the machine")
                .doesNotContain("tomorrow (s2)", "hot parts");
        assertThat(HazardSheet.isWorked(two, Cases.DAY.plusDays(1))).isTrue();
        assertThat(HazardSheet.isWorked(two, Cases.DAY.plusDays(2))).isFalse();
    }

    @Test
    void everyPictogramIsADrawingThatParses() throws Exception {
        for (Pictogram pictogram : Pictogram.values()) {
            Document drawing = read(Glyphs.svg(pictogram, 50));
            assertThat(drawing.getElementsByTagName("path").getLength())
                    .as(pictogram.name())
                    .isPositive();
        }
    }

    @Test
    void thePdfIsOne() {
        byte[] pdf = PagePdf.of(page(Locale.UK));
        assertThat(new String(Arrays.copyOf(pdf, 5), StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(pdf.length).isGreaterThan(10_000);
    }

    // Regulation (EC) No 1272/2008, annex I, tables 2.6.2, 3.3.5 and 4.1.4: response statements of the classes
    @Test
    void adviceIsThatOfTheRegulation() {
        assertThat(Precautions.of(List.of("H319")).firstAid()).containsExactly("P305+P351+P338", "P337+P313");
        assertThat(Precautions.of(List.of("H225")).firstAid()).contains("P303+P361+P353");
        assertThat(Precautions.of(List.of("H225")).spill()).containsExactly("P370+P378");
        assertThat(Precautions.of(List.of("H411")).spill()).containsExactly("P391");
        assertThat(Precautions.of(List.of("EUH208"))).isEqualTo(new Precautions(List.of(), List.of(), List.of()));
    }
}
