package baywright.vehicle;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * What was found on one zone.
 *
 * @param facts      surveyed facts of this zone by id, as text; they go before the vehicle's
 * @param states     states found, such as {@code tar-clear} for "none found"
 * @param counts     counted things by driver: {@code chip} 12
 * @param readings   film readings, in order of taking
 * @param unreadable whether it was recorded that a gauge cannot read it
 * @param notes      defects, contamination, earlier repairs, in words
 */
public record ZoneSurvey(
        Map<String, String> facts,
        List<String> states,
        Map<String, BigDecimal> counts,
        List<Reading> readings,
        boolean unreadable,
        List<String> notes) {

    public static final ZoneSurvey NOTHING = new ZoneSurvey(Map.of(), List.of(), Map.of(), List.of(), false, List.of());

    public ZoneSurvey {
        facts = Map.copyOf(facts);
        states = List.copyOf(states);
        counts = Map.copyOf(counts);
        readings = List.copyOf(readings);
        notes = List.copyOf(notes);
    }

    /** The same findings with other readings. */
    public ZoneSurvey withReadings(List<Reading> others) {
        return new ZoneSurvey(facts, states, counts, others, unreadable, notes);
    }
}
