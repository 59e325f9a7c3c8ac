package baywright.script;

import java.util.List;

/** Thrown while a value is worked out and caught where its statement or argument begins. */
final class Fault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Place place;
    private final String code;
    private final boolean dependsOnValue;

    private Fault(Place place, String code, String message, boolean dependsOnValue) {
        super(message, null, false, false);
        this.place = place;
        this.code = code;
        this.dependsOnValue = dependsOnValue;
    }

    /** Wrong whatever the inputs are. */
    static Fault of(Place place, String code, String message) {
        return new Fault(place, code, message, false);
    }

    /** Wrong for these values; with other inputs or facts it might be right. */
    static Fault ofValue(Place place, String message, List<Value> involved) {
        boolean depends = involved.stream().anyMatch(v -> !v.from().isEmpty());
        return new Fault(place, "bad-value", message, depends);
    }

    /** Already noted elsewhere; only ends what cannot go on. */
    static Fault silent() {
        return new Fault(Place.ofFile(""), "", "", false);
    }

    boolean isSilent() {
        return code.isEmpty();
    }

    Place place() {
        return place;
    }

    String code() {
        return code;
    }

    boolean dependsOnValue() {
        return dependsOnValue;
    }
}
