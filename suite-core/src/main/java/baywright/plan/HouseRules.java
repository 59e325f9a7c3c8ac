package baywright.plan;

import java.util.Map;

/**
 * What a shop makes of the library's rules.
 *
 * @param softened ids of rules that speak one degree more mildly, each with the shop's reason for it
 * @param off      ids of rules that only note, each with the shop's reason for it
 */
public record HouseRules(Map<String, String> softened, Map<String, String> off) {

    /** Rules as they are. */
    public static final HouseRules USUAL = new HouseRules(Map.of(), Map.of());

    public HouseRules {
        softened = Map.copyOf(softened);
        off = Map.copyOf(off);
    }
}
