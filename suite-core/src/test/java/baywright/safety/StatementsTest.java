package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts: Regulation (EC) No 1272/2008, annexes III and IV, consolidated 2025-09-01. */
class StatementsTest {

    private static final Statements ENGLISH = Statements.in(Locale.UK);

    // the files' own counts
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr", "es", "nl"})
    void everyLanguageHasTheSameCodes(String language) {
        Statements all = Statements.in(Locale.forLanguageTag(language));
        assertThat(all.language()).isEqualTo(language);
        assertThat(all.codes()).hasSize(252).hasSameElementsAs(ENGLISH.codes());
        assertThat(all.codes().stream().filter(c -> c.startsWith("EUH"))).hasSize(33);
        assertThat(all.codes().stream().filter(c -> c.startsWith("P"))).hasSize(128);
        assertThat(all.codes().stream().filter(c -> c.startsWith("H"))).hasSize(91);
    }

    // the file's own count
    @Test
    void classTableHasEightyFourRows() {
        assertThat(HazardClass.ALL).hasSize(84);
        assertThat(HazardClass.ALL.stream().filter(c -> !c.agrees()))
                .extracting(HazardClass::id)
                .containsExactly("Expl. 1.5");
    }

    // Regulation (EC) No 1272/2008, annexes III and IV
    @Test
    void englishTexts() {
        Map<String, String> texts = Map.ofEntries(
                Map.entry("H225", "Highly flammable liquid and vapour."),
                Map.entry("H229", "Pressurised container: May burst if heated."),
                Map.entry("H290", "May be corrosive to metals."),
                Map.entry("H304", "May be fatal if swallowed and enters airways."),
                Map.entry("H314", "Causes severe skin burns and eye damage."),
                Map.entry("H317", "May cause an allergic skin reaction."),
                Map.entry("H318", "Causes serious eye damage."),
                Map.entry("H319", "Causes serious eye irritation."),
                Map.entry("H336", "May cause drowsiness or dizziness."),
                Map.entry("H412", "Harmful to aquatic life with long lasting effects."),
                Map.entry("EUH031", "Contact with acids liberates toxic gas."),
                Map.entry("EUH066", "Repeated exposure may cause skin dryness or cracking."),
                Map.entry("EUH204", "Contains isocyanates. May produce an allergic reaction."),
                Map.entry(
                        "EUH206",
                        "Warning! Do not use together with other products. May release dangerous gases (chlorine)."),
                Map.entry("P271", "Use only outdoors or in a well-ventilated area."),
                Map.entry("P280", "Wear protective gloves/protective clothing/eye protection/face protection."),
                Map.entry(
                        "P305+P351+P338",
                        "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing."),
                Map.entry("H360FD", "May damage fertility. May damage the unborn child."));
        texts.forEach((code, text) -> assertThat(ENGLISH.text(code)).as(code).hasValue(text));
    }

    // Regulation (EC) No 1272/2008, annexes III and IV
    @ParameterizedTest
    @ValueSource(strings = {"H227", "H303", "P316"})
    void aCodeOfTheUnOnlyGivesOneClearSentence(String code) {
        assertThat(ENGLISH.text(code)).isEmpty();
        assertThat(ENGLISH.textOrWhyNot(code))
                .startsWith("'" + code + "' is not an EU code")
                .endsWith("the UN table has one");
        assertThat(ENGLISH.textOrWhyNot("H999"))
                .startsWith("'H999' is not an EU code")
                .doesNotContain("UN table");
        assertThat(ENGLISH.unknown(List.of("H225", code))).containsExactly(code);
    }

