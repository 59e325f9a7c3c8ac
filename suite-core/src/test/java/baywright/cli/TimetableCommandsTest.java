package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimetableCommandsTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    Path folder;

    private Desk desk;
    private Path shop;
    private String job;

    @BeforeEach
    void aDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
        shop = folder.resolve("demo/corner-shop");
        job = shop.resolve("jobs/small-saloon").toString();
    }

    private void edit(String from, String to) throws Exception {
        Path file = shop.resolve("jobs/small-saloon/job.json");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void aJobHasATimetable() {
        Desk.Answer answer = desk.answerTo("plan", "timetable", job);
        assertThat(answer.status()).as(answer.out() + answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .contains("* the end of its job hangs on this step")
                .contains("No timetable is better, which is proved.");
    }

    @Test
    void itIsAnsweredInJson() throws Exception {
        JsonNode answer = new ObjectMapper()
                .readTree(desk.answerTo("--json", "plan", "timetable", job).out());
        assertThat(answer.get("timed").asBoolean()).isTrue();
        assertThat(answer.at("/jobs/0/job").asText()).isEqualTo("small-saloon");
        assertThat(answer.at("/jobs/0/lateMinutes").asLong()).isZero();
        assertThat(answer.at("/entries/0/from").asText()).matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d");
    }

    @Test
    void aJobThatCannotBeReadyInTimeIsStopped() throws Exception {
        String arrives = "\"arrives\": \"2026-12-07T08:00\",";
        edit(arrives, arrives + " \"wanted\": \"2026-12-07T08:05\",");
        Desk.Answer answer = desk.answerTo("plan", "timetable", job);
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out()).contains("later than it is wanted");
    }

    @Test
    void madeAtOnceSaysSo() {
        assertThat(desk.answerTo("plan", "timetable", "--seconds", "0", job).out())
                .contains("Made at once and not improved ('--seconds' gives time).");
    }

    @Test
    void secondsCountFromNought() {
        Desk.Answer answer = desk.answerTo("plan", "timetable", "--seconds", "-1", job);
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("--seconds takes a number from 0, got -1");
    }

    @Test
    void theJobsOfAShopAreTimedTogether() {
        Desk.Answer answer = desk.answerTo("shop", "timetable", shop.toString());
        assertThat(answer.out() + answer.err()).contains("ready");
    }
}
