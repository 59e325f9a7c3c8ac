package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Safety on the command line, from the files of a shop to a quote. */
class PlanSafetyTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    /** 5 m² × 70 min × 0.9 at 8 m/s², 0.65 of it at the trigger: 2 × 8² × 3.4125 h = 437 points; the limit is 400 (UK HSE L140). */
    private static final String COMPOUND = """
            stage('compound') {
                title 'Compound'
                family 'protection'
                worksOn 'paint'
                before { needs 'washed' }
                time { attended 70.min, 70.min, 70.min, per: 'm2' }
                hazards { risk 'vibration', 8.ms2 }
            }
            """;

    private static final String JACK = """
            stage('jack') {
                title 'Jack up'
                family 'wash'
                worksOn 'paint'
                hazards { risk 'lifting' }
            }
            """;

    private static final String HIGH_VOLTAGE = """
            fact 'trained-signed', kind: 'yes-no', usual: false, means: 'a trained person has signed'
            stage('electrics') {
                title 'Electrics'
                family 'wash'
                worksOn 'paint'
            }
            rule('high-voltage-engine-bay') {
                title 'Only with a signature'
                reason 'shock'
                at stages: ['electrics']
                forbids { !surveyed('trained-signed') }
            }
            """;

    @TempDir
    private Path folder;

    private Desk desk;
    private Path shop;
    private Path job;

    @BeforeEach
    void openTheShop() throws IOException {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
        shop = folder.resolve("demo/corner-shop");
        job = shop.resolve("jobs/small-saloon");
    }

    private void plan(String script, String... stages) throws IOException {
        Files.writeString(shop.resolve("stages/own.groovy"), script);
        StringBuilder steps = new StringBuilder();
        for (int i = 0; i < stages.length; i++) {
            steps.append(i == 0 ? "" : ",\n")
                    .append(
                            "{\"id\": \"s%d\", \"stage\": \"%s\", \"zones\": [\"surface:paint\"], \"priority\": \"must\"}"
                                    .formatted(i + 1, stages[i]));
        }
        String file = Files.readString(job.resolve("job.json"));
        int from = file.indexOf("\"steps\": [") + "\"steps\": [".length();
        Files.writeString(
                job.resolve("job.json"),
                file.substring(0, from) + steps + file.substring(file.indexOf("]\n  },", from)));
    }

    private void acknowledge(String caution) throws IOException {
        String file = Files.readString(job.resolve("job.json"));
        Files.writeString(
                job.resolve("job.json"),
                file.replace(
                        "\"price\":",
                        "\"acknowledgements\": [{\"id\": \"" + caution + "\", \"by\": \"Maren Thistlewick\","
                                + " \"at\": \"2026-12-07T08:00\"}],\n  \"price\":"));
    }

    private JsonNode json(String... words) throws IOException {
        String[] all = Stream.concat(Stream.of(words), Stream.of("--json", job.toString()))
                .toArray(String[]::new);
        return new ObjectMapper().readTree(desk.answerTo(all).out().getBytes(StandardCharsets.UTF_8));
    }

    private Desk.Answer answer(String... words) {
        return desk.answerTo(
                Stream.concat(Stream.of(words), Stream.of(job.toString())).toArray(String[]::new));
    }

    @Test
    void aPlanInOrderThatHurtsSomeoneIsNotQuotedAndGetsThreeOffers() throws IOException {
        plan(COMPOUND, "contact-wash", "compound");
        JsonNode quote = json("plan", "quote");
        assertThat(quote.get("quoted").asBoolean()).isFalse();
        assertThat(quote.get("findings"))
                .extracting(f -> f.get("code").asText())
                .containsExactly("vibration");
        assertThat(quote.get("waysOut"))
                .extracting(JsonNode::asText)
                .satisfiesExactly(
                        share -> assertThat(share).startsWith("1. Share s2 among 2 people"),
                        split -> assertThat(split).startsWith("2. Do s2 in 2 parts on as many days"),
                        gentler -> assertThat(gentler).startsWith("3. Use a gentler machine: s2 at most 7.6 m/s²"));
        Desk.Answer told = answer("plan", "quote");
        assertThat(told.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(told.out())
                .contains("(437 points)", "3. Use a gentler machine", "plan safety --apply N", "not quoted");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void eachOfferWrittenToTheJobIsQuoted(int offer) throws IOException {
        plan(COMPOUND, "contact-wash", "compound");
        Desk.Answer written = answer("plan", "safety", "--apply", String.valueOf(offer));
        assertThat(written.status()).as(written.out() + written.err()).isEqualTo(ExitStatus.FINE);
        assertThat(written.out()).startsWith(offer + ". ").contains("Written to", "nothing about safety stops it");
        assertThat(json("plan", "prove").get("holds").asBoolean()).isTrue();
        JsonNode quote = json("plan", "quote");
        assertThat(quote.at("/price/gross").decimalValue()).isPositive();
        assertThat(json("plan", "safety").get("waysOut")).isEmpty();
        try (Stream<Path> files = Files.list(job)) {
            assertThat(files).extracting(p -> p.getFileName().toString()).containsExactly("job.json");
        }
    }

    @Test
    void anOfferThatIsNotThereIsBadInputAndChangesNothing() throws IOException {
        plan(COMPOUND, "contact-wash", "compound");
        String before = Files.readString(job.resolve("job.json"));
        Desk.Answer four = answer("plan", "safety", "--apply", "4");
        assertThat(four.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(four.err()).contains("there is no way out 4; there are 1 to 3");
        assertThat(Files.readString(job.resolve("job.json"))).isEqualTo(before);
    }

    @Test
    void aProofTellsOfSafetyBesideTheOrder() throws IOException {
        plan(COMPOUND, "compound", "contact-wash");
        Desk.Answer proof = answer("plan", "prove");
        assertThat(proof.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(proof.out())
                .contains("does not hold (2 stops, no warning, no note)")
                .contains("Safety stops it; ways out:");
        JsonNode json = json("plan", "prove");
        assertThat(List.of(json.get("holds"), json.get("orderHolds"), json.get("safetyHolds")))
                .extracting(JsonNode::asBoolean)
                .containsExactly(false, false, false);
        assertThat(json.get("findings"))
                .extracting(f -> f.get("code").asText())
                .containsExactly("need-unmet", "vibration");
        plan(COMPOUND, "contact-wash", "compound");
        assertThat(json("plan", "prove").get("orderHolds").asBoolean()).isTrue();
        assertThat(answer("plan", "prove").status()).isEqualTo(ExitStatus.STOPPED);
    }

    @Test
    void aRepairOfTheOrderThatLeavesADangerSaysSo() throws IOException {
        plan(COMPOUND, "compound", "contact-wash");
        Desk.Answer mend = answer("plan", "mend");
        assertThat(mend.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(mend.out())
                .contains("without a price, safety still stops the plan")
                .contains("Safety still stops it (1 stop)", "plan safety");
        assertThat(json("plan", "mend").at("/repairs/0/safetyHolds").asBoolean(true))
                .isFalse();
        plan(COMPOUND, "contact-wash", "compound");
        assertThat(answer("plan", "mend").out())
                .contains("the order of the steps holds, nothing to mend there", "Safety still stops it");
    }

    @Test
    void whatADayBringsIsToldInWordsAndFigures() throws IOException {
        plan(COMPOUND, "contact-wash", "compound");
        Desk.Answer told = answer("plan", "safety");
        assertThat(told.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(told.out().lines().filter(line -> !line.startsWith("To write")))
                .allMatch(line -> line.length() <= Console.WIDTH);
        assertThat(told.out())
                .contains("2026-12-07", "5.2 m/s²", "436.8", "the plan must not be done like this (1 stop")
                .endsWith("Check the current safety data sheet; local law and licensed practice rule.\n");
        JsonNode json = json("plan", "safety");
        assertThat(json.get("holds").asBoolean()).isFalse();
        assertThat(json.at("/days/0/points").decimalValue()).isEqualByComparingTo("436.80");
        assertThat(json.at("/findings/0/severity").asText()).isEqualTo("stop");
        assertThat(json.get("advice").asText()).contains("safety data sheet");
    }

    /** The rule of a library and the caution ask for the same signature: one answer in the job is enough for both. */
    @Test
    void nobodySignsTwiceForHighVoltage() throws IOException {
        plan(HIGH_VOLTAGE, "electrics", "contact-wash");
        assertThat(json("plan", "quote").get("findings"))
                .extracting(f -> f.get("code").asText())
                .containsExactly("rule-forbids");
        acknowledge("high-voltage");
        assertThat(answer("plan", "quote").status()).isEqualTo(ExitStatus.FINE);
    }

    @Test
    void aShopsOwnPairIsKeptApart() throws IOException {
        plan(JACK.replace("lifting", "heat"), "contact-wash", "jack");
        assertThat(answer("plan", "prove").status()).isEqualTo(ExitStatus.FINE);
        Path file = shop.resolve("shop.json");
        String own = """
                "safety": {
                  "light": {"bays": {"wash": 250}},
                  "apart": [
                    {"id": "soap-and-heat", "first": ["item:shampoo"], "second": ["risk:heat"], "within": "day", "why": "it foams"},
                    {"id": "lithium-and-heat", "severity": "off", "why": "no packs in this shop"}
                  ]
                },
                "film":""";
        Files.writeString(file, Files.readString(file).replace("\"film\":", own));
        Desk.Answer proof = answer("plan", "prove");
        assertThat(proof.out() + proof.err())
                .contains("Jack up comes into Wash bay", "Shampoo", "(it foams)")
                .contains("250 lx in Wash bay, such work wants 300 lx");
        assertThat(proof.status()).isEqualTo(ExitStatus.STOPPED);
        Files.writeString(file, Files.readString(file).replace(", \"why\": \"no packs in this shop\"", ""));
        assertThat(answer("plan", "prove").err()).contains("drops what protects people", "say the reason in why");
        Files.writeString(file, Files.readString(file).replace("item:shampoo", "shampoo"));
        assertThat(answer("plan", "prove").err()).contains("a selector such as \"group:acid\"");
    }

    @Test
    void aDayOfTheShopIsToldOverAllItsJobs() throws IOException {
        plan(COMPOUND, "contact-wash", "compound");
        Path page = folder.resolve("day.html");
        Desk.Answer day = desk.answerTo(
                "plan",
                "safety",
                "--day",
                "2026-12-07",
                "--language",
                "de",
                "--html",
                page.toString(),
                shop.toString());
        assertThat(day.status()).as(day.err()).isEqualTo(ExitStatus.STOPPED);
        assertThat(day.out()).contains("Small saloon", "Hasty saloon", "one person for all of them", "437");
        assertThat(Files.readString(page))
                .contains("Gefahrenblatt des Tages", "Montag, 7. Dezember 2026", "Verursacht schwere Augenreizung.")
                .contains("nimmt am 07.12.2026 über acht Stunden")
                .doesNotContain("takes in");
        JsonNode json = json("plan", "safety", "--day", "2026-12-07");
        assertThat(json.get("jobs")).extracting(JsonNode::asText).containsExactly("hasty-saloon", "small-saloon");
        assertThat(json.get("tasks")).hasSize(4);
        Desk.Answer free = answer("plan", "safety", "--day", "2026-12-09");
        assertThat(free.status()).isEqualTo(ExitStatus.FINE);
        assertThat(free.out()).isEqualTo("Nothing is planned on 2026-12-09\n");
        assertThat(answer("plan", "safety", "--day", "2026-12-07", "--apply", "1")
                        .status())
                .isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer("plan", "safety", "--day", "monday").status()).isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void aSheetIsWrittenAsPageAndAsPdf() throws IOException {
        Path page = folder.resolve("sheet.html");
        Path pdf = folder.resolve("sheet.pdf");
        Desk.Answer told = answer("plan", "safety", "--html", page.toString(), "--pdf", pdf.toString());
        assertThat(told.status()).as(told.err()).isEqualTo(ExitStatus.FINE);
        assertThat(Files.readString(page))
                .contains("H319 Causes serious eye irritation.", "IF IN EYES: Rinse cautiously", "CC BY 4.0");
        assertThat(Files.size(pdf)).isGreaterThan(5000);
    }

    /** What nothing in the job bears would protect nobody, and nobody would notice. */
    @Test
    void anAnswerOrAStepOfSafetyThatNamesNothingIsTold() throws IOException {
        plan(JACK, "jack", "contact-wash");
        acknowledge("jax");
        String file = Files.readString(job.resolve("job.json"));
        Files.writeString(
                job.resolve("job.json"),
                file.replace("\"price\":", "\"safety\": {\"steps\": {\"s12\": {\"people\": 2}}},\n  \"price\":"));
        Desk.Answer proof = answer("plan", "prove");
        assertThat(proof.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(proof.err())
                .contains("acknowledgements[0].id: 'jax' is no caution; there are 'airbag', 'high-voltage'")
                .contains("safety.steps.s12: the plan has no step 's12'");
    }

    @Test
    void aFaultInThePriceListIsNotToldAgainAtEveryItem() throws IOException {
        Path items = shop.resolve("items.json");
        Files.writeString(items, Files.readString(items).replaceFirst("\"H[0-9]+\"", "\"h302\""));
        Desk.Answer proof = answer("plan", "prove");
        assertThat(proof.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(proof.err()).contains("give a code such as \"H319\"").doesNotContain("no item is called");
    }

    @Test
    void whatANamedPersonAnswersForStaysOnTheQuote() throws IOException {
        plan(JACK, "jack", "contact-wash");
        assertThat(json("plan", "quote").get("quoted").asBoolean()).isFalse();
        acknowledge("jacks");
        Desk.Answer quote = answer("plan", "quote");
        assertThat(quote.status()).as(quote.out() + quote.err()).isEqualTo(ExitStatus.FINE);
        assertThat(quote.out()).contains("Maren Thistlewick answers for jacks and stands since 2026-12-07 08:00");
        assertThat(answer("plan", "prove").out()).contains("Maren Thistlewick answers for jacks and stands");
        assertThat(json("plan", "quote").get("findings"))
                .extracting(f -> f.get("code").asText())
                .contains("acknowledged");
    }
}
