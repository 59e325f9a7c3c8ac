package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Starts and ends against counting minute by minute. */
class WorkClockTest {

    private static final int MINUTES = 2100;

    /** Which minutes lie in a window. */
    private static boolean[] minutes(List<Window> windows) {
        boolean[] in = new boolean[MINUTES];
        windows.forEach(w -> Arrays.fill(in, Math.min(w.from(), MINUTES), Math.min(w.to(), MINUTES), true));
        return in;
    }

    /** The planned minutes from a start, pauses included, when it may begin there; else -1. */
    private static int plannedEnd(Activity activity, boolean[] open, boolean[] away, int start) {
        int left = activity.minutes();
        int minute = start;
        while (left > 0) {
            if (away[minute] || (!open[minute] && (!activity.breaks() || minute == start)) || minute > 2000) {
                return -1;
            }
            left -= open[minute] ? 1 : 0;
            minute++;
        }
        return minute;
    }

    @Test
    void isThatOfCountingMinutes() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 300; round++) {
            List<Window> windows = new ArrayList<>();
            List<Window> away = new ArrayList<>();
            int at = random.nextInt(5);
            for (int k = 0; k < 12; k++) {
                int to = at + 5 + random.nextInt(20);
                windows.add(new Window(at, to));
                if (random.nextInt(4) == 0) {
                    int from = at + random.nextInt(8);
                    away.add(new Window(from, from + 1 + random.nextInt(15)));
                }
                at = to + 1 + random.nextInt(15);
            }
            boolean breaks = random.nextBoolean();
            int minutes = 1 + random.nextInt(breaks ? 40 : 12);
            Activity activity = new Activity("a", minutes, new Hours(windows), breaks, 0, Hours.END_OF_TIME, List.of());
            WorkClock clock = new WorkClock(activity, away);
            boolean[] open = minutes(windows);
            boolean[] gone = minutes(away);
            int last = windows.get(windows.size() - 1).to();
            for (int minute = 0; minute < last / 2; minute++) {
                int start = minute;
                while (start < 2000 && plannedEnd(activity, open, gone, start) < 0) {
                    start++;
                }
                if (start == 2000) {
                    assertThat(clock.startFrom(minute)).isEqualTo(minute);
                    continue;
                }
                assertThat(clock.startFrom(minute)).as("round " + round).isEqualTo(start);
                assertThat(clock.endOf(start, minutes)).isEqualTo(plannedEnd(activity, open, gone, start));
                int other = random.nextInt(2 * minutes);
                int end = breaks ? endOrNever(open, gone, start, other) : start + other;
                if (end < last) {
                    assertThat(clock.endOf(start, other)).as("round " + round).isEqualTo(end);
                }
            }
        }
    }

    private static int endOrNever(boolean[] open, boolean[] away, int start, int minutes) {
        int left = minutes;
        int minute = start;
        while (left > 0 && minute < 2000) {
            left -= open[minute] && !away[minute] ? 1 : 0;
            minute++;
        }
        return minute;
    }

    @Test
    void workOfNoLengthIsFree() {
        WorkClock clock = new WorkClock(Activity.of("a", 0), List.of(new Window(0, 50)));
        assertThat(clock.startFrom(20)).isEqualTo(20);
        assertThat(clock.endOf(20, 0)).isEqualTo(20);
        assertThat(clock.free()).isTrue();
    }
}
