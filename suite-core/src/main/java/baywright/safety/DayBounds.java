package baywright.safety;

import baywright.library.StageTerms;
import java.time.LocalDate;
import java.util.List;

/**
 * What the steps of a day ask of air and surface.
 *
 * @param day   on which something is worked
 * @param steps those that have a bound, in order of time; none: the weather does not matter to the day's work
 */
public record DayBounds(LocalDate day, List<OfStep> steps) {

    /** What one step asks for. */
    public record OfStep(String step, StageTerms.Climate bounds) {}

    public DayBounds {
        steps = List.copyOf(steps);
    }
}
