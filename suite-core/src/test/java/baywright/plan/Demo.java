package baywright.plan;

import baywright.DemoSite;
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

/** The shipped demo sites with the shipped library, read once. */
final class Demo {

    private static final Map<String, Demo> SITES = new HashMap<>();

    private final Workspace workspace;
    private final Library library;

    private Demo(String site) {
        try {
            Path folder = Files.createTempDirectory("baywright-demo");
            DemoSite.copy(site, folder);
            workspace = Workspace.open(folder);
            library = LibraryLoader.load(workspace.stages(), workspace.items(), DemoSite.SCRIPTS)
                    .library();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
