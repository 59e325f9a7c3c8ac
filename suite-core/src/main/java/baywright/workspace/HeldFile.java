package baywright.workspace;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** A file that one program, and one part of it, holds at a time. What holds it ends with the program at the latest. */
public final class HeldFile {

    private HeldFile() {}

    /**
     * Holds a file, which is made when it is not there, until the channel is closed.
     *
     * @return empty when somebody holds it already, another part of this program included
     */
    public static Optional<FileChannel> hold(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        boolean taken = false;
        try {
            FileLock lock = channel.tryLock();
            taken = lock != null;
        } catch (OverlappingFileLockException e) {
            // another window of this very program holds it
            taken = false;
        } finally {
            if (!taken) {
                channel.close();
            }
        }
        return taken ? Optional.of(channel) : Optional.empty();
    }
}
