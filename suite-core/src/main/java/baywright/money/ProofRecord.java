package baywright.money;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a quote was proved with; an update of the library or of the price list never moves a quote.
 *
 * @param library SHA-256 of the library's texts
 * @param inputs  SHA-256 of vehicle, survey, bays, limits and rules of the shop, plan and terms
 * @param at      when it was proved, local time of the site
 * @param softened rules that spoke more mildly than the library has them, by id with the shop's reason
 */
public record ProofRecord(String library, String inputs, LocalDateTime at, Map<String, String> softened) {
    public ProofRecord {
        softened = Collections.unmodifiableMap(new TreeMap<>(softened));
    }
}
