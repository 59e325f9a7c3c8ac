package baywright.site;

import baywright.money.Quote;
import baywright.plan.AskedGoal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Which goals of a job are composed so that the plan keeps a cap and a date.
 *
 * @param limits what it is held to
 * @param whole  the plan for all goals
 * @param best   of the plans that hold, have a price and keep the limits the one for the goals that are worth most, of equals
 *               the one with the lowest price; the whole, where that keeps them; empty: none was found
 * @param least  the plan for those goals alone that must be
 * @param out    goals that the best leaves out, in the job's order
 * @param isLate whether no plan that was composed is ready in time, the least one included: then the date is left aside
 * @param proved  whether each choice of goals that is worth more than the best was composed as well or ruled out, and does not
 *                do
 * @param certain whether no plan that could be composed for any of these would stay under the cap, found or not; without a
 *                best: no plan for the goals that must be
 */
public record FittedGoals(
        PlanLimits limits,
        Priced whole,
        Optional<Priced> best,
        Priced least,
        List<LeftOut> out,
        boolean isLate,
        boolean proved,
        boolean certain) {

    public FittedGoals {
        out = List.copyOf(out);
    }

    /** The plan to look at: the best, else that of the goals that must be. */
    public Priced shown() {
        return best.orElse(least);
    }

    /**
     * A composed plan with what it comes to.
     *
     * @param composed the plan, proved and priced
     * @param asked    what is held to the cap; empty when it has no price
     * @param ready    when it is ready by the shop's hours, people and bays, in a timetable made at once for this job alone;
     *                 empty: there is none
     */
    public record Priced(ComposedJob composed, Optional<Money> asked, Optional<LocalDateTime> ready) {

        /** Whether it holds, grants what it was composed for as far as that can be, and has a price. */
        public boolean isOffered() {
            return composed.composed().composition().composed()
                    && composed.worked().offer() instanceof Quote;
        }
    }

    /**
     * A goal that is left out.
     *
     * @param with the best plan with this goal put back by itself
     */
    public record LeftOut(AskedGoal goal, Priced with) {}
}
