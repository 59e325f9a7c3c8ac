package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents on the command line, with a shop of two stages. */
class QuoteFilesTest {

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

    private static String job(String name) {
        return folder.resolve("demo/corner-shop/jobs").resolve(name).toString();
    }

    private static String out(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void aFileThatIsThereIsNotOverwrittenUnasked() throws Exception {
        String file = out("kept.html");
        assertThat(desk.answerTo("plan", "quote", "--html", file, job("small-saloon"))
                        .status())
                .isEqualTo(ExitStatus.FINE);
        assertThat(Files.readString(Path.of(file))).contains("<h1>Quote</h1>", "£35.70");
        Files.writeString(Path.of(file), "mine");

        Desk.Answer refused = desk.answerTo("plan", "quote", "--html", file, job("small-saloon"));
        assertThat(refused.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("kept.html", "--force");
        assertThat(Path.of(file)).hasContent("mine");

        desk.answerTo("plan", "quote", "--html", file, "--force", "--language", "de", job("small-saloon"));
        assertThat(Files.readString(Path.of(file))).contains("<h1>Angebot</h1>", "35,70");
    }

    @Test
    void aRefusedPlanHasNoDocument() {
        Desk.Answer quote =
                desk.answerTo("plan", "quote", "--pdf", out("no.pdf"), "--csv", out("no.csv"), job("hasty-saloon"));
        Desk.Answer card = desk.answerTo("plan", "card", "--pdf", out("no.pdf"), job("hasty-saloon"));

        assertThat(quote.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(card.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(card.out()).contains("no job card");
        assertThat(Path.of(out("no.pdf"))).doesNotExist();
        assertThat(Path.of(out("no.csv"))).doesNotExist();
    }

    /** The price lines of the ledger add up to the net price, read back by an independent reader. */
    @Test
    void theCsvAddsUp() throws Exception {
        desk.answerTo("plan", "quote", "--csv", out("lines.csv"), job("small-saloon"));
        String text = Files.readString(Path.of(out("lines.csv")));
        BigDecimal net = BigDecimal.ZERO;
        for (CSVRecord line : CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))) {
            net = line.get("column").equals("price") ? net.add(new BigDecimal(line.get("amount"))) : net;
        }
        assertThat(text).contains("\r\n");
        assertThat(net).isEqualByComparingTo("29.75");
    }

    @Test
    void aLanguageWithoutTextsIsRefused() {
        Desk.Answer answer =
                desk.answerTo("plan", "quote", "--pdf", out("x.pdf"), "--language", "fr", job("small-saloon"));
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err()).contains("'fr'", "en, de");
        assertThat(desk.answerTo("plan", "card", job("small-saloon")).err()).contains("--pdf OUT");
    }
}
