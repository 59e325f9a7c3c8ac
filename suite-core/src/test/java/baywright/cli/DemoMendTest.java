package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's job that is planned wrong, with the library as it ships. */
class DemoMendTest {

    private static final Path HOME = Path.of("..");

    @TempDir
    private Path folder;

    @Test
    void theHurriedJobIsMended() throws IOException {
        DemoSite.copy("millrace-works", folder);
        String job = folder.resolve("jobs/hurried-hatch").toString();
        Desk.Answer answer = new Desk(folder.resolve("settings"), HOME)
                .answerTo("plan", "mend", "--seconds", "120", "--apply", "1", job);
        assertThat(answer.status()).as(answer.out() + answer.err()).isEqualTo(ExitStatus.FINE);
        assertThat(answer.out())
                .startsWith(
                        "Repair 1: 5 changes, 46 min more of hands-on work; price GBP 518.39, GBP 131.61 below the cap")
                .contains("move de-mask (s21) before panel wipe (s24)")
                .endsWith("the plan of 25 steps holds (no stop, 2 warnings, 1 note)\n");
    }
}
