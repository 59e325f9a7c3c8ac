package baywright.money;

import baywright.chance.Loadings;
import baywright.chance.Rework;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What steps share their ups and downs with. A fact that makes some stages slower and leaves others alone (hardness, soiling)
 * is a cause: what the survey says of it is an estimate, and where it is off, it is off for all of them. Factors that touch
 * every stage alike, such as the vehicle's size, are known and count for nothing here.
 */
public final class Causes {

    private final List<JobFactor> factors;
    private final Uncertainty uncertainty;
    private final Rework rework;

    /**
     * The causes in a library.
     *
     * @param reworkPercent the shop's reserve for work done again, percent of the hours, not negative
     */
    public Causes(Library library, Uncertainty uncertainty, BigDecimal reworkPercent) {
        factors = library.factors().stream()
                .filter(factor ->
                        !factor.families().isEmpty() || !factor.stages().isEmpty())
                .toList();
        this.uncertainty = uncertainty;
        double share = uncertainty.reworkShare().doubleValue();
        double reserve = Percent.share(reworkPercent).doubleValue();
        double chance = Math.min(1, reserve / share);
        rework = chance == 0 ? Rework.NEVER : new Rework(chance, reserve / chance);
    }

    Uncertainty uncertainty() {
        return uncertainty;
    }

    /** How often a step is done again in part, so that on average it takes the shop's reserve. */
    public Rework rework() {
        return rework;
    }

    /** Facts that a step reacts to. */
    SortedSet<String> of(StepWork step) {
        SortedSet<String> facts = new TreeSet<>();
        for (StepWork.Attended line : step.attended()) {
            factors.stream()
                    .filter(factor -> factor.touches(
                            step.stage(), step.family(), line.trail().driver()))
                    .forEach(factor -> facts.add(factor.fact()));
        }
        return facts;
    }

    /** Shares of a step's ups and downs with each fact that it reacts to. */
    public Loadings loadings(StepWork step) {
        return Loadings.evenly(uncertainty.shared(), of(step));
    }
}
