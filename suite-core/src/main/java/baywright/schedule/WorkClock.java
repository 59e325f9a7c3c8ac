package baywright.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * When an activity may begin, and when it then ends. It begins where its planned minutes fit into its hours and those who
 * do it are there; nobody knows yet how long it will really take. Work that may pause goes on in the next open minutes in
 * which they are there; other work is brought to its end, after closing too. Beyond the last hours it is always open.
 */
final class WorkClock {

    /** Starts that are allowed, both ends included. */
    private final int[] from;

    private final int[] to;

    /** Windows for work that pauses, and the open minutes before each; empty for other work. */
    private final int[] opens;

    private final int[] closes;
    private final int[] before;

    /**
     * A clock for an activity.
     *
     * @param away when somebody who does it is not there; may overlap
     */
    WorkClock(Activity activity, List<Window> away) {
        List<Window> absences = activity.minutes() == 0 ? List.of() : joined(away);
        boolean pauses = activity.breaks() && activity.minutes() > 0;
        List<int[]> starts = starts(activity);
        if (pauses) {
            Hours hours = activity.hours();
            int last = hours.openMinute(hours.openBefore(Hours.END_OF_TIME) - activity.minutes())
                    .orElse(-1);
            starts = without(starts, last + 1, Hours.END_OF_TIME);
        }
        for (Window absence : absences) {
            starts = without(starts, firstBlocked(activity, absence), absence.to() - 1);
        }
        from = starts.stream().mapToInt(s -> s[0]).toArray();
        to = starts.stream().mapToInt(s -> s[1]).toArray();
        List<int[]> open = new ArrayList<>();
        if (pauses) {
            activity.hours().windows().forEach(w -> open.add(new int[] {w.from(), w.to() - 1}));
        }
        List<int[]> present = open;
        for (Window absence : pauses ? absences : List.<Window>of()) {
            present = without(present, absence.from(), absence.to() - 1);
        }
        opens = present.stream().mapToInt(w -> w[0]).toArray();
        closes = present.stream().mapToInt(w -> w[1] + 1).toArray();
        before = new int[opens.length];
        for (int i = 1; i < opens.length; i++) {
            before[i] = before[i - 1] + closes[i - 1] - opens[i - 1];
        }
    }

    private static List<int[]> starts(Activity activity) {
        int minutes = activity.minutes();
        List<int[]> starts = new ArrayList<>();
        if (minutes == 0) {
            starts.add(new int[] {0, Hours.END_OF_TIME});
            return starts;
        }
        for (Window window : activity.hours().windows()) {
            int last = window.to() - (activity.breaks() ? 1 : minutes);
            if (last >= window.from()) {
                starts.add(new int[] {window.from(), last});
            }
        }
        return starts;
    }

    /** The first start whose planned minutes meet an absence; those from there to the absence's end do. */
    private static int firstBlocked(Activity activity, Window absence) {
        if (!activity.breaks()) {
            return absence.from() - activity.minutes() + 1;
        }
        Hours hours = activity.hours();
        return hours.openMinute(hours.openBefore(absence.from()) - activity.minutes())
                        .orElse(-1)
                + 1;
    }

    private static List<Window> joined(List<Window> windows) {
        List<Window> joined = new ArrayList<>();
        windows.stream().sorted(java.util.Comparator.comparingInt(Window::from)).forEach(w -> {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).to() >= w.from()) {
                int end = Math.max(joined.get(last).to(), w.to());
                joined.set(last, new Window(joined.get(last).from(), end));
            } else {
                joined.add(w);
            }
        });
        return joined;
    }

    private static List<int[]> without(List<int[]> spans, int first, int last) {
        List<int[]> left = new ArrayList<>();
        for (int[] span : spans) {
            if (span[0] < first) {
                left.add(new int[] {span[0], Math.min(span[1], first - 1)});
            }
            if (span[1] > last) {
                left.add(new int[] {Math.max(span[0], last + 1), span[1]});
            }
        }
        return left;
    }

    /** Whether it may begin at any time. */
    boolean free() {
        return from.length == 1 && from[0] == 0 && to[0] >= Hours.END_OF_TIME - 1_000_000;
    }

    /** The earliest start from a minute on. */
    int startFrom(int minute) {
        int low = 0;
        int high = to.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (to[middle] < minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == to.length ? minute : Math.max(minute, from[low]);
    }

    /** The earliest minute, from one on, at which work of so many minutes would have to begin to end at a moment or later. */
    int beginToEnd(int from, int minutes, int moment) {
        int low = from;
        int high = Math.max(from, moment);
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (endOf(middle, minutes) < moment) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** When work of so many minutes ends that begins at a minute. */
    int endOf(int start, int minutes) {
        if (opens.length == 0 || minutes == 0) {
            return start + minutes;
        }
        int low = 0;
        int high = closes.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (closes[middle] <= start) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        if (low == closes.length) {
            return start + minutes;
        }
        int target = before[low] + Math.max(0, start - opens[low]) + minutes;
        int at = low;
        while (at + 1 < opens.length && before[at + 1] < target) {
            at++;
        }
        return opens[at] + target - before[at];
    }
}
