package baywright.pack;

import java.util.Comparator;
import java.util.List;

/**
 * What a pack says of itself.
 *
 * @param id         stable kebab-case id
 * @param version    by Semantic Versioning
 * @param who        the site or person who made it, in words
 * @param why        what it is for or what changed, in words
 * @param licence    under which it may be used: an SPDX licence expression such as {@code CC-BY-4.0}, or words
 * @param needs      packs without which it cannot be used, in order of id
 * @param vocabulary version of the stage language it was written with
 * @param prices     whether its items carry the prices of the site that made it
 * @param files      every file but the manifest and the signature, in order of path
 */
public record Manifest(
        String id,
        Version version,
        String who,
        String why,
        String licence,
        List<Need> needs,
        String vocabulary,
        boolean prices,
        List<Entry> files) {

    /**
     * A pack that must be there.
     *
     * @param id    of the pack
     * @param range which of its versions will do
     */
    public record Need(String id, VersionRange range) {
        @Override
        public String toString() {
            return id + " " + range;
        }
    }

    /**
     * A file of the pack.
     *
     * @param path   below the pack's root, with {@code /}
     * @param sha256 of its bytes
     * @param bytes  how many they are
     */
    public record Entry(String path, String sha256, int bytes) {}

    public Manifest {
        needs = needs.stream().sorted(Comparator.comparing(Need::id)).toList();
        files = files.stream()
                .sorted(Comparator.comparing(Entry::path, PackPath.ORDER))
                .toList();
    }

    /**
     * What a manifest's bytes say.
     *
     * @param pack what messages call it
     * @throws PackRefused with the first thing that is wrong
     */
    public static Manifest read(String pack, byte[] bytes) {
        return ManifestJson.read(pack, bytes);
    }

    /** Id and version in one word: {@code gentle-wash@1.2.0}. */
    public String name() {
        return id + "@" + version;
    }
}
