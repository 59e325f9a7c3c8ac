package baywright.script.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each script of the set does what the index says when a plain shell runs it. A script that hangs or fills the memory
 * costs seconds; of those only the first of each technique is run, unless the property {@code hostile.full} is set.
 */
class HostileWithoutFenceTest {

    private static final boolean FULL = Boolean.getBoolean("hostile.full");

    @TempDir
    Path folder;

    @Test
    void theSetIsLargeAndEveryScriptHasItsTechnique() {
        List<HostileScript> all = HostileScript.all();

        assertThat(all).hasSizeGreaterThan(160).doesNotHaveDuplicates();
        assertThat(all).extracting(HostileScript::technique).containsAll(TECHNIQUES);
    }

    @Test
    void scriptsThatActDoWhatTheIndexSays() throws Exception {
        List<HostileScript> acting =
                HostileScript.all().stream().filter(s -> !costly(s)).toList();

        assertThat(run(acting, Duration.ofSeconds(30))).isEmpty();
    }

    @Test
    void scriptsThatExhaustDoWhatTheIndexSays() throws Exception {
        Map<String, HostileScript> first = new LinkedHashMap<>();
        List<HostileScript> all = HostileScript.all().stream()
                .filter(HostileWithoutFenceTest::costly)
                .toList();
        all.forEach(s -> first.putIfAbsent(s.technique(), s));

        assertThat(run(FULL ? all : List.copyOf(first.values()), Duration.ofSeconds(3)))
                .isEmpty();
    }

    @Test
    void goodScriptsDoNothingOfTheKind() throws Exception {
        DangerRun run = new DangerRun(folder, Duration.ofSeconds(30));

        assertThat(run.run(List.of("rinse", "wash")))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "rinse", Set.of(Danger.TRANSFORMS),
                        "wash", Set.of(Danger.TRANSFORMS)));
    }

    private static boolean costly(HostileScript script) {
        return script.danger().exhausts() || script.danger() == Danger.EXITS;
    }

    /** The scripts that did not do what the index says, with what they did; two rows of children work side by side. */
    private Map<String, String> run(List<HostileScript> scripts, Duration deadline) throws Exception {
        Map<String, Set<Danger>> seen = new ConcurrentHashMap<>();
        ExecutorService rows = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> done = new ArrayList<>();
            for (int row = 0; row < 2; row++) {
                DangerRun run = new DangerRun(Files.createDirectory(folder.resolve("row" + row)), deadline);
                List<String> names = namesOfRow(scripts, row);
                done.add(rows.submit(() -> {
                    seen.putAll(run.run(names));
                    return null;
                }));
            }
            for (Future<?> one : done) {
                one.get();
            }
        } finally {
            rows.shutdownNow();
        }
        Map<String, String> wrong = new TreeMap<>();
        for (HostileScript script : scripts) {
            if (seen.get(script.name()).stream().noneMatch(script::isShownBy)) {
                wrong.put(script.name(), "index says " + script.danger() + ", seen " + seen.get(script.name()));
            }
        }
        return wrong;
    }

    private static List<String> namesOfRow(List<HostileScript> scripts, int row) {
        List<String> names = new ArrayList<>();
        for (int i = row; i < scripts.size(); i += 2) {
            names.add(scripts.get(i).name());
        }
        return names;
    }

    private static final List<String> TECHNIQUES = List.of(
            "annotations",
            "casts",
            "chains",
            "classes",
            "classloading",
            "clock",
            "delegates",
            "encodings",
            "files",
            "hiding",
            "imports",
            "literals",
            "loops",
            "markup",
            "metaclass",
            "nesting",
            "network",
            "pointers",
            "processes",
            "reflection",
            "regex",
            "serialisation",
            "sizes",
            "statements",
            "system",
            "threads",
            "unicode");
}
