package baywright.schedule;

import java.util.List;

/**
 * What a timetable should keep small: the sum over some activities of {@code weight × end + lateWeight × minutes late}.
 *
 * @param terms at least one
 */
public record Goal(List<Term> terms) {

    /**
     * One activity's share.
     *
     * @param activity   index
     * @param weight     for each minute until its end, from 0
     * @param due        when it should have ended
     * @param lateWeight for each minute after that, from 0
     */
    public record Term(int activity, int weight, int due, int lateWeight) {
        public Term {
            if (weight < 0 || lateWeight < 0 || weight + lateWeight == 0) {
                throw new IllegalArgumentException(
                        "a goal needs weights from 0, not both 0, got " + weight + ", " + lateWeight);
            }
        }

        long at(int end) {
            return (long) weight * end + (long) lateWeight * Math.max(0, end - due);
        }
    }

    public Goal {
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("a goal needs a term");
        }
    }

    /** The end of one activity. */
    public static Goal end(int activity) {
        return new Goal(List.of(new Term(activity, 1, Hours.END_OF_TIME, 0)));
    }

    /** The goal's value for ends by activity. */
    public long at(int[] ends) {
        return terms.stream().mapToLong(t -> t.at(ends[t.activity()])).sum();
    }
}
