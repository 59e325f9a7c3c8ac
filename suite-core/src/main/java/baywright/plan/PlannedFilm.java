package baywright.plan;

import baywright.library.StageTerms.Removal;
import baywright.plan.CompiledStep.Part;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** What a whole plan takes off each row, µm. */
final class PlannedFilm {

    private final BigDecimal[] likely;
    private final BigDecimal[] most;

    PlannedFilm(List<CompiledStep> steps, int rows) {
        likely = new BigDecimal[rows];
        most = new BigDecimal[rows];
        Arrays.fill(likely, BigDecimal.ZERO);
        Arrays.fill(most, BigDecimal.ZERO);
        for (CompiledStep step : steps) {
            for (Part part : step.parts()) {
                for (Removal removal : part.terms().terms.removals()) {
                    add(removal, part.rows());
                }
            }
        }
    }

    private void add(Removal removal, int[] rows) {
        BigDecimal moreLikely = removal.micrometres().likely().multiply(removal.times());
        BigDecimal moreMost = removal.micrometres().most().multiply(removal.times());
        for (int row : rows) {
            likely[row] = likely[row].add(moreLikely);
            most[row] = most[row].add(moreMost);
        }
    }

    BigDecimal likely(int row) {
        return likely[row];
    }

    BigDecimal most(int row) {
        return most[row];
    }
}
