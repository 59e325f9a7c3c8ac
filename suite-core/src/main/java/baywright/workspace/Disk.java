package baywright.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** The steps of a save, one by one, so that a test can let each of them fail. */
interface Disk {

    /** The real one. */
    Disk REAL = new Disk() {};

    /** Writes a new file; it must not exist. */
    default void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    /** Gives a file the permissions of another, where the file system knows permissions. */
    default void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old =
                Files.getFileAttributeView(from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (old != null) {
            Files.getFileAttributeView(to, PosixFileAttributeView.class)
                    .setPermissions(old.readAttributes().permissions());
        }
    }

    /** Returns when the file's content has reached the disk. */
    default void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Puts a file in the place of another in one step. */
    default void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Returns when the folder's entries have reached the disk; systems that cannot do this for a folder refuse. */
    default void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    default void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
