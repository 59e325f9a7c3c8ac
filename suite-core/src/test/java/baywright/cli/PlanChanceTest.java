package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan chance}, and the chances beside a quote, with a shop of two stages. */
class PlanChanceTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    private Path folder;

    private Desk desk;

    @BeforeEach
    void copyTheDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
    }

    private String job(String id) throws IOException {
        try (var all = Files.walk(folder.resolve("demo"))) {
            return all.filter(path -> path.endsWith(Path.of("jobs", id)))
                    .findFirst()
                    .orElseThrow()
                    .toString();
        }
    }

    private static JsonNode json(Desk.Answer answer) throws IOException {
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        return new ObjectMapper().readTree(answer.out());
    }

    @Test
    void saysWhatItMayComeToAndWhatDrivesIt() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "chance", "--runs", "2000", job("small-saloon"));
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out().lines()).allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(answer.out())
                .contains("2,000 simulated runs, seed 1")
                .contains("What drives the spread")
                .contains("of the runs");
    }

    @Test
    void aSeedGivesTheSameAnswerAndAnotherAnother() throws IOException {
        String first = desk.answerTo("plan", "chance", "--json", "--runs", "3000", job("small-saloon"))
                .out();
        assertThat(desk.answerTo("plan", "chance", "--json", "--runs", "3000", job("small-saloon"))
                        .out())
                .isEqualTo(first);
        JsonNode other =
                json(desk.answerTo("plan", "chance", "--json", "--runs", "3000", "--seed", "2", job("small-saloon")));
        JsonNode one = new ObjectMapper().readTree(first);
        assertThat(other.at("/minutes/mean")).isNotEqualTo(one.at("/minutes/mean"));
        assertThat(one.at("/seed").asLong()).isEqualTo(1);
        assertThat(one.at("/runs").asInt()).isEqualTo(3000);
        assertThat(one.at("/minutes/p50/value").asDouble())
                .isLessThan(one.at("/minutes/p80/value").asDouble());
        for (String share : List.of("p50", "p80", "p95")) {
            JsonNode quantile = one.at("/cost/" + share);
            assertThat(quantile.get("value").asDouble())
                    .isBetween(
                            quantile.at("/band/0").asDouble(),
                            quantile.at("/band/1").asDouble());
        }
        assertThat(one.get("drivers")).isNotEmpty();
        assertThat(one.get("steps"))
                .allSatisfy(
                        step -> assertThat(step.get("criticality").asDouble()).isBetween(0.0, 1.0));
    }

    /** What stands beside a quote is the outlook of the usual seed and runs. */
    @Test
    void aQuoteTellsItsChanceOfALoss() throws IOException {
        JsonNode quote = json(desk.answerTo("plan", "quote", "--json", job("small-saloon")));
        JsonNode chance = json(desk.answerTo("plan", "chance", "--json", "--runs", "20000", job("small-saloon")));
        for (String figure : List.of("lossChance", "minutes", "cost", "runs", "seed")) {
            assertThat(quote.get("outlook").get(figure)).as(figure).isEqualTo(chance.get(figure));
        }
        assertThat(desk.answerTo("plan", "quote", job("small-saloon")).out())
                .contains("Chance of a loss")
                .contains("20,000 simulated runs, seed 1");
    }

    /** The high end is then the price of the hours that four runs in five do with; nothing else moves. */
    @Test
    void aShopMayAskForAConfidence() throws IOException {
        JsonNode before = json(desk.answerTo("plan", "quote", "--json", job("small-saloon")));
        Path shop = Path.of(job("small-saloon")).resolve("../../shop.json").normalize();
        String text = Files.readString(shop, StandardCharsets.UTF_8);
        Files.writeString(shop, text.replaceFirst("(\"riskyPercent\": *[0-9.]+)", "$1, \"confidencePercent\": 80"));
        JsonNode after = json(desk.answerTo("plan", "quote", "--json", job("small-saloon")));
        assertThat(after.get("price")).isEqualTo(before.get("price"));
        double hours = after.at("/outlook/minutes/p80/value").asDouble();
        double percent = 100 * (hours / after.get("minutes").asDouble() - 1);
        assertThat(after.get("contingencyPercent").asDouble()).isEqualTo(percent, within(0.051));
        assertThat(desk.answerTo("plan", "quote", job("small-saloon")).out()).contains("for 80 % confidence");
        Files.writeString(shop, text.replaceFirst("(\"riskyPercent\": *[0-9.]+)", "$1, \"confidencePercent\": 100"));
        Desk.Answer refused = desk.answerTo("plan", "quote", job("small-saloon"));
        assertThat(refused.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(refused.err()).contains("shop.json").contains("confidencePercent");
    }

    @Test
    void theFinishFollowsTheTimetable() throws IOException {
        JsonNode chance = json(desk.answerTo("plan", "chance", "--json", "--runs", "20000", job("small-saloon")));
        assertThat(chance.at("/finish/by").asText()).isEqualTo("timetable");
        JsonNode timed = new ObjectMapper()
                .readTree(
                        desk.answerTo("plan", "timetable", "--json", "--chance", "--seconds", "0", job("small-saloon"))
                                .out());
        JsonNode job = timed.at("/chance/jobs/0");
        assertThat(job.get("planned")).isEqualTo(timed.at("/jobs/0/ready"));
        assertThat(job.get("steps")).isNotEmpty();
        for (String share : List.of("p50", "p80", "p95")) {
            assertThat(job.get(share)).isEqualTo(chance.at("/finish/" + share + "/at"));
        }
        assertThat(desk.answerTo("plan", "chance", "--runs", "2000", job("small-saloon"))
                        .out())
                .contains("follows the timetable")
                .contains("The end hangs on it");
        Desk.Answer shown = desk.answerTo("plan", "timetable", "--chance", "--seconds", "0", job("small-saloon"));
        assertThat(shown.out().lines()).allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(shown.out()).contains("4 in 5 by").contains("Goes with the end");
    }

    @Test
    void aPlanThatDoesNotHoldHasNoChances() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "chance", job("hasty-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out()).contains("not quoted");
        assertThat(desk.answerTo("plan", "chance", "--json", job("hasty-saloon"))
                        .out())
                .contains("\"quoted\" : false");
    }

    @Test
    void tooFewRunsAreBadInput() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "chance", "--runs", "5", job("small-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("--runs").contains("5");
    }
}
