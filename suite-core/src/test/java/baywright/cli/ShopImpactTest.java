package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other stage scripts would make of the jobs of a small shop, on the command line. */
class ShopImpactTest {

    private static final Path HOME =
            Path.of("src/test/resources/baywright/cli/home").toAbsolutePath();

    @TempDir
    private static Path folder;

    private static Desk desk;
    private static String shop;

    @BeforeAll
    static void copyTheDemo() {
        desk = new Desk(folder.resolve("settings"), HOME);
        desk.answerTo("demo", "--no-window", folder.resolve("demo").toString());
        shop = folder.resolve("demo/corner-shop").toString();
        desk.answerTo("plan", "quote", "--keep", shop + "/jobs/small-saloon");
    }

    /** The shipped scripts with one line of one of them otherwise. */
    private static String scripts(String name, String file, String line, String then) throws IOException {
        Path to = folder.resolve(name);
        Path from = HOME.resolve("stage-scripts");
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                Files.createDirectories(target.getParent());
                Files.copy(path, target);
            }
        }
        String text = Files.readString(to.resolve(file));
        assertThat(text).contains(line);
        Files.writeString(to.resolve(file), text.replace(line, then));
        return to.toString();
    }

    /**
     * By hand: washing 5 m² takes 7.5 min in place of 5, which at 60 an hour is 2.50 more; with 20 % tax 3.00, so that 35.70
     * become 38.70.
     */
    @Test
    void aLongerStageCostsWhatItsMinutesCost() throws Exception {
        String other = scripts(
                "slower",
                "wash/contact-wash.groovy",
                "attended 1.min, 1.min, 1.min",
                "attended 1.5.min, 1.5.min, 1.5.min");
        Desk.Answer answer = desk.answerTo("shop", "impact", "--json", shop, "--with", other);
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.FINE);
        JsonNode told = new ObjectMapper().readTree(answer.out());
        assertThat(told.at("/changes/0/id").asText()).isEqualTo("contact-wash");
        assertThat(told.at("/jobs"))
                .extracting(j -> j.get("job").asText())
                .containsExactly("hasty-saloon", "small-saloon");
        JsonNode job = told.at("/jobs/1");
        assertThat(job.at("/now/price").decimalValue()).isEqualByComparingTo("35.70");
        assertThat(job.at("/then/price").decimalValue()).isEqualByComparingTo("38.70");
        assertThat(job.at("/causes/0/id").asText()).isEqualTo("contact-wash");
        assertThat(job.at("/causes/0/price").decimalValue()).isEqualByComparingTo("3.00");
        assertThat(job.at("/causes/0/attendedMinutes").decimalValue()).isEqualByComparingTo("2.5");
        assertThat(job.at("/quote").asText()).endsWith("-001-v1");
        assertThat(told.at("/untouched").asInt() + told.at("/same").asInt()).isZero();
    }

    /** The same change brought by a pack comes to the same figures; what is undecided is not weighed. */
    @Test
    void aPackIsWeighedBeforeItIsTaken() throws Exception {
        desk.answerTo("demo", "--no-window", folder.resolve("other").toString());
        Path other = folder.resolve("other/corner-shop");
        Path script = other.resolve("stages/wash/contact-wash.groovy");
        Files.writeString(
                script,
                Files.readString(script).replace("attended 1.min, 1.min, 1.min", "attended 1.5.min, 1.5.min, 1.5.min"));
        String pack = folder.resolve("slower.pack").toString();
        Desk.Answer made = desk.answerTo(
                "pack",
                "make",
                other.toString(),
                "--out",
                pack,
                "--id",
                "slower",
                "--version",
                "1.0.0",
                "--who",
                "Ines",
                "--why",
                "measured anew",
                "--licence",
                "Apache-2.0",
                "--unsigned");
        assertThat(made.status()).as(made.err()).isEqualTo(ExitStatus.FINE);

        Desk.Answer open = desk.answerTo("--json", "pack", "compare", "--impact", shop, pack);
        assertThat(open.status()).as(open.err()).isEqualTo(ExitStatus.STOPPED);
        assertThat(new ObjectMapper().readTree(open.out()).has("impact")).isFalse();

        Desk.Answer decided = desk.answerTo("--json", "pack", "compare", "--impact", shop, pack, "--theirs", "all");
        assertThat(decided.status()).as(decided.err()).isEqualTo(ExitStatus.FINE);
        JsonNode job = new ObjectMapper().readTree(decided.out()).at("/impact/jobs/1");
        assertThat(job.at("/job").asText()).isEqualTo("small-saloon");
        assertThat(job.at("/now/price").decimalValue()).isEqualByComparingTo("35.70");
        assertThat(job.at("/then/price").decimalValue()).isEqualByComparingTo("38.70");
        assertThat(desk.answerTo("pack", "compare", "--impact", shop, pack, "--theirs", "all")
                        .out())
                .contains("contact-wash", "38.70");
    }

    @Test
    void aJobThatWouldStopIsTheExitStatusAndIsToldWhy() throws Exception {
        String other = scripts("no-wash", "wash/contact-wash.groovy", "sets 'washed'", "clears 'washed'");
        Desk.Answer answer = desk.answerTo("shop", "impact", shop, "--with", other);
        assertThat(answer.status()).as(answer.err()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.out().replaceAll("\\s+", " "))
                .contains(
                        "stage 'contact-wash' (Contact wash)",
                        "What newly stops Small saloon",
                        "need-unmet",
                        "1 job that proves would stop")
                .contains("would now differ")
                .doesNotContain("{");
        assertThat(answer.out().lines()).allMatch(line -> line.length() <= Console.WIDTH);
    }

    @Test
    void aCommentChangesNothing() throws Exception {
        String other = scripts("comment", "sealant.groovy", "stage(", "// once more\nstage(");
        Desk.Answer answer = desk.answerTo("shop", "impact", shop, "--with", other);
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out()).contains("nothing would change");
    }

    @Test
    void scriptsThatCannotBeUsedAreToldAndNothingElse() throws Exception {
        String broken = scripts("broken", "sealant.groovy", "sets 'sealed'", "sets 'seeled'");
        Desk.Answer answer = desk.answerTo("shop", "impact", shop, "--with", broken);
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err()).contains("sealant.groovy:8:", "'seeled'");

        Desk.Answer nowhere = desk.answerTo(
                "shop", "impact", shop, "--with", folder.resolve("nowhere").toString());
        assertThat(nowhere.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(nowhere.err().lines()).hasSize(1);
    }
}
