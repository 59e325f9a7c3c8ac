package baywright.money;

import java.time.LocalDateTime;

/**
 * What a quote was proved with; an update of the library or of the price list never moves a quote.
 *
 * @param library SHA-256 of the library's texts
 * @param inputs  SHA-256 of vehicle, survey, bays, plan and terms
 * @param at      when it was proved, local time of the site
 */
public record ProofRecord(String library, String inputs, LocalDateTime at) {}
