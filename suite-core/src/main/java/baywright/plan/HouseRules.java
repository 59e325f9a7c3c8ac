package baywright.plan;

import baywright.library.Rule;
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

    /** How gravely a rule speaks in this shop: only notes when it is off, a degree more mildly when it is softened. */
    Rule.Severity of(String rule, Rule.Severity says) {
        if (off.containsKey(rule)) {
            return Rule.Severity.NOTES;
        }
        if (!softened.containsKey(rule)) {
            return says;
        }
        return says == Rule.Severity.FORBIDS ? Rule.Severity.WARNS : Rule.Severity.NOTES;
    }

    /** The shop's reason for being off the rule's own word; empty when it is not. */
    String reason(String rule) {
        return off.getOrDefault(rule, softened.getOrDefault(rule, ""));
    }
}
