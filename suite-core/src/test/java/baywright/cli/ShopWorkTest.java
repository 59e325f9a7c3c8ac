package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main line on the command line, with a shop of two stages. */
class ShopWorkTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    private static Path folder;

    private static Desk desk;
    private static Desk.Answer demo;

    @BeforeAll
    static void copyTheDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        demo = desk.answerTo(
                "demo", "--no-window", "--json", folder.resolve("demo").toString());
    }

    @Test
    void theDemoProvesAndPricesEveryJob() throws Exception {
        assertThat(demo.status()).as(demo.err()).isEqualTo(ExitStatus.FINE);
        JsonNode jobs = json(demo);
        assertThat(jobs).extracting(job -> job.get("job").asText()).containsExactly("hasty-saloon", "small-saloon");
        assertThat(jobs)
                .filteredOn(job -> job.get("quoted").asBoolean())
                .isNotEmpty()
                .allSatisfy(job -> assertThat(job.get("stops").asInt()).isZero());
    }

    /**
     * By hand: washing 5 m² × 1 min and 10 min set-up at 60 an hour is 15; sealant 5 m² × 3 min × 0.9 is 13.50; shampoo
     * 50 ml of a litre at 20 is 1, with 25 % on top 1.25. Net 29.75, with 20 % tax 35.70; the cap is 30.
     */
    @Test
    void aQuoteIsTheSumOfItsSteps() throws Exception {
        JsonNode quote = json(desk.answerTo("plan", "quote", "--json", job("small-saloon")));
        assertThat(quote.at("/price/net").decimalValue()).isEqualByComparingTo("29.75");
        assertThat(quote.at("/price/gross").decimalValue()).isEqualByComparingTo("35.70");
        assertThat(quote.at("/cap/fits").asBoolean()).isFalse();
        assertThat(quote.at("/cap/over").decimalValue()).isEqualByComparingTo("5.70");
        assertThat(quote.at("/parts/0/alone/gross").decimalValue()).isEqualByComparingTo("19.50");
    }

    /** A British shop quotes in British, whatever the machine speaks. */
    @Test
    void aQuoteIsWrittenTheShopsWay() {
        String british = desk.answerTo("plan", "quote", job("small-saloon")).out();
        assertThat(desk.speaking(Locale.GERMANY)
                        .answerTo("plan", "quote", job("small-saloon"))
                        .out())
                .isEqualTo(british);
    }

    @Test
    void theTrailOfAQuoteAddsUpToItsNet() throws Exception {
        JsonNode quote = json(desk.answerTo("plan", "quote", "--json", "--trail", job("small-saloon")));
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : quote.get("trail")) {
            assertThat(line.get("from")).isNotEmpty();
            if (List.of("labour", "material", "discount")
                    .contains(line.get("kind").asText())) {
                sum = sum.add(line.get("amount").decimalValue());
            }
        }
        assertThat(sum.setScale(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo(quote.at("/price/net").decimalValue());
    }

    @Test
    void aTrailNamesScriptDriverAndFactor() {
        Desk.Answer answer = desk.answerTo("plan", "quote", "--trail-of", "sealant", job("small-saloon"));
        assertThat(answer.out())
                .contains("sealant, hands-on time: 5 m2 × 2.7 = 13.5 min")
                .containsPattern("script stages/sealant\\.groovy:\\d+:\\d+")
                .contains("factor hardness: × 0.9 because hardness is soft")
                .contains("rates.charge.detailing = 60");
    }

    @Test
    void aTrailOfNothingIsBadInput() {
        Desk.Answer answer = desk.answerTo("plan", "quote", "--trail-of", "moon", job("small-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("no line of this quote is about 'moon'");
    }

    @Test
    void aQuoteFitsTheTerminalAndNamesItsTerms() {
        Desk.Answer answer = desk.answerTo("plan", "quote", job("small-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out().lines()).allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(answer.out())
                .contains("Price                   GBP 35.70")
                .contains("over by GBP 5.70")
                .contains("stands until 6 January 2027")
                .contains("amounts in GBP")
                .contains("with 5 % on labour, trial section, or no paint taken off");
    }

    @Test
    void aPlanThatDoesNotHoldIsNotQuoted() throws Exception {
        Desk.Answer proof = desk.answerTo("plan", "prove", job("hasty-saloon"));
        assertThat(proof.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(proof.out()).startsWith("stop  ").contains("does not hold");
        Desk.Answer quote = desk.answerTo("plan", "quote", job("hasty-saloon"));
        assertThat(quote.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(quote.out()).contains("not quoted").doesNotContain("GBP");
        assertThat(json(desk.answerTo("plan", "quote", "--json", job("hasty-saloon")))
                        .get("quoted")
                        .asBoolean())
                .isFalse();
    }

    @Test
    void aPlanThatDoesNotHoldIsMended(@TempDir Path other) throws Exception {
        String job = copyOf("corner-shop", other).resolve("jobs/hasty-saloon").toString();
        String before = Files.readString(Path.of(job, "job.json"));
        Desk.Answer told = desk.answerTo("plan", "mend", job);
        assertThat(told.status()).as(told.err()).isEqualTo(ExitStatus.FINE);
        assertThat(told.out())
                .startsWith("Repair 1: 1 change, as much hands-on work; price GBP 35.70, GBP 5.70 over the cap")
                .contains("-  move contact wash (s1) before everything else")
                .contains("proved smallest: one change is the fewest");
        assertThat(told.out().lines()).allMatch(line -> line.length() <= Console.WIDTH || line.startsWith("To write"));
        assertThat(Files.readString(Path.of(job, "job.json"))).isEqualTo(before);
        Desk.Answer written = desk.answerTo("plan", "mend", "--apply", "1", job);
        assertThat(written.status()).as(written.err()).isEqualTo(ExitStatus.FINE);
        assertThat(written.out()).endsWith("the plan of 2 steps holds (no stop, no warning, no note)\n");
        assertThat(desk.answerTo("plan", "prove", job).status()).isEqualTo(ExitStatus.FINE);
        assertThat(desk.answerTo("plan", "mend", job).out()).contains("nothing to mend");
    }

    @Test
    void aStepAndAZoneAreExplained() throws Exception {
        Desk.Answer step = desk.answerTo("plan", "explain", job("small-saloon"), "s1");
        assertThat(step.status()).as(step.err()).isEqualTo(ExitStatus.FINE);
        assertThat(step.out())
                .startsWith("contact wash (s1), must")
                .contains(
                        "sealant (s2) needs 'washed' on all painted panels, because it seals the dirt in\n",
                        "[stages/sealant.groovy:7; made so by stages/")
                .contains("Without it, proving the plan finds", "stop: sealant (s2)")
                .contains("Without it, there would not be at the end", "'washed' on");
        assertThat(desk.answerTo("plan", "explain", job("small-saloon"), "bonnet")
                        .out())
                .contains("As the vehicle came", "loose-soil", "No finding names it")
                .contains("+ sealed [stages/");
        assertThat(desk.answerTo("plan", "explain", job("hasty-saloon"), "bonnet")
                        .out())
                .contains("Findings", "stop: ");
        JsonNode told = json(desk.answerTo("plan", "explain", "--json", job("small-saloon"), "sealant"));
        assertThat(told.at("/steps/0/reliesOn/0/by").asText()).isEqualTo("s1");
        assertThat(told.at("/steps/0/reliesOn/0/at").asText()).startsWith("stages/");
        assertThat(told.at("/steps/0/without/loses/0/state").asText()).isEqualTo("sealed");
        JsonNode strip = json(desk.answerTo("plan", "explain", "--json", job("hasty-saloon"), "bonnet"));
        assertThat(strip.at("/moments/0/changes/0/by").asText()).isNotEmpty();
        assertThat(strip.at("/findings/0/severity").asText()).isEqualTo("stop");
        Desk.Answer none = desk.answerTo("plan", "explain", job("small-saloon"), "bonet");
        assertThat(none.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(none.err()).contains("no step, stage or zone 'bonet' in this plan; nearest is 'bonnet'");
    }

    @Test
    void aProofIsShownForOneZone() {
        Desk.Answer answer = desk.answerTo("plan", "prove", "--zone", "vehicle", job("hasty-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out()).startsWith("On vehicle: no stop, no warning, no note. The plan does not hold");
        assertThat(desk.answerTo("plan", "prove", "--zone", "bonnet", job("hasty-saloon"))
                        .out())
                .startsWith("stop  ");
        assertThat(desk.answerTo("plan", "prove", "--zone", "bonet", job("hasty-saloon"))
                        .status())
                .isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void aRepairThatIsNotThereIsBadInput() {
        Desk.Answer answer = desk.answerTo("plan", "mend", "--apply", "9", job("hasty-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("there is no repair 9; there are repairs 1 to 3");
    }

    @Test
    void repairsAreToldInJson() throws Exception {
        JsonNode answer = json(desk.answerTo("plan", "mend", "--json", job("hasty-saloon")));
        assertThat(answer.get("provedSmallest").asBoolean()).isTrue();
        assertThat(answer.get("leastEdits").asInt()).isEqualTo(1);
        assertThat(answer.at("/repairs/0/edits/0").asText()).isEqualTo("move contact wash (s1) before everything else");
        assertThat(answer.at("/repairs/0/gross").decimalValue()).isEqualByComparingTo("35.70");
    }

    @Test
    void aChangedDemoIsKeptAsItIs(@TempDir Path other) throws Exception {
        desk.answerTo("demo", "--no-window", other.toString());
        assertThat(desk.answerTo("demo", "--no-window", other.toString()).out()).contains("Found the demo in");
        Path shop = other.resolve("corner-shop/shop.json");
        String changed = Files.readString(shop).replace("\"detailing\": 60", "\"detailing\": 70");
        Files.writeString(shop, changed);
        Desk.Answer again = desk.answerTo("demo", "--no-window", other.toString());
        assertThat(again.out()).contains("as it is: a file differs");
        assertThat(Files.readString(shop)).isEqualTo(changed);
    }

    @Test
    void aGarbledJobSaysWhereWithACaret(@TempDir Path other) throws Exception {
        Path workspace = copyOf("corner-shop", other);
        Path job = workspace.resolve("jobs/small-saloon/job.json");
        Files.writeString(job, Files.readString(job).replace("\"vehicles\": 1,", "\"vehicles\": one,"));
        Desk.Answer answer = desk.answerTo("plan", "prove", job.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        List<String> lines = answer.err().lines().toList();
        assertThat(lines.get(0)).containsPattern("jobs/small-saloon/job\\.json:\\d+:\\d+: error: ");
        assertThat(lines.get(1)).contains("\"vehicles\": one,");
        assertThat(lines.get(1).charAt(lines.get(2).indexOf('^'))).isEqualTo('o');
    }

    @Test
    void aJobOutsideAWorkspaceIsBadInput(@TempDir Path other) {
        Desk.Answer answer = desk.answerTo("plan", "prove", other.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("not a job of a workspace");
        assertThat(desk.answerTo("plan", "prove", other.resolve("gone").toString())
                        .err())
                .contains("there is no such job");
    }

    @Test
    void theStandardScriptsPass() {
        Desk.Answer answer =
                desk.answerTo("stages", "check", HOME.resolve("stage-scripts").toString());
        assertThat(answer.status()).as(answer.out()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out()).contains("2 examples: no error, no warning");
    }

    @Test
    void aBadScriptFailsTheCheckWithItsLineAndACaret(@TempDir Path other) throws Exception {
        Path workspace = copyOf("corner-shop", other);
        Path script = workspace.resolve("stages/sealant.groovy");
        Files.writeString(script, Files.readString(script).replace("'washed'", "'wahsed'"));
        Desk.Answer answer = desk.answerTo("stages", "check", script.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        List<String> lines = answer.out().lines().toList();
        assertThat(lines.get(0)).contains("sealant.groovy:").contains("nearest is 'washed'");
        assertThat(lines.get(1).substring(lines.get(2).indexOf('^'))).startsWith("'wahsed'");
        assertThat(desk.answerTo(
                                "plan",
                                "quote",
                                workspace.resolve("jobs/small-saloon").toString())
                        .status())
                .isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void anExampleThatFailsSaysWhichFigureMoved(@TempDir Path other) throws Exception {
        Path script = copyOf("corner-shop", other).resolve("stages/sealant.groovy");
        Files.writeString(script, Files.readString(script).replace("3.min, 4.min", "5.min, 8.min"));
        Desk.Answer answer = desk.answerTo("stages", "check", script.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out())
                .containsPattern(
                        "sealant\\.groovy:10:\\d+: error: example 'a bonnet': attended should be 6 .* comes out as 10");
    }

    @Test
    void anUnknownStageNamesTheNearest() {
        Desk.Answer answer = desk.answerTo("stages", "show", "sealent");
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("no stage is called 'sealent'; nearest is 'sealant'");
    }

    @Test
    void aStageIsShownWithItsUsualTerms() {
        assertThat(desk.answerTo("stages", "show", "contact-wash").out())
                .contains("1 / 1 / 1 min per m2, mean 1")
                .contains("Shampoo: H319");
        assertThat(desk.answerTo("stages", "list").out()).contains("contact-wash", "Protection");
    }

    @Test
    void aWordIsExplainedForEachPlaceWhereItMayStand() throws Exception {
        Desk.Answer answer = desk.answerTo("stages", "explain", "family");
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .contains("family  stands at the start of a line outside all braces")
                .contains("family  stands in 'stage(…) { }'")
                .contains("setUp:  a duration such as 3.min; usually 0.min")
                .contains("    family 'wash', title: 'Washing', setUp: 10.min")
                .contains("in the language since 1.0");
        JsonNode json = json(desk.answerTo("stages", "explain", "needs", "--json"));
        assertThat(json.get(0).path("parameters").get(1).path("name").asText()).isEqualTo("why:");
        assertThat(desk.answerTo("stages", "explain", "collect").out()).contains("behind a list and a dot");
    }

    @Test
    void anArgumentIsExplainedByTheWordsThatTakeIt() {
        Desk.Answer answer = desk.answerTo("stages", "explain", "like");
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out()).startsWith("stage  stands").contains("  like:  ");
    }

    @Test
    void anUnknownWordNamesTheNearest() {
        Desk.Answer answer = desk.answerTo("stages", "explain", "atended");
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("the stage language has no word 'atended'; nearest is 'attended'");
    }

    private static Path copyOf(String site, Path where) {
        desk.answerTo("demo", "--no-window", where.toString());
        return where.resolve(site);
    }

    private static String job(String id) {
        return folder.resolve("demo/corner-shop/jobs").resolve(id).toString();
    }

    private static JsonNode json(Desk.Answer answer) throws Exception {
        return new ObjectMapper().readTree(answer.out().getBytes(StandardCharsets.UTF_8));
    }
}
