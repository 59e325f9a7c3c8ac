package baywright.schedule;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What would make jobs ready sooner, found by timing them again with a little more of something.
 *
 * @param kind   more of what
 * @param what   id of the bay, else empty
 * @param day    the one day on which there is more; empty: every day
 * @param gained minutes by which all jobs together are ready sooner, above 0 for help of every day
 * @param ends   when each job is ready then, in the order of the jobs
 */
public record Help(Kind kind, String what, Optional<LocalDate> day, long gained, List<ShopTimetable.JobEnd> ends) {

    /** More of what, the least first: common practice, no source. */
    public enum Kind {
        /** The shop stays open an hour longer, with everyone who is there at closing time. */
        HOUR,
        /** Room for one more vehicle in a bay. */
        BAY,
        /** One more person who can do everything, in the shop's hours. */
        PERSON
    }

    private static final int LONGER = 1;
    private static final int MOST_DAYS = 31;

    public Help {
        ends = List.copyOf(ends);
    }

    /** Minutes that all jobs together are late then. */
    public long late() {
        return ends.stream().mapToLong(ShopTimetable.JobEnd::lateMinutes).sum();
    }

    /**
     * Tries more of each, every day, and gives those that help, the most first. The timetable to beat is made with the same
     * effort, so that no gain comes from searching longer.
     */
    public static List<Help> tried(List<BookedJob> jobs, ShopCalendar calendar, ShopScheduler.Effort effort) {
        Optional<ShopTimetable> now = ShopScheduler.timetable(jobs, calendar, effort);
        if (now.isEmpty()) {
            return List.of();
        }
        List<Help> helps = new ArrayList<>();
        if (!calendar.people().isEmpty()) {
            helped(Kind.PERSON, "", Optional.empty(), now.get(), jobs, calendar, effort)
                    .ifPresent(helps::add);
        }
        for (String bay : bays(now.get())) {
            helped(Kind.BAY, bay, Optional.empty(), now.get(), jobs, calendar, effort)
                    .ifPresent(helps::add);
        }
        helps.removeIf(help -> help.gained() <= 0);
        helps.sort(Comparator.comparingLong(Help::gained).reversed());
        return helps;
    }

    /**
     * The least help on one day after which no job is late; where there is none, the one that leaves them late the least.
     * Help is less in the order of its kinds; of the same kind that of the latest day, which leaves the most time to arrange it.
     * Days are those from the first step of the timetable to the end of the last job, 31 at most.
     *
     * @param now    the timetable in which jobs are late
     * @param effort what may be spent on each try; once its stop is true, no more is tried
     * @return empty where nothing on a single day makes them less late
     */
    public static Optional<Help> leastOnADay(
            List<BookedJob> jobs, ShopCalendar calendar, ShopTimetable now, ShopScheduler.Effort effort) {
        Optional<Help> best = Optional.empty();
        for (Kind kind : Kind.values()) {
            for (LocalDate day : days(now)) {
                for (String what : kind == Kind.BAY ? bays(now) : List.of("")) {
                    if (best.filter(b -> b.late() == 0).isPresent()
                            || effort.stop().getAsBoolean()) {
                        return best;
                    }
                    Optional<Help> help = canBe(kind, day, calendar)
                            ? helped(kind, what, Optional.of(day), now, jobs, calendar, effort)
                            : Optional.empty();
                    long late = best.map(Help::late).orElse(now.lateMinutes());
                    if (help.isPresent() && help.get().late() < late) {
                        best = help;
                    }
                }
            }
        }
        return best;
    }

