package baywright.library;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.LibraryLoader.Loaded;
import baywright.script.Limits;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problems;
import baywright.script.Steps;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a file may cost as a whole, however its work is spread over stages, inputs and operators. */
class FileBoundsTest {

    /** Most of a limit that a shipped script uses; the rest is room for its author. */
    private static final int MARGIN = 10;

    private static final Path SHIPPED = Path.of("..", "stage-scripts");

    private static Loaded load(String text) {
        return LibraryLoader.load(Map.of("a.groovy", text), List.of());
    }

    private static String stages(int count, String body) {
        return IntStream.range(0, count)
                .mapToObj(i -> "stage('s-" + i + "') {\n" + body + "\n}")
                .collect(Collectors.joining("\n"));
    }

    private static List<Problem> limits(Loaded loaded) {
        return loaded.problems().stream().filter(p -> p.code().equals("limit")).toList();
    }

    /** The cost to all processors of the second load of a text; the first one warms the program. */
    private static Duration cost(String text) {
        load(text);
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long start = system.getProcessCpuTime();
        load(text);
        return Duration.ofNanos(system.getProcessCpuTime() - start);
    }

    @Test
    void theStagesOfAFileShareItsSteps() {
        String text = stages(60, "for (i in 1..440) { for (j in 1..220) { def x = j } }");

        Loaded loaded = load(text);

        assertThat(loaded.library().stages()).isEmpty();
        assertThat(limits(loaded)).isNotEmpty();
        assertThat(limits(loaded).get(limits(loaded).size() - 1).message())
                .isEqualTo("the checking of a file takes at most 1000000 steps; shorten its loops and lists, or put"
                        + " some of its stages into another file");
        assertThat(load(text).problems()).isEqualTo(loaded.problems());
        assertThat(cost(text)).isLessThan(Duration.ofSeconds(1));
    }

    @Test
    void aFileBesideOneThatHasSpentItsStepsLoads() {
        String good = "surface 'glass', means: 'windows'\nfamily 'wash', title: 'Washing'\n"
                + "stage('fine') { title 'Fine'; family 'wash'; worksOn 'glass' }";
        String bad = stages(60, "for (i in 1..440) { for (j in 1..220) { def x = j } }");

        Loaded loaded = LibraryLoader.load(Map.of("a.groovy", bad, "b.groovy", good), List.of());

        assertThat(loaded.library().stageById()).containsOnlyKeys("fine");
    }

    @Test
    void everyChoiceThatIsTriedCounts() {
        String choices = IntStream.range(0, 4)
                .mapToObj(i -> "choice 'c" + i + "', from: ['a','b','c','d','e','f','g','h'], usual: 'a'")
                .collect(Collectors.joining("\n"));
        String text =
                stages(20, "inputs {\n" + choices + "\n}\nfor (i in 1..100) { for (j in 1..99) { def x = i * j } }");

        assertThat(limits(load(text))).isNotEmpty();
        assertThat(cost(text)).isLessThan(Duration.ofSeconds(1));
    }

    @Test
    void aPowerCountsAsManyStepsAsItsExponent() {
        String text = stages(1, "for (i in 1..300) { for (j in 1..30) { def x = 1.0000001 ** 100 } }");

        assertThat(limits(load(text)).get(0).message())
                .isEqualTo("the script takes more than 200000 steps to work out; shorten its loops and lists");
        assertThat(limits(load(text.replace("** 100", "** 1")))).isEmpty();
    }

    @Test
    void longListsCountByTheirEntries() {
        String text = stages(1, "def l = [" + "1, ".repeat(150) + "1]\nfor (i in 1..1000) { def x = l + l }");

        assertThat(limits(load(text))).isNotEmpty();
        assertThat(limits(load(text.replace("l + l", "1 + 1")))).isEmpty();
    }

    @Test
    void stagesDeclarationsExamplesAndLinesAreCounted() {
        assertThat(limits(load(stages(Limits.STAGES, "title 'T'")))).isEmpty();
        assertThat(limits(load(stages(Limits.STAGES + 2, "title 'T'"))))
                .extracting(Problem::toString)
                .containsExactly("a.groovy:301:1: a file holds at most 100 stages; put this and what follows into"
                        + " another file");
        String surfaces = IntStream.rangeClosed(0, Limits.DECLARATIONS + 1)
                .mapToObj(i -> "surface 's" + i + "', means: 'a'\n")
                .collect(Collectors.joining());
        assertThat(limits(load(surfaces)))
                .extracting(Problem::toString)
                .containsExactly("a.groovy:501:1: a file holds at most 500 declarations; put this and what follows"
                        + " into another file");
        String examples = IntStream.rangeClosed(0, Limits.EXAMPLES)
                .mapToObj(i -> "example 'e" + i + "', on: 'saloon'\n")
                .collect(Collectors.joining());
        assertThat(limits(load(stages(1, examples))))
                .extracting(Problem::toString)
                .containsExactly("a.groovy:52:1: a stage holds at most 50 examples; keep those that differ most");
        assertThat(limits(load("\n".repeat(5_000))))
                .extracting(Problem::toString)
                .containsExactly("a.groovy: a file holds at most 5000 lines, this one 5001; put some of its stages"
                        + " into another file");
    }

