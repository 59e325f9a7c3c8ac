package baywright.pack;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/** SHA-256 (NIST FIPS 180-4) in lower-case hexadecimal. */
public final class Sha256 {

    private static final Pattern HEX = Pattern.compile("[0-9a-f]{64}");

    private Sha256() {}

    /** The hash of some bytes: 64 digits. */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static boolean isHash(String text) {
        return HEX.matcher(text).matches();
    }
}
