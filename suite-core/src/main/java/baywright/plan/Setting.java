package baywright.plan;

import baywright.library.Library;
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
 */
public record Setting(Library library, Shape shape, Survey survey, List<Bay> bays, LocalDateTime start) {
    public Setting {
        bays = List.copyOf(bays);
    }
}
