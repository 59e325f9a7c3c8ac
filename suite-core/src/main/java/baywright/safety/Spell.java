package baywright.safety;

import java.time.LocalDateTime;
import java.util.List;

/**
 * A step's work on a day by a timetable.
 *
 * @param step   id of the step
 * @param from   when it begins or goes on
 * @param to     when it ends or is broken off, on the same day or at its midnight
 * @param share  of the step's hands-on time, above 0 to 1
 * @param people ids of who does it; empty: nobody was named
 * @param bay    id of the bay; empty: anywhere
 */
public record Spell(String step, LocalDateTime from, LocalDateTime to, double share, List<String> people, String bay) {
    public Spell {
        people = List.copyOf(people);
        if (to.isBefore(from) || !(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a spell ends after it begins and has a share above 0 to 1, got " + from
                    + ", " + to + ", " + share);
        }
    }
}
