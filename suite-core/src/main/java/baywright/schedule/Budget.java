package baywright.schedule;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a resource may be given of one kind in each of some stretches of time, whatever it serves in them: the vibration
 * that a person may take in on a day, the vapour that a bay can carry off, the minutes of a week. Work that lies in two
 * stretches counts in each by its minutes there, rounded up.
 *
 * @param id       what is counted; the same for resources that can serve for each other
 * @param resource index of the resource
 * @param most     of one stretch, from 0; just so much is still kept
 * @param periods  in order of time and apart
 * @param loads    what the whole of an activity counts, from 0, by its index, each time that it is served by the resource
 */
public record Budget(String id, int resource, long most, List<Window> periods, Map<Integer, Long> loads) {
    public Budget {
        periods = List.copyOf(periods);
        loads = java.util.Collections.unmodifiableMap(new TreeMap<>(loads));
        if (most < 0 || loads.values().stream().anyMatch(l -> l < 0)) {
            throw new IllegalArgumentException("a budget and its loads count from 0, got " + most + " and " + loads);
        }
        for (int p = 1; p < periods.size(); p++) {
            if (periods.get(p).from() < periods.get(p - 1).to()) {
                throw new IllegalArgumentException("periods must be in order of time and apart, got "
                        + periods.get(p - 1) + " before " + periods.get(p));
            }
        }
    }

    /** What so many of an activity's minutes count, rounded up. */
    static long part(long load, int worked, int minutes) {
        return worked >= minutes ? load : (long) Math.ceil((double) load * worked / minutes);
    }
}
