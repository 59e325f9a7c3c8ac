package baywright.plan;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.workspace.Job;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

/** The shipped demo sites with the shipped library, read once. */
final class Demo {

    private static final Path ROOT = Path.of("..");
    private static final Map<String, Demo> SITES = new HashMap<>();

    private final Workspace workspace;
    private final Library library;

    private Demo(String site) {
        try {
            Path folder = Files.createTempDirectory("baywright-demo");
            copy(ROOT.resolve("demo").resolve(site), folder);
            copy(ROOT.resolve("stage-scripts"), folder.resolve("stages"));
            if (!Files.exists(folder.resolve("items.json"))) {
                Files.copy(ROOT.resolve("stage-scripts/items.json"), folder.resolve("items.json"));
            }
            workspace = Workspace.open(folder);
            library = LibraryLoader.load(workspace.stages(), workspace.items()).library();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                Files.createDirectories(target.getParent());
                Files.copy(path, target);
            }
        }
    }

    static Demo site(String name) {
        return SITES.computeIfAbsent(name, Demo::new);
    }

    Job job(String folder) {
        return workspace.job(folder).orElseThrow().job().orElseThrow();
    }

    Setting setting(Job job) {
        return workspace.setting(job, library, LocalDateTime.of(2026, 12, 7, 8, 0));
    }
}
