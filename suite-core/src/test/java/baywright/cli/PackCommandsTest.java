package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.pack.KeyFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packs from the command line: made at one site, judged at another. */
class PackCommandsTest {

    private static final String STATES = """
            state 'loose-soil', means: 'loose dirt', opposite: 'washed'
            state 'washed', means: 'contact-washed, no loose grit'
            surface 'paint', means: 'painted panels'
            family 'wash', title: 'Washing', setUp: 10.min
            family 'finish', title: 'Finish'
            """;

    private static final String RINSE = """
            stage('rinse') {
                title 'Rinse'
                family 'wash'
                worksOn 'paint'
                before { needs 'loose-soil', why: 'else there is nothing to rinse off' }
                after { clears 'loose-soil' }
                time { attended 3.min, 4.min, 8.min }
                uses { item 'shampoo', 30.ml }
                hazards { from 'shampoo' }
            }
            """;

    private static final String GLOSS = """
            stage('gloss') {
                title 'Gloss'
                family 'finish'
                worksOn 'paint'
                before { needs 'washed', why: 'grit scratches' }
                time { attended 3.min, 4.min, 8.min }
            }
            """;

    @TempDir
    private Path folder;

    private Desk desk;
    private Path quay;
    private Path pack;

    @BeforeEach
    void openTwoSites() throws IOException {
        desk = new Desk(folder.resolve("settings"), folder);
        pack = folder.resolve("wash.pack");
        quay = folder.resolve("quay");
        Files.createDirectories(quay.resolve("stages"));
        Files.copy(Path.of("..", "demo", "saltmarsh-quay", "shop.json"), quay.resolve("shop.json"));
        Files.writeString(quay.resolve("items.json"), """
                {"schema": "baywright/items/1", "currency": "%s", "items": [
                  {"id": "shampoo", "title": "Shampoo", "pack": "5000 ml", "price": 29.17, "hazards": ["H319"]}]}
                """.formatted(currency()));
        Files.writeString(quay.resolve("stages/states.groovy"), STATES);
        Files.writeString(quay.resolve("stages/rinse.groovy"), RINSE);
        Files.writeString(quay.resolve("stages/gloss.groovy"), GLOSS);
        Files.writeString(quay.resolve("stages/shapes.json"), "{\"schema\": \"baywright/shapes/1\", \"shapes\": []}");
    }

    private String currency() throws IOException {
        return new ObjectMapper()
                .readTree(quay.resolve("shop.json").toFile())
                .get("currency")
                .asText();
    }

    private Desk.Answer make(String... more) {
        String[] words = {
            "pack",
            "make",
            quay.toString(),
            "--out",
            pack.toString(),
            "--id",
            "gentle-wash",
            "--version",
            "1.2.0",
            "--why",
            "softer paint",
            "--licence",
            "CC-BY-4.0"
        };
        return desk.answerTo(
                Stream.concat(Arrays.stream(words), Arrays.stream(more)).toArray(String[]::new));
    }

    private static JsonNode json(Desk.Answer answer) throws IOException {
        return new ObjectMapper().readTree(answer.out());
    }

