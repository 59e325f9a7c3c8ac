package baywright.share;

import baywright.plan.Finding;
import java.util.List;

/**
 * What one changed declaration alone makes of a job, with what is new beside it but nothing else changed.
 *
 * @param change the declaration
 * @param effect on the figures
 * @param come   findings that it brings
 * @param gone   findings that it takes away
 */
public record ImpactCause(ImpactChange change, ImpactEffect effect, List<Finding> come, List<Finding> gone) {

    public ImpactCause {
        come = List.copyOf(come);
        gone = List.copyOf(gone);
    }

    static ImpactCause of(ImpactChange change, ImpactFigures before, ImpactFigures with) {
        return new ImpactCause(change, ImpactEffect.between(before, with), with.without(before), before.without(with));
    }

    /** Whether the job does not notice it. */
    boolean isNothing() {
        return effect.isNothing() && come.isEmpty() && gone.isEmpty();
    }
}
