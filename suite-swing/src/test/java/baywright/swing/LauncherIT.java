package baywright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher of the repository as a process of its own, on what this build has packed. */
class LauncherIT {

    private static final Path LAUNCHER =
            Path.of("..", "baywright").toAbsolutePath().normalize();

    @BeforeAll
    static void onlyWhereThereIsAShell() {
        assumeThat(File.separatorChar).isEqualTo('/');
    }

    @Test
    void theVersionComesFromTheBuild() throws Exception {
        assertThat(start("--version").lines()).singleElement().asString().matches("Baywright \\d+\\.\\d+\\.\\d+.*");
    }

    @Test
    void theExitStatusComesThrough() throws Exception {
        assertThat(process("no-such-command").waitFor()).isEqualTo(2);
    }

    @Test
    void theDemoRunsWithoutAWindow(@TempDir Path folder) throws Exception {
        assertThat(start("demo", "--no-window", folder.toString()))
                .contains("Copied the demo", "millrace-works/green-estate", "GBP 1,030.53");
    }

    @Test
    void aTooOldJavaIsNamed() throws Exception {
        Path jdk = oldJdk();
        ProcessBuilder builder = builder("--version");
        builder.environment().put("JAVA_HOME", jdk.toString());
        Process process = builder.start();
        assertThat(text(process))
                .startsWith("baywright: needs Java 17 or later, but " + jdk.resolve("bin/java") + " is version 11.0.2");
        assertThat(process.waitFor()).isEqualTo(3);
    }

    private static Path oldJdk() throws IOException {
        Path jdk = Files.createTempDirectory("jdk11");
        Path java = Files.createDirectories(jdk.resolve("bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2019-01-15' >&2\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        return jdk;
    }

    private static String start(String... words) throws Exception {
        Process process = process(words);
        String text = text(process);
        assertThat(process.waitFor()).as(text).isZero();
        return text;
    }

    private static Process process(String... words) throws IOException {
        return builder(words).start();
    }

    private static ProcessBuilder builder(String... words) {
        List<String> command = new ArrayList<>(List.of(LAUNCHER.toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("BAYWRIGHT_BUILD", "never");
        return builder;
    }

    private static String text(Process process) throws Exception {
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        return text;
    }
}
