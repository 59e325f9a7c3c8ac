package baywright.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * The right to write a workspace, held by one program at a time. The lock is the operating system's and ends with the
 * program, however that ends; the file's text only says who holds it. The file stays afterwards, empty: deleting it could
 * let two programs hold two locks.
 */
final class WriteLock implements AutoCloseable {

    static final String FILE = ".baywright.lock";

    /** Far behind the text, which others must be able to read while the lock is held. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final int LONGEST_OWNER = 400;

    /** Another program holds it, or another part of this one. */
    static final class Held extends WorkspaceException {
        private static final long serialVersionUID = 1L;

        Held(String message) {
            super(message);
        }
    }

    private final FileChannel channel;

    private WriteLock(FileChannel channel) {
        this.channel = channel;
    }

    /** @throws WorkspaceException when another program holds it, or the folder cannot be written */
    static WriteLock take(Path root) {
        Path file = root.resolve(FILE);
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            return take(channel);
        } catch (IOException e) {
            throw new WorkspaceException(
                    root.getFileName() + ": the workspace cannot be written, " + DiskFault.reason(e)
                            + "; reading works all the same",
                    e);
        }
    }

    private static WriteLock take(FileChannel channel) throws IOException {
        boolean taken = false;
        try {
            FileLock lock = tryLock(channel);
            if (lock == null) {
                throw new Held("the workspace is open for writing elsewhere (" + owner(channel)
                        + "); close it there, or go on here without saving");
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(ourselves().getBytes(StandardCharsets.UTF_8)), 0);
            taken = true;
            return new WriteLock(channel);
        } finally {
            if (!taken) {
                channel.close();
            }
        }
    }

    private static FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, false);
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static String owner(FileChannel channel) throws IOException {
        ByteBuffer text = ByteBuffer.allocate(LONGEST_OWNER);
        channel.read(text, 0);
        String owner = StandardCharsets.UTF_8.decode(text.flip()).toString().strip();
        return owner.isEmpty() ? "by a program that has just started" : "by " + Shown.plain(owner, LONGEST_OWNER);
    }

    private static String ourselves() {
        return System.getProperty("user.name", "someone") + " on " + computer() + ", process "
                + ProcessHandle.current().pid() + ", since " + Instant.now().truncatedTo(ChronoUnit.SECONDS) + "\n";
    }

    /** From the environment: asking the network for our own name can take seconds. */
    private static String computer() {
        String windows = System.getenv("COMPUTERNAME");
        String other = System.getenv("HOSTNAME");
        return windows != null ? windows : other != null ? other : "this computer";
    }

    /** Whether it is still held. */
    boolean isOpen() {
        return channel.isOpen();
    }

    /** Gives the right back. */
    @Override
    public void close() {
        try (channel) {
            channel.truncate(0);
        } catch (IOException e) {
            // Nothing is lost: the lock ends with the channel, and the text is only a note.
            return;
        }
    }
}