    // Regulation (EC) No 1272/2008, annex III, in the languages of the Official Journal
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "de|Verursacht schwere Augenreizung.|Entwickelt bei Berührung mit Säure giftige Gase.",
                "fr|Provoque une sévère irritation des yeux.|Au contact d'un acide, dégage un gaz toxique.",
                "es|Provoca irritación ocular grave.|En contacto con ácidos libera gases tóxicos.",
                "nl|Veroorzaakt ernstige oogirritatie.|Vormt giftig gas in contact met zuren."
            })
    void otherLanguages(String language, String h319, String euh031) {
        Statements all = Statements.in(Locale.forLanguageTag(language));
        assertThat(all.text("H319")).hasValue(h319);
        assertThat(all.text("EUH031")).hasValue(euh031);
    }

    // Regulation (EC) No 1272/2008, annexes III and IV: what stands in angle brackets is to be filled in
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr", "es", "nl"})
    void aPrintedTextHasNoPlaceInAngleBrackets(String language) {
        Statements all = Statements.in(Locale.forLanguageTag(language));
        for (String code : all.codes()) {
            assertThat(all.text(code).orElseThrow())
                    .as(code)
                    .doesNotContain("<", ">", "  ", " .", " ,")
                    .isNotBlank();
        }
        for (String code : List.of("H372", "H373", "H351", "H360", "H361", "EUH208")) {
            assertThat(all.published(code).orElseThrow()).as(code).contains("<", ">");
        }
        assertThat(all.text("P501").orElseThrow()).contains("…");
        assertThat(all.text("P370+P378").orElseThrow()).contains("…");
    }

    // the tidy form
    @Test
    void placesAreLeftOutOrFilledIn() {
        assertThat(ENGLISH.text("H373")).hasValue("May cause damage to organs through prolonged or repeated exposure.");
        assertThat(ENGLISH.text("EUH208", "an isothiazolinone"))
                .hasValue("Contains an isothiazolinone. May produce an allergic reaction.");
        assertThat(ENGLISH.text("EUH208"))
                .hasValue("Contains a sensitising substance. May produce an allergic reaction.");
        assertThat(ENGLISH.text("P501")).hasValueSatisfying(t -> assertThat(t).endsWith("…"));
    }

    // faults of the published UN table
    @Test
    void faultsOfTheUnTableAreReportedAndKeptOut() {
        UnTable table = UnTable.read();
        assertThat(table.rows("H230").get(0).advice()).contains("P377").doesNotContain("P337");
        assertThat(table.rows("H231").get(0).advice()).contains("P377").doesNotContain("P337");
        assertThat(table.rows("H373").get(0).text()).startsWith("May cause damage");
        assertThat(table.has("H205")).isFalse();
        assertThat(table.precautions().get("P236")).contains("configuration");
        assertThat(table.precautions().get("P375")).contains("explosion");
        assertThat(table.has("P281")).isFalse();
        assertThat(table.rows())
                .allSatisfy(r ->
                        assertThat(r.advice()).allSatisfy(p -> assertThat(p).isEqualTo(p.strip())));
        assertThat(new TreeSet<>(
                        table.faults().stream().map(UnTable.Fault::code).toList()))
                .contains("", "H205", "H230", "H231", "H260", "H373", "P236", "P281", "P375");
        assertThat(table.faults())
                .contains(
                        new UnTable.Fault(9, "", "a row without a code"),
                        new UnTable.Fault(171, "P281", "withdrawn, marked (Deleted), without a space behind it"));
    }

    // the published UN table has H229 in three rows
    @Test
    void aCodeKeepsARowForEachCategory() {
        List<UnTable.Row> rows = UnTable.read().rows("H229");
        assertThat(rows).extracting(UnTable.Row::signal).containsExactly("Danger", "Warning", "Warning");
        assertThat(rows).extracting(UnTable.Row::pictogram).containsExactly("GHS02", "GHS02", "");
    }

    /** What the regulation leaves open is left out of a sheet, or points to the data sheet; in all five languages. */
    @Test
    void aSheetHasNoPlacesToFillIn() {
        assertThat(ENGLISH.printed("P302+P352")).hasValue("IF ON SKIN: Wash with plenty of water.");
        assertThat(ENGLISH.printed("P312")).hasValue("Call a POISON CENTRE/doctor if you feel unwell.");
        assertThat(ENGLISH.printed("P370+P378"))
                .hasValue("In case of fire: Use what the safety data sheet names to extinguish.");
        assertThat(Statements.in(Locale.GERMAN).printed("P310"))
                .hasValue("Sofort GIFTINFORMATIONSZENTRUM/Arzt anrufen.");
        for (String language : Statements.LANGUAGES) {
            Statements all = Statements.in(Locale.forLanguageTag(language));
            assertThat(all.codes())
                    .allSatisfy(c -> assertThat(all.printed(c).orElseThrow())
                            .as(language + " " + c)
                            .doesNotContain("…", "<", ">", "  ", "/.", " ."));
        }
    }
}
