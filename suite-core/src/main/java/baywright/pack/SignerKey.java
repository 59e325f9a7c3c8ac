package baywright.pack;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.SignatureException;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/** The public half of a site's key: 32 bytes of Ed25519 (RFC 8032), written in Base64 (RFC 4648, section 4). */
public final class SignerKey {

    private static final int LENGTH = 32;
    private static final int SIGNATURE_LENGTH = 64;

    /** What stands before the 32 bytes in the form that Java reads (RFC 8410, section 4). */
    private static final byte[] X509 = HexFormat.of().parseHex("302a300506032b6570032100");

    private final byte[] bytes;

    private SignerKey(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The key that a text of 44 characters means; empty for another text. */
    public static Optional<SignerKey> of(String text) {
        return base64(text, LENGTH).map(SignerKey::new);
    }

    static SignerKey of(byte[] bytes) {
        return new SignerKey(bytes.clone());
    }

    /** The bytes of a text that is written as Base64 writes them and no other way. */
    static Optional<byte[]> base64(String text, int length) {
        try {
            byte[] bytes = Base64.getDecoder().decode(text);
            boolean exact = Base64.getEncoder().encodeToString(bytes).equals(text);
            return exact && bytes.length == length ? Optional.of(bytes) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether a signature is this key's over some bytes. */
    boolean hasSigned(byte[] message, byte[] signature) {
        if (signature.length != SIGNATURE_LENGTH) {
            return false;
        }
        try {
            Signature check = Signature.getInstance("Ed25519");
            check.initVerify(publicKey());
            check.update(message);
            return check.verify(signature);
        } catch (SignatureException e) {
            return false; // a signature of another form than one of this key
        } catch (GeneralSecurityException e) {
            return false; // 32 bytes that are no point of the curve
        }
    }

    private PublicKey publicKey() throws GeneralSecurityException {
        byte[] encoded = Arrays.copyOf(X509, X509.length + LENGTH);
        System.arraycopy(bytes, 0, encoded, X509.length, LENGTH);
        return KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(encoded));
    }

    /** The first 16 digits of the SHA-256 of its bytes in groups of four, for people who compare two keys by ear. */
    public String fingerprint() {
        String hash = Sha256.of(bytes);
        return String.join(
                "-", hash.substring(0, 4), hash.substring(4, 8), hash.substring(8, 12), hash.substring(12, 16));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SignerKey key && Arrays.equals(bytes, key.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    /** The key in Base64. */
    @Override
    public String toString() {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
