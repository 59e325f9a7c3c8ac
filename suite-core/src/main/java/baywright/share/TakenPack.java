package baywright.share;

import baywright.pack.Consent;
import baywright.pack.SignerKey;
import baywright.pack.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a site has on record about a pack that it took.
 *
 * @param id      of the pack
 * @param version that was taken
 * @param hash    SHA-256 of its manifest, which stands for its whole content
 * @param signer  whose signature it had
 * @param consent somebody's word for it, where nobody known had signed it
 * @param at      when it was taken
 * @param leftOut names of what it brought and the site did not take, such as {@code stage iron-removal}
 */
public record TakenPack(
        String id,
        Version version,
        String hash,
        Optional<SignerKey> signer,
        Optional<Consent> consent,
        Instant at,
        List<String> leftOut) {

    public TakenPack {
        leftOut = leftOut.stream().sorted().toList();
    }
}
