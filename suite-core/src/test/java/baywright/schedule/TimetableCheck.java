package baywright.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * Verifies a timetable against its project minute by minute where it matters, by other means than those that made it:
 * it knows nothing of bounds, networks or usage profiles.
 */
final class TimetableCheck {

    private final Project project;
    private final Timetable timetable;
    private final List<String> faults = new ArrayList<>();

    private TimetableCheck(Project project, Timetable timetable) {
        this.project = project;
        this.timetable = timetable;
    }

    /** What is wrong, in words; empty when nothing is. */
    static List<String> faults(Project project, Timetable timetable) {
        TimetableCheck check = new TimetableCheck(project, timetable);
        check.all();
        return check.faults;
    }

    private void all() {
        for (int i = 0; i < project.activities().size(); i++) {
            activity(i, project.activities().get(i));
        }
        project.lags().forEach(this::lag);
        for (int r = 0; r < project.resources().size(); r++) {
            resource(r);
        }
        project.budgets().forEach(this::budget);
        project.rests().forEach(this::rest);
        long goal = 0;
        for (Goal.Term term : project.goal().terms()) {
            int end = timetable.end(term.activity());
            goal += (long) term.weight() * end + (long) term.lateWeight() * Math.max(0, end - term.due());
        }
        expect(goal == timetable.goal(), "the goal is " + goal + ", not " + timetable.goal());
    }

    private void expect(boolean holds, String fault) {
        if (!holds) {
            faults.add(fault);
        }
    }

    private void activity(int i, Activity activity) {
        int start = timetable.start(i);
        int end = timetable.end(i);
        String id = activity.id();
        expect(start >= activity.earliest() && start <= activity.latest(), id + " starts at " + start);
        expect(end <= project.horizon(), id + " ends at " + end);
        int worked = 0;
        boolean paused = false;
        for (int minute = start; minute < end; minute++) {
            if (isOpen(activity.hours(), minute)) {
                worked++;
            } else {
                paused = true;
            }
        }
        expect(worked == activity.minutes(), id + " gets " + worked + " minutes");
        expect(activity.breaks() || !paused, id + " is interrupted");
        if (activity.minutes() > 0) {
            expect(isOpen(activity.hours(), start) && isOpen(activity.hours(), end - 1), id + " starts or ends closed");
        }
        for (int k = 0; k < activity.needs().size(); k++) {
            served(id, activity.needs().get(k), timetable.taken().get(i).get(k));
        }
    }

    private void served(String id, Need need, List<Integer> by) {
        expect(by.stream().distinct().count() == need.count() && by.size() == need.count(), id + " is served by " + by);
        expect(need.anyOf().containsAll(by), id + " is served by " + by);
    }

    private static boolean isOpen(Hours hours, int minute) {
        return hours.windows().stream().anyMatch(w -> w.from() <= minute && minute < w.to());
    }

    private void lag(Lag lag) {
        int from = lag.since() == Lag.Point.START ? timetable.start(lag.from()) : timetable.end(lag.from());
        int to = lag.until() == Lag.Point.START ? timetable.start(lag.to()) : timetable.end(lag.to());
        boolean most = lag.most().isEmpty() || to - from <= lag.most().getAsInt();
        expect(to - from >= lag.least() && most, lag + " waits " + (to - from));
    }

    // ---- days

    /** How often a resource serves an activity, through its own needs. */
    private int served(int activity, int resource) {
        int times = 0;
        for (List<Integer> by : timetable.taken().get(activity)) {
            times += by.contains(resource) ? 1 : 0;
        }
        return times;
    }

