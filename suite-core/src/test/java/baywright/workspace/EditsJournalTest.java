package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.workspace.EditsJournal.Edits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditsJournalTest {

    private static final int KILLS = 6;

    @TempDir
    private Path folder;

    /** Notes ever larger states until it is killed: the program of the test below. */
    static final class Writer {

        private Writer() {}

        public static void main(String[] args) {
            EditsJournal journal = new EditsJournal(Path.of(args[0]));
            for (int i = 1; ; i++) {
                journal.write(edits(i));
                System.out.println(i);
            }
        }
    }

    private static Edits edits(int i) {
        String text = ("// " + i + "\n").repeat(2000);
        return new Edits(new TreeMap<>(Map.of("stages/a.groovy", text, "stages/b.groovy", text)), List.of());
    }

    /** Law: whenever the program is killed, what was noted last, or was just being noted, is there as a whole. */
    @Test
    void aKilledProgramLeavesTheOldNoteOrTheNewOne() throws Exception {
        Random random = new Random(11);
        for (int kill = 0; kill < KILLS; kill++) {
            Path out = folder.resolve("told-" + kill);
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Writer.class.getName(),
                            folder.toString())
                    .redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            int enough = 1 + random.nextInt(40);
            while (told(out) < enough) {
                assertThat(process.isAlive()).isTrue();
                Thread.sleep(1);
            }
            Thread.sleep(random.nextInt(20));
            process.destroyForcibly().waitFor();
            int told = told(out);
            Edits read = new EditsJournal(folder).read().orElseThrow();
            assertThat(read).isIn(edits(told), edits(told + 1));
        }
    }

    /** The number in the last line that is whole. */
    private static int told(Path out) throws IOException {
        String text = Files.readString(out);
        int end = text.lastIndexOf('\n');
        return end < 0 ? 0 : Integer.parseInt(text.substring(text.lastIndexOf('\n', end - 1) + 1, end));
    }

    @Test
    void aDamagedNoteIsToldAndStaysWhereItIs() throws Exception {
        Path file = Files.createDirectories(folder.resolve(".baywright")).resolve("unsaved.json");
        for (String text : List.of("", "{", "[]", "{\"version\":2,\"files\":{},\"gone\":[]}", "nonsense")) {
            Files.writeString(file, text);
            assertThatThrownBy(() -> new EditsJournal(folder).read())
                    .isInstanceOf(WorkspaceException.class)
                    .hasMessageStartingWith(".baywright/unsaved.json:");
            assertThat(file).hasContent(text);
        }
    }

    @Test
    void aNotePutAsideIsNotOfferedAgainAndNotLost() {
        EditsJournal journal = new EditsJournal(folder);
        journal.write(edits(1));
        Path aside = journal.putAside().orElseThrow();
        assertThat(aside).exists();
        assertThat(journal.read()).isEmpty();
        assertThat(journal.putAside()).isEmpty();
    }
}
