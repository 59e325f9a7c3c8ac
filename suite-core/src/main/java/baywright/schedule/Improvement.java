package baywright.schedule;

import java.util.Optional;

/**
 * The best timetable that was found and what is known about it.
 *
 * @param best       empty when none was found
 * @param lowerBound no timetable has a goal below this
 * @param impossible whether it is proved that there is no timetable
 * @param conflicts  effort: contradictions met
 */
public record Improvement(Optional<Timetable> best, long lowerBound, boolean impossible, long conflicts) {

    /** Whether it is proved that no timetable is better, or that there is none. */
    public boolean proved() {
        return impossible || best.map(t -> t.goal() <= lowerBound).orElse(false);
    }

    /** How far the goal may be above the least possible, as a share of the lower bound; 0 when proved. */
    public double gap() {
        if (proved() || best.isEmpty()) {
            return 0;
        }
        return (best.get().goal() - lowerBound) / (double) Math.max(1, lowerBound);
    }
}
