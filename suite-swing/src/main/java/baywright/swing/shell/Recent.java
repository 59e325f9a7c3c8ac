package baywright.swing.shell;

import baywright.swing.api.Settings;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which workspaces were open lately, and where in each one was. */
final class Recent {

    private static final String KEY = "suite.recent";
    private static final String JOB = "suite.job.";
    private static final String WORKBENCH = "suite.workbench";
    private static final int MOST = 8;

    private final Settings settings;

    Recent(Settings settings) {
        this.settings = settings;
    }

    /** The last one first; those that are gone are left out. */
    List<Path> workspaces() {
        return settings.get(KEY)
                .orElse("")
                .lines()
                .flatMap(line -> there(line).stream())
                .toList();
    }

    /** A settings file may come from another system; what is no path here is left out. */
    private static Optional<Path> there(String line) {
        try {
            return Optional.of(Path.of(line))
                    .filter(path -> !line.isBlank() && Files.isRegularFile(path.resolve("shop.json")));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    void opened(Path workspace) {
        List<Path> all = new ArrayList<>(workspaces());
        Path absolute = workspace.toAbsolutePath().normalize();
        all.remove(absolute);
        all.add(0, absolute);
        settings.put(
                KEY,
                String.join("\n", all.stream().limit(MOST).map(Path::toString).toList()));
    }

    void left(Path workspace, Optional<String> job, String workbench) {
        job.ifPresent(id -> settings.put(JOB + workspace, id));
        if (!workbench.isEmpty()) {
            settings.put(WORKBENCH, workbench);
        }
    }

    Optional<String> job(Path workspace) {
        return settings.get(JOB + workspace.toAbsolutePath().normalize());
    }

    Optional<String> workbench() {
        return settings.get(WORKBENCH);
    }
}
