package baywright.site;

import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.Step;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What stays of a job's plan under a cap.
 *
 * @param job      with its whole plan
 * @param cap      the most that the customer pays, with tax
 * @param firmOnly whether the price alone was held to the cap, else the price with contingency
 * @param fits     ways to stay under the cap: the best first, then the next best, then ways to keep a step that falls out of
 *                 all of these; none: it cannot be done
 * @param fates    what becomes of each step that need not be, in the plan's order, in the best way; none without a way
 * @param smallest where it cannot be done, the smallest cap that can; empty: no part of the plan holds at any price
 * @param stops    where no part of the plan holds: what stops the plan as it is
 * @param proved   whether no better way was passed over
 */
public record FittedJob(
        Job job,
        Money cap,
        boolean firmOnly,
        List<Fit> fits,
        List<Fate> fates,
        Optional<Money> smallest,
        List<Finding> stops,
        boolean proved) {

    public FittedJob {
        fits = List.copyOf(fits);
        fates = List.copyOf(fates);
        stops = List.copyOf(stops);
    }

    /** What is left under the cap of the price that is held to it. */
    public Money left(Fit fit) {
        return cap.minus(
                firmOnly
                        ? fit.quote().price().gross()
                        : fit.quote().range().high().gross());
    }

    /** Steps that a way keeps and the best does not. */
    public List<Step> keptBesides(Fit fit) {
        return fits.get(0).out().stream().filter(s -> !fit.out().contains(s)).toList();
    }

    /** Steps that the best way keeps and this one does not. */
    public List<Step> goneBesides(Fit fit) {
        return fit.out().stream().filter(s -> !fits.get(0).out().contains(s)).toList();
    }

    /**
     * A way to stay under the cap.
     *
     * @param worked the job with what stays, proved and priced
     * @param quote  its price
     * @param out    steps that fall out, in the plan's order
     */
    public record Fit(WorkedJob worked, Quote quote, List<Step> out) {
        public Fit {
            out = List.copyOf(out);
        }
    }

    /**
     * What becomes of a step that need not be.
     *
     * @param stays  whether it stays
     * @param worth  what it is weighed by: its own exact net price, set-ups shared with others left out
     * @param stops  staying: what would stop the rest without it; falling out: what stops it, put back by itself
     * @param asked  falling out with no such stop: what is held to the cap, with this step put back by itself
     * @param having falling out: the number of the way that keeps it, from 1; empty: none under the cap
     */
    public record Fate(
            Step step,
            boolean stays,
            BigDecimal worth,
            List<Finding> stops,
            Optional<Money> asked,
            Optional<Integer> having) {
        public Fate {
            stops = List.copyOf(stops);
        }
    }
}
