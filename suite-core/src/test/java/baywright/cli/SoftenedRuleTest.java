package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop softens a rule of the library in its own files, turns it into a note, or writes another in its place. */
class SoftenedRuleTest {

    private static final Path HOME = Path.of("..");
    private static final String RULE = "no-spark-beside-solvent";
    private static final String REASON = "our lamps are sealed against vapour";

    @TempDir
    private Path folder;

    private Path site;
    private String job;
    private Desk desk;

    /** A charger runs in the bay; the library forbids solvent beside it. */
    @BeforeEach
    void charger() throws IOException {
        desk = new Desk(folder.resolve("settings"), HOME);
        site = folder.resolve("millrace-works");
        DemoSite.copy("millrace-works", site);
        job = site.resolve("jobs/green-estate").toString();
        change("jobs/green-estate/job.json", "\"facts\": {", "\"facts\": {\"ignition-near\": true, ");
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = site.resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
    }

    private void rules(String kind) throws IOException {
        change(
                "shop.json",
                "\"film\": {",
                "\"rules\": {\"" + kind + "\": {\"" + RULE + "\": \"" + REASON + "\"}}, \"film\": {");
    }

    private JsonNode json(String... words) throws IOException {
        return new ObjectMapper().readTree(desk.answerTo(words).out().getBytes(StandardCharsets.UTF_8));
    }

    private JsonNode spoken(JsonNode proof) {
        for (JsonNode finding : proof.path("findings")) {
            if (finding.path("sentence").asText().contains("No lamp, flame or charger")) {
                return finding;
            }
        }
        throw new AssertionError("the rule does not speak: " + proof.path("findings"));
    }

    @Test
    void untilThenItStopsThePlan() throws IOException {
        JsonNode proof = json("plan", "prove", "--json", job);
        assertThat(proof.path("holds").asBoolean()).isFalse();
        assertThat(spoken(proof).path("severity").asText()).isEqualTo("stop");
        assertThat(desk.answerTo("plan", "quote", job).status()).isEqualTo(ExitStatus.STOPPED);
    }

    @Test
    void softenedItWarnsAndTheReasonStaysOnProofAndQuote() throws IOException {
        rules("soften");
        JsonNode proof = json("plan", "prove", "--json", job);
        assertThat(proof.path("holds").asBoolean()).isTrue();
        assertThat(spoken(proof).path("severity").asText()).isEqualTo("warn");
        assertThat(spoken(proof).path("sentence").asText()).endsWith("softened by the shop: " + REASON);
        Desk.Answer quote = desk.answerTo("plan", "quote", job);
        assertThat(quote.status()).as(quote.err()).isEqualTo(ExitStatus.FINE);
        assertThat(quote.out().replaceAll("\\s+", " ")).contains("softened by the shop: " + REASON);
        assertThat(json("plan", "quote", "--json", job)
                        .at("/proof/softened/" + RULE)
                        .asText())
                .isEqualTo(REASON);
    }

    @Test
    void offItOnlyNotesAndTheReasonStays() throws IOException {
        rules("off");
        JsonNode proof = json("plan", "prove", "--json", job);
        assertThat(spoken(proof).path("severity").asText()).isEqualTo("note");
        assertThat(spoken(proof).path("sentence").asText()).endsWith("softened by the shop: " + REASON);
        assertThat(desk.answerTo("plan", "quote", job).out().replaceAll("\\s+", " "))
                .contains("softened by the shop: " + REASON);
        assertThat(json("plan", "quote", "--json", job)
                        .at("/proof/softened/" + RULE)
                        .asText())
                .isEqualTo(REASON);
    }

    @Test
    void replacedTheShopsOwnRuleSpeaks() throws IOException {
        String own = "rule('" + RULE + "', replaces: true) {\n"
                + "    title 'No lamp, flame or charger in our own words'\n"
                + "    reason 'the charger stands behind a wall'\n"
                + "    at stages: ['panel-wipe']\n"
                + "    warns { uses('flammable') && surveyed('ignition-near') }\n"
                + "}\n";
        Files.createDirectories(site.resolve("stages/rules"));
        Files.writeString(site.resolve("stages/rules/own.groovy"), own);
        JsonNode proof = json("plan", "prove", "--json", job);
        assertThat(proof.path("holds").asBoolean()).isTrue();
        assertThat(spoken(proof).path("severity").asText()).isEqualTo("warn");
        assertThat(spoken(proof).path("sentence").asText()).contains("in our own words", "behind a wall");
        assertThat(json("plan", "quote", "--json", job).at("/proof/softened").isEmpty())
                .isTrue();
    }

    @Test
    void aReasonMustBeGiven() throws IOException {
        change("shop.json", "\"film\": {", "\"rules\": {\"soften\": {\"" + RULE + "\": \" \"}}, \"film\": {");
        Desk.Answer answer = desk.answerTo("plan", "prove", job);
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("the rule '" + RULE + "' is given no reason");
    }
}