    /** The latest first. */
    private static List<LocalDate> days(ShopTimetable now) {
        LocalDate first = now.entries().get(0).from().toLocalDate();
        return now.ends().stream().map(end -> end.end().toLocalDate()).max(LocalDate::compareTo).stream()
                .flatMap(last -> first.datesUntil(last.plusDays(1)))
                .limit(MOST_DAYS)
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private static List<String> bays(ShopTimetable now) {
        return now.entries().stream()
                .map(ShopTimetable.Entry::bay)
                .filter(b -> !b.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    private static boolean canBe(Kind kind, LocalDate day, ShopCalendar calendar) {
        List<OpeningTimes.Span> spans = calendar.hours().on(day);
        return switch (kind) {
            case HOUR -> !spans.isEmpty() && !last(spans).to().equals(LocalTime.MIDNIGHT);
            case BAY -> true;
            case PERSON -> !spans.isEmpty() && !calendar.people().isEmpty();
        };
    }

    private static OpeningTimes.Span last(List<OpeningTimes.Span> spans) {
        return spans.get(spans.size() - 1);
    }

    private static Optional<Help> helped(
            Kind kind,
            String what,
            Optional<LocalDate> day,
            ShopTimetable now,
            List<BookedJob> jobs,
            ShopCalendar calendar,
            ShopScheduler.Effort effort) {
        return ShopScheduler.timetable(jobs, with(kind, what, day, calendar), effort)
                .map(then -> {
                    long gained = 0;
                    for (int j = 0; j < now.ends().size(); j++) {
                        gained += Duration.between(
                                        then.ends().get(j).end(),
                                        now.ends().get(j).end())
                                .toMinutes();
                    }
                    return new Help(kind, what, day, gained, then.ends());
                });
    }

    /** The shop with this help. */
    public ShopCalendar in(ShopCalendar calendar) {
        return with(kind, what, day, calendar);
    }

    private static ShopCalendar with(Kind kind, String what, Optional<LocalDate> day, ShopCalendar calendar) {
        return switch (kind) {
            case HOUR -> longer(calendar, day.orElseThrow());
            case BAY -> day.map(d -> withRoom(calendar, what, d)).orElseGet(() -> withPlace(calendar, what));
            case PERSON -> withPerson(calendar, day);
        };
    }

    private static ShopCalendar longer(ShopCalendar calendar, LocalDate day) {
        LocalTime closing = last(calendar.hours().on(day)).to();
        List<ShopCalendar.Hand> people = calendar.people().stream()
                .map(p -> new ShopCalendar.Hand(
                        p.id(), p.name(), p.skills(), p.hours().map(h -> longer(h, day, closing))))
                .toList();
        return new ShopCalendar(
                calendar.zone(),
                longer(calendar.hours(), day, closing),
                people,
                calendar.bays(),
                calendar.machines(),
                calendar.rooms(),
                calendar.working());
    }

    private static OpeningTimes longer(OpeningTimes hours, LocalDate day, LocalTime closing) {
        List<OpeningTimes.Span> spans = new ArrayList<>(hours.on(day));
        if (spans.isEmpty() || !last(spans).to().equals(closing)) {
            return hours;
        }
        LocalTime later = closing.plusHours(LONGER);
        LocalTime to = later.isAfter(closing) ? later : LocalTime.MIDNIGHT;
        spans.set(spans.size() - 1, new OpeningTimes.Span(last(spans).from(), to));
        return hours.with(day, spans);
    }

    private static ShopCalendar withPerson(ShopCalendar calendar, Optional<LocalDate> day) {
        TreeSet<String> skills = new TreeSet<>();
        calendar.people().forEach(p -> skills.addAll(p.skills()));
        Optional<OpeningTimes> hours = day.map(d ->
                new OpeningTimes(Map.of(), Set.of(), Map.of(d, calendar.hours().on(d))));
        List<ShopCalendar.Hand> people = new ArrayList<>(calendar.people());
        people.add(new ShopCalendar.Hand("one-more", "", List.copyOf(skills), hours));
        return new ShopCalendar(
                calendar.zone(),
                calendar.hours(),
                people,
                calendar.bays(),
                calendar.machines(),
                calendar.rooms(),
                calendar.working());
    }

    private static ShopCalendar withPlace(ShopCalendar calendar, String bay) {
        Map<String, Integer> bays = new LinkedHashMap<>(calendar.bays());
        bays.put(bay, calendar.places(bay) + 1);
        return new ShopCalendar(
                calendar.zone(),
                calendar.hours(),
                calendar.people(),
                bays,
                calendar.machines(),
                calendar.rooms(),
                calendar.working());
    }

    private static ShopCalendar withRoom(ShopCalendar calendar, String bay, LocalDate day) {
        List<ShopCalendar.Room> rooms = new ArrayList<>(calendar.rooms());
        rooms.add(new ShopCalendar.Room(bay, day));
        return new ShopCalendar(
                calendar.zone(),
                calendar.hours(),
                calendar.people(),
                calendar.bays(),
                calendar.machines(),
                rooms,
                calendar.working());
    }
}
