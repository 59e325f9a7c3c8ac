package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.RuleBook.Asked;
import baywright.plan.RuleBook.Entry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts the rules that concern a step to its zones while a plan is walked, and keeps those that speak. */
final class RuleCheck {

    /** A rule that speaks, or fails, at a step on a row. */
    record Speech(int step, int row, Entry entry, Verdict verdict) {}

    private final RuleBook book;
    private final VehicleIndex vehicle;
    private final RuleAnswers answers;
    private final List<Speech> speeches = new ArrayList<>();
    private final long[] ofPart;
    private final int[] askedInTurn;
    private int turn;
    private boolean rowMatters;

    RuleCheck(Prover prover, List<CompiledStep> steps, Tracks tracks, long[] ends) {
        book = prover.rules();
        vehicle = prover.vehicle();
        answers = new RuleAnswers(prover, steps, tracks, ends);
        ofPart = new long[book.questions()];
        askedInTurn = new int[book.questions()];
    }

    List<Speech> speeches() {
        return speeches;
    }

    /** Judges a part of a step that begins now; its rows are up to date. */
    void judge(int i, CompiledStep step, Part part, long start, String bay, long[] gives) {
        answers.turnTo(i, step, part, start, bay, gives);
        turn++;
        boolean whole = Arrays.binarySearch(part.rows(), vehicle.vehicle()) >= 0;
        for (Entry entry : step.stage().map(book::of).orElse(List.of())) {
            judge(i, entry, whole && entry.choosesSurfaces() ? vehicle.real() : part.rows());
        }
    }

    void done(int i) {
        answers.done(i);
    }

    /** A verdict for which no answer depended on the row serves all rows. */
    private void judge(int i, Entry entry, int[] rows) {
        Verdict verdict = null;
        rowMatters = true;
        for (int row : rows) {
            if (!entry.looksAt(row)) {
                continue;
            }
            if (rowMatters) {
                rowMatters = false;
                verdict = entry.of(q -> answer(entry.question(q), row), book.values());
            }
            if (!verdict.isSilent()) {
                speeches.add(new Speech(i, row, entry, verdict));
            } else if (!rowMatters) {
                return;
            }
        }
    }

    /** What depends on the setting alone is asked once for each row, what depends on the step alone once for its part. */
    private long answer(Asked asked, int row) {
        int number = asked.number();
        switch (asked.scope()) {
            case SETTING -> {
                rowMatters = true;
                return asked.kept(row, vehicle.rows(), answers);
            }
            case STEP -> {
                if (askedInTurn[number] != turn) {
                    ofPart[number] = answers.of(asked.question(), row);
                    askedInTurn[number] = turn;
                }
                return ofPart[number];
            }
            default -> {
                rowMatters = true;
                return answers.of(asked.question(), row);
            }
        }
    }
}
