package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan compose} on the shipped demo. */
class PlanComposeTest {

    private static final Path HOME = Path.of("..");
    private static final String GOALS = "\"goals\": [\n    {\"goal\": \"one-step-finish\"},";

    @TempDir
    private Path folder;

    private Desk desk;
    private Path job;

    @BeforeEach
    void demo() throws IOException {
        DemoSite.copy("millrace-works", folder);
        desk = new Desk(folder.resolve("settings"), HOME);
        job = folder.resolve("jobs/hurried-hatch");
    }

    private String text() throws IOException {
        return Files.readString(job.resolve("job.json"));
    }

    @Test
    void showsEachStepWithItsReasonAndLeavesTheJobAsItIs() throws IOException {
        String before = text();

        Desk.Answer answer = desk.answerTo("plan", "compose", job.toString());

        assertThat(answer.status()).as(answer.out() + answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .startsWith("s1  Arrival check: whole vehicle\n")
                .contains("asked for by One-step finish: 'polished' on all painted panels")
                .contains("Small five-door, planned in a hurry: from 3 goals a plan of ")
                .contains("below the cap")
                .contains("To write it, in place of the plan that is there:");
        assertThat(text()).isEqualTo(before);
    }

    @Test
    void writesThePlanThatThenProves() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "compose", "--apply", "--json", job.toString());

