package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.workspace.EditsJournal.Edits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditsClaimTest {

    @TempDir
    private Path folder;

    private static Edits edits(String text) {
        return new Edits(new TreeMap<>(Map.of("stages/a.groovy", text)), List.of());
    }

    @Test
    void twoWindowsNeverShareANote() {
        try (EditsClaim one = EditsClaim.in(folder);
                EditsClaim two = EditsClaim.in(folder)) {
            one.journal().write(edits("// one\n"));
            two.journal().write(edits("// two\n"));
            assertThat(one.journal().read()).contains(edits("// one\n"));
            assertThat(two.journal().read()).contains(edits("// two\n"));
        }
    }

    @Test
    void whatAnEarlierRunHasLeftIsClaimedOneAfterTheOther() {
        try (EditsClaim one = EditsClaim.in(folder);
                EditsClaim two = EditsClaim.in(folder)) {
            one.journal().write(edits("// one\n"));
            two.journal().write(edits("// two\n"));
        }
        try (EditsClaim next = EditsClaim.in(folder)) {
            assertThat(next.journal().read()).contains(edits("// one\n"));
            next.journal().write(new Edits(new TreeMap<>(), List.of()));
        }
        try (EditsClaim last = EditsClaim.in(folder)) {
            assertThat(last.journal().read()).contains(edits("// two\n"));
        }
    }

    /** Claims a note, writes it, tells so and waits to be killed: the program of the test below. */
    static final class Holder {

        private Holder() {}

        public static void main(String[] args) throws IOException {
            EditsClaim.in(Path.of(args[0])).journal().write(edits("// theirs\n"));
            System.out.println("held");
            System.in.read();
        }
    }

    @Test
    void aNoteIsHeldAgainstOtherProgramsUntilTheyEnd() throws Exception {
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(other.getInputStream().read()).isEqualTo('h');
            try (EditsClaim mine = EditsClaim.in(folder)) {
                assertThat(mine.journal().read()).isEmpty();
            }
        } finally {
            other.destroyForcibly().waitFor(1, TimeUnit.MINUTES);
        }
        try (EditsClaim mine = EditsClaim.in(folder)) {
            assertThat(mine.journal().read()).contains(edits("// theirs\n"));
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsReadAllTheSame() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        try (EditsClaim claim = EditsClaim.in(file)) {
            assertThat(claim.journal().read()).isEmpty();
        }
    }
}
