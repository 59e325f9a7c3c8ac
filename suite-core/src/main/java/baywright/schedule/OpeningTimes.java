package baywright.schedule;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * When a shop is open or a person works, on the clock of the place. What lies in an hour that a clock change leaves out
 * is not worked; an hour that comes twice is worked twice when it lies inside a span.
 *
 * @param week   spans of each day of the week, in order of time and apart; a day without an entry is closed
 * @param closed days on which nothing is open
 * @param own    spans of dates that have their own, in order of time and apart; they count instead of week and closed
 */
public record OpeningTimes(Map<DayOfWeek, List<Span>> week, Set<LocalDate> closed, Map<LocalDate, List<Span>> own) {

    /**
     * From a time to a later one of the same day.
     *
     * @param to {@link LocalTime#MIDNIGHT} stands for the end of the day
     */
    public record Span(LocalTime from, LocalTime to) {
        public Span {
            if (!to.equals(LocalTime.MIDNIGHT) && !to.isAfter(from)) {
                throw new IllegalArgumentException("a span ends after it begins, got " + from + " to " + to);
            }
        }
    }

    /** What a shop that says nothing is taken to keep: eight to twelve and one to five, Monday to Friday. */
    public static final OpeningTimes USUAL = usual();

    public OpeningTimes {
        Map<DayOfWeek, List<Span>> days = new EnumMap<>(DayOfWeek.class);
        week.forEach((day, spans) -> days.put(day, inOrder(day, spans)));
        Map<LocalDate, List<Span>> dates = new TreeMap<>();
        own.forEach((date, spans) -> dates.put(date, inOrder(date, spans)));
        week = Collections.unmodifiableMap(days);
        closed = Collections.unmodifiableSet(new TreeSet<>(closed));
        own = Collections.unmodifiableMap(dates);
    }

    /** The same hours every week. */
    public OpeningTimes(Map<DayOfWeek, List<Span>> week, Set<LocalDate> closed) {
        this(week, closed, Map.of());
    }

    private static List<Span> inOrder(Object day, List<Span> spans) {
        for (int i = 1; i < spans.size(); i++) {
            Span before = spans.get(i - 1);
            if (before.to().equals(LocalTime.MIDNIGHT) || !spans.get(i).from().isAfter(before.to())) {
                throw new IllegalArgumentException("spans of " + day + " must be in order of time and apart, got "
                        + before + " before " + spans.get(i));
            }
        }
        return List.copyOf(spans);
    }

    private static OpeningTimes usual() {
        List<Span> day = List.of(
                new Span(LocalTime.of(8, 0), LocalTime.of(12, 0)), new Span(LocalTime.of(13, 0), LocalTime.of(17, 0)));
        Map<DayOfWeek, List<Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek weekday : List.of(
                DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY)) {
            week.put(weekday, day);
        }
        return new OpeningTimes(week, Set.of());
    }

    /** Spans of a date; none when it is closed. */
    public List<Span> on(LocalDate date) {
        if (own.containsKey(date)) {
            return own.get(date);
        }
        return closed.contains(date) ? List.of() : week.getOrDefault(date.getDayOfWeek(), List.of());
    }

    /** The same, but with these spans on a date. */
    OpeningTimes with(LocalDate date, List<Span> spans) {
        Map<LocalDate, List<Span>> dates = new TreeMap<>(own);
        dates.put(date, spans);
        return new OpeningTimes(week, closed, dates);
    }

    /**
     * The open windows in minutes that really pass after an instant.
     *
     * @param days how many days to look at
     */
    List<Window> windows(ZoneId zone, Instant origin, int days) {
        List<Window> windows = new ArrayList<>();
        LocalDate first = origin.atZone(zone).toLocalDate();
        for (int d = 0; d < days; d++) {
            LocalDate date = first.plusDays(d);
            for (Span span : on(date)) {
                LocalDate end = span.to().equals(LocalTime.MIDNIGHT) ? date.plusDays(1) : date;
                add(windows, minute(zone, origin, date, span.from()), minute(zone, origin, end, span.to()));
            }
        }
        return windows;
    }

    /** Each date from its first opening to its last closing, for work that goes on through a break. */
    List<Window> wholeDays(ZoneId zone, Instant origin, int days) {
        List<Window> windows = new ArrayList<>();
        LocalDate first = origin.atZone(zone).toLocalDate();
        for (int d = 0; d < days; d++) {
            LocalDate date = first.plusDays(d);
            List<Span> spans = on(date);
            if (!spans.isEmpty()) {
                LocalTime to = spans.get(spans.size() - 1).to();
                LocalDate end = to.equals(LocalTime.MIDNIGHT) ? date.plusDays(1) : date;
                add(windows, minute(zone, origin, date, spans.get(0).from()), minute(zone, origin, end, to));
            }
        }
        return windows;
    }

    private static void add(List<Window> windows, int from, int to) {
        int start = Math.max(0, from);
        int last = windows.size() - 1;
        if (last >= 0 && windows.get(last).to() >= start) {
            if (to > windows.get(last).to()) {
                windows.set(last, new Window(windows.get(last).from(), to));
            }
        } else if (to > start) {
            windows.add(new Window(start, to));
        }
    }

    private static int minute(ZoneId zone, Instant origin, LocalDate date, LocalTime time) {
        Instant instant = date.atTime(time).atZone(zone).toInstant();
        return Math.toIntExact(Duration.between(origin, instant).toMinutes());
    }
}
