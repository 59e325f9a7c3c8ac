package baywright.vehicle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What was found on the vehicle before the work.
 *
 * @param facts  surveyed facts of the whole vehicle by id, as text
 * @param states vehicle-wide states found, such as {@code booked-in}, and zone states found on every zone
 * @param zones  findings by zone id; a zone that is missing has nothing noted
 */
public record Survey(Map<String, String> facts, List<String> states, Map<String, ZoneSurvey> zones) {

    public static final Survey NOTHING = new Survey(Map.of(), List.of(), Map.of());

    public Survey {
        facts = Map.copyOf(facts);
        states = List.copyOf(states);
        zones = Map.copyOf(zones);
    }

    public ZoneSurvey zone(String zoneId) {
        return zones.getOrDefault(zoneId, ZoneSurvey.NOTHING);
    }

    /** The same survey with other findings on one zone. */
    public Survey withZone(String zoneId, ZoneSurvey found) {
        Map<String, ZoneSurvey> all = new HashMap<>(zones);
        if (found.equals(ZoneSurvey.NOTHING)) {
            all.remove(zoneId);
        } else {
            all.put(zoneId, found);
        }
        return new Survey(facts, states, all);
    }

    /** The same survey with another value of a fact of the whole vehicle; an empty text: nothing was found out. */
    public Survey withFact(String fact, String value) {
        return new Survey(ZoneSurvey.with(facts, fact, value), states, zones);
    }

    /** The same survey with other states of the whole vehicle. */
    public Survey withStates(List<String> others) {
        return new Survey(facts, others, zones);
    }
}
