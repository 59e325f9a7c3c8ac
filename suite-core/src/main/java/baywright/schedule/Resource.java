package baywright.schedule;

import java.util.List;

/**
 * Something of which there is only so much at a time: a person, a bay, machines of one kind.
 *
 * @param id       stable id
 * @param capacity how much there is, from 0
 * @param absences when there is less; they may overlap
 */
public record Resource(String id, int capacity, List<Absence> absences) {
    public Resource {
        absences = List.copyOf(absences);
        if (capacity < 0) {
            throw new IllegalArgumentException("resource " + id + " needs a capacity from 0, got " + capacity);
        }
    }

    /** So much is missing for a while. */
    public record Absence(Window when, int amount) {
        public Absence {
            if (amount < 1) {
                throw new IllegalArgumentException("an absence counts from 1, got " + amount);
            }
        }
    }

    /** A resource that is always there. */
    public static Resource of(String id, int capacity) {
        return new Resource(id, capacity, List.of());
    }
}
