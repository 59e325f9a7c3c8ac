package baywright.safety;

import java.util.Optional;

/** Dangers that stay on a plan until a named person answers for them. */
public enum Caution {
    AIRBAG("airbag", "airbags"),
    HIGH_VOLTAGE("high-voltage", "high voltage"),
    HYDROFLUORIC("hydrofluoric", "hydrofluoric acid"),
    JACKS("jacks", "jacks and stands"),
    OLD_LININGS("old-linings", "unknown dust of brake linings, possibly asbestos"),
    OLD_PAINT("old-paint", "dust of old paint, possibly with lead"),
    TWO_PACK("two-pack", "two-pack products with isocyanates"),
    UNKNOWN_DUST("unknown-dust", "dust of paint that nobody knows, possibly with lead or chromate");

    private final String id;
    private final String title;

    Caution(String id, String title) {
        this.id = id;
        this.title = title;
    }

    /** What an acknowledgement in a job's file names. */
    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    /** The library's rule that asks for the same signature: it speaks alone while nobody has signed. */
    Optional<String> rule() {
        return this == HIGH_VOLTAGE ? Optional.of("high-voltage-engine-bay") : Optional.empty();
    }

    /** The surveyed fact that a named person's answer for this danger makes true, so that nobody signs twice. */
    public Optional<String> fact() {
        return this == HIGH_VOLTAGE ? Optional.of("trained-signed") : Optional.empty();
    }
}