    @Test
    void shippedScriptsStayFarBelow() throws IOException {
        List<FileDraft> files = new ArrayList<>();
        for (Map.Entry<String, String> one : LibraryFiles.read(SHIPPED).texts().entrySet()) {
            assertThat(one.getValue().lines().count() * MARGIN).isLessThan(10_000);
            files.add(FileDraft.of(baywright.script.ScriptParser.parse(one.getKey(), one.getValue())));
        }
        Problems problems = new Problems();
        Declared<Fact> facts = new Declared<>("fact");
        Declared<Constant> constants = new Declared<>("constant");
        files.forEach(f -> f.block().facts().forEach(x -> facts.add(x, Fact::id, Fact::place, problems)));
        files.forEach(
                f -> f.block().constants().forEach(x -> constants.add(x, Constant::id, Constant::place, problems)));
        Surroundings around = new Surroundings(LibraryLoader.withSize(facts), constants);
        int most = 0;
        for (FileDraft file : files) {
            Steps steps = file.steps();
            file.block().stages().forEach(m -> StageDraft.read(new Lineage(m), around, true, steps));
            assertThat(file.block().stages().size() * MARGIN).isLessThanOrEqualTo(Limits.STAGES);
            most = Math.max(most, steps.used());
        }
        System.out.println("most steps of a shipped file: " + most);
        assertThat(files).hasSizeGreaterThan(50);
        assertThat(most).isBetween(100, 1_000_000 / MARGIN);
    }

    @Test
    void filesThatAreTooMuchTogetherAreLeftOutFromTheFirstOneTooMany(@TempDir Path folder) throws IOException {
        String quarter = "// " + "x".repeat(200_000) + "\n";
        int files = (int) (LibraryFiles.MOST_BYTES_IN_ALL / quarter.length()) + 3;
        for (int i = 0; i < files; i++) {
            Files.writeString(folder.resolve(String.format("f%03d.groovy", i)), quarter);
        }

        LibraryFiles read = LibraryFiles.read(folder);

        assertThat(read.texts()).hasSize(files - 3);
        assertThat(read.problems()).singleElement().satisfies(p -> {
            assertThat(p.place().file()).isEqualTo(String.format("f%03d.groovy", files - 3));
            assertThat(p.message()).startsWith("the files of a library hold at most 16 MiB together");
        });
    }

    @Test
    void aRefusedTitleIsNotMissingBesides() {
        Loaded loaded = load("stage('a') {\n    title -'x'\n}");

        assertThat(loaded.problems()).extracting(Problem::message).noneMatch(m -> m.contains("has no title"));
        assertThat(loaded.problems()).extracting(p -> p.place().line()).contains(2);
    }

    @Test
    void aMinusOnEachOfManyLinesHasAPlace() {
        for (int lines : new int[] {90, 1_000, 3_000}) {
            Loaded loaded = load("def a = 1\n" + "- \n".repeat(lines) + "1\n");

            assertThat(loaded.errors())
                    .isNotEmpty()
                    .extracting(Problem::place)
                    .doesNotContain(Place.ofFile("a.groovy"));
        }
    }

    @Test
    void aFileWhoseNameHidesSomethingIsRefused(@TempDir Path folder) throws IOException {
        Files.write(folder.resolve("good\u202eyvoorg.groovy"), "surface 'a', means: 'b'".getBytes(UTF_8));
        Files.write(folder.resolve("red\u001b[31m.groovy"), "surface 'c', means: 'd'".getBytes(UTF_8));
        Files.write(folder.resolve("two\nlines.groovy"), "surface 'e', means: 'f'".getBytes(UTF_8));

        Loaded loaded = LibraryLoader.load(folder, List.of());

        assertThat(loaded.library().surfaces()).isEmpty();
        assertThat(loaded.problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "good?yvoorg.groovy: the name of the file or of its folder holds an invisible character, shown"
                                + " as ?; rename it",
                        "red?[31m.groovy: the name of the file or of its folder holds an invisible character, shown as"
                                + " ?; rename it",
                        "two?lines.groovy: the name of the file or of its folder holds an invisible character, shown"
                                + " as ?; rename it");
    }
}
