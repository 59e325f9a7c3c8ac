package baywright.plan;

import baywright.script.Value;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;

/**
 * A bundle of edits that differ only in where the step goes: every gap from {@code low} to {@code high} in turn, gap 0
 * being before the first step.
 *
 * @param kind     what is done
 * @param step     id of the step that is changed; for an insertion the id of the step that it serves
 * @param use      for an insertion what is inserted
 * @param rows     for an insertion or a widening: rows that it takes in
 * @param low      first gap
 * @param high     last gap
 * @param edit     the edit itself where place and rows are settled
 * @param loses    whether wanted work is left out by it
 */
record RepairChoice(
        Kind kind, String step, Optional<Use> use, BitSet rows, int low, int high, Optional<Edit> edit, boolean loses) {

    /** What is done, in order of preference. */
    enum Kind {
        /** A step that an edit made or widened takes in more rows; no further edit. */
        WIDEN_OPEN,
        INSERT,
        MOVE,
        WIDEN,
        CHANGE,
        /** Wanted work is left out. */
        LOSE
    }

    /** A stage with what differs from its usual inputs. */
    record Use(String stage, Map<String, Value> with) {}

    boolean free() {
        return kind == Kind.WIDEN_OPEN;
    }

    /** How many edits are in the bundle. */
    int size() {
        return high - low + 1;
    }

    /** The edits that are in both bundles; an insertion or a widening that takes in the rows of both is in both. */
    Optional<RepairChoice> and(RepairChoice other) {
        boolean same = kind == other.kind
                && edit.equals(other.edit)
                && use.equals(other.use)
                && (kind == Kind.INSERT || step.equals(other.step));
        int from = Math.max(low, other.low);
        int to = Math.min(high, other.high);
        if (!same || from > to) {
            return Optional.empty();
        }
        if (rows.equals(other.rows)) {
            return Optional.of(new RepairChoice(kind, step, use, rows, from, to, edit, loses));
        }
        BitSet both = (BitSet) rows.clone();
        both.or(other.rows);
        return Optional.of(new RepairChoice(kind, step, use, both, from, to, edit, loses));
    }

    /** Whether one edit can be in both bundles. */
    boolean meets(RepairChoice other) {
        return kind == other.kind
                && Math.max(low, other.low) <= Math.min(high, other.high)
                && (kind == Kind.INSERT || step.equals(other.step))
                && use.equals(other.use)
                && edit.equals(other.edit);
    }
}
