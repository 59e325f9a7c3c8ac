package baywright.workspace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;

/** Replaces a file as a whole: whoever reads it meets the old text or the new one, even after a power cut. */
final class AtomicFile {

    private static final String PREFIX = ".saving-";
    private static final String SUFFIX = ".tmp";

    private final Disk disk;

    AtomicFile(Disk disk) {
        this.disk = disk;
    }

    /** Whether a file is what an interrupted save left behind. */
    static boolean isLeftover(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith(PREFIX) && name.endsWith(SUFFIX);
    }

    /** A name for what is being written; when it is still there later, it is a leftover. */
    static String leftover() {
        return PREFIX + UUID.randomUUID() + SUFFIX;
    }

    /**
     * Writes beside the file, waits for the disk, then exchanges the two.
     *
     * @throws IOException when a step fails; the file is then as it was
     */
    void write(Path file, byte[] bytes) throws IOException {
        Path fresh = file.resolveSibling(leftover());
        try {
            disk.write(fresh, bytes);
            if (Files.exists(file)) {
                disk.copyPermissions(file, fresh);
            }
            disk.force(fresh);
            disk.replace(fresh, file);
        } catch (IOException | RuntimeException e) {
            removeQuietly(fresh, e);
            throw e;
        }
        forceFolder(file.getParent());
    }

    private void removeQuietly(Path fresh, Exception cause) {
        try {
            disk.delete(fresh);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /** The new text is in place already; a system that cannot force a folder has still written it. */
    private void forceFolder(Path folder) {
        try {
            disk.forceFolder(folder);
        } catch (IOException e) {
            // Windows and some network file systems refuse to open a folder; nothing more can be done there.
            return;
        }
    }
}
