package baywright.schedule;

import baywright.schedule.Bounds.Ints;
import java.util.Arrays;
import java.util.List;

/**
 * Never more at a time than a capacity, by the parts of tasks that must run (timetable filtering), with a reason at one
 * minute for each conclusion.
 */
final class Cumulative implements Propagator {

    /**
     * A task with its variables; the end is {@code end + plus}.
     *
     * @param solid   whether it is known to take some time
     * @param present variable that is 1 when the task takes this resource and 0 when not; -1: it does
     */
    record Task(int start, int end, int plus, boolean solid, int amount, int present) {}

    private final Bounds bounds;
    private final int capacity;
    private final Task[] tasks;
    private final int[] fixedAt;
    private final int[] fixedBy;
    private final long[] events;
    private final int[] at;
    private final int[] height;
    private final int[] fixed;
    private final Ints reason = new Ints();
    private int segments;
    private int peak;

    Cumulative(Bounds bounds, int capacity, List<Resource.Absence> absences, List<Task> tasks) {
        this.bounds = bounds;
        this.capacity = capacity;
        this.tasks = tasks.toArray(Task[]::new);
        fixedAt = new int[2 * absences.size()];
        fixedBy = new int[fixedAt.length];
        for (int i = 0; i < absences.size(); i++) {
            fixedAt[2 * i] = absences.get(i).when().from();
            fixedBy[2 * i] = absences.get(i).amount();
            fixedAt[2 * i + 1] = absences.get(i).when().to();
            fixedBy[2 * i + 1] = -absences.get(i).amount();
        }
        int most = fixedAt.length + 2 * this.tasks.length;
        events = new long[most];
        at = new int[most + 1];
        height = new int[most + 1];
        fixed = new int[most + 1];
    }

    /** States it, for tasks that take something. */
    void state() {
        if (tasks.length == 0) {
            return;
        }
        Ints keys = new Ints();
        for (Task task : tasks) {
            keys.add(2 * task.start + 1);
            keys.add(2 * task.end);
            keys.add(2 * task.start);
            keys.add(2 * task.end + 1);
            if (task.present >= 0) {
                keys.add(2 * task.present);
            }
        }
        bounds.add(this, keys);
    }

