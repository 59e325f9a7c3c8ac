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

    /** By hand: detailing at 60 an hour is 35.70 for the saloon; at 66, 28.50 × 1.1 + 1.25 = 32.60 net, 39.12 with tax. */
    @Test
    void aKeptQuoteStaysAndSaysWhatIsOtherwise() throws Exception {
        desk.answerTo("demo", "--no-window", out("other"));
        Path shop = folder.resolve("other/corner-shop/shop.json");
        String job = folder.resolve("other/corner-shop/jobs/small-saloon").toString();
        assertThat(desk.answerTo("plan", "quote", "--kept", "v1", job).err()).contains("--keep");

        assertThat(desk.answerTo("plan", "quote", "--keep", job).out()).contains("Kept as quote 2026-001, version 1");
        assertThat(desk.answerTo("plan", "quote", "--kept", "v1", job).out())
                .contains("GBP 35.70", "Nothing that it rests on has changed", "Today it would be GBP 35.70 as well");

        String before = Files.readString(shop);
        Files.writeString(shop, before.replaceFirst("(\"charge\":\\s*\\{\\s*\"[a-z]+\":\\s*)60", "$166"));
        assertThat(Files.readString(shop)).isNotEqualTo(before);
        Desk.Answer later = desk.answerTo("plan", "quote", "--kept", "2026-001", "--html", out("kept-v1.html"), job);

        assertThat(later.status()).isEqualTo(ExitStatus.FINE);
        assertThat(later.out()).contains("GBP 35.70", "rates.charge.", "Today it would be GBP 39.12, GBP 3.42 more.");
        assertThat(Files.readString(Path.of(out("kept-v1.html")))).contains("Quote 2026-001, version 1", "£35.70");
        assertThat(desk.answerTo("plan", "quote", "--kept", "v7", job).err()).contains("'v7'", "2026-001-v1");
    }
}
