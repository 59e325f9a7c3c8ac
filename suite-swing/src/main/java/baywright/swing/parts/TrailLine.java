package baywright.swing.parts;

import baywright.script.Place;
import baywright.swing.api.Destination;
import baywright.swing.api.Texts;
import java.util.Optional;

/**
 * A line of what a figure comes from.
 *
 * @param text what it says
 * @param to   where that is written, if it can be gone to
 */
public record TrailLine(String text, Optional<Destination> to) {

    static final Texts TEXTS = Texts.beside(TrailLine.class, "texts");
    private static final String STAGES = "stages/";

    /** One that is written nowhere. */
    public static TrailLine of(String text) {
        return new TrailLine(text, Optional.empty());
    }

    /** One that can be gone to. */
    public static TrailLine of(String text, Destination to) {
        return new TrailLine(text, Optional.of(to));
    }

    /** A line that a script says, named as problems name it. */
    public static TrailLine of(String text, Place place) {
        String file = STAGES + place.file();
        return of(TEXTS.of("trail.place", text, file, Integer.toString(place.line())), script(place));
    }

    /** Where a script says it. */
    public static Destination script(Place place) {
        return Destination.script(STAGES + place.file(), Math.max(1, place.line()), Math.max(1, place.column()));
    }
}
