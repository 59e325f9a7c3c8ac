package baywright.schedule;

import java.util.List;

/**
 * Rest of a person from day to day. Work that does not pause belongs to the day on which it begins; work that pauses
 * belongs to each day on which it goes on.
 *
 * @param resource index of the person
 * @param least    minutes from the end of a day's work to the beginning of the next day's, at least; 0 to 1440
 * @param span     minutes from the beginning of a day's work to its end, at most; above 0
 * @param cuts     where days begin, in order of time
 */
public record Rest(int resource, int least, int span, List<Integer> cuts) {

    private static final int MINUTES_OF_DAY = 24 * 60;

    public Rest {
        cuts = List.copyOf(cuts);
        if (least < 0 || least > MINUTES_OF_DAY || span < 1) {
            throw new IllegalArgumentException(
                    "rest needs 0 to 1440 minutes at least and a span above 0, got " + least + " and " + span);
        }
    }

    /** The day of a minute, counted from 0; -1 before the first. */
    int day(int minute) {
        int low = 0;
        int high = cuts.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cuts.get(middle) <= minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }
}