    @Override
    public boolean propagate() {
        build();
        for (int k = 0; k + 1 < segments; k++) {
            if (height[k] > capacity && height[k] > fixed[k]) {
                return bounds.refuse(because(at[k] + (at[k + 1] - at[k]) / 2, capacity + 1, -1));
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

    private int latestStart(Task task) {
        return bounds.most(task.start);
    }

    private int earliestEnd(Task task) {
        return bounds.least(task.end) + task.plus;
    }

    private void build() {
        int n = 0;
        for (int i = 0; i < fixedAt.length; i++) {
            events[n++] = ((long) fixedAt[i] << 32) | i;
        }
        for (int i = 0; i < tasks.length; i++) {
            Task task = tasks[i];
            if (isPresent(task) && latestStart(task) < earliestEnd(task)) {
                events[n++] = ((long) latestStart(task) << 32) | (fixedAt.length + 2 * i);
                events[n++] = ((long) earliestEnd(task) << 32) | (fixedAt.length + 2 * i + 1);
            }
        }
        Arrays.sort(events, 0, n);
        segments = 0;
        peak = 0;
        int level = 0;
        int still = 0;
        for (int e = 0; e < n; ) {
            int time = (int) (events[e] >> 32);
            for (; e < n && (int) (events[e] >> 32) == time; e++) {
                int which = (int) events[e];
                if (which < fixedAt.length) {
                    level += fixedBy[which];
                    still += fixedBy[which];
                } else {
                    Task task = tasks[(which - fixedAt.length) / 2];
                    level += (which - fixedAt.length) % 2 == 0 ? task.amount : -task.amount;
                }
            }
            at[segments] = time;
            height[segments] = level;
            peak = Math.max(peak, level);
            fixed[segments++] = still;
        }
    }

    private boolean filter(int i) {
        Task task = tasks[i];
        if (task.present >= 0 && bounds.most(task.present) == 0) {
            return true;
        }
        if (peak + task.amount <= capacity) {
            return true;
        }
        if (!isPresent(task)) {
            return excluded(i, task);
        }
        boolean settled = bounds.fixed(task.start) && bounds.fixed(task.end);
        return settled || (later(i, task) && sooner(i, task));
    }

    private int segmentAt(int time) {
        int found = Arrays.binarySearch(at, 0, segments, time);
        return Math.max(0, found >= 0 ? found : -found - 2);
    }

    private boolean blocks(int k, Task task) {
        boolean own = latestStart(task) <= at[k] && earliestEnd(task) >= at[k + 1];
        return !own && height[k] + task.amount > capacity;
    }

    private boolean later(int i, Task task) {
        for (int k = segmentAt(bounds.least(task.start)); k + 1 < segments && at[k] < earliestEnd(task); k++) {
            if (at[k + 1] <= bounds.least(task.start) || !blocks(k, task)) {
                continue;
            }
            if (task.solid && fixed[k] + task.amount > capacity) {
                if (!bounds.raise(2 * task.start, at[k + 1], alone(task, 2 * task.end, at[k] + 1 - task.plus))) {
                    return false;
                }
                continue;
            }
            while (bounds.least(task.start) < at[k + 1] && earliestEnd(task) > bounds.least(task.start)) {
                int minute = Math.min(at[k + 1], earliestEnd(task)) - 1;
                if (minute < at[k]) {
                    break;
                }
                int[] because = because(minute, capacity + 1 - task.amount, i);
                if (!bounds.raise(
                        2 * task.start, minute + 1, with(because, task, 2 * task.end, minute + 1 - task.plus))) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean sooner(int i, Task task) {
        int from = segmentAt(bounds.most(task.end) + task.plus - 1);
        for (int k = Math.min(from, segments - 2); k >= 0 && at[k + 1] > latestStart(task); k--) {
            if (at[k] >= bounds.most(task.end) + task.plus || !blocks(k, task)) {
                continue;
            }
            if (task.solid && fixed[k] + task.amount > capacity) {
                if (!bounds.raise(
                        2 * task.end + 1, task.plus - at[k], alone(task, 2 * task.start + 1, 1 - at[k + 1]))) {
                    return false;
                }
                continue;
            }
            while (bounds.most(task.end) + task.plus > at[k] && latestStart(task) < bounds.most(task.end) + task.plus) {
                int minute = Math.max(at[k], latestStart(task));
                if (minute >= at[k + 1]) {
                    break;
                }
                int[] because = because(minute, capacity + 1 - task.amount, i);
                if (!bounds.raise(
                        2 * task.end + 1, task.plus - minute, with(because, task, 2 * task.start + 1, -minute))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A task that may be served by another: not by this one where it must run and nothing is left. */
    private boolean excluded(int i, Task task) {
        int from = latestStart(task);
        int to = earliestEnd(task);
        for (int k = segmentAt(from); from < to && k + 1 < segments && at[k] < to; k++) {
            if (at[k + 1] > from && height[k] + task.amount > capacity) {
                int minute = Math.max(from, at[k]);
                int[] because = because(minute, capacity + 1 - task.amount, i);
                int[] all = Arrays.copyOf(because, because.length + 4);
                covers(all, because.length, task, minute);
                return bounds.raise(2 * task.present + 1, 0, all);
            }
        }
        return true;
    }

    // ---- reasons

    private static void covers(int[] into, int n, Task task, int minute) {
        into[n] = 2 * task.start + 1;
        into[n + 1] = -minute;
        into[n + 2] = 2 * task.end;
        into[n + 3] = minute + 1 - task.plus;
    }

    private static int[] alone(Task task, int key, int value) {
        return task.present < 0 ? new int[] {key, value} : new int[] {key, value, 2 * task.present, 1};
    }

    private static int[] with(int[] because, Task task, int key, int value) {
        int[] own = alone(task, key, value);
        int[] all = Arrays.copyOf(because, because.length + own.length);
        System.arraycopy(own, 0, all, because.length, own.length);
        return all;
    }

    /** Enough of the tasks that run at a minute, save one, to take up an amount. */
    private int[] because(int minute, int wanted, int save) {
        int missing = wanted;
        for (int i = 0; i < fixedAt.length; i += 2) {
            if (fixedAt[i] <= minute && fixedAt[i + 1] > minute) {
                missing -= fixedBy[i];
            }
        }
        int surplus = -missing;
        for (int i = 0; i < tasks.length; i++) {
            if (i != save && runs(tasks[i], minute)) {
                surplus += tasks[i].amount;
            }
        }
        reason.size = 0;
        for (int i = 0; i < tasks.length; i++) {
            Task task = tasks[i];
            if (i == save || !runs(task, minute)) {
                continue;
            }
            if (task.amount <= surplus) {
                surplus -= task.amount;
                continue;
            }
            reason.add(2 * task.start + 1);
            reason.add(-minute);
            reason.add(2 * task.end);
            reason.add(minute + 1 - task.plus);
            if (task.present >= 0) {
                reason.add(2 * task.present);
                reason.add(1);
            }
        }
        return reason.toArray();
    }

    private boolean runs(Task task, int minute) {
        return isPresent(task) && latestStart(task) <= minute && earliestEnd(task) > minute;
    }
}
