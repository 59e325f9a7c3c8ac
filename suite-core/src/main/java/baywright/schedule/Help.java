package baywright.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What would make jobs ready sooner, found by timing them again with a little more of something.
 *
 * @param kind   more of what
 * @param what   id of the bay, empty for a person
 * @param gained minutes by which all jobs together are ready sooner, above 0
 * @param late   minutes that all jobs together are late then
 */
public record Help(Kind kind, String what, long gained, long late) {

    /** More of what. */
    public enum Kind {
        /** One more person who can do everything, in the shop's hours. */
        PERSON,
        /** Room for one more vehicle in a bay. */
        BAY
    }

    /**
     * Tries each and gives those that help, the most first. The timetable to beat is made with the same effort, so that
     * no gain comes from searching longer.
     */
    public static List<Help> tried(List<BookedJob> jobs, ShopCalendar calendar, ShopScheduler.Effort effort) {
        Optional<ShopTimetable> now = ShopScheduler.timetable(jobs, calendar, effort);
        if (now.isEmpty()) {
            return List.of();
        }
        List<Help> helps = new ArrayList<>();
        if (!calendar.people().isEmpty()) {
            add(helps, Kind.PERSON, "", now.get(), ShopScheduler.timetable(jobs, withPerson(calendar), effort));
        }
        now.get().entries().stream()
                .map(ShopTimetable.Entry::bay)
                .filter(b -> !b.isEmpty())
                .distinct()
                .sorted()
                .forEach(bay -> add(
                        helps,
                        Kind.BAY,
                        bay,
                        now.get(),
                        ShopScheduler.timetable(jobs, withPlace(calendar, bay), effort)));
        helps.sort(Comparator.comparingLong(Help::gained).reversed());
        return helps;
    }

    private static void add(List<Help> helps, Kind kind, String what, ShopTimetable now, Optional<ShopTimetable> then) {
        then.ifPresent(timetable -> {
            long gained = 0;
            for (int j = 0; j < now.ends().size(); j++) {
                gained += java.time.Duration.between(
                                timetable.ends().get(j).end(), now.ends().get(j).end())
                        .toMinutes();
            }
            if (gained > 0) {
                helps.add(new Help(kind, what, gained, timetable.lateMinutes()));
            }
        });
    }

    private static ShopCalendar withPerson(ShopCalendar calendar) {
        TreeSet<String> skills = new TreeSet<>();
        calendar.people().forEach(p -> skills.addAll(p.skills()));
        List<ShopCalendar.Hand> people = new ArrayList<>(calendar.people());
        people.add(new ShopCalendar.Hand("one-more", "", List.copyOf(skills), Optional.empty()));
        return new ShopCalendar(calendar.zone(), calendar.hours(), people, calendar.bays(), calendar.machines());
    }

    private static ShopCalendar withPlace(ShopCalendar calendar, String bay) {
        Map<String, Integer> bays = new LinkedHashMap<>(calendar.bays());
        bays.put(bay, calendar.places(bay) + 1);
        return new ShopCalendar(calendar.zone(), calendar.hours(), calendar.people(), bays, calendar.machines());
    }
}