    @Test
    void aSignedPackIsKnownOnceItsKeyIsOnTheList() throws IOException {
        assertThat(desk.answerTo("pack", "key", "new", "saltmarsh-quay").status())
                .isEqualTo(ExitStatus.FINE);
        Desk.Answer made = make("--family", "wash");
        assertThat(made.err()).isEmpty();
        assertThat(made.status()).isEqualTo(ExitStatus.FINE);
        assertThat(made.out()).contains("gentle-wash@1.2.0", "3 files, 2 scripts, 1 item without price");

        Desk.Answer unknown = desk.answerTo("pack", "verify", pack.toString(), "--in", quay.toString());
        assertThat(unknown.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(unknown.err()).startsWith("baywright: wash.pack: the key ").contains("is not on the list of trust");
        assertThat(unknown.err().lines()).hasSize(1);

        String key = new KeyFolder(folder.resolve("settings"))
                .read("saltmarsh-quay")
                .signer()
                .toString();
        assertThat(desk.answerTo("pack", "trust", "add", quay.toString(), "The Quay", key, "--by", "Ines")
                        .status())
                .isEqualTo(ExitStatus.FINE);
        Desk.Answer known = desk.answerTo("pack", "verify", pack.toString(), "--in", quay.toString());
        assertThat(known.status()).isEqualTo(ExitStatus.FINE);
        assertThat(known.out())
                .contains("Signed by The Quay, on the list of trust since 2026-12-07, put there by Ines.")
                .endsWith("Nothing stands against it.\n");
        assertThat(desk.answerTo("pack", "trust", "list", quay.toString()).out())
                .contains("The Quay", "2026-12-07");
        assertThat(desk.answerTo("pack", "trust", "remove", quay.toString(), "The Quay")
                        .status())
                .isEqualTo(ExitStatus.FINE);
        assertThat(desk.answerTo("pack", "trust", "list", quay.toString()).out())
                .startsWith("Nobody's packs are taken yet");
    }

    @Test
    void anUnsignedPackNeedsSomebodyWhoAnswersForIt() throws IOException {
        assertThat(make("--unsigned").status()).isEqualTo(ExitStatus.FINE);

        Desk.Answer refused = desk.answerTo("pack", "verify", pack.toString(), "--in", quay.toString());
        assertThat(refused.status()).isEqualTo(ExitStatus.STOPPED);
        Desk.Answer accepted = desk.answerTo(
                "pack", "verify", pack.toString(), "--in", quay.toString(), "--accept-unknown", "Ines: read it all");
        assertThat(accepted.status()).isEqualTo(ExitStatus.FINE);
        assertThat(accepted.out()).contains("Ines answers for it: read it all");
        Desk.Answer nobody = desk.answerTo("pack", "verify", pack.toString(), "--accept-unknown", "because");
        assertThat(nobody.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(json(desk.answerTo("pack", "verify", pack.toString(), "--in", quay.toString(), "--json"))
                        .path("standing")
                        .asText())
                .isEqualTo("unsigned");
    }

    @Test
    void withoutAKeyNothingIsWritten() {
        Desk.Answer answer = make();
        assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(answer.err())
                .isEqualTo("baywright: no key is called as the workspace's shop; make one with 'baywright pack"
                        + " key new', name one with --key, or say --unsigned\n");
        assertThat(pack).doesNotExist();
    }

    @Test
    void aFileThatIsThereIsNotOverwrittenUnasked() throws IOException {
        Files.writeString(pack, "mine");
        assertThat(make("--unsigned").status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(pack).hasContent("mine");
        assertThat(make("--unsigned", "--force").status()).isEqualTo(ExitStatus.FINE);
    }

    @Test
    void scriptsWithErrorsMakeNoPack() throws IOException {
        Files.writeString(quay.resolve("stages/rinse.groovy"), RINSE.replace("'wash'", "'wahs'"));
        Desk.Answer answer = make("--unsigned");
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.err()).contains("no family is called 'wahs'", "Nothing was written: 1 error");
        assertThat(pack).doesNotExist();
    }

    @Test
    void theFolderHoldsTheSamePack() throws IOException {
        make("--unsigned");
        pack = folder.resolve("wash");
        assertThat(make("--unsigned", "--as-folder").status()).isEqualTo(ExitStatus.FINE);

        assertThat(json(desk.answerTo("pack", "verify", pack.toString(), "--json"))
                        .path("hash"))
                .isEqualTo(json(desk.answerTo(
                                "pack", "verify", folder.resolve("wash.pack").toString(), "--json"))
                        .path("hash"));
    }

    @Test
    void aTamperedPackFailsItsCheckAndAnotherFileIsBadInput() throws IOException {
        make("--unsigned");
        byte[] bytes = Files.readAllBytes(pack);
        bytes[bytes.length / 2] ^= 1;
        Files.write(pack, bytes);

        Desk.Answer tampered = desk.answerTo("pack", "verify", pack.toString());
        assertThat(tampered.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(tampered.err().lines()).hasSize(1);
        assertThat(tampered.err()).startsWith("baywright: wash.pack: ");
        JsonNode told = json(desk.answerTo("pack", "verify", pack.toString(), "--json"));
        assertThat(told.path("ok").asBoolean(true)).isFalse();
        assertThat(told.path("refusal").asText()).isNotEmpty();

        assertThat(desk.answerTo("pack", "verify", quay.resolve("shop.json").toString())
                        .status())
                .isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(desk.answerTo("pack", "verify", folder.resolve("none").toString())
                        .status())
                .isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void aPackThatIsNeededMustBeThere() {
        make("--unsigned", "--needs", "shop-basics ^1.0.0");
        Desk.Answer answer = desk.answerTo("pack", "verify", pack.toString());
        assertThat(answer.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(answer.err())
                .isEqualTo("baywright: gentle-wash@1.2.0: the pack needs shop-basics ^1.0.0, and there is no"
                        + " such pack; get it as well\n");
    }

    @Test
    void whatIsNotAsMeantIsToldByItsOption() {
        assertThat(make("--unsigned", "--needs", "shop-basics").err())
                .startsWith("baywright: --needs: 'shop-basics' does not");
        assertThat(desk.answerTo("pack", "trust", "add", quay.toString(), "Mill", "abc", "--by", "Ines")
                        .err())
                .startsWith("baywright: KEY: this is no public key");
        assertThat(desk.answerTo("pack", "key", "new", "The Quay").err())
                .startsWith("baywright: the name of a key is an id");
        assertThat(make("--unsigned", "--family", "wahs").err())
                .isEqualTo("baywright: no family of the workspace is called 'wahs'; nearest is 'wash'\n");
    }

    @Test
    void keysAreShownByTheirPublicHalves() throws IOException {
        assertThat(desk.answerTo("pack", "key", "show").out()).startsWith("There is no key yet");
        desk.answerTo("pack", "key", "new", "mill");
        JsonNode shown = json(desk.answerTo("pack", "key", "show", "--json"));
        assertThat(shown).hasSize(1);
        assertThat(shown.get(0).path("site").asText()).isEqualTo("mill");
        assertThat(desk.answerTo("pack", "key", "show").out())
                .contains(
                        shown.get(0).path("publicKey").asText(),
                        shown.get(0).path("fingerprint").asText());
    }
}
