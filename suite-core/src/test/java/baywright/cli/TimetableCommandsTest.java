package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
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

    /** A search ends with its proof, long before; a busy machine may take longer than the usual three seconds. */
    private static final String PATIENCE = "--seconds=30";

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
        assertThat(answer.out())
                .contains("later than it is wanted")
                .contains("Nothing that was tried on one day makes it less late.");
    }

    /** Room in the wash bay on the day of the vans, said by name; given to the shop, the vans are ready then or before. */
    @Test
    void theLeastHelpOnADayIsNamedAndHelps() throws Exception {
        Path works = folder.resolve("works");
        DemoSite.copy("millrace-works", works);
        desk = new Desk(folder.resolve("settings"), Path.of(".."));
        Path vans = works.resolve("jobs/bramblegate-vans");
        String text = Files.readString(vans.resolve("job.json"));
        Files.writeString(
                vans.resolve("job.json"),
                text.replaceFirst("\"wanted\": \"[^\"]*\"", "\"wanted\": \"2026-12-05T12:30\""));

        Desk.Answer words = desk.answerTo("plan", "timetable", PATIENCE, vans.toString());
        assertThat(words.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(words.out().replaceAll("\\s+", " "))
                .contains(
                        "The least help on one day after which it is in time: room for one more vehicle in Wash bay on"
                                + " Saturday, 5 December 2026.");
        JsonNode help = new ObjectMapper()
                .readTree(desk.answerTo("--json", "plan", "timetable", PATIENCE, vans.toString())
                        .out())
                .get("leastOnADay");
        assertThat(help.get("more").asText()).isEqualTo("bay");
        assertThat(help.get("of").asText()).isEqualTo("wash");
        assertThat(help.get("day").asText()).isEqualTo("2026-12-05");
        assertThat(help.get("lateMinutes").asLong()).isZero();

        Path file = works.resolve("shop.json");
        String bay = "\"id\": \"wash\",";
        Files.writeString(file, Files.readString(file).replace(bay, bay + " \"places\": 2,"));
        Desk.Answer then = desk.answerTo("--json", "plan", "timetable", PATIENCE, vans.toString());
        assertThat(then.status()).as(then.err()).isEqualTo(ExitStatus.FINE);
        assertThat(new ObjectMapper().readTree(then.out()).at("/jobs/0/ready").asText())
                .isLessThanOrEqualTo(help.at("/jobs/0/ready").asText());
    }

    @Test
    void madeAtOnceSaysSo() {
        assertThat(desk.answerTo("plan", "timetable", "--seconds", "0", job).out())
                .contains("Made at once and not improved ('--seconds' gives time).");
    }

    /** Its solvent stands in the bay in which a warm-air gun takes the trims off, on another day. */
    @Test
    void theCoupesTimetableHasNothingMeet() throws Exception {
        Path quay = folder.resolve("quay");
        DemoSite.copy("saltmarsh-quay", quay);
        desk = new Desk(folder.resolve("settings"), Path.of(".."));
        String coupe = quay.resolve("jobs/show-coupe").toString();
        Desk.Answer answer = desk.answerTo("--json", "plan", "timetable", "--seconds", "0", coupe);
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(new ObjectMapper().readTree(answer.out()).get("dangers")).isEmpty();
    }

    // ---- what people may take in

    private String estate(String safety) throws Exception {
        Path site = folder.resolve("works");
        DemoSite.copy("millrace-works", site);
        Path file = site.resolve("jobs/green-estate/job.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{" + safety));
        return site.resolve("jobs/green-estate").toString();
    }

    @Test
    void whoTakesInHowMuchIsShown() throws Exception {
        String estate = estate("");
        assertThat(desk.answerTo("plan", "timetable", "--seconds", "0", estate).out())
                .containsPattern("8 December 2026 +Maren Thistlewick +2\\.8 m/s²");
        JsonNode exposure = new ObjectMapper()
                .readTree(desk.answerTo("--json", "plan", "timetable", "--seconds", "0", estate)
                        .out())
                .get("exposure");
        assertThat(exposure).anySatisfy(day -> {
            assertThat(day.get("person").asText()).isEqualTo("Maren Thistlewick");
            assertThat(day.get("points").asDouble()).isBetween(120.0, 130.0);
        });
        assertThat(desk.answerTo("plan", "safety", "--timetable", estate).out())
                .contains("Reckoned from the timetable and its people")
                .contains("Maren Thistlewick");
    }

    @Test
    void whatBringsTooMuchInAnyDayIsRefusedWithWaysOut() throws Exception {
        String estate = estate("\"safety\": {\"steps\": {\"s27\": {\"vibration\": 30}}},");
        Desk.Answer answer = desk.answerTo("plan", "timetable", estate);
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out())
                .contains("no timetable keeps what a day may bring its people")
                .contains("Ways out, each tried:")
                .contains("gentler machine");
        assertThat(desk.answerTo("--json", "plan", "timetable", estate).out()).contains("\"overLimits\" : true");
        assertThat(desk.answerTo("plan", "safety", "--timetable", estate).status())
                .isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void aTimetableGoesWithNoOtherWayOfCountingDays() {
        assertThat(desk.answerTo("plan", "safety", "--timetable", "--apply", "1", job)
                        .err())
                .contains("--timetable goes with neither --day nor --apply");
    }

    // ---- what must not meet

    private static final String LAMP = """
            stage('warm-lamp') {
                title 'Warm lamp'
                family 'correction'
                worksOn 'paint'
                before { needs 'booked-in' }
                time { attended 5.min, 5.min, 5.min, per: 'vehicle' }
                place { bay 'lit'; equipment 'infrared lamp' }
            }
            """;

    /**
     * A lamp two minutes after the panel wipe in one bay, and in the next one the other way round: such liquids are kept away from heat
     * and ignition (H225 and P210, Regulation (EC) No 1272/2008, annexes III and IV; the minutes are common practice, no source).
     */
    @Test
    void whatMeetsInABayByTheTimetableIsToldAndStopsIt() throws Exception {
        Path estate = Path.of(estate(""));
        Files.writeString(folder.resolve("works/stages/correction/warm-lamp.groovy"), LAMP);
        Path file = estate.resolve("job.json");
        String text = Files.readString(file);
        String before = text.substring(0, text.indexOf("\"plan\"")) + "\"plan\": {\"steps\": ["
                + "{\"id\": \"s1\", \"stage\": \"arrival-check\", \"zones\": [\"vehicle\"]},";
        String wipe = "{\"id\": \"s2\", \"stage\": \"panel-wipe\", \"zones\": [\"bonnet\"]}";
        String lamp = "{\"id\": \"s3\", \"stage\": \"warm-lamp\", \"zones\": [\"bonnet\"]}";

        Files.writeString(file, before + wipe + "," + lamp + "]}}");
        Desk.Answer answer = desk.answerTo("plan", "timetable", "--seconds", "0", estate.toString());
        assertThat(answer.status()).as(answer.out()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out().replaceAll("\\s+", " "))
                .contains(
                        "What must not meet on these days and in these bays: stop warm lamp (s3): infrared lamp comes into")
                .contains("plan safety --timetable");
        JsonNode dangers = new ObjectMapper()
                .readTree(desk.answerTo("--json", "plan", "timetable", "--seconds", "0", estate.toString())
                        .out())
                .get("dangers");
        assertThat(dangers.at("/0/findings/0/code").asText()).isEqualTo("keep-apart");

        Files.writeString(file, before + lamp + "," + wipe + "]}}");
        Desk.Answer other = desk.answerTo("plan", "timetable", "--seconds", "0", estate.toString());
        assertThat(other.status()).as(other.out()).isEqualTo(ExitStatus.FINE);
        assertThat(other.out()).doesNotContain("must not meet");
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
