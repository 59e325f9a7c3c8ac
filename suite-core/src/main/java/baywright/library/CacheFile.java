package baywright.library;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One file in a folder of the user's own. What others may have written there is not read. Where the file system has no
 * owners and permissions as POSIX has them, the folder is as safe as the user's profile that it lies in.
 */
final class CacheFile {

    /** Bytes; some ten thousand scripts. */
    static final int MOST = 64 * 1024 * 1024;

    static final String ENDING = ".library";

    /** Libraries in the folder. */
    private static final int KEPT = 20;

    private static final Set<PosixFilePermission> OTHERS_WRITE =
            EnumSet.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private final Path folder;
    private final Path file;

    CacheFile(Path folder, String name) {
        this.folder = folder;
        this.file = folder.resolve(name);
    }

    /**
     * What a look at the file gave.
     *
     * @param bytes its content; empty when there is none or none that may be used
     * @param note  why a file that is there is not used
     */
    record Found(Optional<byte[]> bytes, Optional<String> note) {
        static Found nothing() {
            return new Found(Optional.empty(), Optional.empty());
        }

        static Found refused(String note) {
            return new Found(Optional.empty(), Optional.of(note));
        }
    }

    Path path() {
        return file;
    }

    boolean exists() {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** Of the other libraries in the folder the one that was kept last; empty when there is none or none can be seen. */
    Optional<CacheFile> latestOther() {
        try {
            return byAge().values().stream()
                    .filter(p -> !p.equals(file) && p.toString().endsWith(ENDING))
                    .reduce((older, newer) -> newer)
                    .map(p -> new CacheFile(folder, p.getFileName().toString()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    Found read() {
        if (!exists()) {
            return Found.nothing();
        }
        try {
            Optional<String> trouble = trouble(folder, true);
            if (trouble.isEmpty()) {
                trouble = trouble(file, false);
            }
            if (trouble.isPresent()) {
                return Found.refused(trouble.get());
            }
            try (SeekableByteChannel in =
                    Files.newByteChannel(file, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS))) {
                if (in.size() > MOST) {
                    return Found.refused("it is larger than " + MOST + " bytes");
                }
                ByteBuffer all = ByteBuffer.allocate((int) in.size());
                int got = 0;
                while (got >= 0 && all.hasRemaining()) {
                    got = in.read(all);
                }
                return all.hasRemaining()
                        ? Found.refused("it ends too early")
                        : new Found(Optional.of(all.array()), Optional.empty());
            }
        } catch (IOException e) {
            return Found.refused("it cannot be read");
        }
    }

    /** What speaks against using a file or folder. */
    private static Optional<String> trouble(Path path, boolean isFolder) throws IOException {
        String what = isFolder ? "its folder" : "it";
        boolean plain = isFolder
                ? Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                : Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
        if (!plain) {
            return Optional.of(what + " is a link or no plain " + (isFolder ? "folder" : "file"));
        }
        if (!isPosix()) {
            return Optional.empty();
        }
        PosixFileAttributes attributes =
                Files.readAttributes(path, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (attributes.permissions().stream().anyMatch(OTHERS_WRITE::contains)) {
            return Optional.of("others may write to " + what);
        }
        if (!attributes.owner().equals(user())) {
            return Optional.of(what + " belongs to someone else");
        }
        return Optional.empty();
    }

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    private static UserPrincipal user() throws IOException {
        return FileSystems.getDefault()
                .getUserPrincipalLookupService()
                .lookupPrincipalByName(System.getProperty("user.name"));
    }

    /**
     * Puts this content into the place of whatever is there, all at once.
     *
     * @throws IOException when the folder is not the user's own or the file cannot be written
     */
    void write(byte[] bytes) throws IOException {
        Files.createDirectories(folder.toAbsolutePath().getParent());
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(folder, ownerOnly("rwx------"));
        } else if (isPosix() && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
        Optional<String> trouble = trouble(folder, true);
        if (trouble.isPresent()) {
            throw new IOException(trouble.get());
        }
        tidy();
        Path fresh = Files.createTempFile(folder, "new-", ".tmp", ownerOnly("rw-------"));
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Leaves only the libraries that were kept last. */
    private void tidy() throws IOException {
        Map<FileTime, Path> byAge = byAge();
        int surplus = byAge.size() - KEPT;
        for (Path old : byAge.values().stream().limit(Math.max(surplus, 0)).toList()) {
            if (Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private Map<FileTime, Path> byAge() throws IOException {
        Map<FileTime, Path> byAge = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path one : all.toList()) {
                byAge.put(Files.getLastModifiedTime(one, LinkOption.NOFOLLOW_LINKS), one);
            }
        }
        return byAge;
    }

    private static FileAttribute<?>[] ownerOnly(String permissions) {
        return isPosix()
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
