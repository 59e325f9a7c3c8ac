package baywright.pack;

import baywright.library.Item;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.workspace.SharedItems;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Small packs for tests. */
final class Packs {

    static final String STATES = """
            state 'loose-soil', means: 'loose dirt', opposite: 'washed'
            state 'washed', means: 'contact-washed, no loose grit'
            surface 'paint', means: 'painted panels'
            family 'wash', title: 'Washing', setUp: 10.min
            """;

    static final String RINSE = """
            stage('rinse') {
                title 'Rinse'
                family 'wash'
                worksOn 'paint'
                before { needs 'loose-soil', why: 'else there is nothing to rinse off' }
                after { clears 'loose-soil' }
                time { attended 3.min, 4.min, 8.min }
                uses { item 'shampoo', 30.ml }
                hazards { from 'shampoo' }
            }
            """;

    private Packs() {}

    /** The key of the second example of RFC 8032, section 7.1: known to everybody, and so good for tests alone. */
    static SigningKey key() {
        return SigningKey.of(
                        base64("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb"),
                        base64("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c"))
                .orElseThrow();
    }

    static String base64(String hex) {
        return Base64.getEncoder().encodeToString(HexFormat.of().parseHex(hex));
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** What the packs here hold, without manifest and signature. */
    static SortedMap<String, byte[]> content() {
        SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);
        files.put("README.md", bytes("# Gentle wash\n"));
        files.put("items.json", items().bytes());
        files.put("stages/rinse.groovy", bytes(RINSE));
        files.put("stages/states.groovy", bytes(STATES));
        return files;
    }

    static SharedItems items() {
        return SharedItems.of(List.of(shampoo()), Optional.empty());
    }

    static Item shampoo() {
        return new Item(
                "shampoo",
                "Shampoo, neutral",
                Quantity.of(5000, Unit.MILLILITRE),
                new BigDecimal("29"),
                false,
                Optional.empty(),
                List.of("H319"),
                List.of("eye shield"),
                List.of(),
                "30 to 40 ml a car");
    }

    /** What a manifest says of some content. */
    static Manifest manifest(Map<String, byte[]> content) {
        List<Manifest.Entry> entries = new ArrayList<>();
        content.forEach((path, bytes) -> entries.add(new Manifest.Entry(path, Sha256.of(bytes), bytes.length)));
        return new Manifest(
                "gentle-wash",
                Version.of("1.2.0"),
                "Saltmarsh Quay",
                "softer paint needs a softer wash",
                "CC-BY-4.0",
                List.of(),
                "1.3",
                false,
                entries);
    }

    static Manifest manifest(String id, String version, String... needs) {
        List<Manifest.Need> all = new ArrayList<>();
        for (String need : needs) {
            String[] parts = need.split(" ", 2);
            all.add(new Manifest.Need(parts[0], new VersionRange(parts[1])));
        }
        return new Manifest(
                id, Version.of(version), "Saltmarsh Quay", "a test", "CC0-1.0", all, "1.3", false, List.of());
    }

    static Pack of(SortedMap<String, byte[]> content) {
        byte[] manifest = ManifestJson.bytes(manifest(content));
        SortedMap<String, byte[]> files = new TreeMap<>(content);
        files.put(Pack.MANIFEST, manifest);
        return PackContent.judge("gentle-wash", files);
    }

    static Pack unsigned() {
        return of(content());
    }

    static Pack signed() {
        return unsigned().signedBy(key());
    }
}
