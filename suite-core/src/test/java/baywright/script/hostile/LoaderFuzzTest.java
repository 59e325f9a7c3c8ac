package baywright.script.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import baywright.library.LibraryLoader;
import baywright.script.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.sessions.JqwikSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The loader on random scripts for {@code fuzz.seconds} (10 if nothing is said): scripts of the grammar, the shipped ones
 * and the hostile ones, all of them spoilt. It never throws, comes back in time, places its problems inside the text and
 * leaves no thread. {@code fuzz.seed} repeats a run.
 */
class LoaderFuzzTest {

    private static final long SECONDS = Long.getLong("fuzz.seconds", 10);
    private static final long SEED = Long.getLong("fuzz.seed", System.nanoTime());

    /** Far above the promise of one second, so that only a script that hangs the loader is reported. */
    private static final long LONGEST_SECONDS = 60;

    private static final int LONGEST_TEXT = 3_000;

    @TempDir
    Path folder;

    @Test
    void anyTextAtAllGivesALibraryAndProblemsInsideTheText() throws Exception {
        System.out.println("fuzz.seed=" + SEED + " fuzz.seconds=" + SECONDS);
        // The parser's own two threads, one per kind of its cache, start with the first text.
        LibraryLoader.load(Map.of("first.groovy", Loading.GOOD), List.of());
        Set<Thread> before = new HashSet<>(Thread.getAllStackTraces().keySet());
        ExecutorService runner = Executors.newSingleThreadExecutor();
        int tried = 0;
        JqwikSession.start();
        try {
            Random random = new Random(SEED);
            List<String> known = known();
            Mutation mutation = new Mutation(random, known);
            RandomGenerator<String> grammar = ScriptGrammar.script().generator(1_000);
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
            while (System.nanoTime() < end) {
                String start =
                        random.nextInt(3) > 0 ? grammar.next(random).value() : known.get(random.nextInt(known.size()));
                String text = mutation.of(start);
                check(text.substring(0, Math.min(LONGEST_TEXT, text.length())), runner);
                JqwikSession.finishTry();
                tried++;
            }
        } finally {
            JqwikSession.finish();
            runner.shutdownNow();
        }
        assertThat(runner.awaitTermination(5, TimeUnit.SECONDS)).isTrue();
        System.out.println("fuzz: " + tried + " scripts");
        assertThat(tried).isPositive();
        Set<Thread> left = new HashSet<>(Thread.getAllStackTraces().keySet());
        left.removeAll(before);
        for (Thread thread : left) {
            thread.join(2_000);
        }
        assertThat(left).filteredOn(Thread::isAlive).isEmpty();
    }

    private static void check(String text, ExecutorService runner) throws InterruptedException {
        Future<List<Problem>> load = runner.submit(
                () -> LibraryLoader.load(Map.of("fuzz.groovy", text), List.of()).problems());
        try {
            List<Problem> problems = load.get(LONGEST_SECONDS, TimeUnit.SECONDS);
            assertThat(problems)
                    .as(about(text))
                    .allSatisfy(p -> assertThat(isInside(p, text)).isTrue());
            assertThat(problems)
                    .as(about(text))
                    .allSatisfy(p -> assertThat(p.message()).isNotBlank().doesNotContain("\n", "\r"));
        } catch (ExecutionException e) {
            fail(about(text), e.getCause());
        } catch (TimeoutException e) {
            fail(about(text), e);
        }
    }

    /** The place after the last character of a line is one where something can be missing. */
    private static boolean isInside(Problem problem, String text) {
        if (!problem.place().file().equals("fuzz.groovy")) {
            return false;
        }
        String[] lines = text.split("\r\n|\r|\n", -1);
        int line = problem.place().line();
        if (line == 0) {
            return problem.place().column() == 0;
        }
        if (line > lines.length) {
            return false;
        }
        String written = lines[line - 1];
        int column = problem.place().column();
        return column >= 0 && column <= written.codePointCount(0, written.length()) + 1;
    }

    private static String about(String text) {
        return "fuzz.seed=" + SEED + ", the script:\n" + text;
    }

    /** The hostile scripts of a usual size and the shipped ones. */
    private List<String> known() throws IOException {
        List<String> known = new ArrayList<>();
        Path file = folder.resolve("script");
        for (HostileScript script : HostileScript.all()) {
            script.writeTo(file, 9);
            if (Files.size(file) < LONGEST_TEXT) {
                known.add(new String(Files.readAllBytes(file), UTF_8));
            }
        }
        try (Stream<Path> shipped = Files.walk(Path.of("..", "stage-scripts"))) {
            for (Path path :
                    shipped.filter(p -> p.toString().endsWith(".groovy")).toList()) {
                known.add(Files.readString(path));
            }
        }
        return known;
    }
}
