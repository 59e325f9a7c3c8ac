package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan options} with a shop of two stages. */
class PlanOptionsTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void copyTheDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
    }

    private static String job(String id) {
        return folder.resolve("demo/corner-shop/jobs").resolve(id).toString();
    }

    private static JsonNode json(String... words) throws IOException {
        return new ObjectMapper().readTree(desk.answerTo(words).out());
    }

    /** An option by priority costs what the quote's parts come to. */
    @Test
    void optionsByPriorityCostWhatTheQuoteSays() throws IOException {
        JsonNode quote = json("plan", "quote", "--json", job("small-saloon"));
        JsonNode options =
                json("plan", "options", "--json", job("small-saloon")).get("options");
        JsonNode parts = quote.get("parts");
        assertThat(options.size()).isEqualTo(parts.size()).isGreaterThan(1);
        for (int i = 0; i < options.size(); i++) {
            assertThat(options.get(i).get("gross")).isEqualTo(parts.get(i).at("/upTo/gross"));
            assertThat(options.get(i).get("high")).isEqualTo(parts.get(i).at("/upToHigh/gross"));
        }
        assertThat(options.get(options.size() - 1).get("lossChance")).isEqualTo(quote.at("/outlook/lossChance"));
    }

    /** Without the wash the sealant has no clean paint to go on: that option is no offer, the others are. */
    @Test
    void anOptionThatDoesNotHoldIsNotPriced() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "options", "--without", "s1", job("small-saloon"));
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .contains("Everything but s1")
                .containsPattern("stops? it")
                .contains("Must only");
        assertThat(answer.out().lines()).allMatch(line -> line.length() <= Console.WIDTH);
        JsonNode options = json("plan", "options", "--json", "--without", "s2", job("small-saloon"))
                .get("options");
        JsonNode last = options.get(options.size() - 1);
        assertThat(last.get("quoted").asBoolean()).isTrue();
        assertThat(last.get("net").decimalValue()).isEqualByComparingTo("16.25");
    }

    @Test
    void aStrangeStepIsBadInput() {
        Desk.Answer answer = desk.answerTo("plan", "options", "--without", "moon", job("small-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("'moon'");
    }

    /** The part of a plan that holds is an offer even where the whole is none. */
    @Test
    void aPartMayHoldWhereTheWholeDoesNot() throws IOException {
        JsonNode options =
                json("plan", "options", "--json", job("hasty-saloon")).get("options");
        assertThat(options.get(0).get("quoted").asBoolean()).isTrue();
        assertThat(options.get(options.size() - 1).get("quoted").asBoolean()).isFalse();
        assertThat(options.get(options.size() - 1).get("stops").asInt()).isPositive();
    }
}
