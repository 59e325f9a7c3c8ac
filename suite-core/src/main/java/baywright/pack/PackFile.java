package baywright.pack;

import baywright.workspace.SafeFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A pack as one file. Reading writes nothing and believes nothing; see {@code docs/packs.md} for the format. */
public final class PackFile {

    private PackFile() {}

    /**
     * Reads a pack's file or folder.
     *
     * @throws PackRefused when it cannot be read or is no sound pack
     */
    public static Pack readAny(Path path) {
        return Files.isDirectory(path) ? PackFolder.read(path) : read(path);
    }

    /**
     * Reads a pack.
     *
     * @throws PackRefused when it cannot be read or is no sound pack
     */
    public static Pack read(Path file) {
        String name = String.valueOf(file.getFileName());
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(PackZip.LARGEST_ARCHIVE + 1);
        } catch (IOException e) {
            throw new PackRefused(name, Refusal.UNREADABLE, reason(e));
        }
        return read(name, bytes);
    }

    /**
     * Reads a pack out of memory.
     *
     * @param name what messages call it
     * @throws PackRefused when it is no sound pack
     */
    public static Pack read(String name, byte[] bytes) {
        if (bytes.length > PackZip.LARGEST_ARCHIVE) {
            throw new PackRefused(name, Refusal.LARGE, PackZip.LARGEST_ARCHIVE >> 20);
        }
        return PackContent.judge(name, PackZip.read(name, bytes));
    }

    static String reason(IOException e) {
        return e instanceof NoSuchFileException
                ? "it is not there"
                : e instanceof AccessDeniedException
                        ? "this user may not read it"
                        : String.valueOf(e.getMessage()).lines().findFirst().orElse("the disk gave no reason");
    }

    /** The file of a pack: the same pack gives the same bytes on every machine. */
    public static byte[] bytes(Pack pack) {
        return PackZip.write(pack.allFiles());
    }

    /**
     * Writes a pack; whoever reads the file meets the old one or the new one.
     *
     * @throws IOException when a step fails; the file is then as it was
     */
    public static void write(Pack pack, Path file) throws IOException {
        SafeFile.replace(file, bytes(pack));
    }
}
