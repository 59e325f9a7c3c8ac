package baywright.schedule;

import java.util.List;

/** How the minutes of an activity lie in time, by its start. */
final class Course {

    private final Activity activity;
    private final int minutes;
    private final boolean rigid;
    private final int[] from;
    private final int[] to;
    private final int[] before;

    Course(Activity activity) {
        this.activity = activity;
        minutes = activity.minutes();
        rigid = activity.rigid();
        List<Window> windows = rigid ? List.of() : activity.hours().windows();
        from = windows.stream().mapToInt(Window::from).toArray();
        to = windows.stream().mapToInt(Window::to).toArray();
        before = new int[from.length + 1];
        for (int i = 0; i < from.length; i++) {
            before[i + 1] = before[i] + to[i] - from[i];
        }
    }

    int minutes() {
        return minutes;
    }

    boolean rigid() {
        return rigid;
    }

    int end(int start) {
        return minutes == 0 ? start : activity.endOf(start);
    }

    /** Minutes worked in a window. As the start grows they grow, stay and shrink, in this order. */
    int worked(int start, Window in) {
        int least = rigid ? start : open(start);
        int first = rigid ? in.from() : open(in.from());
        int last = rigid ? in.to() : open(in.to());
        return Math.max(0, Math.min(least + minutes, last) - Math.max(least, first));
    }

    /** The least start with so many minutes in a window, from 1; it may be below 0. */
    int lowest(Window in, int worked) {
        if (rigid) {
            return in.from() - minutes + worked;
        }
        int wanted = open(in.from()) - minutes + worked;
        return wanted <= 0 ? -1 : at(wanted - 1) + 1;
    }

    /** The last start with so many minutes in a window, from 1. */
    int highest(Window in, int worked) {
        return rigid ? in.to() - worked : at(open(in.to()) - worked);
    }

    /** From the first to the last minute worked in a window, where there is one. */
    Window within(int start, Window in) {
        int begin = Math.max(start, in.from());
        int last = Math.min(end(start), in.to());
        return rigid ? new Window(begin, last) : new Window(at(open(begin)), at(open(last) - 1) + 1);
    }

    /** Index of the first window that ends after a minute. */
    private int indexAt(int minute) {
        int low = 0;
        int high = to.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (to[middle] <= minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Open minutes before a minute. */
    private int open(int minute) {
        int i = indexAt(minute);
        return before[i] + (i < to.length && from[i] < minute ? minute - from[i] : 0);
    }

    /** The open minute before which so many open minutes lie. */
    private int at(int wanted) {
        int low = 0;
        int high = from.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (before[middle + 1] <= wanted) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == from.length ? Hours.END_OF_TIME : from[low] + wanted - before[low];
    }

    /** A day's part of the work. */
    record Stretch(int day, int from, int to) {}

    /** The parts of the days on which it goes on, for {@link Rest}; none for what takes no time. */
    List<Stretch> stretches(int start, Rest rest) {
        if (minutes == 0) {
            return List.of();
        }
        int end = end(start);
        if (rigid) {
            return List.of(new Stretch(rest.day(start), start, end));
        }
        List<Stretch> all = new java.util.ArrayList<>();
        for (int i = indexAt(start); i < to.length && from[i] < end; i++) {
            int at = Math.max(start, from[i]);
            while (at < Math.min(end, to[i])) {
                int day = rest.day(at);
                int next = day + 1 < rest.cuts().size() ? rest.cuts().get(day + 1) : Integer.MAX_VALUE;
                int until = Math.min(Math.min(end, to[i]), next);
                int last = all.size() - 1;
                if (last >= 0 && all.get(last).day() == day) {
                    all.set(last, new Stretch(day, all.get(last).from(), until));
                } else {
                    all.add(new Stretch(day, at, until));
                }
                at = until;
            }
        }
        return all;
    }
}
