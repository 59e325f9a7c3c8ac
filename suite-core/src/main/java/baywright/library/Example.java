package baywright.library;

import baywright.quantity.Quantity;
import baywright.script.Place;
import baywright.script.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A worked example of a stage: its author's own test.
 *
 * @param name     what it shows
 * @param shape    id of the vehicle shape
 * @param zones    zones of the shape; empty: all zones with a surface that the stage works on
 * @param with     inputs that differ from their usual values
 * @param given    surveyed facts that differ from their usual values
 * @param drivers  amounts of counted drivers such as {@code chip}
 * @param attended expected mean hands-on minutes of the step, with its set-up, without the family's
 * @param standing expected usual standing minutes
 * @param uses     expected amount of each item, to 2 %; items not named are not judged
 * @param removes  expected most likely removal in µm
 * @param sets     states that must hold afterwards
 * @param clears   states that must not hold afterwards
 * @param place    where it was written
 */
public record Example(
        String name,
        String shape,
        List<String> zones,
        Map<String, Value> with,
        Map<String, Value> given,
        Map<String, Value> drivers,
        Optional<Between> attended,
        Optional<Between> standing,
        Map<String, Quantity> uses,
        Optional<Between> removes,
        List<String> sets,
        List<String> clears,
        Place place) {

    /** Both ends included. */
    public record Between(Quantity least, Quantity most) {}
}
