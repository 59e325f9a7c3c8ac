package baywright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against RFC 8032, section 7.1 (Ed25519) and the examples of NIST for SHA-256. */
class SigningTest {

    /** Secret, public key, message and signature of the tests 1, 2 and 3. */
    @ParameterizedTest
    @CsvSource(
            value = {
                "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60"
                        + "|d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"
                        + "|''"
                        + "|e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
                        + "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
                "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb"
                        + "|3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c"
                        + "|72"
                        + "|92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                        + "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
                "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7"
                        + "|fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025"
                        + "|af82"
                        + "|6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                        + "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"
            },
            delimiter = '|')
    void signaturesAreThoseOfTheStandard(String secret, String signer, String message, String signature) {
        SigningKey key =
                SigningKey.of(Packs.base64(secret), Packs.base64(signer)).orElseThrow();
        byte[] bytes = HexFormat.of().parseHex(message);
        assertThat(HexFormat.of().formatHex(key.signature(bytes))).isEqualTo(signature);
        assertThat(key.signer().hasSigned(bytes, HexFormat.of().parseHex(signature)))
                .isTrue();
    }

    /** Any changed bit of key, message or signature: not valid. */
    @Test
    void noChangedBitIsTakenForSigned() {
        SigningKey key = Packs.key();
        byte[] message = Packs.bytes("a manifest");
        byte[] signature = key.signature(message);
        byte[] signer = Base64.getDecoder().decode(key.signer().toString());
        Random chance = new Random(8032);
        for (int round = 0; round < 100; round++) {
            assertThat(key.signer().hasSigned(flipped(message, chance), signature))
                    .isFalse();
            assertThat(key.signer().hasSigned(message, flipped(signature, chance)))
                    .isFalse();
            assertThat(SignerKey.of(flipped(signer, chance)).hasSigned(message, signature))
                    .isFalse();
        }
        assertThat(key.signer().hasSigned(message, Arrays.copyOf(signature, 63)))
                .isFalse();
    }

    private static byte[] flipped(byte[] bytes, Random chance) {
        byte[] other = bytes.clone();
        other[chance.nextInt(other.length)] ^= (byte) (1 << chance.nextInt(8));
        return other;
    }

    /** NIST, "Cryptographic Standards and Guidelines: Example Values", SHA-256; the empty one from FIPS 180's test vectors. */
    @ParameterizedTest
    @CsvSource({
        "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
                + "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    })
    void hashesAreThoseOfTheStandard(String message, String hash) {
        assertThat(Sha256.of(Packs.bytes(message))).isEqualTo(hash);
    }

    /** The long example of FIPS 180-2, B.3: a million letters a. */
    @Test
    void theLongHashIsThatOfTheStandard() {
        assertThat(Sha256.of(Packs.bytes("a".repeat(1_000_000))))
                .isEqualTo("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    }

    @Test
    void aFreshKeySignsAndIsReadBack() {
        SigningKey key = SigningKey.fresh();
        SigningKey again = SigningKey.of(key.secret(), key.signer().toString()).orElseThrow();
        assertThat(again.signature(Packs.bytes("x"))).isEqualTo(key.signature(Packs.bytes("x")));
        assertThat(SigningKey.fresh().signer()).isNotEqualTo(key.signer());
    }

    @Test
    void halvesOfTwoKeysAreNoKey() {
        assertThat(SigningKey.of(
                        SigningKey.fresh().secret(), Packs.key().signer().toString()))
                .isEmpty();
    }

    @Test
    void aKeyNeverShowsItsSecret() {
        SigningKey key = SigningKey.fresh();
        assertThat(key.toString())
                .doesNotContain(key.secret())
                .contains(key.signer().fingerprint());
    }
}
