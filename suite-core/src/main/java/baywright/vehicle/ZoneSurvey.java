package baywright.vehicle;

import java.math.BigDecimal;
import java.util.HashMap;
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

    /** The same findings with another value of a fact; an empty text: as on the whole vehicle. */
    public ZoneSurvey withFact(String fact, String value) {
        return new ZoneSurvey(with(facts, fact, value), states, counts, readings, unreadable, notes);
    }

    /** The same findings with other states. */
    public ZoneSurvey withStates(List<String> others) {
        return new ZoneSurvey(facts, others, counts, readings, unreadable, notes);
    }

    /** The same findings with other counted things. */
    public ZoneSurvey withCounts(Map<String, BigDecimal> others) {
        return new ZoneSurvey(facts, states, others, readings, unreadable, notes);
    }

    /** The same findings with or without the record that a gauge cannot read the zone. */
    public ZoneSurvey withUnreadable(boolean isUnreadable) {
        return new ZoneSurvey(facts, states, counts, readings, isUnreadable, notes);
    }

    /** The same findings with other notes. */
    public ZoneSurvey withNotes(List<String> others) {
        return new ZoneSurvey(facts, states, counts, readings, unreadable, others);
    }

    static Map<String, String> with(Map<String, String> facts, String fact, String value) {
        Map<String, String> all = new HashMap<>(facts);
        if (value.isEmpty()) {
            all.remove(fact);
        } else {
            all.put(fact, value);
        }
        return all;
    }
}
