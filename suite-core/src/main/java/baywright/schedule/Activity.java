package baywright.schedule;

import java.util.List;

/**
 * A piece of work or of waiting.
 *
 * @param id       unique in its project
 * @param minutes  how long it takes, from 0
 * @param hours    when it can go on; an activity of no length is free of them
 * @param breaks   whether it may pause while it is closed; else it fits into one window
 * @param earliest earliest start
 * @param latest   latest start, not before the earliest
 * @param needs    what it takes from start to end, pauses included
 */
public record Activity(
        String id, int minutes, Hours hours, boolean breaks, int earliest, int latest, List<Need> needs) {

    public Activity {
        needs = List.copyOf(needs);
        if (minutes < 0 || earliest < 0 || latest < earliest) {
            throw new IllegalArgumentException(
                    "activity " + id + " needs 0 <= minutes and 0 <= earliest <= latest, got " + minutes + ", "
                            + earliest + ", " + latest);
        }
    }

    /** An activity at any time. */
    public static Activity of(String id, int minutes, Need... needs) {
        return new Activity(id, minutes, Hours.ALWAYS, false, 0, Hours.END_OF_TIME, List.of(needs));
    }

    /** The same, not before a minute. */
    public Activity from(int minute) {
        return new Activity(id, minutes, hours, breaks, minute, Math.max(minute, latest), needs);
    }

    /** The earliest start from a minute on that its hours allow; {@link Hours#END_OF_TIME} when there is none. */
    int startFrom(int minute) {
        if (minutes == 0) {
            return minute;
        }
        return (breaks ? hours.open(minute) : hours.startWithin(minute, minutes)).orElse(Hours.END_OF_TIME);
    }

    /** When it ends if it starts at a minute that its hours allow; {@link Hours#END_OF_TIME} when it never does. */
    int endOf(int start) {
        return breaks ? hours.end(start, minutes).orElse(Hours.END_OF_TIME) : start + minutes;
    }

    /** Whether start and end are always as far apart. */
    boolean rigid() {
        return !breaks || minutes == 0 || hours.windows().size() == 1;
    }
}
