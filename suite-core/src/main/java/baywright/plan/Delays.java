package baywright.plan;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * When work may be done that a rule forbids on the first days, such as wax on fresh paint.
 *
 * @param mornings moments at which such work may begin, local time of the site, the first first
 * @param done     when all work must be done; empty: nothing is put off, as nobody has said how long the vehicle may stay
 */
public record Delays(List<LocalDateTime> mornings, Optional<LocalDateTime> done) {

    /** Nothing is put off. */
    public static final Delays NONE = new Delays(List.of(), Optional.empty());

    public Delays {
        mornings = List.copyOf(mornings);
    }
}
