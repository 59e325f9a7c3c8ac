package baywright.workspace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The fixture workspace, copied to a folder where a test may spoil it. */
final class Mill {

    static final String JOB = "jobs/green-estate/job.json";
    static final String READINGS = "jobs/green-estate/readings.csv";

    /** Where the fixture lies in the test sources. */
    static final Path TEMPLATE = Path.of("src", "test", "resources", "baywright", "workspace", "mill");

    private final Path root;

    private Mill(Path root) {
        this.root = root;
    }

    static Mill in(Path folder) {
        Path root = folder.resolve("mill");
        Workspace.create(root, TEMPLATE);
        return new Mill(root);
    }

    Path root() {
        return root;
    }

    Path path(String file) {
        return root.resolve(file);
    }

    String text(String file) {
        try {
            return Files.readString(path(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Mill write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    Mill write(String file, byte[] bytes) {
        try {
            Files.createDirectories(path(file).getParent());
            Files.write(path(file), bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Mill replace(String file, String from, String to) {
        return write(file, text(file).replace(from, to));
    }

    Workspace open() {
        return Workspace.open(root);
    }
}
