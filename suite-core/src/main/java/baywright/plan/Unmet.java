package baywright.plan;

import java.util.Objects;

/**
 * What was wanted and is not in a composed plan.
 *
 * @param wish the wish, with the zones on which it is not granted
 * @param why  what stands against it
 */
public record Unmet(Wish wish, Hindrance why) {
    public Unmet {
        Objects.requireNonNull(wish, "wish");
        Objects.requireNonNull(why, "why");
    }
}
