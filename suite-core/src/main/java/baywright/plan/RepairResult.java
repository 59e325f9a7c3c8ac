package baywright.plan;

import java.time.Duration;
import java.util.List;

/**
 * What the search for repairs found.
 *
 * @param repairs    other ways of the same number of edits, best first; empty when none was found. A plan without a
 *                   stop has one repair, without an edit
 * @param proof      whether the number of edits is proved to be the smallest
 * @param lossOnly   stops that no edit mends unless work that must be done is left out: paint that a stage must not
 *                   touch, a bay that does not give what a stage needs, a stage that the library no longer has
 * @param unmendable stops that these repairs leave: two steps of one id, a survey that names unknown states; what rules
 *                   forbid when no repair was found in the time that mends it too
 * @param figures    how much was looked at
 */
public record RepairResult(
        List<Repair> repairs, Smallest proof, List<Finding> lossOnly, List<Finding> unmendable, Figures figures) {

    /** What is known about the number of edits. */
    public enum Smallest {
        /** Every smaller set of edits was ruled out. */
        PROVED,
        /** The time was over before every smaller set was ruled out. */
        TIME_LIMIT,
        /** So many variants as allowed were looked at before every smaller set was ruled out. */
        NODE_LIMIT,
        /** Whoever asked called it off. */
        CANCELLED,
        /** No repair has so few edits as allowed. */
        EDIT_LIMIT
    }

    /**
     * Figures of the search.
     *
     * @param variants variants of the plan that were walked
     * @param least    edits that every repair needs at least, as far as proved
     * @param time     how long it took
     */
    public record Figures(int variants, int least, Duration time) {}

    public RepairResult {
        repairs = List.copyOf(repairs);
        lossOnly = List.copyOf(lossOnly);
        unmendable = List.copyOf(unmendable);
    }

    public boolean provedSmallest() {
        return proof == Smallest.PROVED;
    }
}
