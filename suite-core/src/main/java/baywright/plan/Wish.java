package baywright.plan;

import java.util.List;
import java.util.Objects;

/**
 * An end state that the customer or the shop wants.
 *
 * @param state    id of the state that is to hold when all is done
 * @param zones    where, written as a step writes its zones; a state of the vehicle as a whole names the zones whose work
 *                 it concerns, or {@code vehicle} for all that is worked on
 * @param priority how it is weighed against the others
 */
public record Wish(String state, List<String> zones, Step.Priority priority) {
    public Wish {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(priority, "priority");
        zones = List.copyOf(zones);
        if (zones.isEmpty()) {
            throw new IllegalArgumentException("a wish for '" + state + "' needs a zone");
        }
    }

    public static Wish must(String state, String... zones) {
        return new Wish(state, List.of(zones), Step.Priority.MUST);
    }
}
