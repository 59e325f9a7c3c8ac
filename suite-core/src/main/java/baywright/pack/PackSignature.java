package baywright.pack;

import baywright.workspace.JsonText;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * A signature over the exact bytes of a manifest. It names no signer: who a key belongs to is told by the trust list alone.
 *
 * @param signer    whose key it is said to be
 * @param signature 64 bytes in Base64
 */
public record PackSignature(SignerKey signer, String signature) {

    static final String KIND = "pack-signature";
    static final int VERSION = 1;

    private static final int LENGTH = 64;

    /** The file; there is one way to write it. */
    byte[] bytes() {
        return ("{\n  \"schema\": \"baywright/" + KIND + "/" + VERSION
                        + "\",\n  \"algorithm\": \"Ed25519\",\n  \"publicKey\": \"" + signer
                        + "\",\n  \"signature\": \"" + signature + "\"\n}\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** @throws PackRefused when the file is no signature or not written in the one way */
    static PackSignature read(String pack, byte[] file) {
        JsonText<PackSignature> read = JsonText.read(Pack.SIGNATURE, file, KIND, VERSION, in -> {
            String algorithm = in.text("algorithm");
            if (!algorithm.equals("Ed25519")) {
                in.refuse("algorithm", "this algorithm is not known here", "give \"Ed25519\"");
            }
            Optional<SignerKey> key = SignerKey.of(in.text("publicKey"));
            if (key.isEmpty()) {
                in.refuse("publicKey", "this is no key", "give 32 bytes in Base64");
            }
            String signature = in.text("signature");
            if (SignerKey.base64(signature, LENGTH).isEmpty()) {
                in.refuse("signature", "this is no signature", "give 64 bytes in Base64");
            }
            return in.whenSound(() -> new PackSignature(key.orElseThrow(), signature));
        });
        PackSignature signature = read.value()
                .orElseThrow(() -> new PackRefused(
                        pack,
                        Refusal.FILE_UNREADABLE,
                        read.error().orElseThrow().toString()));
        if (!Arrays.equals(signature.bytes(), file)) {
            throw new PackRefused(pack, Refusal.SIGNATURE_FORM);
        }
        return signature;
    }

    boolean isOf(byte[] manifest) {
        return signer.hasSigned(manifest, SignerKey.base64(signature, LENGTH).orElseThrow());
    }
}
