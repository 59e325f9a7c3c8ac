package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.plan.Plan;
import baywright.plan.Step;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkspaceWriterTest {

    private static final Step DRY =
            new Step("s3", "towel-dry", List.of("vehicle"), Map.of(), Step.Priority.MUST, Optional.empty(), Map.of());

    @TempDir
    private Path folder;

    private Mill mill;

    @BeforeEach
    void copyTheFixture() {
        mill = Mill.in(folder);
    }

    private JobFile estate() {
        return mill.open().job("green-estate").orElseThrow();
    }

    private static Job withDrying(Job job) {
        List<Step> steps = new ArrayList<>(job.plan().steps());
        steps.add(1, DRY);
        return job.withPlan(new Plan(steps));
    }

    private JobFile save(JobFile file, Job changed) {
        return save(file, changed, Disk.REAL);
    }

    private JobFile save(JobFile file, Job changed, Disk disk) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open(), disk)) {
            return writer.save(file, changed);
        }
    }

    private JobFile addDrying(Disk disk) {
        return save(estate(), withDrying(estate().job().orElseThrow()), disk);
    }

    private List<Path> leftovers() throws IOException {
        try (Stream<Path> all = Files.walk(mill.root())) {
            return all.filter(AtomicFile::isLeftover).toList();
        }
    }

    @Test
    void aStepMoreIsOneLineMore() {
        List<String> before = mill.text(Mill.JOB).lines().toList();

        JobFile saved = addDrying(Disk.REAL);

        List<String> after = new ArrayList<>(mill.text(Mill.JOB).lines().toList());
        assertThat(after.remove(after.indexOf("    \"steps\": [") + 2))
                .isEqualTo("      {\"id\": \"s3\", \"stage\": \"towel-dry\", \"zones\": [\"vehicle\"]},");
        assertThat(after).isEqualTo(before);
        assertThat(mill.text(Mill.JOB)).endsWith("}\n");
        assertThat(saved.problems()).isEmpty();
        assertThat(saved.job().orElseThrow().plan().steps())
                .extracting(Step::id)
                .containsExactly("s1", "s3", "s2");
        assertThat(saved.job().orElseThrow().survey().zone("bonnet").readings()).hasSize(2);
    }

    @Test
    void whatTheProgramDoesNotKnowStaysWhereItWas() {
        mill.replace(Mill.JOB, "\"cap\": 850,", "\"mood\": { \"hurried\": [1.50, null] },\n  \"cap\": 850.00,")
                .replace(Mill.JOB, "\"id\": \"s2\",", "\"id\": \"s2\", \"asked by\": \"the son\",");

        addDrying(Disk.REAL);

        assertThat(mill.text(Mill.JOB))
                .containsSubsequence(
                        "\"wanted\"", "\"mood\": {", "\"hurried\": [1.50, null]", "\"cap\": 850.00", "\"rate\"")
                .containsSubsequence("\"s3\"", "\"s2\"", "\"asked by\": \"the son\"", "\"iron-removal\"");
    }

    @Test
    void aZoneOfWhichOnlyUnknownThingsAreSaidStays() {
        mill.replace(Mill.JOB, "\"boot-lid\": { \"unreadable\": true }", "\"roof\": { \"smell\": \"odd\" }");

        addDrying(Disk.REAL);

        assertThat(mill.text(Mill.JOB)).contains("\"roof\": { \"smell\": \"odd\" }");
    }

    @Test
    void savingWithoutAChangeTouchesNothing() {
        String strange = mill.text(Mill.JOB).replace("  ", "\t") + "\n\n";
        mill.write(Mill.JOB, strange);
        JobFile file = estate();

        assertThat(save(file, file.job().orElseThrow())).isSameAs(file);
        assertThat(mill.text(Mill.JOB)).isEqualTo(strange);
    }

    @Test
    void whatIsNotChangedStaysLetterByLetter() {
        mill.replace(Mill.JOB, "[\"no swirls\", \"clear lamps\"]", "[ \"no\\u0020swirls\",\n       \"clear lamps\" ]");

        addDrying(Disk.REAL);

        assertThat(mill.text(Mill.JOB))
                .contains("[ \"no\\u0020swirls\",\n       \"clear lamps\" ]")
                .contains("\"zones\": { \"boot-lid\": { \"substrate\"");
    }

    @Test
    void lineEndsStayThoseOfTheFile() {
        mill.write(Mill.JOB, mill.text(Mill.JOB).replace("\n", "\r\n"));

        addDrying(Disk.REAL);

        assertThat(mill.text(Mill.JOB).replace("\r\n", "")).doesNotContain("\n");
    }

    @Test
    void permissionsStay() throws IOException {
        Files.setPosixFilePermissions(mill.path(Mill.JOB), PosixFilePermissions.fromString("rw-rw-r--"));

        addDrying(Disk.REAL);

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(mill.path(Mill.JOB))))
                .isEqualTo("rw-rw-r--");
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Files.move(mill.path(Mill.JOB), mill.path("kept.json"));
        Files.createSymbolicLink(mill.path(Mill.JOB), mill.path("kept.json"));

        addDrying(Disk.REAL);

        assertThat(mill.path(Mill.JOB)).isSymbolicLink();
        assertThat(mill.text("kept.json")).contains("towel-dry");
    }

    @Test
    void someoneElsesChangeIsNotOverwritten() {
        JobFile file = estate();
        mill.replace(Mill.JOB, "\"cap\": 850", "\"cap\": 900");

        assertThatThrownBy(() -> save(file, withDrying(file.job().orElseThrow())))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("jobs/green-estate/job.json: not saved, someone else has changed the file since it was"
                        + " read; open the workspace again and repeat the change");
        assertThat(mill.text(Mill.JOB)).contains("\"cap\": 900").doesNotContain("towel-dry");
    }

    @Test
    void whatCouldNotBeReadBackIsNotSaved() {
        JobFile file = estate();
        Step bad = new Step("S 3", "dry", List.of(), Map.of(), Step.Priority.MUST, Optional.empty(), Map.of());
        String before = mill.text(Mill.JOB);

        assertThatThrownBy(() -> save(file, file.job().orElseThrow().withPlan(new Plan(List.of(bad)))))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith(
                        "jobs/green-estate/job.json: not saved, plan.steps[0].id: the text 'S 3' is no id");
        assertThat(mill.text(Mill.JOB)).isEqualTo(before);
    }

    @Test
    void aFileThatCouldNotBeReadIsNotOverwritten() {
        Job job = estate().job().orElseThrow();
        mill.write(Mill.JOB, "{");

        assertThatThrownBy(() -> save(estate(), job))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageContaining("the file could not be read; mend it");
        assertThat(mill.text(Mill.JOB)).isEqualTo("{");
    }

    @Test
    void everyStepOfASaveMayFailAndTheFileIsWhole() throws IOException {
        String old = mill.text(Mill.JOB);
        int steps = stepsOfASave();
        int refused = 0;
        for (int i = 0; i < steps; i++) {
            mill.write(Mill.JOB, old);
            FailingDisk disk = FailingDisk.after(i, new IOException("no luck"));
            try {
                addDrying(disk);
            } catch (WorkspaceException e) {
                refused++;
                assertThat(e)
                        .hasMessage("jobs/green-estate/job.json: not saved, no luck; the file is as it was before."
                                + " Check the disk and save again");
                assertThat(mill.text(Mill.JOB)).isEqualTo(old);
            }
            assertThat(leftovers()).isEmpty();
            assertThat(estate().job()).isPresent();
        }
        // Writing, permissions, forcing and exchanging refuse; a folder that cannot be forced does not.
        assertThat(refused).isEqualTo(4);
        assertThat(mill.text(Mill.JOB)).contains("towel-dry");
    }

    private int stepsOfASave() {
        FailingDisk counting = FailingDisk.after(Integer.MAX_VALUE, new IOException());
        addDrying(counting);
        return counting.asked();
    }

    @Test
    void thePowerMayGoAtEveryStepAndTheFileIsWhole() throws IOException {
        String old = mill.text(Mill.JOB);
        int steps = stepsOfASave();
        String fresh = mill.text(Mill.JOB);
        assertThat(steps).isEqualTo(5);
        for (int i = 0; i < steps; i++) {
            mill.write(Mill.JOB, old);
            FailingDisk disk = FailingDisk.powerCutAfter(i);

            assertThatThrownBy(() -> addDrying(disk)).isInstanceOf(FailingDisk.PowerCut.class);

            assertThat(mill.text(Mill.JOB)).isEqualTo(i < 4 ? old : fresh);
            assertThat(mill.open().problems()).isEmpty();
            WorkspaceWriter.open(mill.open()).close();
            assertThat(leftovers()).isEmpty();
        }
    }

    @Test
    void aFullDiskIsNamed() {
        FailingDisk full = FailingDisk.after(0, new FileSystemException("job.json", null, "No space left on device"));

        assertThatThrownBy(() -> addDrying(full))
                .hasMessage("jobs/green-estate/job.json: not saved, the disk is full; the file is as it was before."
                        + " Free some space and save again");
    }

    @Test
    void aReadOnlyFolderIsNamed() {
        FailingDisk closed = FailingDisk.after(0, new AccessDeniedException("job.json"));

        assertThatThrownBy(() -> addDrying(closed))
                .hasMessage("jobs/green-estate/job.json: not saved, the folder is read-only for this user; the file is"
                        + " as it was before. Change its permissions or copy the workspace");
    }

    @Test
    void aVanishedFolderIsNamed() throws IOException {
        JobFile file = estate();
        Files.move(mill.path("jobs/green-estate"), folder.resolve("elsewhere"));

        assertThatThrownBy(() -> save(file, withDrying(file.job().orElseThrow())))
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith("jobs/green-estate/job.json: not saved, the folder is gone;");
    }

    @Test
    void aWorkspaceThatVanishedCannotBeLocked() throws IOException {
        Workspace workspace = mill.open();
        Files.move(mill.root(), folder.resolve("elsewhere"));

        assertThatThrownBy(() -> WorkspaceWriter.open(workspace))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage("mill: the workspace cannot be written, the folder is gone; reading works all the same");
    }

    @Test
    void aSecondWriterOfTheSameProgramIsRefused() {
        try (WorkspaceWriter first = WorkspaceWriter.open(mill.open())) {
            assertThat(first).isNotNull();
            assertThatThrownBy(() -> WorkspaceWriter.open(mill.open()))
                    .isInstanceOf(WorkspaceException.class)
                    .hasMessageMatching("the workspace is open for writing elsewhere \\(by .+ on .+, process "
                            + ProcessHandle.current().pid() + ", since \\d{4}-.+Z\\); close it there, or go on here"
                            + " without saving");
        }
        WorkspaceWriter.open(mill.open()).close();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aSecondProgramIsRefusedUntilTheFirstEnds(boolean killed) throws IOException, InterruptedException {
        Process other = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        WriterMain.class.getName(),
                        mill.root().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader says = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(says.readLine()).startsWith("writing " + other.pid());

            assertThatThrownBy(() -> WorkspaceWriter.open(mill.open()))
                    .isInstanceOf(WorkspaceException.class)
                    .hasMessageContaining("process " + other.pid() + ", since ");
            assertThat(mill.open().problems()).isEmpty();

            if (killed) {
                other.destroyForcibly();
            } else {
                other.getOutputStream().close();
            }
            other.waitFor();
            WorkspaceWriter.open(mill.open()).close();
        } finally {
            other.destroyForcibly();
        }
    }
}