    private void budget(Budget budget) {
        for (Window period : budget.periods()) {
            long sum = 0;
            for (int i = 0; i < project.activities().size(); i++) {
                int times = served(i, budget.resource());
                for (int h = 0; h < project.holds().size(); h++) {
                    boolean member = project.holds().get(h).activities().contains(i);
                    times += member && timetable.held().get(h).contains(budget.resource()) ? 1 : 0;
                }
                int worked = 0;
                for (int minute = timetable.start(i); minute < timetable.end(i); minute++) {
                    boolean in = period.from() <= minute && minute < period.to();
                    worked += in && isOpen(project.activities().get(i).hours(), minute) ? 1 : 0;
                }
                long load = budget.loads().getOrDefault(i, 0L);
                int minutes = Math.max(1, project.activities().get(i).minutes());
                sum += times * -Math.floorDiv(-load * worked, minutes);
            }
            expect(sum <= budget.most(), budget.id() + " of " + budget.resource() + " is " + sum + " in " + period);
        }
    }

    private record Piece(int day, int from, int to) {}

    private void rest(Rest rest) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < project.activities().size(); i++) {
            if (served(i, rest.resource()) > 0) {
                pieces(i, rest, pieces);
            }
        }
        for (Piece a : pieces) {
            for (Piece b : pieces) {
                if (a.day() == b.day()) {
                    expect(b.to() - a.from() <= rest.span(), "day " + a.day() + " is long: " + a + " to " + b);
                } else if (a.day() < b.day()) {
                    expect(b.from() - a.to() >= rest.least(), "little rest between " + a + " and " + b);
                }
            }
        }
    }

    private void pieces(int i, Rest rest, List<Piece> pieces) {
        int from = timetable.start(i);
        int to = timetable.end(i);
        if (project.activities().get(i).rigid()) {
            if (to > from) {
                pieces.add(new Piece(day(rest, from), from, to));
            }
            return;
        }
        for (int minute = from; minute < to; minute++) {
            if (isOpen(project.activities().get(i).hours(), minute)) {
                pieces.add(new Piece(day(rest, minute), minute, minute + 1));
            }
        }
    }

    private static int day(Rest rest, int minute) {
        return (int) rest.cuts().stream().filter(c -> c <= minute).count() - 1;
    }

    private record Taken(int from, int to, int amount) {}

    private void resource(int r) {
        List<Taken> all = new ArrayList<>();
        project.resources()
                .get(r)
                .absences()
                .forEach(a -> all.add(new Taken(a.when().from(), a.when().to(), a.amount())));
        int absences = all.size();
        for (int i = 0; i < project.activities().size(); i++) {
            for (int k = 0; k < project.activities().get(i).needs().size(); k++) {
                if (timetable.taken().get(i).get(k).contains(r)) {
                    int amount = project.activities().get(i).needs().get(k).amount();
                    all.add(new Taken(timetable.start(i), timetable.end(i), amount));
                }
            }
        }
        for (int h = 0; h < project.holds().size(); h++) {
            Hold hold = project.holds().get(h);
            served(hold.id(), hold.need(), timetable.held().get(h));
            if (timetable.held().get(h).contains(r)) {
                int from = hold.activities().stream()
                        .mapToInt(timetable::start)
                        .min()
                        .orElseThrow();
                int to = hold.activities().stream()
                        .mapToInt(timetable::end)
                        .max()
                        .orElseThrow();
                all.add(new Taken(from, to, hold.need().amount()));
            }
        }
        int capacity = project.resources().get(r).capacity();
        for (Taken at : all.subList(absences, all.size())) {
            peak(r, all, at.from(), at.to(), capacity);
        }
    }

    /** What is taken changes only at starts, so that it is enough to look there. */
    private void peak(int r, List<Taken> all, int from, int to, int capacity) {
        for (Taken start : all) {
            int minute = Math.max(from, start.from());
            if (minute < to) {
                int sum = all.stream()
                        .filter(t -> t.from() <= minute && minute < t.to())
                        .mapToInt(Taken::amount)
                        .sum();
                expect(sum <= capacity, project.resources().get(r).id() + " gives " + sum + " at " + minute);
            }
        }
    }
}
