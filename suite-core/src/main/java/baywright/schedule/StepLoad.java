package baywright.schedule;

import java.util.Map;
import java.util.TreeMap;

/**
 * What a step does to those who do it and to its bay, as shares of what a day allows; a day of just 1 is still allowed.
 *
 * @param people how many do it or take turns at it, from 1
 * @param person what each of so many takes in, by kind
 * @param bays   what the air of a bay takes in, by bay id
 */
public record StepLoad(int people, Map<String, Double> person, Map<String, Double> bays) {
    public StepLoad {
        person = java.util.Collections.unmodifiableMap(new TreeMap<>(person));
        bays = java.util.Collections.unmodifiableMap(new TreeMap<>(bays));
        boolean sound = java.util.stream.Stream.concat(person.values().stream(), bays.values().stream())
                .allMatch(s -> s >= 0 && Double.isFinite(s));
        if (people < 1 || !sound) {
            throw new IllegalArgumentException(
                    "a step's load needs people from 1 and shares from 0, got " + people + ", " + person + ", " + bays);
        }
    }
}
