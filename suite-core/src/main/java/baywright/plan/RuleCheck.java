package baywright.plan;

import baywright.plan.CompiledStep.Part;
import baywright.plan.RuleBook.Entry;
import baywright.vehicle.Zone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts the rules that concern a step to its zones while a plan is walked, and keeps those that speak. */
final class RuleCheck {

    /** A rule that speaks, or fails, at a step on a row. */
    record Speech(int step, int row, Entry entry, Verdict verdict) {}

    private final RuleBook book;
    private final VehicleIndex vehicle;
    private final RuleAnswers answers;
    private final List<Speech> speeches = new ArrayList<>();

    RuleCheck(Prover prover, List<CompiledStep> steps, Tracks tracks, long[] ends) {
        book = prover.rules();
        vehicle = prover.vehicle();
        answers = new RuleAnswers(prover, steps, tracks, ends);
    }

    List<Speech> speeches() {
        return speeches;
    }

    /** Judges a part of a step that begins now; its rows are up to date. */
    void judge(int i, CompiledStep step, Part part, long start, String bay, long[] gives) {
        answers.turnTo(i, step, part, start, bay, gives);
        List<Entry> concerning = step.stage().map(s -> book.of(s.id())).orElse(List.of());
        for (Entry entry : concerning) {
            judge(i, entry, rows(entry, part));
        }
    }

    void done(int i) {
        answers.done(i);
    }

    private int[] rows(Entry entry, Part part) {
        if (!entry.choosesSurfaces()) {
            return part.rows();
        }
        boolean whole = Arrays.binarySearch(part.rows(), vehicle.vehicle()) >= 0;
        List<String> surfaces = entry.rule().at().surfaces();
        int[] from = whole ? vehicle.real() : part.rows();
        return Arrays.stream(from)
                .filter(row -> surface(row).filter(surfaces::contains).isPresent())
                .toArray();
    }

    private Optional<String> surface(int row) {
        return vehicle.zone(row).map(Zone::surface);
    }

    /** What depends on the setting alone is asked once for each row. */
    private long answer(Entry entry, int q, int row) {
        if (!entry.questions().get(q).isOfSetting()) {
            return answers.of(entry.questions().get(q), row);
        }
        long[] kept = entry.kept(q, vehicle.rows());
        if (kept[row] == Entry.UNASKED) {
            kept[row] = answers.of(entry.questions().get(q), row);
        }
        return kept[row];
    }

    /** Zones with the same answers get the same verdict without being judged again. */
    private void judge(int i, Entry entry, int[] rows) {
        int size = entry.questions().size();
        long[] before = new long[size];
        long[] now = new long[size];
        Verdict verdict = null;
        for (int row : rows) {
            for (int q = 0; q < size; q++) {
                now[q] = answer(entry, q, row);
            }
            if (verdict == null || !Arrays.equals(before, now)) {
                verdict = entry.of(now, book.values());
                System.arraycopy(now, 0, before, 0, size);
            }
            if (!verdict.isSilent()) {
                speeches.add(new Speech(i, row, entry, verdict));
            }
        }
    }
}
