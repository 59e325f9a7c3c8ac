package baywright.schedule;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * When every step of the booked jobs is done, by whom and where. Times are local times of the shop.
 *
 * @param entries by start, then job, vehicle, step
 * @param ends    when each job is ready, in the order of the jobs
 * @param proved  whether it is proved that no timetable is better
 * @param gap     else how far it may be from the best, as a share; counts lateness twentyfold
 */
public record ShopTimetable(List<Entry> entries, List<JobEnd> ends, boolean proved, double gap) {

    /** What goes on. */
    public enum Doing {
        /** Tools of the step's family are got out. */
        SETTING_UP,
        WORK,
        /** Something passes by itself. */
        STANDING
    }

    /**
     * A step of a vehicle, or what stands after it.
     *
     * @param vehicle  number of the vehicle, from 1
     * @param doing    what is done
     * @param people   ids of who does it
     * @param bay      id of the bay; empty: anywhere
     * @param critical whether the end of its job hangs on it
     * @param waitsFor what it had to wait for where that was not an earlier step of its own: {@code person p1},
     *                 {@code bay wash}, {@code machine rotary}; empty otherwise
     * @param movedFrom the start that the plan fixes, where it begins later
     * @param spells   the parts of the days on which it goes on; what stands is not worked and has none
     */
    public record Entry(
            String job,
            int vehicle,
            String step,
            Doing doing,
            LocalDateTime from,
            LocalDateTime to,
            List<String> people,
            String bay,
            boolean critical,
            String waitsFor,
            Optional<LocalDateTime> movedFrom,
            List<Spell> spells) {
        public Entry {
            people = List.copyOf(people);
            spells = List.copyOf(spells);
        }

        /** Minutes that are worked, breaks and nights left out. */
        public long minutes() {
            return spells.stream().mapToLong(Spell::minutes).sum();
        }
    }

    /**
     * What of a step is done on a day.
     *
     * @param from    when it begins or goes on
     * @param to      when it ends or is broken off for the day
     * @param minutes worked between them, breaks left out
     */
    public record Spell(LocalDateTime from, LocalDateTime to, long minutes) {}

    /**
     * When a job is ready.
     *
     * @param lateMinutes how long after it is wanted, 0 when in time
     */
    public record JobEnd(String job, LocalDateTime end, Optional<LocalDateTime> wanted, long lateMinutes) {}

    public ShopTimetable {
        entries = List.copyOf(entries);
        ends = List.copyOf(ends);
    }

    /** Whether every job is ready when it is wanted. */
    public boolean keepsPromises() {
        return ends.stream().allMatch(e -> e.lateMinutes() == 0);
    }

    /** Minutes that all jobs together are late. */
    public long lateMinutes() {
        return ends.stream().mapToLong(JobEnd::lateMinutes).sum();
    }
}
