package baywright.plan;

import baywright.library.Library;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import java.time.LocalDateTime;
import java.util.List;

/**
 * What a plan is proved against and does not change while it is edited.
 *
 * @param library stages, states, items
 * @param shape   the vehicle with its own zones
 * @param survey  what was found on it
 * @param bays    places of the shop with the conditions that they give
 * @param start   when work may begin, local time of the site
 * @param film    what the shop concludes from which film
 * @param house   what the shop makes of the library's rules
 */
public record Setting(
        Library library,
        Shape shape,
        Survey survey,
        List<Bay> bays,
        LocalDateTime start,
        FilmLimits film,
        HouseRules house) {
    public Setting {
        bays = List.copyOf(bays);
    }

    /** A setting with the usual film limits and the library's rules as they are. */
    public Setting(Library library, Shape shape, Survey survey, List<Bay> bays, LocalDateTime start) {
        this(library, shape, survey, bays, start, FilmLimits.USUAL, HouseRules.USUAL);
    }
}
