package baywright.plan;

import baywright.plan.CompiledTerms.Condition;
import baywright.plan.RuleBook.Question;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * One stop of a plan that every repair must answer with at least one edit.
 *
 * @param kind      what is wrong
 * @param step      index of the step concerned
 * @param after     for a wait or an overlap: index of the earlier step; else -1
 * @param cells     for a state: the cells of which one must change (all of one alternative are demands of their own)
 * @param rows      rows of the vehicle on which it is so; the first stands for all when edits are looked for
 * @param condition for a state: the condition that fails
 * @param ticks     for a start: the earliest (latest when {@code TOO_LATE}) that would do
 * @param problem   for a use that is wrong by itself: the finding
 * @param rule      for a rule that forbids the step: the rule and what it asked
 */
record RepairDemand(
        Kind kind,
        int step,
        int after,
        List<Cell> cells,
        BitSet rows,
        Optional<Condition> condition,
        long ticks,
        Optional<Finding> problem,
        Optional<Ruling> rule) {

    RepairDemand(
            Kind kind,
            int step,
            int after,
            List<Cell> cells,
            BitSet rows,
            Optional<Condition> condition,
            long ticks,
            Optional<Finding> problem) {
        this(kind, step, after, cells, rows, condition, ticks, problem, Optional.empty());
    }

    /**
     * A rule that forbids a step.
     *
     * @param id    of the rule
     * @param asked the questions whose answers decided it: while all of them stay as they are, it forbids
     */
    record Ruling(String id, List<Question> asked) {}

    /** What is wrong. */
    enum Kind {
        /** A state must hold and does not. */
        NEEDS,
        /** A state must not hold and does. */
        REFUSES,
        TOO_LATE,
        TOO_SOON,
        OVERLAPS,
        BEFORE_START,
        /** No bay for the step. */
        NO_BAY,
        /** Stage, zones, inputs or drivers of the step are wrong by themselves. */
        USE,
        /** A rule of the library forbids it. */
        RULE
    }

    /** A plain state on the row that carries it. */
    record Cell(int state, int row) {}

    int row() {
        return rows.nextSetBit(0);
    }
}