        JsonNode json = new ObjectMapper().readTree(answer.out());
        assertThat(json.get("composed").asBoolean()).isTrue();
        assertThat(json.get("applied").asBoolean()).isTrue();
        assertThat(json.get("steps").get(0).get("stage").asText()).isEqualTo("arrival-check");
        assertThat(json.get("goals")).hasSize(3);
        assertThat(json.get("leastCost").decimalValue())
                .isLessThanOrEqualTo(json.get("directCost").decimalValue());
        assertThat(desk.answerTo("plan", "prove", job.toString()).status()).isEqualTo(ExitStatus.FINE);
        assertThat(text()).contains("\"goals\": [").contains("\"Tobias Underlea\"");
    }

    private JsonNode quote(String estate) throws IOException {
        return json(desk.answerTo("plan", "quote", "--json", estate));
    }

    /** From the estate's goals to a plan under a cap that not all of them fit. */
    @Test
    void goalsThatDoNotFitTheCapAreLeftOutAndWhatIsWrittenFits() throws IOException {
        String estate = folder.resolve("jobs/green-estate").toString();

        Desk.Answer composed = desk.answerTo("plan", "compose", "--apply", "--cap", "700", estate);

        assertThat(composed.status()).as(composed.out() + composed.err()).isEqualTo(ExitStatus.FINE);
        assertThat(composed.out())
                .contains("left out: Lamps clear (could): with it GBP ", " over the cap")
                .contains("Proved: each choice of goals that is worth more was composed as well")
                .contains("below the cap")
                .contains("Ready 8 December 2026")
                .contains("wanted by 16 December 2026, 17:00");
        JsonNode quote = quote(estate);
        assertThat(quote.at("/price/gross").decimalValue()).isGreaterThan(new BigDecimal("500"));
        assertThat(quote.at("/high/gross").decimalValue()).isLessThanOrEqualTo(new BigDecimal("700"));
    }

    @Test
    void whatMustBeAndIsOverTheCapIsNotWrittenUnlessAllIsAskedFor() throws IOException {
        String before = text();

        Desk.Answer refused = desk.answerTo("plan", "compose", "--apply", "--cap", "100", job.toString());

        assertThat(refused.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(refused.out())
                .contains("Cannot be done for the cap: what must be comes to GBP ")
                .contains("Not written: ");
        assertThat(text()).isEqualTo(before);

        Desk.Answer all = desk.answerTo("plan", "compose", "--apply", "--all-goals", "--cap", "100", job.toString());

        assertThat(all.status()).as(all.out()).isEqualTo(ExitStatus.FINE);
        assertThat(all.out()).contains("over the cap", "Written to ");
        assertThat(text()).isNotEqualTo(before);
    }

    /** The boot lid was painted 20 days before; on day 10 it may be waxed, a day before the coupe is wanted. */
    @Test
    void waxOnFreshPaintIsPutOffWhereThereIsTimeForIt() throws IOException {
        Path quay = folder.resolve("quay");
        DemoSite.copy("saltmarsh-quay", quay);
        Path coupe = quay.resolve("jobs/show-coupe");

        Desk.Answer answer = desk.answerTo("plan", "compose", coupe.toString());

        assertThat(answer.status()).as(answer.out() + answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .contains("put off to 17 December 2026", "Nothing is put", "Ready 17 December 2026")
                .doesNotContain("not had:");

        Path file = coupe.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace("2026-12-18T17:00", "2026-12-16T17:00"));
        Desk.Answer sooner = desk.answerTo("plan", "compose", coupe.toString());
        assertThat(sooner.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(sooner.out())
                .contains("not had: Show preparation (must): 'waxed' on boot lid")
                .contains("from 17")
                .doesNotContain("put off");
    }

    @Test
    void whatIsLateSaysWhatHoldsItUpAndWhatWouldHelp() throws IOException {
        Path file = folder.resolve("jobs/hurried-hatch/job.json");
        String hatch = Files.readString(file);
        String wanted = hatch.replaceFirst("\"wanted\": \"[^\"]*\"", "\"wanted\": \"2026-12-14T12:00\"");
        assertThat(wanted).isNotEqualTo(hatch);
        Files.writeString(file, wanted);

        Desk.Answer answer = desk.answerTo("plan", "compose", job.toString());

        assertThat(answer.status()).as(answer.out() + answer.err()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out())
                .containsPattern("too\\s+late, wanted by 14 December 2026, 12:00")
                .contains("The end hangs on ")
                .doesNotContain("Fewer goals")
                .containsPattern("(?i)one more person");
    }

    @Test
    void aCapThatIsNoAmountIsRefused() throws IOException {
        Desk.Answer answer = desk.answerTo("plan", "compose", "--cap", "much", job.toString());

        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("--cap is 'much'; give an amount in GBP");
    }

    @Test
    void aGoalThatMustBeAndCannotIsToldAndTheExitStatusSaysSo() throws IOException {
        Files.writeString(
                job.resolve("job.json"),
                text().replace(
                                GOALS,
                                "\"goals\": [{\"title\": \"Cut back\", \"states\": [\"compounded\"],"
                                        + " \"zones\": [\"front-bumper\"]},"));

        Desk.Answer answer = desk.answerTo("plan", "compose", job.toString());

        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out())
                .contains("not had: Cut back (must): 'compounded' on front bumper: a rule forbids it: A gauge cannot")
                .contains("holds");
    }

    private static final String SHINY = "\"goals\": [{\"title\": \"Bonnet waxed\", \"states\": [\"waxed\"],"
            + " \"zones\": [\"bonnet\"]}, {\"goal\": \"one-step-finish\"},";

    private Path estateThatWantsWaxToo() throws IOException {
        Path estate = folder.resolve("jobs/green-estate");
        Path file = estate.resolve("job.json");
        Files.writeString(file, Files.readString(file).replace(GOALS, SHINY));
        return estate;
    }

    @Test
    void aGoalThatThePlanMissesIsAWarningAndChangesNoPrice() throws IOException {
        String estate = folder.resolve("jobs/green-estate").toString();
        JsonNode before = json(desk.answerTo("plan", "quote", "--json", estate));
        Desk.Answer met = desk.answerTo("plan", "prove", estate);
        estateThatWantsWaxToo();

        Desk.Answer missed = desk.answerTo("plan", "prove", estate);

        assertThat(met.out()).doesNotContain("goal-missed");
        assertThat(missed.status()).isEqualTo(ExitStatus.FINE);
        assertThat(missed.out())
                .startsWith("warn  the plan ends without 'waxed' on bonnet, which the goal 'Bonnet waxed' wants\n");
        JsonNode after = json(desk.answerTo("plan", "quote", "--json", estate));
        assertThat(before.findValue("gross")).isNotNull().isEqualTo(after.findValue("gross"));
    }

    @Test
    void aStepAndAZoneAreTiedToTheGoals() throws IOException {
        String estate = estateThatWantsWaxToo().toString();

        assertThat(desk.answerTo("plan", "explain", estate, "panel-wipe").out())
                .contains("Goals of the job that it serves\n")
                .contains("asked for by goal 'One-step finish' (must), through finish and hologram check (s32)")
                .contains("Without it, these goals would no longer be met\n")
                .contains("goal 'One-step finish' (must), as the proof stops finish and hologram check (s32)");
        assertThat(desk.answerTo("plan", "explain", estate, "sealant").out())
                .contains("asked for by goal 'Protection for a season' (must), which wants 'sealed' on all painted")
                .contains("[stages/goals.groovy:");
        assertThat(desk.answerTo("plan", "explain", estate, "bonnet").out())
                .contains(
                        "Goals that hold here in the end\n",
                        "goal 'One-step finish' (must): 'polished', 'finish-checked'")
                .contains("Goals that do not hold here in the end\n", "goal 'Bonnet waxed' (must): 'waxed' missing");
        JsonNode step = json(desk.answerTo("plan", "explain", "--json", estate, "sealant"))
                .at("/steps/0");
        assertThat(step.at("/goals/0/goal").asText()).isEqualTo("season-protection");
        assertThat(step.at("/goals/0/priority").asText()).isEqualTo("must");
        assertThat(step.at("/goals/0/wants/0/state").asText()).isEqualTo("sealed");
        assertThat(step.at("/without/goals/0/loses/0/state").asText()).isEqualTo("sealed");
        JsonNode zone = json(desk.answerTo("plan", "explain", "--json", estate, "bonnet"));
        assertThat(zone.at("/goals/0/missing/0").asText()).isEqualTo("waxed");
        assertThat(zone.at("/goals/1/holds").asBoolean()).isTrue();
        assertThat(zone.at("/findings/0/code").asText()).isNotEmpty();
    }

    private static JsonNode json(Desk.Answer answer) throws IOException {
        return new ObjectMapper().readTree(answer.out());
    }
}
