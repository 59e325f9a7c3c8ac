package baywright.vehicle;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * A part of the vehicle that has its own state.
 *
 * @param id         stable kebab-case id such as {@code front-door-left}
 * @param title      words for people
 * @param surface    id of its kind of surface
 * @param substrate  steel, aluminium, plastic, carbon, glass …; may be empty
 * @param measures   how much of each driver it counts for: {@code m2}, {@code m}, {@code wheel}, {@code pane},
 *                   {@code panel}, {@code seat} …
 * @param neighbours ids of the zones that touch it
 */
public record Zone(
        String id,
        String title,
        String surface,
        String substrate,
        Map<String, BigDecimal> measures,
        List<String> neighbours) {

    public Zone {
        measures = Map.copyOf(measures);
        neighbours = List.copyOf(neighbours);
    }

    /** How much of a driver it counts for; zero when none. */
    public BigDecimal measure(String driver) {
        return measures.getOrDefault(driver, BigDecimal.ZERO);
    }
}
