package baywright.library;

import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problems;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Things of one kind by id, in order of declaration; a second one with an id is noted and left out. */
final class Declared<T> {

    private final String kind;
    private final Map<String, T> byId = new LinkedHashMap<>();

    Declared(String kind) {
        this.kind = kind;
    }

    void add(T thing, Function<T, String> id, Function<T, Place> place, Problems problems) {
        T before = byId.putIfAbsent(id.apply(thing), thing);
        if (before != null) {
            problems.error(
                    place.apply(thing),
                    "duplicate",
                    kind + " '" + id.apply(thing) + "' is already declared at " + place.apply(before));
        }
    }

    boolean has(String id) {
        return byId.containsKey(id);
    }

    T get(String id) {
        return byId.get(id);
    }

    List<T> all() {
        return List.copyOf(byId.values());
    }

    Collection<String> ids() {
        return byId.keySet();
    }

    /** Notes an id that nothing has. */
    void require(String id, Place place, Problems problems, String word) {
        if (!has(id)) {
            problems.error(
                    place,
                    "unknown-" + kind,
                    "no " + kind + " is called '" + id + "'" + Nearest.hintOrAll(id, ids()),
                    word);
        }
    }
}
