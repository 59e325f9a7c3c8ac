package baywright.schedule;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a shop has to work with and when.
 *
 * @param zone     where its local times are
 * @param hours    when it is open
 * @param people   who works there; none: work is not held up by people
 * @param bays     how many vehicles each bay takes, by bay id; a bay that is not named takes one
 * @param machines how many there are of a kind of equipment; what is not named is never short
 * @param rooms    bays that take one vehicle more for a day
 * @param working  how long anyone works, and the rest between two days
 */
public record ShopCalendar(
        ZoneId zone,
        OpeningTimes hours,
        List<Hand> people,
        Map<String, Integer> bays,
        Map<String, Integer> machines,
        List<Room> rooms,
        WorkingTime working) {

    /** Room for one more vehicle in a bay from the midnight before a day to the midnight after. */
    public record Room(String bay, LocalDate day) {}

    /**
     * How long a person works.
     *
     * @param rest from the end of a day's work to the beginning of the next day's, at least; minutes, 0 to 1440
     * @param day  from the beginning of a day's work to its end, at most; minutes, above 0 to 1440
     * @param week hands-on and setting up from Monday to Sunday, at most; minutes, above 0
     */
    public record WorkingTime(int rest, int day, int week) {

        /**
         * Eleven hours of rest in each 24 (Directive 2003/88/EC, article 3), which leaves 13 for the day; 48 hours a week,
         * which the Directive (article 6) asks for on the average only.
         */
        public static final WorkingTime USUAL = new WorkingTime(11 * 60, 13 * 60, 48 * 60);

        public WorkingTime {
            if (rest < 0 || rest > 1440 || day < 1 || day > 1440 || week < 1) {
                throw new IllegalArgumentException("working time needs 0 to 1440 minutes of rest, 1 to 1440 a day and"
                        + " a week above 0, got " + rest + ", " + day + " and " + week);
            }
        }
    }

    /**
     * A person.
     *
     * @param skills what they know; ids
     * @param hours  when they work; empty: whenever the shop is open
     */
    public record Hand(String id, String name, List<String> skills, Optional<OpeningTimes> hours) {
        public Hand {
            skills = List.copyOf(skills);
        }
    }

    public ShopCalendar {
        people = List.copyOf(people);
        bays = java.util.Collections.unmodifiableMap(new TreeMap<>(bays));
        machines = java.util.Collections.unmodifiableMap(new TreeMap<>(machines));
        rooms = List.copyOf(rooms);
    }

    /** With the usual working time. */
    public ShopCalendar(
            ZoneId zone,
            OpeningTimes hours,
            List<Hand> people,
            Map<String, Integer> bays,
            Map<String, Integer> machines,
            List<Room> rooms) {
        this(zone, hours, people, bays, machines, rooms, WorkingTime.USUAL);
    }

    /** One whose bays take the same every day, with the usual working time. */
    public ShopCalendar(
            ZoneId zone,
            OpeningTimes hours,
            List<Hand> people,
            Map<String, Integer> bays,
            Map<String, Integer> machines) {
        this(zone, hours, people, bays, machines, List.of());
    }

    /** How many vehicles a bay takes at a time, any day. */
    public int places(String bay) {
        return bays.getOrDefault(bay, 1);
    }
}
