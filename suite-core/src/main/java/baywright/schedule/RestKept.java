package baywright.schedule;

import baywright.schedule.Bounds.Ints;
import java.util.Arrays;
import java.util.List;

/**
 * Rest from day to day, and no day too long, for each pair of tasks of one person. As soon as it is certain on which days
 * two tasks lie, one bounds the other; when both starts are known, all their parts of days are looked at.
 */
final class RestKept implements Propagator {

    /**
     * A task with its variables; the end is {@code end + plus}.
     *
     * @param present variable that is 1 when the person does it and 0 when not; -1: they do
     */
    record Task(Course course, int start, int end, int plus, int present) {}

    private final Bounds bounds;
    private final Rest rest;
    private final Task[] tasks;

    RestKept(Bounds bounds, Rest rest, List<Task> tasks) {
        this.bounds = bounds;
        this.rest = rest;
        this.tasks = tasks.stream().filter(t -> t.course().minutes() > 0).toArray(Task[]::new);
    }

    void state() {
        Ints keys = new Ints();
        for (Task task : tasks) {
            for (int key : new int[] {2 * task.start, 2 * task.start + 1, 2 * task.end, 2 * task.end + 1}) {
                keys.add(key);
            }
            if (task.present >= 0) {
                keys.add(2 * task.present);
            }
        }
        bounds.add(this, keys);
    }

    @Override
    public boolean propagate() {
        for (int i = 0; i < tasks.length; i++) {
            for (int j = 0; j <= i; j++) {
                if (mayMeet(tasks[i], tasks[j]) && !(i == j ? alone(tasks[i]) : pair(tasks[i], tasks[j]))) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isPresent(Task task) {
        return bounds.isPresent(task.present);
    }

    /** Whether at least one is done by the person, and the other may be. */
    private boolean mayMeet(Task a, Task b) {
        boolean both = (a.present < 0 || bounds.most(a.present) == 1) && (b.present < 0 || bounds.most(b.present) == 1);
        return both && (isPresent(a) || isPresent(b));
    }

    private boolean alone(Task task) {
        return !isPresent(task) || !fixed(task) || kept(task, task) || bounds.refuse(known(task, task));
    }

    private boolean pair(Task a, Task b) {
        if (fixed(a) && fixed(b)) {
            return kept(a, b) || exclude(a, b, starts(a, b));
        }
        return followed(a, b) && followed(b, a) && sameDay(a, b) && sameDay(b, a);
    }

    private boolean fixed(Task task) {
        return bounds.fixed(task.start) && bounds.fixed(task.end);
    }

    private boolean kept(Task a, Task b) {
        List<Course.Stretch> of = a.course.stretches(bounds.least(a.start), rest);
        for (Course.Stretch one : of) {
            for (Course.Stretch other : b.course.stretches(bounds.least(b.start), rest)) {
                if (!kept(rest, one, other)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether two parts of days of one person leave enough rest and are not too far apart on one day. */
    static boolean kept(Rest rest, Course.Stretch a, Course.Stretch b) {
        if (a.day() == b.day()) {
            return Math.max(a.to(), b.to()) - Math.min(a.from(), b.from()) <= rest.span();
        }
        return a.day() < b.day() ? b.from() - a.to() >= rest.least() : a.from() - b.to() >= rest.least();
    }

    /** When one surely lies on an earlier day, the other begins after the rest. */
    private boolean followed(Task first, Task second) {
        int day = rest.day(bounds.least(second.start));
        if (day < 0) {
            return true;
        }
        int cut = rest.cuts().get(day);
        // work that does not pause belongs to the day of its start, work that pauses to all its days
        boolean earlier =
                first.course.rigid() ? bounds.most(first.start) < cut : bounds.most(first.end) + first.plus <= cut;
        if (!earlier) {
            return true;
        }
        int[] days = {
            first.course.rigid() ? 2 * first.start + 1 : 2 * first.end + 1,
            first.course.rigid() ? 1 - cut : first.plus - cut,
            2 * second.start,
            cut
        };
        return apart(first, second, first.plus + rest.least(), days);
    }

    /** {@code second.start >= first.end + by} because of literals. */
    private boolean apart(Task first, Task second, int by, int[] because) {
        int from = bounds.least(first.end);
        int to = bounds.most(second.start);
        if (isPresent(first) && isPresent(second)) {
            int[] all = with(because, presence(first, second));
            return bounds.raise(2 * second.start, from + by, with(all, 2 * first.end, from))
                    && bounds.raise(2 * first.end + 1, by - to, with(all, 2 * second.start + 1, -to));
        }
        return from + by <= to
                || exclude(first, second, with(because, 2 * first.end, from, 2 * second.start + 1, 1 - from - by));
    }

    /** When both surely lie on one day, the later does not end too long after the beginning of the other. */
    private boolean sameDay(Task first, Task second) {
        int day = rest.day(bounds.least(first.start));
        if (day < 0 || day != rest.day(bounds.least(second.start))) {
            return true;
        }
        int next = day + 1 < rest.cuts().size() ? rest.cuts().get(day + 1) : Hours.END_OF_TIME;
        if (!within(first, next) || !within(second, next)) {
            return true;
        }
        int cut = rest.cuts().get(day);
        int[] days = with(with(before(first, next), before(second, next)), 2 * first.start, cut, 2 * second.start, cut);
        // second.end + plus <= first.start + span
        int by = second.plus - rest.span();
        int from = bounds.least(second.end);
        int to = bounds.most(first.start);
        if (isPresent(first) && isPresent(second)) {
            int[] all = with(days, presence(first, second));
            return bounds.raise(2 * first.start, from + by, with(all, 2 * second.end, from))
                    && bounds.raise(2 * second.end + 1, by - to, with(all, 2 * first.start + 1, -to));
        }
        return from + by <= to
                || exclude(first, second, with(days, 2 * second.end, from, 2 * first.start + 1, 1 - from - by));
    }

    private boolean within(Task task, int next) {
        return task.course.rigid() ? bounds.most(task.start) < next : bounds.most(task.end) + task.plus <= next;
    }

    private static int[] before(Task task, int next) {
        return task.course.rigid()
                ? new int[] {2 * task.start + 1, 1 - next}
                : new int[] {2 * task.end + 1, task.plus - next};
    }

    /** Whoever does the one cannot do the other. */
    private boolean exclude(Task a, Task b, int[] because) {
        if (isPresent(a) && isPresent(b)) {
            return bounds.refuse(with(because, presence(a, b)));
        }
        boolean first = isPresent(a);
        return bounds.raise(2 * (first ? b : a).present + 1, 0, with(because, presence(first ? a : b)));
    }

    private int[] starts(Task a, Task b) {
        return new int[] {
            2 * a.start, bounds.least(a.start), 2 * a.start + 1, -bounds.most(a.start),
            2 * b.start, bounds.least(b.start), 2 * b.start + 1, -bounds.most(b.start)
        };
    }

    private int[] known(Task a, Task b) {
        return with(starts(a, b), presence(a, b));
    }

    private static int[] presence(Task... tasks) {
        Ints all = new Ints();
        for (Task task : tasks) {
            if (task.present >= 0) {
                all.add(2 * task.present);
                all.add(1);
            }
        }
        return all.toArray();
    }

    private static int[] with(int[] because, int... more) {
        int[] all = Arrays.copyOf(because, because.length + more.length);
        System.arraycopy(more, 0, all, because.length, more.length);
        return all;
    }
}
