package baywright.share;

import static baywright.share.TwoSites.WASH;
import static baywright.share.TwoSites.WORDS;
import static baywright.share.TwoSites.stage;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.pack.Consent;
import baywright.pack.Pack;
import baywright.site.OpenShop;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reader that began before a pack was taken has all of the old files or all of the new ones. */
class ReadingWhileTakingTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-07T07:00:00Z"), ZoneOffset.UTC);
    private static final Optional<Consent> YES = Consent.of("Ines: looked through every script");

    @TempDir
    Path folder;

    private TwoSites two;
    private Pack old;
    private Pack later;

    @BeforeEach
    void open() {
        two = TwoSites.in(folder);
        old = two.pack("1.0.0");
        two.give(WORDS, two.given(WORDS).replace("carries no dirt", "carries no dirt at all"));
        two.give(WASH, stage("rinse", 4) + stage("foam", 5));
        later = two.pack("1.1.0");
        two.taking(old, Choice.ALL).take(YES, CLOCK);
    }

    private void takeLater() {
        two.taking(later, Choice.ALL).take(YES, CLOCK);
    }

    private static boolean isWhole(String words, String wash) {
        return words.contains("at all") == wash.contains("4.min, 5.min, 6.min");
    }

    @Test
    void whatWasReadHalfBeforeAndHalfAfterIsReadAgain() {
        List<String> readings = new ArrayList<>();
        String read = Workspace.together(two.taker(), workspace -> {
            String words = two.had(WORDS);
            if (readings.isEmpty()) {
                takeLater();
            }
            readings.add(words);
            assertThat(readings.size() > 1 || !isWhole(words, two.had(WASH)))
                    .as("the first reading is mixed")
                    .isTrue();
            return words + two.had(WASH);
        });
        assertThat(readings).hasSize(2);
        assertThat(isWhole(read, read)).isTrue();
    }

    /** What a mixed reading says is wrong is wrong with neither state. */
    @Test
    void anErrorOfAMixedReadingIsNotTold() {
        List<String> readings = new ArrayList<>();
        String read = Workspace.together(two.taker(), workspace -> {
            readings.add("one");
            if (readings.size() == 1) {
                takeLater();
                throw new WorkspaceException("half of it");
            }
            return "whole";
        });
        assertThat(read).isEqualTo("whole");
        assertThatThrownBy(() -> Workspace.together(two.taker(), workspace -> {
                    throw new WorkspaceException("wrong in itself");
                }))
                .hasMessage("wrong in itself");
    }

    @Test
    void aWorkspaceThatNeverRestsIsSaidToBeSo() {
        assertThatThrownBy(() -> Workspace.together(two.taker(), workspace -> {
                    if (two.had(WORDS).contains("at all")) {
                        TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS);
                    } else {
                        takeLater();
                    }
                    return "";
                }))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("changes the workspace again and again");
    }

    @Test
    void shopsThatAreOpenedWhilePacksComeAndGoAreWhole() throws Exception {
        ExecutorService other = Executors.newSingleThreadExecutor();
        try {
            Future<?> writer = other.submit(() -> {
                for (int i = 0; i < 5; i++) {
                    takeLater();
                    TakingBack.takeBack(Workspace.open(two.taker()), DemoSite.SCRIPTS);
                }
            });
            int opened = 0;
            while (!writer.isDone() || opened == 0) {
                try {
                    OpenShop shop = OpenShop.open(two.taker(), CLOCK, DemoSite.SCRIPTS);
                    assertThat(isWhole(shop.texts().get(WORDS), shop.texts().get(WASH)))
                            .isTrue();
                    opened++;
                } catch (WorkspaceException e) {
                    // on a machine at its limit the writer may take longer than a reader waits; that is refused, never
                    // mixed
                    assertThat(e).hasMessageContaining("another program");
                }
            }
            writer.get();
        } finally {
            other.shutdownNow();
        }
    }
}
