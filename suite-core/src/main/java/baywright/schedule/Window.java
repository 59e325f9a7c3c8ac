package baywright.schedule;

/**
 * A stretch of time, in minutes.
 *
 * @param from first minute, not negative
 * @param to   the minute after the last, above {@code from}
 */
public record Window(int from, int to) {
    public Window {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException("a window needs 0 <= from < to, got " + from + " to " + to);
        }
    }
}
