package baywright.library;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** SHA-256 in hexadecimal (NIST FIPS 180-4). */
final class Hashes {

    private Hashes() {}

    static String of(String text) {
        return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Of everything that a library is made of. */
    static String of(Map<String, String> texts, List<Item> items) {
        MessageDigest digest = digest();
        texts.forEach((name, text) -> {
            update(digest, name);
            update(digest, text);
        });
        update(digest, "items");
        update(digest, items.stream().map(Item::toString).sorted().collect(Collectors.joining("\n")));
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Length first, so that no two lists of texts give the same bytes. */
    private static void update(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
