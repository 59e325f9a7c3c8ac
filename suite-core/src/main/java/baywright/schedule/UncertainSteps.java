package baywright.schedule;

import baywright.chance.Loadings;
import baywright.chance.Rework;
import baywright.plan.StepWork;
import baywright.quantity.ThreePoint;

/** What makes the times of steps uncertain beyond their three points. */
public interface UncertainSteps {

    /** Nothing shared, nothing done again. */
    UncertainSteps APART = new UncertainSteps() {
        @Override
        public Loadings loadings(StepWork step) {
            return Loadings.NONE;
        }

        @Override
        public Rework rework(StepWork step) {
            return Rework.NEVER;
        }
    };

    /** Minutes of a step from start to end, without tools that are got out for its whole family. */
    default ThreePoint minutes(StepWork step) {
        return step.elapsed();
    }

    /** Which facts a step shares its ups and downs with other steps of its job through. */
    Loadings loadings(StepWork step);

    /** How often it is done again in part. */
    Rework rework(StepWork step);
}
