package baywright.schedule;

import java.util.List;
import java.util.OptionalInt;

/**
 * When work goes on: windows in order of time, with a gap between each and the next.
 *
 * @param windows at least one
 */
public record Hours(List<Window> windows) {

    /** The last minute that a timetable can reckon with, about a thousand years. */
    static final int END_OF_TIME = 500_000_000;

    /** Day and night. */
    public static final Hours ALWAYS = new Hours(List.of(new Window(0, END_OF_TIME)));

    public Hours {
        windows = List.copyOf(windows);
        if (windows.isEmpty()) {
            throw new IllegalArgumentException("hours need at least one window");
        }
        for (int i = 1; i < windows.size(); i++) {
            if (windows.get(i).from() <= windows.get(i - 1).to()) {
                throw new IllegalArgumentException("hours need windows in order of time with gaps between, got "
                        + windows.get(i - 1) + " before " + windows.get(i));
            }
        }
    }

    /** The earliest start from a minute on such that so many minutes fit in one window; empty when there is none. */
    OptionalInt startWithin(int from, int minutes) {
        for (int i = indexAt(from); i < windows.size(); i++) {
            Window window = windows.get(i);
            int start = Math.max(from, window.from());
            if (start <= window.to() - minutes) {
                return OptionalInt.of(start);
            }
        }
        return OptionalInt.empty();
    }

    /** The first open minute from a minute on; empty when there is none. */
    OptionalInt open(int from) {
        return startWithin(from, 1);
    }

    /** Open minutes before a minute. */
    long openBefore(int minute) {
        long sum = 0;
        for (Window window : windows) {
            if (window.from() >= minute) {
                break;
            }
            sum += Math.min(minute, window.to()) - window.from();
        }
        return sum;
    }

    /** The open minute before which so many open minutes lie; empty when there are not so many. */
    OptionalInt openMinute(long before) {
        long left = before;
        for (Window window : windows) {
            int length = window.to() - window.from();
            if (left < length) {
                return left < 0 ? OptionalInt.empty() : OptionalInt.of(window.from() + (int) left);
            }
            left -= length;
        }
        return OptionalInt.empty();
    }

    /** When work that pauses while it is closed ends; {@code start} is open. Empty when the windows do not suffice. */
    OptionalInt end(int start, int minutes) {
        if (minutes == 0) {
            return OptionalInt.of(start);
        }
        int left = minutes;
        for (int i = indexAt(start); i < windows.size(); i++) {
            Window window = windows.get(i);
            int from = Math.max(start, window.from());
            if (left <= window.to() - from) {
                return OptionalInt.of(from + left);
            }
            left -= window.to() - from;
        }
        return OptionalInt.empty();
    }

    /** Index of the first window that ends after a minute. */
    private int indexAt(int minute) {
        int low = 0;
        int high = windows.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (windows.get(middle).to() <= minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
