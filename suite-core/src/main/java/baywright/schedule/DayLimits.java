package baywright.schedule;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What days and weeks of a shop allow its people and bays. What cannot be passed is not stated. */
final class DayLimits {

    /** Parts in which shares of a day are counted, rounded up: fine enough for what counts as equal to a limit. */
    private static final double WHOLE = 1e12;

    private static final String WEEK = "week";
    private static final String AIR = "air";

    private final ShopCalendar calendar;
    private final List<Window> dates = new ArrayList<>();
    private final List<Window> weeks = new ArrayList<>();
    private final Map<String, Map<Integer, Long>> person = new TreeMap<>();
    private final Map<String, Map<Integer, Long>> air = new TreeMap<>();

    DayLimits(ShopCalendar calendar, Instant origin, int days) {
        this.calendar = calendar;
        LocalDate first = origin.atZone(calendar.zone()).toLocalDate();
        LocalDate last = first.plusDays(days + 1L);
        for (LocalDate date = first; date.isBefore(last); date = date.plusDays(1)) {
            dates.add(new Window(minute(origin, date), minute(origin, date.plusDays(1))));
        }
        for (LocalDate date = first; date.isBefore(last); ) {
            LocalDate next = date.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
            weeks.add(new Window(minute(origin, date), minute(origin, next)));
            date = next;
        }
    }

    private int minute(Instant origin, LocalDate date) {
        Instant begin = date.atStartOfDay(calendar.zone()).toInstant();
        return Math.toIntExact(Duration.between(origin, begin).toMinutes());
    }

    /** Notes what an activity does. Where fewer do it than take turns, each of them takes in more. */
    void add(int activity, StepLoad load, List<Need> needs, List<Integer> people) {
        int there = needs.stream()
                .filter(n -> people.containsAll(n.anyOf()))
                .mapToInt(Need::count)
                .max()
                .orElse(load.people());
        double more = Math.max(1, load.people() / (double) there);
        load.person()
                .forEach((kind, share) -> person.computeIfAbsent(kind, k -> new HashMap<>())
                        .put(activity, (long) Math.ceil(share * more * WHOLE)));
        load.bays()
                .forEach((bay, share) ->
                        air.computeIfAbsent(bay, b -> new HashMap<>()).put(activity, (long) Math.ceil(share * WHOLE)));
    }

    List<Budget> budgets(List<Integer> people, Map<String, Integer> bays, List<Activity> activities) {
        List<Budget> budgets = new ArrayList<>();
        person.forEach((kind, loads) -> {
            if (passes(loads, (long) WHOLE)) {
                people.forEach(p -> budgets.add(new Budget(kind, p, (long) WHOLE, dates, loads)));
            }
        });
        air.forEach((bay, loads) -> {
            if (bays.containsKey(bay) && passes(loads, (long) WHOLE)) {
                budgets.add(new Budget(AIR, bays.get(bay), (long) WHOLE, dates, loads));
            }
        });
        Map<Integer, Long> minutes = new HashMap<>();
        for (int i = 0; i < activities.size(); i++) {
            if (activities.get(i).needs().stream().anyMatch(n -> people.containsAll(n.anyOf()))) {
                minutes.put(i, (long) activities.get(i).minutes());
            }
        }
        long week = calendar.working().week();
        boolean served = !people.isEmpty() && passes(minutes, week);
        if (served) {
            people.forEach(p -> budgets.add(new Budget(WEEK, p, week, weeks, minutes)));
        }
        return budgets;
    }

    private static boolean passes(Map<Integer, Long> loads, long most) {
        return loads.values().stream().mapToLong(Long::longValue).sum() > most;
    }

    /** Rest of people, where hours or fixed starts would let someone work too long or too soon again. */
    List<Rest> rests(List<Integer> people, List<Activity> activities, List<Window> open) {
        List<Window> rested = rested(open);
        boolean anyHour = activities.stream()
                .filter(a -> a.minutes() > 0
                        && a.hours().equals(Hours.ALWAYS)
                        && !a.needs().isEmpty())
                .anyMatch(a -> !withinADay(rested, a.earliest(), a.earliest() + a.minutes()));
        if (!anyHour && open.equals(rested)) {
            return List.of();
        }
        ShopCalendar.WorkingTime working = calendar.working();
        List<Integer> cuts = dates.stream().map(Window::from).toList();
        return people.stream()
                .map(p -> new Rest(p, working.rest(), working.day(), cuts))
                .toList();
    }

    /** Whether a fixed start and its end lie in the hours of one day. */
    private boolean withinADay(List<Window> open, int from, int to) {
        return dates.stream().anyMatch(d -> d.from() <= from && to <= d.to())
                && open.stream().anyMatch(w -> w.from() <= from && from < w.to())
                && open.stream().anyMatch(w -> w.from() < to && to <= w.to());
    }

    /** Windows in which one person may go on day by day: each day ends in time for the rest before the next opening. */
    List<Window> rested(List<Window> open) {
        List<List<Window>> byDate = new ArrayList<>();
        for (Window date : dates) {
            List<Window> on = open.stream()
                    .filter(w -> w.from() < date.to() && w.to() > date.from())
                    .map(w -> new Window(Math.max(w.from(), date.from()), Math.min(w.to(), date.to())))
                    .toList();
            if (!on.isEmpty()) {
                byDate.add(on);
            }
        }
        List<Window> kept = new ArrayList<>();
        for (int d = 0; d < byDate.size(); d++) {
            int end = byDate.get(d).get(0).from() + calendar.working().day();
            if (d + 1 < byDate.size()) {
                end = Math.min(
                        end,
                        byDate.get(d + 1).get(0).from() - calendar.working().rest());
            }
            for (Window window : byDate.get(d)) {
                if (Math.min(window.to(), end) > window.from()) {
                    add(kept, new Window(window.from(), Math.min(window.to(), end)));
                }
            }
        }
        return kept;
    }

    private static void add(List<Window> windows, Window next) {
        int last = windows.size() - 1;
        if (last >= 0 && windows.get(last).to() == next.from()) {
            windows.set(last, new Window(windows.get(last).from(), next.to()));
        } else {
            windows.add(next);
        }
    }

    /** Days from midnight to midnight. */
    List<Window> dates() {
        return dates;
    }
}
