package baywright.pack;

/** Where a pack comes from, as far as a site's trust list knows. */
public sealed interface Standing {

    /** Signed by somebody on the list. */
    record Known(TrustList.Trusted signer) implements Standing {}

    /** Signed with a key that is not on the list. */
    record Unknown(SignerKey signer) implements Standing {}

    /** Signed by nobody. */
    record Unsigned() implements Standing {}

    /** Whether the pack may be used without anybody's word for it. */
    default boolean isKnown() {
        return this instanceof Known;
    }

    /**
     * Insists on a known signer.
     *
     * @param pack what messages call the pack
     * @throws PackRefused when nobody known has signed it
     */
    default void refuseUnknown(String pack) {
        if (this instanceof Unsigned) {
            throw new PackRefused(pack, Refusal.UNSIGNED);
        }
        if (this instanceof Unknown unknown) {
            throw new PackRefused(pack, Refusal.UNKNOWN_SIGNER, unknown.signer().fingerprint());
        }
    }
}
