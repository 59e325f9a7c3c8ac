package baywright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The shop's bays with their conditions as bits. */
final class BayIndex {

    /** A bay and what it gives. */
    static final class Place {
        private final String id;
        private final long[] gives;

        Place(String id, long[] gives) {
            this.id = id;
            this.gives = gives;
        }

        String id() {
            return id;
        }

        long[] gives() {
            return gives;
        }
    }

    private final List<Place> all = new ArrayList<>();
    private final Map<String, List<Place>> byKind = new HashMap<>();

    BayIndex(List<Bay> bays, StateIndex states) {
        for (Bay bay : bays) {
            int[] given = bay.conditions().stream()
                    .mapToInt(states::of)
                    .filter(s -> s >= 0 && Bits.has(states.conditions(), s))
                    .toArray();
            Place place = new Place(bay.id(), states.setOf(given));
            all.add(place);
            bay.kind()
                    .forEach(k ->
                            byKind.computeIfAbsent(k, x -> new ArrayList<>()).add(place));
        }
    }

    /** Bays of a kind in the shop's order; every bay when the kind is empty. */
    List<Place> of(String kind) {
        return kind.isEmpty() ? all : byKind.getOrDefault(kind, List.of());
    }
}
