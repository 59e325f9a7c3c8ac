package baywright.pack;

import baywright.workspace.JsonText;
import baywright.workspace.SharedItems;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Files from somewhere, whether of an archive or of a folder, to a {@link Pack}. */
final class PackContent {

    private final String pack;
    private final SortedMap<String, byte[]> files;

    private PackContent(String pack, SortedMap<String, byte[]> files) {
        this.pack = pack;
        this.files = files;
    }

    /**
     * Judges all files of a pack.
     *
     * @param pack  what messages call it
     * @param files by path, manifest and signature too
     * @throws PackRefused with the first thing that is wrong
     */
    static Pack judge(String pack, SortedMap<String, byte[]> files) {
        return new PackContent(pack, files).judged();
    }

    private PackRefused refused(Refusal refusal, Object... values) {
        return new PackRefused(pack, refusal, values);
    }

    private PackRefused refused(PackPath.Fault fault) {
        return refused(fault.refusal(), fault.values());
    }

    private Pack judged() {
        for (String path : files.keySet()) {
            PackPath.fault(path).ifPresent(fault -> {
                throw refused(fault);
            });
        }
        PackPath.clash(files.keySet()).ifPresent(fault -> {
            throw refused(fault);
        });
        long size = files.values().stream().mapToLong(bytes -> bytes.length).sum();
        if (size > PackZip.LARGEST_IN_ALL) {
            throw refused(Refusal.LARGE_IN_ALL, PackZip.LARGEST_IN_ALL >> 20);
        }
        byte[] manifestBytes = files.get(Pack.MANIFEST);
        if (manifestBytes == null) {
            throw refused(Refusal.MANIFEST_MISSING);
        }
        Manifest manifest = ManifestJson.read(pack, manifestBytes);
        Optional<PackSignature> signature =
                Optional.ofNullable(files.get(Pack.SIGNATURE)).map(bytes -> PackSignature.read(pack, bytes));
        if (signature.isPresent() && !signature.get().isOf(manifestBytes)) {
            throw refused(Refusal.SIGNATURE_WRONG);
        }
        Map<String, byte[]> content = new HashMap<>(files);
        content.keySet().removeAll(Arrays.asList(Pack.MANIFEST, Pack.SIGNATURE));
        judge(manifest, content);
        judgeItems(manifest, content);
        return new Pack(manifest, manifestBytes, signature, content);
    }

    private void judge(Manifest manifest, Map<String, byte[]> content) {
        Map<String, byte[]> unlisted = new HashMap<>(content);
        for (Manifest.Entry entry : manifest.files()) {
            String shown = PackPath.shown(entry.path());
            if (!PackPath.isKnown(entry.path())) {
                throw refused(Refusal.FILE_KIND, shown);
            }
            byte[] bytes = unlisted.remove(entry.path());
            if (bytes == null) {
                throw refused(Refusal.FILE_MISSING, shown);
            }
            if (bytes.length != entry.bytes()) {
                throw refused(Refusal.FILE_SIZE, shown, bytes.length, entry.bytes());
            }
            if (!Sha256.of(bytes).equals(entry.sha256())) {
                throw refused(Refusal.FILE_HASH, shown);
            }
            if (!isText(bytes)) {
                throw refused(Refusal.FILE_TEXT, shown);
            }
        }
        unlisted.keySet().stream().min(PackPath.ORDER).ifPresent(path -> {
            throw refused(Refusal.FILE_UNLISTED, PackPath.shown(path));
        });
    }

    private static boolean isText(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private void judgeItems(Manifest manifest, Map<String, byte[]> content) {
        byte[] bytes = content.get(Pack.ITEMS);
        if (bytes == null) {
            return;
        }
        JsonText<SharedItems> read = SharedItems.read(Pack.ITEMS, bytes);
        SharedItems items = read.value()
                .orElseThrow(() -> refused(
                        Refusal.FILE_UNREADABLE, read.error().orElseThrow().toString()));
        if (items.currency().isPresent() && !manifest.prices()) {
            throw refused(Refusal.PRICES);
        }
    }
}
