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
 */
public record ShopCalendar(
        ZoneId zone,
        OpeningTimes hours,
        List<Hand> people,
        Map<String, Integer> bays,
        Map<String, Integer> machines,
        List<Room> rooms) {

    /** Room for one more vehicle in a bay from the midnight before a day to the midnight after. */
    public record Room(String bay, LocalDate day) {}

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

    /** One whose bays take the same every day. */
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
