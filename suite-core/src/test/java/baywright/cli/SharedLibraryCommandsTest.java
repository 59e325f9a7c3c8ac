package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.share.TwoSites;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedLibraryCommandsTest {

    private static final String WORD = "Ines: looked through every script";

    @TempDir
    Path folder;

    private TwoSites two;
    private Desk desk;
    private String giver;
    private String taker;
    private Path remote;

    /** Both workspaces have the same shop, so that the one that takes says under which name it proposes. */
    @BeforeEach
    void sitDown() throws IOException {
        two = TwoSites.in(folder);
        desk = new Desk(folder.resolve("settings"), folder);
        giver = folder.resolve("giver").toString();
        taker = two.taker().toString();
        remote = folder.resolve("wash.git");
        Files.createDirectories(remote.resolve("objects"));
        Files.createDirectories(remote.resolve("refs/heads"));
        Files.writeString(remote.resolve("HEAD"), "ref: refs/heads/main\n");
        Files.writeString(remote.resolve("config"), "[core]\n\trepositoryformatversion = 0\n\tbare = true\n");
    }

    private Desk.Answer fine(String... words) {
        Desk.Answer answer = desk.answerTo(words);
        assertThat(answer.err()).isEmpty();
        assertThat(answer.status()).isEqualTo(ExitStatus.FINE);
        return answer;
    }

    private void begin() {
        assertThat(fine(
                                "pack",
                                "publish",
                                giver,
                                "--begin",
                                remote.toString(),
                                "--id",
                                "gentle-wash",
                                "--licence",
                                "CC-BY-4.0",
                                "--why",
                                "our washes",
                                "--unsigned")
                        .out())
                .contains("Begun with gentle-wash@1.0.0");
        fine("pack", "follow", taker, remote.toString(), "--site", "quay", "--accept-unknown", WORD);
        assertThat(fine("pack", "list", giver).out()).contains("gentle-wash");
        assertThat(fine("pack", "follow", giver).out()).contains("gentle-wash@1.0.0 is taken already");
    }

    @Test
    void aLibraryIsBegunFollowedProposedToAndAccepted() {
        begin();
        assertThat(fine("pack", "follow", taker).out()).contains("gentle-wash@1.0.0 is taken already");
        two.have(TwoSites.WASH, two.had(TwoSites.WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        assertThat(fine("pack", "publish", taker, "--compare").out())
                .contains("changed stage rinse", "3 / 4 / 5 min → 30 / 40 / 50 min");
        assertThat(fine("pack", "publish", taker, "--why", "softer paint", "--unsigned")
                        .out())
                .contains("Sent, as proposal of quay.");

        assertThat(fine("pack", "proposals", giver).out())
                .contains("quay  The Mill: softer paint", "changed stage rinse", "Nobody has signed it.");
        assertThat(fine("--json", "pack", "proposals", giver).out())
                .contains("\"site\" : \"quay\"", "\"next\" : \"1.0.1\"", "\"name\" : \"stage rinse\"");
        Desk.Answer unsigned = desk.answerTo("pack", "accept", giver, "quay", "--unsigned");
        assertThat(unsigned.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(unsigned.err().lines()).hasSize(1);
        assertThat(fine("pack", "accept", giver, "quay", "--unsigned", "--accept-unknown", WORD)
                        .out())
                .contains("Accepted as version 1.0.1.");
        assertThat(fine("pack", "proposals", giver).out()).contains("Nobody proposes anything.");
        assertThat(fine("pack", "follow", giver, "--compare").out()).contains("changed stage rinse");
        fine("pack", "follow", giver, "--accept-unknown", WORD);
        assertThat(two.given(TwoSites.WASH)).isEqualTo(two.had(TwoSites.WASH));
        assertThat(fine("pack", "undo", giver).out()).contains("1.0.0");
    }

    @Test
    void aClashStopsAndADeclinedProposalIsGone() {
        begin();
        two.have(TwoSites.WASH, two.had(TwoSites.WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        two.give(TwoSites.WASH, two.given(TwoSites.WASH).replace("3.min, 4.min, 5.min", "1.min, 2.min, 3.min"));
        fine("pack", "publish", taker, "--why", "slower", "--unsigned");
        fine("pack", "publish", giver, "--why", "quicker", "--unsigned");
        fine("pack", "accept", giver, "mill", "--unsigned", "--accept-unknown", WORD);
        Desk.Answer clash = desk.answerTo("pack", "accept", giver, "quay", "--unsigned", "--accept-unknown", WORD);
        assertThat(clash.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(clash.out())
                .contains("undecided stage rinse/time/attended per vehicle", "Not accepted; nothing was changed.");
        fine("pack", "decline", giver, "quay");
        assertThat(fine("pack", "proposals", giver).out()).contains("Nobody proposes anything.");
        Desk.Answer gone = desk.answerTo("pack", "accept", giver, "quay", "--unsigned");
        assertThat(gone.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(gone.err()).contains("no open proposal is of the site 'quay'");
    }

    @Test
    void withoutTheNetAProposalIsKeptAndSentLater() throws IOException {
        begin();
        two.have(TwoSites.WASH, two.had(TwoSites.WASH).replace("3.min, 4.min, 5.min", "30.min, 40.min, 50.min"));
        Path away = folder.resolve("away");
        Files.move(remote, away);
        Desk.Answer follow = desk.answerTo("pack", "follow", taker);
        assertThat(follow.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(follow.err().lines()).singleElement().asString().contains("there is no repository there");
        fine("pack", "follow", taker, "--offline");
        Desk.Answer kept = desk.answerTo("pack", "publish", taker, "--why", "slower", "--unsigned");
        assertThat(kept.status()).isEqualTo(ExitStatus.STOPPED);
        assertThat(kept.out()).contains("Kept, and sent with the next 'pack publish'");
        Files.move(away, remote);
        assertThat(fine("pack", "publish", taker, "--why", "slower", "--unsigned")
                        .out())
                .contains("Sent, as proposal of quay.");
    }

    @Test
    void whatCannotBeUsedIsOneLine() {
        for (String[] words : new String[][] {
            {"pack", "follow", taker},
            {"pack", "follow", taker, "ext::sh"},
            {"pack", "follow", taker, "http://example.org/x.git"},
            {"pack", "proposals", taker},
            {"pack", "publish", taker, "--begin", remote.toString()}
        }) {
            Desk.Answer answer = desk.answerTo(words);
            assertThat(answer.status()).as(String.join(" ", words)).isEqualTo(ExitStatus.BAD_INPUT);
            assertThat(answer.err().lines()).hasSize(1);
        }
        assertThat(desk.answerTo("pack", "follow", taker, remote.toString()).out())
                .contains("The repository is empty.");
    }
}
