package baywright.schedule;

import java.util.List;

/**
 * Something that is taken from the start of the first of some activities to the end of the last, whatever lies between:
 * a bay in which a vehicle stands.
 *
 * @param id         words for a developer
 * @param activities indexes, at least one
 * @param need       what is taken
 */
public record Hold(String id, List<Integer> activities, Need need) {
    public Hold {
        activities = List.copyOf(activities);
        if (activities.isEmpty()) {
            throw new IllegalArgumentException("hold " + id + " needs an activity");
        }
    }
}
