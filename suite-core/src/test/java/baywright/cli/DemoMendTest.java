package baywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's job that is planned wrong, with the library as it ships. */
class DemoMendTest {

    private static final Path HOME = Path.of("..");

    @TempDir
    private Path folder;

    @Test
    void theHurriedJobIsMended() throws IOException {
        copy(HOME.resolve("demo/millrace-works"), folder);
        copy(HOME.resolve("stage-scripts"), folder.resolve("stages"));
        Files.move(folder.resolve("stages/items.json"), folder.resolve("items.json"));
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

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                Files.createDirectories(target.getParent());
                Files.copy(path, target);
            }
        }
    }
}
