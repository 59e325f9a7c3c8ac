package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrangeFilesTest {

    @TempDir
    private Path folder;

    private Mill mill;

    @BeforeEach
    void copyTheFixture() {
        mill = Mill.in(folder);
    }

    private List<String> problems() {
        return mill.open().problems().stream().map(FileProblem::toString).toList();
    }

    @Test
    void theFixtureItselfHasNoProblem() {
        assertThat(problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16BE", "UTF-16LE"})
    void utf16IsNamed(String charset) {
        mill.write("shop.json", mill.text("shop.json").getBytes(Charset.forName(charset)));

        assertThat(problems()).containsExactly("shop.json: the text is in UTF-16; save it as UTF-8");
    }

    @Test
    void aByteOfLatin1IsShownWhereItStands() {
        String text = mill.text(Mill.JOB).replace("A. Customer", "René");
        mill.write(Mill.JOB, text.getBytes(StandardCharsets.ISO_8859_1));

        assertThat(problems())
                .containsExactly("jobs/green-estate/job.json:5:29: the byte E9 is not UTF-8; save the file as UTF-8");
    }

    @Test
    void aByteOrderMarkIsOnlyAWarning() {
        mill.write(Mill.JOB, "\uFEFF" + mill.text(Mill.JOB));

        assertThat(problems())
                .containsExactly("jobs/green-estate/job.json:1:1: the file begins with a byte order mark;"
                        + " save it as UTF-8 without one");
        assertThat(mill.open().job("green-estate").orElseThrow().job()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop.json", "items.json", "stages/shapes.json", Mill.JOB, Mill.READINGS})
    void anEmptyFileIsNamed(String file) {
        mill.write(file, "");

        assertThat(problems()).containsExactly(file + ": the file is empty; restore it from a copy or delete it");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop.json", "items.json", "stages/shapes.json", Mill.JOB})
    void aMissingFileIsNamed(String file) throws IOException {
        Files.delete(mill.path(file));

        assertThat(problems()).containsExactly(file + ": there is no such file; restore it from a copy");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shop.json", Mill.JOB, Mill.READINGS})
    void aHugeFileIsNotRead(String file) {
        byte[] huge = new byte[16 * 1024 * 1024 + 1];
        Arrays.fill(huge, (byte) ' ');
        mill.write(file, huge);

        assertThat(problems())
                .containsExactly(file + ": the file is larger than 16 MiB; check that it is the right file;"
                        + " photos go into the job's folder 'photos'");
    }

    @Test
    void aFolderInTheFilesPlaceIsNamed() throws IOException {
        Files.delete(mill.path("shop.json"));
        Files.createDirectory(mill.path("shop.json"));

        assertThat(problems())
                .containsExactly("shop.json: this is not a file; move it away and restore the file from a copy");
    }

    @Test
    void bytesOfAPictureAreNoText() {
        mill.write(Mill.JOB, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A});

        assertThat(problems())
                .containsExactly("jobs/green-estate/job.json:1:1: the byte 89 is not UTF-8; save the file as UTF-8");
    }

    @Test
    void aLinkOutOfTheWorkspaceIsNotFollowed() throws IOException {
        Path outside = Files.writeString(folder.resolve("outside.json"), mill.text("shop.json"));
        Files.delete(mill.path("shop.json"));
        Files.createSymbolicLink(mill.path("shop.json"), outside);

        assertThat(problems())
                .containsExactly("shop.json: this link leads out of the workspace; put the file itself here");
    }

    @Test
    void aFolderThatLeadsOutOfTheWorkspaceIsNotFollowed() throws IOException {
        Path outside = Files.createDirectory(folder.resolve("elsewhere"));
        Files.writeString(
                outside.resolve("job.json"), mill.text("jobs/vans/job.json").replace("\"vans\"", "\"elsewhere\""));
        Files.createSymbolicLink(mill.path("jobs/elsewhere"), outside);

        assertThat(problems())
                .containsExactly(
                        "jobs/elsewhere/job.json: this link leads out of the workspace; put the file itself here");
    }

    @Test
    void aLinkWithinTheWorkspaceIsFollowed() throws IOException {
        Files.move(mill.path("shop.json"), mill.path("site.json"));
        Files.createSymbolicLink(mill.path("shop.json"), Path.of("site.json"));

        assertThat(problems()).isEmpty();
    }

    @Test
    void aLinkThatLeadsNowhereIsNamed() throws IOException {
        Files.delete(mill.path("shop.json"));
        Files.createSymbolicLink(mill.path("shop.json"), Path.of("site.json"));

        assertThat(problems()).containsExactly("shop.json: this link leads nowhere; put the file itself here");
    }

    @Test
    void aCopiedJobFolderHasTheOthersId() {
        mill.write("jobs/vans-copy/job.json", mill.text("jobs/vans/job.json"));
        Workspace workspace = mill.open();

        assertThat(problems())
                .containsExactly(
                        "jobs/vans-copy/job.json: the job id 'vans' is already used by jobs/vans; give this job another"
                                + " id, such as the name of its folder",
                        "jobs/vans-copy/job.json:3:9: id: the id 'vans' is not the name of the folder, 'vans-copy';"
                                + " make them the same");
        assertThat(workspace.job("vans").orElseThrow().job()).isPresent();
        assertThat(workspace.job("vans-copy").orElseThrow().job()).isEmpty();
    }

    @Test
    void aFolderWhoseNameIsNoIdIsNamed() {
        mill.write("jobs/My Job/job.json", "{}");

        assertThat(problems()).containsExactly("jobs/My Job: the name of this folder is no id; use " + Fields.AN_ID);
    }

    @Test
    void hiddenFoldersAndLooseFilesAreNoJobs() {
        mill.write("jobs/.hidden/notes.txt", "x").write("jobs/notes.txt", "x");

        assertThat(mill.open().jobs()).extracting(JobFile::folder).containsExactly("green-estate", "vans");
    }

    @Test
    void aWorkspaceThatIsNotThereIsOneMessage() {
        Path missing = folder.resolve("missing");

        assertThatThrownBy(() -> Workspace.open(missing))
                .isInstanceOf(WorkspaceException.class)
                .hasMessage(missing + ": there is no such folder; give the folder that holds shop.json");
    }

    @Test
    void anEmptyFolderIsToldWhatItLacks() throws IOException {
        Workspace workspace = Workspace.open(Files.createDirectory(folder.resolve("empty")));

        assertThat(workspace.problems())
                .extracting(FileProblem::file)
                .containsExactly("items.json", "shop.json", "stages/shapes.json");
        assertThat(workspace.jobs()).isEmpty();
    }

    @Test
    void columnsAreCountedInCharactersAsPeopleSeeThem() {
        mill.replace("shop.json", "{ \"name\": \"VAT\", \"percent\": 20,", "{ \"name\": \"VAT😀\", \"percent\": -20,");

        assertThat(problems())
                .containsExactly(
                        "shop.json:8:39: tax.percent: the number -20 is out of range; give a number from 0 to 100");
    }

    @Test
    void aGarbledFileSaysAHundredThingsAtMost() {
        mill.replace(Mill.JOB, "[\"no swirls\", \"clear lamps\"]", "[" + "7, ".repeat(5000) + "7]");

        assertThat(problems()).hasSize(100);
        assertThat(mill.open().job("green-estate").orElseThrow().job()).isEmpty();
    }
}
