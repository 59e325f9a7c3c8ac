package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.pack.PackFile;
import baywright.share.TwoSites;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackTakingTest {

    private static final String WORD = "Ines: looked through every script";

    @TempDir
    Path folder;

    private TwoSites two;
    private Desk desk;

    @BeforeEach
    void sitDown() {
        two = TwoSites.in(folder);
        desk = new Desk(folder.resolve("settings"), folder);
    }

    private String file(String version) throws IOException {
        Path file = folder.resolve("gentle-wash-" + version);
        PackFile.write(two.pack(version), file);
        return file.toString();
    }

    /** Compare, take, a clash, a decision, the record, one step back. */
    @Test
    void aPackIsComparedTakenAndTakenBack() throws IOException {
        String site = two.taker().toString();
        String first = file("1.0.0");
        Desk.Answer compared = desk.answerTo("pack", "compare", site, first);
        assertThat(compared.err()).isEmpty();
        assertThat(compared.status()).isEqualTo(ExitStatus.FINE);
        assertThat(compared.out()).contains("new stage rinse", "Nobody has signed it.");
        Desk.Answer unsigned = desk.answerTo("pack", "take", site, first);
        assertThat(unsigned.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(unsigned.err().lines()).hasSize(1);
        assertThat(desk.answerTo("pack", "take", site, first, "--accept-unknown", WORD)
                        .status())
                .isEqualTo(ExitStatus.FINE);

        two.have(TwoSites.WASH, two.had(TwoSites.WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        two.give(TwoSites.WASH, TwoSites.stage("rinse", 4) + TwoSites.stage("foam", 5));
        String second = file("1.1.0");
        Desk.Answer clash = desk.answerTo("pack", "take", site, second, "--accept-unknown", WORD);
        assertThat(clash.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(clash.out())
                .contains(
                        "undecided stage rinse/time/attended per vehicle",
                        "ours: attended 30.min, 40.min, 50.min",
                        "theirs: attended 4.min, 5.min, 6.min",
                        "Not taken; nothing was written.");
        Desk.Answer taken = desk.answerTo(
                "--json", "pack", "take", site, second, "--accept-unknown", WORD, "--theirs", "stage rinse");
        assertThat(taken.status()).isEqualTo(ExitStatus.FINE);
        assertThat(taken.out()).contains("\"decided\" : \"theirs\"", "\"version\" : \"1.1.0\"");
        assertThat(two.had(TwoSites.WASH)).isEqualTo(two.given(TwoSites.WASH));
        assertThat(desk.answerTo("pack", "list", site).out()).contains("gentle-wash", "1.1.0", WORD);

        Desk.Answer undone = desk.answerTo("pack", "undo", site);
        assertThat(undone.status()).isEqualTo(ExitStatus.FINE);
        assertThat(undone.out()).contains("1.0.0");
        assertThat(two.had(TwoSites.WASH)).contains("30.min, 40.min, 50.min");
        assertThat(desk.answerTo("pack", "undo", site).status()).isEqualTo(ExitStatus.BAD_INPUT);
    }

    @Test
    void whatCannotBeUsedIsOneLine() throws IOException {
        String site = two.taker().toString();
        String pack = file("1.0.0");
        Files.writeString(folder.resolve("no-pack"), "nothing of the kind");
        for (Desk.Answer answer : new Desk.Answer[] {
            desk.answerTo("pack", "compare", site, folder.resolve("no-pack").toString()),
            desk.answerTo("pack", "compare", folder.resolve("nowhere").toString(), pack),
            desk.answerTo("pack", "take", site, pack, "--only", "stage rinze"),
            desk.answerTo("pack", "take", site, pack, "--accept-unknown", "yes"),
            desk.answerTo("pack", "take", site, pack, "--ours", "rinse", "--theirs", "rinse"),
        }) {
            assertThat(answer.status()).isEqualTo(ExitStatus.BAD_INPUT);
            assertThat(answer.err().lines()).hasSize(1).allMatch(line -> line.startsWith("baywright: "));
        }
        assertThat(desk.answerTo("pack", "list", site).out()).isEqualTo("No packs have been taken.\n");
    }
}
