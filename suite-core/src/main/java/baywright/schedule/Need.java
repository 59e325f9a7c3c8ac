package baywright.schedule;

import java.util.List;

/**
 * What an activity takes of the resources while it runs.
 *
 * @param anyOf  indexes of the resources that can serve
 * @param count  how many of them together, from 1
 * @param amount what is taken of each, from 1
 */
public record Need(List<Integer> anyOf, int count, int amount) {
    public Need {
        anyOf = anyOf.stream().distinct().toList();
        if (count < 1 || amount < 1) {
            throw new IllegalArgumentException("a need counts from 1, got " + count + " of " + amount);
        }
    }

    /** So much of one resource. */
    public static Need of(int resource, int amount) {
        return new Need(List.of(resource), 1, amount);
    }
}
