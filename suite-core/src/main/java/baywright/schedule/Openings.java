package baywright.schedule;

import java.util.List;

/** Starts only where the hours allow it, and the end that follows from the start of work that pauses while closed. */
final class Openings implements Propagator {

    private final Bounds bounds;
    private final Activity activity;
    private final int start;
    private final int end;
    private final int[] from;
    private final int[] to;

    /** {@code end} is -1 for work that does not pause. */
    Openings(Bounds bounds, Activity activity, int start, int end) {
        this.bounds = bounds;
        this.activity = activity;
        this.start = start;
        this.end = end;
        int tail = activity.breaks() ? 1 : activity.minutes();
        List<Window> usable = activity.hours().windows().stream()
                .filter(w -> w.to() - w.from() >= tail)
                .toList();
        from = usable.stream().mapToInt(Window::from).toArray();
        to = usable.stream().mapToInt(w -> w.to() - tail).toArray();
    }

    void state() {
        if (end < 0) {
            bounds.add(this, 2 * start, 2 * start + 1);
        } else {
            bounds.add(this, 2 * start, 2 * start + 1, 2 * end, 2 * end + 1);
        }
    }

    @Override
    public boolean propagate() {
        return holes() && (end < 0 || (ends() && starts() && holes()));
    }

    private boolean holes() {
        int least = bounds.least(start);
        int i = 0;
        while (i < to.length && to[i] < least) {
            i++;
        }
        if (i == to.length) {
            int last = to.length == 0 ? Integer.MIN_VALUE / 2 : to[to.length - 1];
            return bounds.refuse(2 * start, last + 1);
        }
        if (from[i] > least) {
            int gap = i == 0 ? Integer.MIN_VALUE / 2 : to[i - 1] + 1;
            if (!bounds.raise(2 * start, from[i], 2 * start, gap)) {
                return false;
            }
        }
        int most = bounds.most(start);
        i = to.length - 1;
        while (i >= 0 && from[i] > most) {
            i--;
        }
        if (i < 0) {
            return bounds.refuse(2 * start + 1, 1 - from[0]);
        }
        return to[i] >= most || bounds.raise(2 * start + 1, -to[i], 2 * start + 1, gapAfter(i));
    }

    private int gapAfter(int i) {
        return i + 1 == from.length ? Integer.MIN_VALUE / 2 : 1 - from[i + 1];
    }

    private boolean ends() {
        int least = bounds.least(start);
        int most = bounds.most(start);
        return bounds.raise(2 * end, activity.endOf(least), 2 * start, least)
                && bounds.raise(2 * end + 1, -activity.endOf(most), 2 * start + 1, -most);
    }

    private boolean starts() {
        Hours hours = activity.hours();
        int least = bounds.least(end);
        int first = hours.openMinute(Math.max(0, hours.openBefore(least - 1) - activity.minutes() + 1))
                .orElse(Hours.END_OF_TIME);
        int most = bounds.most(end);
        int last = hours.openMinute(hours.openBefore(most) - activity.minutes()).orElse(-1);
        return bounds.raise(2 * start, first, 2 * end, least) && bounds.raise(2 * start + 1, -last, 2 * end + 1, -most);
    }
}
