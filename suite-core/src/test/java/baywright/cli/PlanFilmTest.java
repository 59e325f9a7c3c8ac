package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFilmTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    Path folder;

    private Desk desk;
    private String job;

    @BeforeEach
    void aJobWithReadings() throws Exception {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
        Path path = folder.resolve("demo/corner-shop/jobs/small-saloon");
        Files.writeString(path.resolve("readings.csv"), "zone;mil 1;mil 2;mil 3\nbonnet;3,4;3,5;3,6\n");
        job = path.toString();
    }

    private JsonNode json(String... words) throws Exception {
        Desk.Answer answer = desk.answerTo(words);
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        return new ObjectMapper().readTree(answer.out());
    }

    /** 3.4 mil = 86.36 µm (NIST SP 811). */
    @Test
    void theMapKnowsTheLineOfTheLowestReading() throws Exception {
        JsonNode bonnet = json("plan", "film", "--json", job).at("/zones/0");

        assertThat(bonnet.get("zone").asText()).isEqualTo("bonnet");
        assertThat(bonnet.get("least").decimalValue()).isEqualByComparingTo("86.36");
        assertThat(bonnet.get("leastAt").asText()).isEqualTo("jobs/small-saloon/readings.csv:2");
        assertThat(bonnet.get("band").asText()).isEqualTo("care");
    }

    @Test
    void theMapIsATable() {
        Desk.Answer answer = desk.answerTo("plan", "film", job);

        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .containsPattern("bonnet +3 +86\\.4 +88\\.9 +2\\.5 +91\\.4 +care")
                .contains("surely 83.4");
    }

    @Test
    void theMapIsCsvToo() {
        assertThat(desk.answerTo("plan", "film", "--csv", job).out().lines())
                .first()
                .asString()
                .startsWith("zone,n,least_um,mean_um,sd_um");
    }

    @Test
    void readingsAfterTheWorkAreCompared() throws Exception {
        Path after = Files.writeString(folder.resolve("after.csv"), "zone,1,2,3\nbonnet,80,82,84\n");

        JsonNode answer = json("plan", "film", "--json", "--unit", "um", "--after", after.toString(), job);

        assertThat(answer.at("/after/0/zone").asText()).isEqualTo("bonnet");
        assertThat(answer.at("/after/0/removed").decimalValue()).isEqualByComparingTo("6.9");
    }

    @Test
    void aFileThatLeavesItsUnitOpenIsAskedFor() throws Exception {
        Path after = Files.writeString(folder.resolve("after.csv"), "zone,1\nbonnet,80\n");

        Desk.Answer answer = desk.answerTo("plan", "film", "--after", after.toString(), job);

        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("after.csv:1:1").contains("does not say whether");
    }
}
