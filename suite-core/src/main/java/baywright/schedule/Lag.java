package baywright.schedule;

import java.util.OptionalInt;

/**
 * A wait between two activities.
 *
 * @param from    index of the one before
 * @param since   from which of its ends
 * @param to      index of the one after
 * @param until   to which of its ends
 * @param least   minutes at least, from 0
 * @param most    minutes at most, not less than {@code least}; empty: as long as it likes
 * @param why     words for people; may be empty
 */
public record Lag(int from, Point since, int to, Point until, int least, OptionalInt most, String why) {

    /** An end of an activity. */
    public enum Point {
        START,
        END
    }

    public Lag {
        if (least < 0 || (most.isPresent() && most.getAsInt() < least)) {
            throw new IllegalArgumentException("a wait needs 0 <= least <= most, got " + least + ", " + most);
        }
    }

    /** One after the other. */
    public static Lag after(int from, int to) {
        return after(from, to, 0);
    }

    /** One after the end of the other by so much at least. */
    public static Lag after(int from, int to, int least) {
        return new Lag(from, Point.END, to, Point.START, least, OptionalInt.empty(), "");
    }

    /** One after the end of the other by so much at least and at most. */
    public static Lag between(int from, int to, int least, int most) {
        return new Lag(from, Point.END, to, Point.START, least, OptionalInt.of(most), "");
    }
}
