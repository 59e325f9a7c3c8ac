package baywright.script;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Locals of one pair of braces and, behind them, those around it. A local gets its value once. */
public final class Scope {

    /** Stands for a local whose value could not be worked out; whoever reads it stays silent. */
    private static final Object BROKEN = new Object();

    private final Optional<Scope> outer;
    private final Map<String, Value> locals = new LinkedHashMap<>();
    private final Map<String, Place> places = new LinkedHashMap<>();

    private Scope(Optional<Scope> outer) {
        this.outer = outer;
    }

    /** A scope with nothing around it. */
    public static Scope outermost() {
        return new Scope(Optional.empty());
    }

    /** A scope inside this one. */
    public Scope inner() {
        return new Scope(Optional.of(this));
    }

    Optional<Value> find(String name) {
        Value own = locals.get(name);
        return own != null ? Optional.of(own) : outer.flatMap(o -> o.find(name));
    }

    void define(String name, Value value, Place place) {
        locals.put(name, value);
        places.put(name, place);
    }

    void defineBroken(String name, Place place) {
        define(name, Value.of(BROKEN, place), place);
    }

    /** Where a local was defined, which must be known. */
    Place placeOf(String name) {
        Place own = places.get(name);
        return own != null ? own : outer.orElseThrow().placeOf(name);
    }

    static boolean isBroken(Value value) {
        return value.raw() == BROKEN;
    }

    Set<String> names() {
        Set<String> all = new TreeSet<>(locals.keySet());
        outer.ifPresent(o -> all.addAll(o.names()));
        return all;
    }
}
