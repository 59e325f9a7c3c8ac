package baywright.schedule;

import java.util.ArrayList;
import java.util.List;

/** What budgets and rests have been taken up by what was put so far. */
final class Ledger {

    private record Put(int activity, int start) {}

    private final List<Course> courses;
    private final List<List<Budget>> budgets = new ArrayList<>();
    private final List<List<long[]>> used = new ArrayList<>();
    private final List<List<Rest>> rests = new ArrayList<>();
    private final List<List<Put>> puts = new ArrayList<>();

    Ledger(Project project, List<Course> courses) {
        this.courses = courses;
        for (int r = 0; r < project.resources().size(); r++) {
            budgets.add(new ArrayList<>());
            used.add(new ArrayList<>());
            rests.add(new ArrayList<>());
            puts.add(new ArrayList<>());
        }
        for (Budget budget : project.budgets()) {
            budgets.get(budget.resource()).add(budget);
            used.get(budget.resource()).add(new long[budget.periods().size()]);
        }
        project.rests().forEach(rest -> rests.get(rest.resource()).add(rest));
    }

    /** The start itself when a resource may serve from then on; else a later one to try. */
    int from(int resource, int activity, int start) {
        int later = budgeted(resource, activity, start);
        for (Rest rest : rests.get(resource)) {
            later = Math.max(later, rested(rest, resource, activity, start));
        }
        return later;
    }

    /** The same by budgets alone, for what is held. */
    int budgeted(int resource, int activity, int start) {
        int later = start;
        List<Budget> own = budgets.get(resource);
        for (int b = 0; b < own.size(); b++) {
            later = Math.max(later, budgeted(own.get(b), used.get(resource).get(b), activity, start));
        }
        return later;
    }

    private int budgeted(Budget budget, long[] taken, int activity, int start) {
        Course course = courses.get(activity);
        long load = budget.loads().getOrDefault(activity, 0L);
        if (load == 0 || course.minutes() == 0) {
            return start;
        }
        int end = course.end(start);
        for (int p = 0; p < taken.length && budget.periods().get(p).from() < end; p++) {
            Window period = budget.periods().get(p);
            int worked = course.worked(start, period);
            if (worked > 0 && taken[p] + Budget.part(load, worked, course.minutes()) > budget.most()) {
                int fewer = worked;
                while (fewer > 1 && taken[p] + Budget.part(load, fewer - 1, course.minutes()) > budget.most()) {
                    fewer--;
                }
                return course.highest(period, fewer) + 1;
            }
        }
        return start;
    }

    private int rested(Rest rest, int resource, int activity, int start) {
        List<Course.Stretch> own = courses.get(activity).stretches(start, rest);
        for (Put put : puts.get(resource)) {
            for (Course.Stretch other : courses.get(put.activity()).stretches(put.start(), rest)) {
                for (Course.Stretch one : own) {
                    if (!RestKept.kept(rest, one, other)) {
                        return other.day() < one.day()
                                ? Math.max(start + 1, start + rest.least() - (one.from() - other.to()))
                                : nextDay(rest, start);
                    }
                }
            }
        }
        return own.stream().allMatch(a -> own.stream().allMatch(b -> RestKept.kept(rest, a, b)))
                ? start
                : nextDay(rest, start);
    }

    private static int nextDay(Rest rest, int start) {
        int next = rest.day(start) + 1;
        return next < rest.cuts().size() ? rest.cuts().get(next) : Hours.END_OF_TIME;
    }

    void take(int resource, int activity, int start) {
        puts.get(resource).add(new Put(activity, start));
        count(resource, activity, start, 1);
    }

    /** Undoes the last {@link #take} of the same. */
    void give(int resource, int activity, int start) {
        puts.get(resource).remove(puts.get(resource).lastIndexOf(new Put(activity, start)));
        count(resource, activity, start, -1);
    }

    /** Takes of budgets alone, for what is held; {@code sign} is 1, or -1 to undo it. */
    void count(int resource, int activity, int start, int sign) {
        List<Budget> own = budgets.get(resource);
        Course course = courses.get(activity);
        for (int b = 0; b < own.size(); b++) {
            long load = own.get(b).loads().getOrDefault(activity, 0L);
            int end = load == 0 ? 0 : course.end(start);
            for (int p = 0;
                    p < own.get(b).periods().size()
                            && own.get(b).periods().get(p).from() < end;
                    p++) {
                int worked = course.worked(start, own.get(b).periods().get(p));
                if (worked > 0) {
                    used.get(resource).get(b)[p] += sign * Budget.part(load, worked, course.minutes());
                }
            }
        }
    }
}
