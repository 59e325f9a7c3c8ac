package baywright.script.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.script.Problem;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The loader refuses each script of the set where the index says and in the words that it gives. */
class HostileRefusedTest {

    /** The promise of docs/security.md for one hostile file, in a program that is warm. */
    private static final Duration LONGEST = Duration.ofSeconds(1);

    /** What one load gave and what it cost all processors; the time of other programs does not count. */
    private record Outcome(HostileScript script, Loading.Result result, Duration work) {}

    private static final List<Outcome> OUTCOMES = new ArrayList<>();
    private static final Set<Thread> LEFT = new HashSet<>();

    @TempDir
    static Path folder;

    @BeforeAll
    static void loadAll() throws IOException {
        Loading loading = new Loading(folder.resolve("all"));
        for (int i = 0; i < 20; i++) {
            loading.load();
        }
        Set<Thread> before = Thread.getAllStackTraces().keySet();
        for (HostileScript script : HostileScript.all()) {
            script.writeTo(loading.hostile(), 9);
            OUTCOMES.add(load(script, loading));
        }
        LEFT.addAll(Thread.getAllStackTraces().keySet());
        LEFT.removeAll(before);
    }

    /** Compilation and collection of garbage fall on some load by chance: the best of three counts. */
    private static Outcome load(HostileScript script, Loading loading) throws IOException {
        Outcome best = null;
        for (int i = 0; i < 3 && (best == null || best.work().compareTo(LONGEST) > 0); i++) {
            long start = cpu();
            Loading.Result result = loading.load();
            Duration work = Duration.ofNanos(cpu() - start);
            if (best == null || work.compareTo(best.work()) < 0) {
                best = new Outcome(script, result, work);
            }
        }
        return best;
    }

    private static long cpu() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    @Test
    void everyScriptIsRefusedAtItsPlaceWithItsMessage() {
        Map<String, String> wrong = new TreeMap<>();
        for (Outcome outcome : OUTCOMES) {
            HostileScript script = outcome.script();
            List<Problem> errors = outcome.result().errors();
            if (errors.stream().noneMatch(script::isRefusedBy)) {
                wrong.put(script.name(), "wanted: " + script.refusal() + " … got: " + errors);
            }
        }

        assertThat(wrong).isEmpty();
    }

    @Test
    void aHostileScriptSpoilsNeitherTheGoodOneBesideItNorTheNextLoad() throws IOException {
        assertThat(OUTCOMES)
                .allSatisfy(outcome -> assertThat(outcome.result().stages()).contains("good"));

        Loading.Result next = new Loading(folder.resolve("next")).load();
        assertThat(next.stages()).containsExactly("good");
        assertThat(next.problems()).isEmpty();
        assertThat(next.texts()).contains("Good");
    }

    @Test
    void noStageWithAHostilePartIsUsable() {
        assertThat(OUTCOMES)
                .allSatisfy(outcome -> assertThat(outcome.result().stages()).containsExactly("good"));
    }

    @Test
    void nothingThatIsShownObeysTheScript() {
        assertThat(OUTCOMES)
                .allSatisfy(outcome -> assertThat(Screen.of(outcome.result().texts(), ""))
                        // The sign for a broken character harms nobody where a message repeats it.
                        .isSubsetOf(Danger.GARBLED));
    }

    @Test
    void everyScriptIsRefusedInTime() {
        assertThat(OUTCOMES).allSatisfy(outcome -> assertThat(outcome.work()).isLessThanOrEqualTo(LONGEST));
    }

    @Test
    void noThreadIsLeft() throws InterruptedException {
        for (Thread thread : LEFT) {
            thread.join(2_000);
        }

        assertThat(LEFT).filteredOn(Thread::isAlive).isEmpty();
    }

    /**
     * In a process of its own: 64 MiB more than the idle program holds are enough for every load, with the same answers;
     * and of all classes that the scripts name, or that would run them, not one is loaded.
     */
    @Test
    void littleMemoryIsUsedAndNoClassIsLoaded() throws Exception {
        Path report = folder.resolve("report");
        Path classes = folder.resolve("classes");
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx192m",
                        "-Xmn32m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xlog:class+load:file=" + classes + "::filecount=0",
                        "-Dhostile.armed=true",
                        "-cp",
                        Screen.classPath(),
                        FenceChild.class.getName(),
                        report.toString(),
                        folder.resolve("library").toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        try {
            assertThat(child.waitFor(5, TimeUnit.MINUTES)).isTrue();
        } finally {
            child.destroyForcibly();
        }

        assertThat(Files.readString(folder.resolve("said"))).isEmpty();
        Map<String, String> got = new HashMap<>();
        for (String line : Files.readAllLines(report)) {
            int tab = line.indexOf('\t');
            got.put(line.substring(0, tab), line.substring(tab + 1));
        }
        assertThat(Integer.parseInt(got.get("ballast"))).isPositive();
        assertThat(HostileScript.all())
                .allSatisfy(script -> assertThat(got.get(script.name())).isEqualTo("refused"));
        String loaded = Files.readAllLines(classes).stream()
                .map(line -> line.replaceAll("^\\[.*\\] ", ""))
                .collect(Collectors.joining("\n", "\n", "\n"))
                .replaceAll(RANDOM_OF_BUSY_MAPS, "\n");
        assertThat(loaded).contains("\norg.apache.groovy.parser.antlr4.AstBuilder ");
        assertThat(NEVER_LOADED).allSatisfy(name -> assertThat(loaded).doesNotContain("\n" + name));
        assertThat(folder.resolve("marker")).doesNotExist();
        assertThat(folder.resolve("transformed")).doesNotExist();
    }

    /**
     * A concurrent map on which threads meet draws from {@code ThreadLocalRandom}, and Java loads what that class extends just
     * before it; other threads may load something between the two.
     */
    private static final String RANDOM_OF_BUSY_MAPS =
            "\njava\\.util\\.Random [^\n]*\n(?=(?:[^\n]*\n){0,5}java\\.util\\.concurrent\\.ThreadLocalRandom )";

    /** A space ends the name of a class; without it all classes that begin so are meant. */
    private static final List<String> NEVER_LOADED = List.of(
            "baywright.script.hostile.TellTale",
            "groovy.grape",
            "org.apache.ivy",
            "groovy.lang.GroovyShell ",
            "groovy.util.Eval ",
            "org.codehaus.groovy.control.CompilationUnit ",
            "org.codehaus.groovy.transform.ASTTransformationVisitor",
            "java.lang.ProcessBuilder",
            "java.net.Socket ",
            "java.net.ServerSocket ",
            "java.net.http",
            "java.util.Random ",
            "javax.naming",
            "java.beans.XMLDecoder");
}
