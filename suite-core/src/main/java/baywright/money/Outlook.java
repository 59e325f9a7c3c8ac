package baywright.money;

import baywright.chance.Outcome;
import baywright.chance.PertEstimate;
import baywright.chance.Sample;
import baywright.chance.Simulation;
import baywright.library.Library;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.Money;

/**
 * What a job's hours, cost and finish may come to, by simulation. Times are drawn from beta-PERT distributions of the steps'
 * three points; the zones of one step are taken to be slow or quick together, and steps that react to the same surveyed fact
 * (hard paint) share a part of their ups and downs.
 *
 * @param work     finish: hands-on minutes of all vehicles with set-ups; cost: what the job costs
 * @param clock    finish of one vehicle, minutes after the setting's start on the plan's simple clock; empty for a plan
 *                 without work
 * @param textbook the same finish by the textbook's estimate, for comparison only
 */
public record Outlook(Outcome work, Optional<Outcome> clock, Optional<PertEstimate> textbook) {

    /** Seed of figures that nobody chose another for: the same question has the same answer every day. */
    public static final long SEED = 1;

    /** Runs behind a figure of a quote: good for P80 to a hundredth of a standard deviation or two. */
    public static final int RUNS = 20_000;

    private static final BigDecimal TENTH = BigDecimal.valueOf(10);

    /** With the usual seed and number of runs. */
    public static Simulation.Options usual() {
        return Simulation.Options.of(SEED, RUNS);
    }

    /**
     * The outlook of a plan.
     *
     * @param library for what steps react to
     * @param plan    for its fixed starts
     * @param proof   of the plan, for the simple clock
     * @param work    what each step takes
     * @param ledger  of the same work
     * @param rates   that the ledger was made with
     */
    public static Outlook of(
            Library library,
            Plan plan,
            Proof proof,
            PlanWork work,
            Ledger ledger,
            Rates rates,
            Uncertainty uncertainty,
            Simulation.Options options) {
        Causes causes = new Causes(library, uncertainty, rates.reworkPercent());
        Outcome hours =
                new UncertainCost(causes, work, ledger, rates).simulation().run(options);
        return UncertainClock.network(plan, proof, work, causes)
                .map(network -> new Outlook(
                        hours, Optional.of(Simulation.of(network).run(options)), Optional.of(PertEstimate.of(network))))
                .orElseGet(() -> new Outlook(hours, Optional.empty(), Optional.empty()));
    }

    /** Hands-on minutes of all vehicles, with set-ups. */
    public Sample minutes() {
        return work.finish();
    }

    /** What the job costs, in the currency of its ledger. */
    public Sample cost() {
        return work.cost();
    }

    /** Chance that the job costs more than a net price. */
    public double lossAt(Money net) {
        return 1 - cost().within(net.getAmount().doubleValue());
    }

    /** Chance of a loss at the net price without what was let off; empty where nothing was. */
    public OptionalDouble lossUndiscounted(Quote quote) {
        BigDecimal let = quote.ledger().discount();
        return let.signum() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(lossAt(Money.of(
                        quote.ledger().currency(),
                        quote.price().net().getAmount().subtract(let),
                        RoundingMode.HALF_UP)));
    }

    /**
     * What to add to the price of labour so that it carries the hands-on time with a confidence: percent, to a tenth, not
     * negative.
     *
     * @param confidencePercent above 0, below 100
     * @param pricedMinutes     the minutes that the price of labour is made of
     */
    public BigDecimal contingencyPercent(BigDecimal confidencePercent, BigDecimal pricedMinutes) {
        if (pricedMinutes.signum() == 0) {
            return BigDecimal.ZERO;
        }
        double needed = minutes().quantile(confidencePercent.doubleValue() / 100);
        BigDecimal percent = BigDecimal.valueOf(needed)
                .multiply(Percent.HUNDRED)
                .divide(pricedMinutes, Rates.PRECISION)
                .subtract(Percent.HUNDRED);
        return percent.max(BigDecimal.ZERO)
                .multiply(TENTH)
                .setScale(0, RoundingMode.HALF_UP)
                .movePointLeft(1);
    }
}
