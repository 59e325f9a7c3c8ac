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
