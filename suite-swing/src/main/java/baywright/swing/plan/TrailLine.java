package baywright.swing.plan;

import baywright.script.Place;
import baywright.swing.api.Destination;
import java.util.Optional;

/**
 * A line of what a figure comes from.
 *
 * @param text what it says
 * @param to   where that is written, if it can be gone to
 */
record TrailLine(String text, Optional<Destination> to) {

    private static final String STAGES = "stages/";

    static TrailLine of(String text) {
        return new TrailLine(text, Optional.empty());
    }

    static TrailLine of(String text, Destination to) {
        return new TrailLine(text, Optional.of(to));
    }

    /** A line that a script says, named as problems name it. */
    static TrailLine of(String text, Place place) {
        String file = STAGES + place.file();
        return of(Words.of("trail.place", text, file, Integer.toString(place.line())), script(place));
    }

    static Destination script(Place place) {
        return Destination.script(STAGES + place.file(), Math.max(1, place.line()), Math.max(1, place.column()));
    }
}
