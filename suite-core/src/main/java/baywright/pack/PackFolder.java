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
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * A pack as a plain folder, for version control: the same files under the same names. Beside them only what git keeps at the root may
 * lie there.
 */
public final class PackFolder {

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
        PackGathering files = new PackGathering(name);
        try {
            for (Path path : list(name, folder)) {
                String shown = folder.relativize(path)
                        .toString()
                        .replace(path.getFileSystem().getSeparator(), "/");
                files.add(shown, kind(path), most -> bytes(path, most));
            }
        } catch (IOException e) {
            throw new PackRefused(name, Refusal.UNREADABLE, PackFile.reason(e));
        }
        return files.judged();
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
        return !PackGathering.isOfGit(below.getName(0).toString());
    }

    private static PackGathering.Kind kind(Path path) {
        if (Files.isSymbolicLink(path)) {
            return PackGathering.Kind.LINK;
        }
        return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                ? PackGathering.Kind.FILE
                : PackGathering.Kind.OTHER;
    }

    private static byte[] bytes(Path path, int most) throws IOException {
        try (InputStream in = Files.newInputStream(path, LinkOption.NOFOLLOW_LINKS)) {
            return in.readNBytes(most + 1);
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
