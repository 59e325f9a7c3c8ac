package baywright.share;

import baywright.plan.Finding;
import baywright.workspace.Job;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of a job.
 *
 * @param job    the job
 * @param before its figures with the library as it is
 * @param after  its figures with the other library
 * @param causes the changes that it notices by themselves, in their order
 * @param rest   what the changes make together and none of them alone; empty when there is nothing of the kind, or a single change
 * @param paper  name of the newest paper that was handed out and would now say something else; empty: none
 */
public record ImpactOfJob(
        Job job,
        ImpactFigures before,
        ImpactFigures after,
        List<ImpactCause> causes,
        Optional<ImpactEffect> rest,
        Optional<String> paper) {

    public ImpactOfJob {
        causes = List.copyOf(causes);
    }

    /** How its figures move. */
    public ImpactEffect effect() {
        return ImpactEffect.between(before, after);
    }

    /** Findings that come. */
    public List<Finding> come() {
        return after.without(before);
    }

    /** Findings that go. */
    public List<Finding> gone() {
        return before.without(after);
    }
}
