package baywright.pack;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The files of a pack as somebody meets them who walks a folder or a tree of version control. Each is judged by name, kind and size before
 * its bytes are asked for.
 */
public final class PackGathering {

    /** How deep files may lie; whoever walks need not look deeper. */
    public static final int DEEPEST = PackPath.DEEPEST;

    /** Most bytes that a file has. */
    public static final int LARGEST_FILE = PackZip.LARGEST_FILE;

    /** Most files, manifest and signature too. */
    public static final int MOST_FILES = PackZip.MOST_FILES + 2;

    private static final Set<String> OF_GIT = Set.of(".git", ".gitattributes", ".gitignore");

    private final String pack;
    private final SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);
    private long left = PackZip.LARGEST_IN_ALL;

    /** @param pack what messages call it */
    public PackGathering(String pack) {
        this.pack = pack;
    }

    /** What lies under a name. */
    public enum Kind {
        FILE,
        LINK,
        OTHER
    }

    /** Where a file's bytes come from. */
    @FunctionalInterface
    public interface Bytes {
        /** At most so many bytes and one more, by which it is seen that there are more. */
        byte[] read(int most) throws IOException;
    }

    /** Whether a name at the root is one that git keeps there and a pack does not look at. */
    public static boolean isOfGit(String name) {
        return OF_GIT.contains(name);
    }

    /**
     * Takes a file in.
     *
     * @param path below the pack's root, with {@code /}
     * @throws PackRefused when a pack has no such file or no more files
     * @throws IOException when its bytes cannot be had
     */
    public void add(String path, Kind kind, Bytes bytes) throws IOException {
        if (kind == Kind.LINK) {
            throw new PackRefused(pack, Refusal.ENTRY_LINK, PackPath.shown(path));
        }
        if (kind == Kind.OTHER) {
            throw new PackRefused(pack, Refusal.ENTRY_DEVICE, PackPath.shown(path));
        }
        if (files.size() >= MOST_FILES) {
            throw new PackRefused(pack, Refusal.MANY_FILES, files.size() + 1, PackZip.MOST_FILES);
        }
        byte[] read = bytes.read(LARGEST_FILE);
        if (read.length > LARGEST_FILE) {
            throw new PackRefused(pack, Refusal.ENTRY_LARGE, PackPath.shown(path), LARGEST_FILE >> 20);
        }
        left -= read.length;
        if (left < 0) {
            throw new PackRefused(pack, Refusal.LARGE_IN_ALL, PackZip.LARGEST_IN_ALL >> 20);
        }
        if (files.put(path, read) != null) {
            throw new PackRefused(pack, Refusal.NAME_TWICE, PackPath.shown(path), PackPath.shown(path));
        }
    }

    /**
     * A name out of bytes.
     *
     * @throws PackRefused when they are no UTF-8
     */
    public String name(byte[] utf8) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(utf8))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new PackRefused(pack, Refusal.NAME_BYTES);
        }
    }

    /**
     * Insists that a name is not too deep to be looked into.
     *
     * @throws PackRefused when no file of a pack lies that deep
     */
    public void refuseDeep(String path) {
        if (path.chars().filter(c -> c == '/').count() >= DEEPEST) {
            throw new PackRefused(pack, Refusal.NAME_LONG, PackPath.shown(path), PackPath.LONGEST, PackPath.DEEPEST);
        }
    }

    /** Says that there is more to look through than a pack has. */
    public PackRefused more() {
        return new PackRefused(pack, Refusal.MANY_FILES, MOST_FILES, PackZip.MOST_FILES);
    }

    /**
     * The pack that the files make.
     *
     * @throws PackRefused with the first thing that is wrong
     */
    public Pack judged() {
        return PackContent.judge(pack, files);
    }
}
