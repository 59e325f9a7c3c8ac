package baywright.schedule;

import baywright.schedule.Bounds.Ints;
import java.util.Arrays;
import java.util.List;

/**
 * Never more in a period than a budget has, by what tasks must bring to the period wherever they lie between their bounds.
 * What an activity brings to a period grows, stays and shrinks as its start grows, so that the least of it is at a bound,
 * and starts that bring too much are in one piece.
 */
final class BudgetKept implements Propagator {

    /**
     * A task with its start.
     *
     * @param present variable that is 1 when the task counts and 0 when not; -1: it does
     */
    record Task(Course course, int start, int present, long load) {}

    private final Bounds bounds;
    private final long most;
    private final Window[] periods;
    private final Task[] tasks;
    private final long[] used;

    BudgetKept(Bounds bounds, long most, List<Window> periods, List<Task> tasks) {
        this.bounds = bounds;
        this.most = most;
        this.periods = periods.toArray(Window[]::new);
        this.tasks = tasks.stream()
                .filter(t -> t.load() > 0 && t.course().minutes() > 0)
                .toArray(Task[]::new);
        used = new long[this.periods.length];
    }

    /** States it, where there is enough to pass it. */
    void state() {
        if (Arrays.stream(tasks).mapToLong(Task::load).sum() <= most) {
            return;
        }
        Ints keys = new Ints();
        for (Task task : tasks) {
            keys.add(2 * task.start);
            keys.add(2 * task.start + 1);
            if (task.present >= 0) {
                keys.add(2 * task.present);
            }
        }
        bounds.add(this, keys);
    }

    @Override
    public boolean propagate() {
        Arrays.fill(used, 0);
        for (Task task : tasks) {
            if (isPresent(task)) {
                int end = earliestEnd(task);
                for (int p = firstPeriod(bounds.most(task.start)); p < periods.length && periods[p].from() < end; p++) {
                    used[p] += part(task, must(task, p));
                }
            }
        }
        for (int p = 0; p < used.length; p++) {
            if (used[p] > most) {
                return bounds.refuse(because(p, most + 1, -1));
            }
        }
        for (int i = 0; i < tasks.length; i++) {
            if (!filter(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean isPresent(Task task) {
        return bounds.isPresent(task.present);
    }

    private int earliestEnd(Task task) {
        return task.course.end(bounds.least(task.start));
    }

    /** The first period that ends after a minute. */
    private int firstPeriod(int minute) {
        int low = 0;
        int high = periods.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (periods[middle].to() <= minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Minutes that a task has in a period wherever it lies. */
    private int must(Task task, int p) {
        return Math.min(
                task.course.worked(bounds.least(task.start), periods[p]),
                task.course.worked(bounds.most(task.start), periods[p]));
    }

    private static long part(Task task, int worked) {
        return Budget.part(task.load, worked, task.course.minutes());
    }

    private boolean filter(int i) {
        Task task = tasks[i];
        if (!isPresent(task)) {
            return bounds.fixed(task.present) || absent(i);
        }
        return later(i) && sooner(i);
    }

    private long room(Task task, int p) {
        return most - (used[p] - (isPresent(task) ? part(task, must(task, p)) : 0));
    }

    private boolean absent(int i) {
        Task task = tasks[i];
        int end = earliestEnd(task);
        for (int p = firstPeriod(bounds.most(task.start)); p < periods.length && periods[p].from() < end; p++) {
            int must = must(task, p);
            if (must > 0 && part(task, must) > room(task, p)) {
                int bad = tooMany(task, room(task, p));
                int[] reason = because(p, most + 1 - part(task, bad), i);
                return bounds.raise(
                        2 * task.present + 1,
                        0,
                        with(
                                reason,
                                2 * task.start,
                                task.course.lowest(periods[p], bad),
                                2 * task.start + 1,
                                -task.course.highest(periods[p], bad)));
            }
        }
        return true;
    }

    private boolean later(int i) {
        Task task = tasks[i];
        int start = bounds.least(task.start);
        int end = task.course.end(start);
        for (int p = firstPeriod(start); p < periods.length && periods[p].from() < end; p++) {
            if (part(task, task.course.worked(start, periods[p])) > room(task, p)) {
                int bad = tooMany(task, room(task, p));
                int first = task.course.highest(periods[p], bad) + 1;
                int[] reason = with(
                        because(p, most + 1 - part(task, bad), i), 2 * task.start, task.course.lowest(periods[p], bad));
                return bounds.raise(2 * task.start, first, reason);
            }
        }
        return true;
    }

    private boolean sooner(int i) {
        Task task = tasks[i];
        int start = bounds.most(task.start);
        int end = task.course.end(start);
        for (int p = firstPeriod(start); p < periods.length && periods[p].from() < end; p++) {
            if (part(task, task.course.worked(start, periods[p])) > room(task, p)) {
                int bad = tooMany(task, room(task, p));
                int last = task.course.lowest(periods[p], bad) - 1;
                int[] reason = with(
                        because(p, most + 1 - part(task, bad), i),
                        2 * task.start + 1,
                        -task.course.highest(periods[p], bad));
                return bounds.raise(2 * task.start + 1, -last, reason);
            }
        }
        return true;
    }

    /** The fewest minutes of a task that are more than there is room for. */
    private static int tooMany(Task task, long room) {
        int low = 1;
        int high = task.course.minutes();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (part(task, middle) > room) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Enough of the tasks that must be in a period, save one, to use up an amount. */
    private int[] because(int p, long wanted, int save) {
        long surplus = -wanted;
        for (int i = 0; i < tasks.length; i++) {
            if (i != save && isPresent(tasks[i])) {
                surplus += part(tasks[i], must(tasks[i], p));
            }
        }
        Ints reason = new Ints();
        for (int i = 0; i < tasks.length; i++) {
            Task task = tasks[i];
            if (i == save || !isPresent(task)) {
                continue;
            }
            int must = must(task, p);
            if (part(task, must) <= surplus) {
                surplus -= part(task, must);
                continue;
            }
            reason.add(2 * task.start);
            reason.add(task.course.lowest(periods[p], must));
            reason.add(2 * task.start + 1);
            reason.add(-task.course.highest(periods[p], must));
            if (task.present >= 0) {
                reason.add(2 * task.present);
                reason.add(1);
            }
        }
        if (save >= 0 && tasks[save].present >= 0 && isPresent(tasks[save])) {
            reason.add(2 * tasks[save].present);
            reason.add(1);
        }
        return reason.toArray();
    }

    private static int[] with(int[] because, int... more) {
        int[] all = Arrays.copyOf(because, because.length + more.length);
        System.arraycopy(more, 0, all, because.length, more.length);
        return all;
    }
}
