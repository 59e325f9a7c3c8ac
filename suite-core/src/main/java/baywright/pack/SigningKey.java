package baywright.pack;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/** Both halves of a site's key. It never shows its secret but to the file that keeps it. */
public final class SigningKey {

    private static final int LENGTH = 32;

    /** What stands before the 32 bytes in the form that Java reads and writes (RFC 8410, section 7). */
    private static final byte[] PKCS8 = HexFormat.of().parseHex("302e020100300506032b657004220420");

    /** What is signed once to see that the two halves are of one key. */
    private static final byte[] TRIAL = {1};

    private final byte[] secret;
    private final SignerKey signer;

    private SigningKey(byte[] secret, SignerKey signer) {
        this.secret = secret;
        this.signer = signer;
    }

    /** A fresh key, from the system's secure source of chance. */
    public static SigningKey fresh() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            byte[] secret = tail(pair.getPrivate().getEncoded());
            return new SigningKey(secret, SignerKey.of(tail(pair.getPublic().getEncoded())));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java from 15 on has Ed25519", e);
        }
    }

    private static byte[] tail(byte[] encoded) {
        return Arrays.copyOfRange(encoded, encoded.length - LENGTH, encoded.length);
    }

    /** The key of two texts in Base64; empty when they are none or do not belong together. */
    static Optional<SigningKey> of(String secret, String signer) {
        Optional<byte[]> bytes = SignerKey.base64(secret, LENGTH);
        Optional<SignerKey> other = SignerKey.of(signer);
        if (bytes.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        SigningKey key = new SigningKey(bytes.get(), other.get());
        return key.signer.hasSigned(TRIAL, key.signature(TRIAL)) ? Optional.of(key) : Optional.empty();
    }

    /** The half that others may know. */
    public SignerKey signer() {
        return signer;
    }

    String secret() {
        return Base64.getEncoder().encodeToString(secret);
    }

    PackSignature sign(byte[] manifest) {
        return new PackSignature(signer, Base64.getEncoder().encodeToString(signature(manifest)));
    }

    /** 64 bytes; the same message gives the same ones. */
    byte[] signature(byte[] message) {
        try {
            byte[] encoded = Arrays.copyOf(PKCS8, PKCS8.length + LENGTH);
            System.arraycopy(secret, 0, encoded, PKCS8.length, LENGTH);
            PrivateKey key = KeyFactory.getInstance("Ed25519").generatePrivate(new PKCS8EncodedKeySpec(encoded));
            Signature sign = Signature.getInstance("Ed25519");
            sign.initSign(key);
            sign.update(message);
            return sign.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("any 32 bytes are a secret of Ed25519", e);
        }
    }

    /** Tells the public half alone. */
    @Override
    public String toString() {
        return "key of " + signer.fingerprint();
    }
}
