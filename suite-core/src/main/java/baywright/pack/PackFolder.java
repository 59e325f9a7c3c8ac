package baywright.pack;

import baywright.workspace.SafeFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A pack as a plain folder, for version control: the same files under the same names. Beside them only what git keeps at the root may
 * lie there.
 */
public final class PackFolder {

    private static final Set<String> OF_GIT = Set.of(".git", ".gitattributes", ".gitignore");

    private static final String ATTRIBUTES = ".gitattributes";

    /** Line ends stay as they are: the manifest has the hash of each file's bytes. */
    private static final String BYTES_STAY = "* -text\n";

    private PackFolder() {}

    /**
     * Reads a folder; links are refused, not followed.
     *
     * @throws PackRefused when it cannot be read or is no sound pack
     */
    public static Pack read(Path folder) {
        String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);
        long left = PackZip.LARGEST_IN_ALL;
        try {
            for (Path path : list(name, folder)) {
                String shown = folder.relativize(path)
                        .toString()
                        .replace(path.getFileSystem().getSeparator(), "/");
                byte[] bytes = bytes(name, path, shown);
                left -= bytes.length;
                if (left < 0) {
                    throw new PackRefused(name, Refusal.LARGE_IN_ALL, PackZip.LARGEST_IN_ALL >> 20);
                }
                files.put(shown, bytes);
            }
        } catch (IOException e) {
            throw new PackRefused(name, Refusal.UNREADABLE, PackFile.reason(e));
        }
        return PackContent.judge(name, files);
    }

    private static List<Path> list(String name, Path folder) throws IOException {
        try (Stream<Path> walk = Files.find(folder, PackPath.DEEPEST + 1, (path, a) -> isOfPack(folder, path, a))) {
            List<Path> all = walk.limit(PackZip.MOST_FILES + 3L).toList();
            if (all.size() > PackZip.MOST_FILES + 2) {
                throw new PackRefused(name, Refusal.MANY_FILES, all.size(), PackZip.MOST_FILES);
            }
            return all;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static boolean isOfPack(Path folder, Path path, BasicFileAttributes attributes) {
        if (attributes.isDirectory()) {
            return false;
        }
        Path below = folder.relativize(path);
        return !OF_GIT.contains(below.getName(0).toString());
    }

    private static byte[] bytes(String name, Path path, String shown) throws IOException {
        if (Files.isSymbolicLink(path)) {
            throw new PackRefused(name, Refusal.ENTRY_LINK, PackPath.shown(shown));
        }
        if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
            throw new PackRefused(name, Refusal.ENTRY_DEVICE, PackPath.shown(shown));
        }
        try (InputStream in = Files.newInputStream(path, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes(PackZip.LARGEST_FILE + 1);
            if (bytes.length > PackZip.LARGEST_FILE) {
                throw new PackRefused(name, Refusal.ENTRY_LARGE, PackPath.shown(shown), PackZip.LARGEST_FILE >> 20);
            }
            return bytes;
        }
    }

    /**
     * Writes a pack's files into a folder, and takes away those of an earlier version that it no longer has. What git keeps there
     * stays.
     *
     * @param folder missing, empty, or a pack's folder
     * @throws PackRefused when something else lies in the folder; nothing is then written
     * @throws IOException when a step fails; writing again mends what is half written
     */
    public static void write(Pack pack, Path folder) throws IOException {
        SortedMap<String, byte[]> files = pack.allFiles();
        if (Files.isDirectory(folder)) {
            String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
            for (Path path : list(name, folder)) {
                String shown = folder.relativize(path)
                        .toString()
                        .replace(path.getFileSystem().getSeparator(), "/");
                boolean ours = shown.equals(Pack.MANIFEST) || shown.equals(Pack.SIGNATURE) || PackPath.isKnown(shown);
                if (!ours || Files.isSymbolicLink(path)) {
                    throw new PackRefused(name, Refusal.FILE_KIND, PackPath.shown(shown));
                }
            }
            for (Path path : list(name, folder)) {
                String shown = folder.relativize(path)
                        .toString()
                        .replace(path.getFileSystem().getSeparator(), "/");
                if (!files.containsKey(shown)) {
                    Files.delete(path);
                }
            }
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            SafeFile.replace(folder.resolve(file.getKey()), file.getValue());
        }
        if (Files.notExists(folder.resolve(ATTRIBUTES))) {
            SafeFile.replace(folder.resolve(ATTRIBUTES), BYTES_STAY.getBytes(StandardCharsets.UTF_8));
        }
    }
}
