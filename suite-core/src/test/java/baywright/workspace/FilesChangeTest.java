package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several files change as one, whatever the disk and the power do meanwhile. */
class FilesChangeTest {

    private static final String CHANGED = "stages/a.groovy";
    private static final String GONE = "stages/wash/b.groovy";
    private static final String NEW = "packs/gentle/stages/c.groovy";

    @TempDir
    Path folder;

    private Mill mill(String name) {
        return Mill.in(folder.resolve(name))
                .write(CHANGED, "// old\n")
                .write(GONE, "\uFEFF// gone\r\n")
                .write("stages/same.groovy", "// same\n");
    }

    static FilesChange change() {
        return new FilesChange(new TreeMap<>(Map.of(
                CHANGED, new FilesChange.Replaced(Optional.of("// old\n"), Optional.of("// new\n")),
                GONE, new FilesChange.Replaced(Optional.of("\uFEFF// gone\r\n"), Optional.empty()),
                NEW, new FilesChange.Replaced(Optional.empty(), Optional.of("// come\n")))));
    }

    /** Every file of scripts and packs, letter by letter. */
    private static SortedMap<String, String> texts(Mill mill) {
        SortedMap<String, String> texts = new TreeMap<>();
        for (String part : new String[] {"stages", "packs"}) {
            try (Stream<Path> all = Files.exists(mill.path(part)) ? Files.walk(mill.path(part)) : Stream.empty()) {
                for (Path path : all.filter(p -> Files.isRegularFile(p) && !AtomicFile.isLeftover(p))
                        .toList()) {
                    texts.put(mill.root().relativize(path).toString(), Files.readString(path));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return texts;
    }

    private SortedMap<String, String> changed(Mill mill) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            writer.change(change());
        }
        return texts(mill);
    }

    @Test
    void itsTextTellsAllOfIt() {
        assertThat(FilesChange.read(change().text())).contains(change());
        assertThat(change().reversed().reversed()).isEqualTo(change());
        assertThat(FilesChange.read("{}")).isEmpty();
        assertThat(FilesChange.read(change().text().replace(NEW, "jobs/x/job.json")))
                .isEmpty();
        assertThat(FilesChange.read(change().text().replace(NEW, "stages/../shop.json")))
                .isEmpty();
    }

    @Test
    void aPowerCutAtAnyStepLeavesAllOrNothing() {
        Mill whole = mill("whole");
        SortedMap<String, String> before = texts(whole);
        SortedMap<String, String> after = changed(whole);
        assertThat(after)
                .containsEntry(NEW, "// come\n")
                .doesNotContainKey(GONE)
                .isNotEqualTo(before);
        assertThat(whole.path(GONE).getParent()).doesNotExist();
        int old = 0;
        int fresh = 0;
        for (int steps = 0; ; steps++) {
            Mill mill = mill("cut-" + steps);
            FailingDisk disk = FailingDisk.powerCutAfter(steps);
            boolean done = isDone(mill, disk);
            mill.open();
            SortedMap<String, String> found = texts(mill);
            assertThat(found).as("after %d steps", steps).isIn(before, after);
            old += found.equals(before) ? 1 : 0;
            fresh += found.equals(after) ? 1 : 0;
            assertThat(mill.path(ChangeJournal.NAME)).doesNotExist();
            if (done) {
                break;
            }
        }
        assertThat(old).isGreaterThan(2);
        assertThat(fresh).isGreaterThan(8);
    }

    private static boolean isDone(Mill mill, Disk disk) {
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open(), disk)) {
            writer.change(change());
            return true;
        } catch (FailingDisk.PowerCut e) {
            return false;
        }
    }

    /** A second cut while the first one is being mended changes nothing about that. */
    @Test
    void aPowerCutWhileFinishingIsFinishedNext() {
        for (int steps = 0; steps < 8; steps++) {
            Mill mill = mill("again-" + steps);
            Workspace read = mill.open();
            mill.write(ChangeJournal.NAME, change().text());
            try (WorkspaceWriter writer = WorkspaceWriter.open(read, FailingDisk.powerCutAfter(steps))) {
                assertThat(writer).isNotNull();
            } catch (FailingDisk.PowerCut e) {
                assertThat(mill.path(ChangeJournal.NAME)).exists();
            }
            mill.open();
            assertThat(texts(mill)).containsEntry(CHANGED, "// new\n").doesNotContainKey(GONE);
        }
    }

    @Test
    void aDiskThatRefusesLeavesEverythingAsItWas() {
        Mill first = mill("first");
        SortedMap<String, String> before = texts(first);
        FailingDisk counting = FailingDisk.after(Integer.MAX_VALUE, new IOException());
        isDone(first, counting);
        for (int steps = 0; steps < counting.asked(); steps++) {
            Mill mill = mill("full-" + steps);
            FailingDisk disk = FailingDisk.after(steps, new IOException("No space left on device"));
            try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open(), disk)) {
                writer.change(change());
            } catch (WorkspaceException e) {
                assertThat(e).hasMessageContaining("the disk is full");
                assertThat(texts(mill)).as("after %d steps", steps).isEqualTo(before);
            }
            mill.open();
            assertThat(texts(mill)).isIn(before, texts(first));
        }
    }

    @Test
    void whatSomebodyChangedMeanwhileIsNotOverwritten() {
        Mill mill = mill("meanwhile").write(CHANGED, "// mine\n");
        SortedMap<String, String> before = texts(mill);
        try (WorkspaceWriter writer = WorkspaceWriter.open(mill.open())) {
            assertThatThrownBy(() -> writer.change(change()))
                    .isInstanceOf(WorkspaceException.class)
                    .hasMessageStartingWith(CHANGED + ": not saved, someone else has changed the file");
        }
        assertThat(texts(mill)).isEqualTo(before);
    }

    @Test
    void whatSomebodyWroteAfterACrashIsKeptAside() throws IOException {
        Mill mill = mill("kept").write(ChangeJournal.NAME, change().text()).write(CHANGED, "// mine\n");
        mill.open();
        assertThat(mill.text(CHANGED)).isEqualTo("// new\n");
        try (Stream<Path> kept = Files.list(mill.path(".baywright/kept"))) {
            assertThat(kept).singleElement().satisfies(p -> assertThat(p).hasContent("// mine"));
        }
    }

    @Test
    void aJournalThatLeadsElsewhereIsRefused() {
        Mill mill = mill("elsewhere").write(ChangeJournal.NAME, change().text().replace(NEW, "packs/../../x"));
        assertThatThrownBy(mill::open)
                .isInstanceOf(WorkspaceException.class)
                .hasMessageStartingWith(".baywright/change.json: this is no change that the program has begun");
    }

    /** A real program that stops dead once the change is written down and one file of it is in place. */
    @Test
    void aProgramThatHaltsInTheMiddleLeavesAChangeThatIsFinished() throws Exception {
        Mill mill = mill("halts");
        Process other = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        HaltMain.class.getName(),
                        mill.root().toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader says = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(says.lines().toList()).isEmpty();
            assertThat(other.waitFor()).isEqualTo(HaltMain.STATUS);
        } finally {
            other.destroyForcibly();
        }
        assertThat(mill.path(NEW)).exists();
        assertThat(mill.path(GONE)).exists();
        mill.open();
        assertThat(mill.path(GONE)).doesNotExist();
        assertThat(mill.text(CHANGED)).isEqualTo("// new\n");
    }

    /** The program of that test. */
    static final class HaltMain {

        static final int STATUS = 42;

        private HaltMain() {}

        public static void main(String[] arguments) {
            Disk disk = new Disk() {
                @Override
                public void replace(Path from, Path to) throws IOException {
                    if (to.endsWith(CHANGED)) {
                        Runtime.getRuntime().halt(STATUS);
                    }
                    Disk.super.replace(from, to);
                }
            };
            try (WorkspaceWriter writer = WorkspaceWriter.open(Workspace.open(Path.of(arguments[0])), disk)) {
                writer.change(change());
            }
        }
    }
}
