package baywright.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** The best goal of a small project by trying every start and every server. */
final class EveryTimetable {

    private final Project project;
    private final int[] starts;
    private final List<List<Integer>> serving = new ArrayList<>();
    private long best = Long.MAX_VALUE;

    private EveryTimetable(Project project) {
        this.project = project;
        starts = new int[project.activities().size()];
    }

    static OptionalLong best(Project project) {
        EveryTimetable every = new EveryTimetable(project);
        every.start(0);
        return every.best == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(every.best);
    }

    private void start(int i) {
        if (i == starts.length) {
            serve();
            return;
        }
        Activity activity = project.activities().get(i);
        for (int at = activity.earliest(); at <= Math.min(activity.latest(), project.horizon()); at++) {
            starts[i] = at;
            int end = end(i);
            if (end <= project.horizon() && waitsKept(i)) {
                start(i + 1);
            }
        }
    }

    /** By counting minutes; beyond the horizon when it cannot start there. */
    private int end(int i) {
        Activity activity = project.activities().get(i);
        int left = activity.minutes();
        int minute = starts[i];
        while (left > 0) {
            boolean open = isOpen(activity.hours(), minute);
            if ((!open && !activity.breaks()) || (!open && minute == starts[i]) || minute > project.horizon()) {
                return project.horizon() + 1;
            }
            left -= open ? 1 : 0;
            minute++;
        }
        return minute;
    }

    private static boolean isOpen(Hours hours, int minute) {
        return hours.windows().stream().anyMatch(w -> w.from() <= minute && minute < w.to());
    }

    private boolean waitsKept(int upTo) {
        for (Lag lag : project.lags()) {
            if (Math.max(lag.from(), lag.to()) == upTo) {
                int from = lag.since() == Lag.Point.START ? starts[lag.from()] : end(lag.from());
                int to = lag.until() == Lag.Point.START ? starts[lag.to()] : end(lag.to());
                if (to - from < lag.least()
                        || (lag.most().isPresent() && to - from > lag.most().getAsInt())) {
                    return false;
                }
            }
        }
        return true;
    }

    private void serve() {
        List<Need> needs = new ArrayList<>();
        List<int[]> spans = new ArrayList<>();
        int[] ends = new int[starts.length];
        for (int i = 0; i < starts.length; i++) {
            ends[i] = end(i);
            for (Need need : project.activities().get(i).needs()) {
                needs.add(need);
                spans.add(new int[] {starts[i], ends[i]});
            }
        }
        if (project.goal().at(ends) >= best) {
            return;
        }
        for (Hold hold : project.holds()) {
            needs.add(hold.need());
            int from = hold.activities().stream().mapToInt(a -> starts[a]).min().orElseThrow();
            int to = hold.activities().stream().mapToInt(a -> ends[a]).max().orElseThrow();
            spans.add(new int[] {from, to});
        }
        int[][] left = new int[project.resources().size()][project.horizon() + 1];
        for (int r = 0; r < left.length; r++) {
            for (int minute = 0; minute <= project.horizon(); minute++) {
                int at = minute;
                left[r][minute] = project.resources().get(r).capacity()
                        - project.resources().get(r).absences().stream()
                                .filter(a ->
                                        a.when().from() <= at && at < a.when().to())
                                .mapToInt(Resource.Absence::amount)
                                .sum();
            }
        }
        serving.clear();
        needs.forEach(n -> serving.add(new ArrayList<>()));
        if (served(0, 0, -1, needs, spans, left)) {
            best = project.goal().at(ends);
        }
    }

    private boolean served(int n, int count, int last, List<Need> needs, List<int[]> spans, int[][] left) {
        if (n == needs.size()) {
            return daysKept();
        }
        Need need = needs.get(n);
        if (count == need.count()) {
            return served(n + 1, 0, -1, needs, spans, left);
        }
        for (int k = last + 1; k < need.anyOf().size(); k++) {
            int r = need.anyOf().get(k);
            take(left[r], spans.get(n), need.amount());
            boolean fits = true;
            for (int minute = spans.get(n)[0]; minute < spans.get(n)[1]; minute++) {
                fits &= left[r][minute] >= 0;
            }
            serving.get(n).add(r);
            boolean all = fits && served(n, count + 1, k, needs, spans, left);
            serving.get(n).remove((Integer) r);
            take(left[r], spans.get(n), -need.amount());
            if (all) {
                return true;
            }
        }
        return false;
    }

    /** Budgets and rests, by the checker. */
    private boolean daysKept() {
        if (project.budgets().isEmpty() && project.rests().isEmpty()) {
            return true;
        }
        List<Integer> from = new ArrayList<>();
        List<Integer> to = new ArrayList<>();
        List<List<List<Integer>>> taken = new ArrayList<>();
        int n = 0;
        for (int i = 0; i < starts.length; i++) {
            from.add(starts[i]);
            to.add(end(i));
            List<List<Integer>> own = new ArrayList<>();
            for (int k = 0; k < project.activities().get(i).needs().size(); k++) {
                own.add(serving.get(n++));
            }
            taken.add(own);
        }
        List<List<Integer>> held = serving.subList(n, serving.size());
        int[] ends = to.stream().mapToInt(Integer::intValue).toArray();
        Timetable timetable =
                new Timetable(from, to, taken, held, project.goal().at(ends));
        return TimetableCheck.faults(project, timetable).isEmpty();
    }

    private static void take(int[] left, int[] span, int amount) {
        for (int minute = span[0]; minute < span[1]; minute++) {
            left[minute] -= amount;
        }
    }
}
