package baywright.plan;

import java.util.List;
import java.util.Optional;

/**
 * One result of proving a plan. The sentence for people is made when it is shown.
 *
 * @param code     stable kebab-case code; {@code docs/findings} has a page for each
 * @param severity how grave it is
 * @param step     id of the step concerned, if one is
 * @param zones    ids of the zones concerned, in the vehicle's order; empty: the whole plan
 * @param reason   what is the matter, as typed data that compares equal when nothing relevant changed
 */
public record Finding(String code, Severity severity, Optional<String> step, List<String> zones, Reason reason) {
    public Finding {
        zones = List.copyOf(zones);
    }
}
