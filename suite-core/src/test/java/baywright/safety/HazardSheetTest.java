package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.FindingText;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HazardSheetTest {

    private static HazardSheet sheet(Locale locale) {
        SafetyCase all = all();
        return HazardSheet.of("Millrace & Works <1>", "Estate", all, SafetyCheck.of(all), locale);
    }

    private static SafetyCase all() {
        return new Cases()
                .found("booked-in")
                .step("wheels-off-clean", "surface:wheel")
                .step("heavy-compound", "surface:paint")
                .build();
    }

    private static String page(Locale locale) {
        SafetyCase all = all();
        return SheetHtml.of(sheet(locale), new FindingText(all.setting(), all.plan(), locale));
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
                .contains("H302 Gesundheitsschädlich bei Verschlucken.");
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
        byte[] pdf = SheetPdf.of(page(Locale.UK));
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
