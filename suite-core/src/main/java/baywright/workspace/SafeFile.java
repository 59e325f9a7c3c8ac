package baywright.workspace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Replaces a file of the user's as a whole, for what lies outside of workspaces. */
public final class SafeFile {

    private SafeFile() {}

    /**
     * Writes a file; folders on the way are made. Whoever reads it meets the old content or the new one.
     *
     * @throws IOException when a step fails; the file is then as it was
     */
    public static void replace(Path file, byte[] bytes) throws IOException {
        Path whole = file.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        new AtomicFile(Disk.REAL).write(whole, bytes);
    }
}
