package baywright.script;

/** Thrown when a script has used up its steps; ends the whole evaluation. */
final class Exhausted extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Place place;

    Exhausted(Place place, String message) {
        super(message, null, false, false);
        this.place = place;
    }

    Place place() {
        return place;
    }
}
