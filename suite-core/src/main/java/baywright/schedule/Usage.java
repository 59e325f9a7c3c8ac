package baywright.schedule;

import java.util.Map;
import java.util.TreeMap;

/** What is left of a resource at each time. */
final class Usage {

    private final TreeMap<Integer, Integer> left = new TreeMap<>();

    Usage(Resource resource) {
        left.put(0, resource.capacity());
        resource.absences().forEach(a -> take(a.when().from(), a.when().to(), a.amount()));
    }

    private void cut(int minute) {
        left.putIfAbsent(minute, left.floorEntry(minute).getValue());
    }

    /** Takes an amount, or gives it back when it is below 0. */
    void take(int from, int to, int amount) {
        if (from >= to) {
            return;
        }
        cut(from);
        cut(to);
        left.subMap(from, to).replaceAll((minute, value) -> value - amount);
    }

    /** -1 when an amount is free all the time; else the end of the last stretch in which it is not. */
    int blockedUntil(int from, int to, int amount) {
        if (from >= to) {
            return -1;
        }
        for (Map.Entry<Integer, Integer> entry :
                left.headMap(to, false).descendingMap().entrySet()) {
            if (entry.getValue() < amount) {
                Integer next = left.higherKey(entry.getKey());
                int until = next == null ? Hours.END_OF_TIME : next;
                return until <= from ? -1 : until;
            }
            if (entry.getKey() <= from) {
                return -1;
            }
        }
        return -1;
    }
}
