package baywright.pack;

import baywright.workspace.JsonText;
import baywright.workspace.SharedItems;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A pack whose files are what its manifest says, and whose signature, if it has one, is right. Whether the signer is known is for
 * {@link TrustList} to say, whether its scripts are sound for {@link PackScripts}.
 */
public final class Pack {

    /** The manifest's file. */
    public static final String MANIFEST = "pack.json";

    /** The signature's file. */
    public static final String SIGNATURE = "signature.json";

    /** The file of the items. */
    public static final String ITEMS = "items.json";

    /** The folder of stage scripts, vehicle shapes and words in other languages. */
    public static final String STAGES = "stages/";

    private final Manifest manifest;
    private final byte[] manifestBytes;
    private final Optional<PackSignature> signature;
    private final SortedMap<String, byte[]> files;

    Pack(Manifest manifest, byte[] manifestBytes, Optional<PackSignature> signature, Map<String, byte[]> files) {
        this.manifest = manifest;
        this.manifestBytes = manifestBytes.clone();
        this.signature = signature;
        SortedMap<String, byte[]> sorted = new TreeMap<>(PackPath.ORDER);
        files.forEach((path, bytes) -> sorted.put(path, bytes.clone()));
        this.files = Collections.unmodifiableSortedMap(sorted);
    }

    /** What the pack says of itself. */
    public Manifest manifest() {
        return manifest;
    }

    /** The manifest as it is signed. */
    public byte[] manifestBytes() {
        return manifestBytes.clone();
    }

    /** SHA-256 of the manifest's bytes: it stands for the whole content, as the manifest has the hash of each file. */
    public String hash() {
        return Sha256.of(manifestBytes);
    }

    /** The signature, which was found right. */
    public Optional<PackSignature> signature() {
        return signature;
    }

    /** Paths of the files that the manifest lists, in order. */
    public Iterable<String> paths() {
        return files.keySet();
    }

    /** A file's bytes. */
    public Optional<byte[]> file(String path) {
        return Optional.ofNullable(files.get(path)).map(byte[]::clone);
    }

    /** The stage scripts by their names below {@link #STAGES}. */
    public SortedMap<String, String> scripts() {
        SortedMap<String, String> scripts = new TreeMap<>();
        files.forEach((path, bytes) -> {
            if (path.endsWith(".groovy")) {
                scripts.put(path.substring(STAGES.length()), new String(bytes, StandardCharsets.UTF_8));
            }
        });
        return scripts;
    }

    /** The items; none where the pack has no such file. */
    public SharedItems items() {
        return file(ITEMS)
                .map(bytes -> SharedItems.read(ITEMS, bytes))
                .flatMap(JsonText::value)
                .orElse(SharedItems.NONE);
    }

    /** Whether a pack has files of this name: scripts, shapes, words, items, a page to read and the licence. */
    public static boolean mayHave(String path) {
        return PackPath.fault(path).isEmpty() && PackPath.isKnown(path);
    }

    /** Every file of the pack, manifest and signature too, in order of path. */
    public SortedMap<String, byte[]> allFiles() {
        SortedMap<String, byte[]> all = new TreeMap<>(files);
        all.put(MANIFEST, manifestBytes);
        signature.ifPresent(s -> all.put(SIGNATURE, s.bytes()));
        return all;
    }

    /** The same pack, signed. */
    public Pack signedBy(SigningKey key) {
        return new Pack(manifest, manifestBytes, Optional.of(key.sign(manifestBytes)), files);
    }

    /** The same pack without its signature. */
    public Pack unsigned() {
        return new Pack(manifest, manifestBytes, Optional.empty(), files);
    }
}
