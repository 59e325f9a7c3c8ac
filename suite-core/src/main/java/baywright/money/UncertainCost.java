package baywright.money;

import baywright.chance.Activity;
import baywright.chance.Charge;
import baywright.chance.Link;
import baywright.chance.Loadings;
import baywright.chance.Network;
import baywright.chance.Rework;
import baywright.chance.Simulation;
import baywright.plan.PlanWork;
import baywright.plan.StepWork;
import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Hours and cost of a job as a simulation: its steps one after the other, so that the finish is the sum of their hands-on
 * times. The reserve for rework is not a cost here but happens.
 */
final class UncertainCost {

    /** The set-ups; no step has such an id. */
    static final String GETTING_READY = "getting ready";

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private final Causes causes;
    private final PlanWork work;
    private final Ledger ledger;
    private final Rates rates;
    private final int vehicles;

    UncertainCost(Causes causes, PlanWork work, Ledger ledger, Rates rates) {
        this.causes = causes;
        this.work = work;
        this.ledger = ledger;
        this.rates = rates;
        vehicles = ledger.terms().vehicles();
    }

    Simulation simulation() {
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        BigDecimal setUps = ledger.total(LineKind.SET_UP).add(ledger.total(LineKind.FAMILY_SET_UP));
        activities.add(Activity.of(GETTING_READY, new ThreePoint(setUps, setUps, setUps)));
        BigDecimal uncertain = ledger.total(LineKind.REWORK);
        for (StepWork step : work.steps()) {
            BigDecimal perMinute = costPerMinute(step);
            Activity activity = activity(step).costing(perMinute.doubleValue());
            links.add(Link.after(activities.get(activities.size() - 1).id(), activity.id()));
            activities.add(activity);
            uncertain = uncertain.add(activity.minutes().mean().multiply(perMinute));
        }
        List<Charge> charges = charges();
        for (Charge charge : charges) {
            uncertain = uncertain.add(charge.amount().mean());
        }
        double certain = ledger.cost().subtract(uncertain).doubleValue();
        return new Simulation(new Network(activities, links), charges, Math.max(0, certain));
    }

    private BigDecimal costPerMinute(StepWork step) {
        BigDecimal hour = rates.hourCostOf(step.crew().skill()).perSoldHour().add(rates.overhead());
        if (StepTimes.runsAMachine(step)) {
            hour = hour.add(rates.machine());
        }
        return hour.divide(SIXTY, Rates.PRECISION);
    }

    /**
     * The work of a step on all vehicles. Of several vehicles alike, what is shared moves all of them; what each has for
     * itself evens out. One activity stands for their sum: its spread about the mean is that of n times that share a part
     * of their variance, {@code n √(s + (1 − s)/n)} of one.
     */
    private Activity activity(StepWork step) {
        Set<String> facts = causes.of(step);
        double shared = facts.isEmpty() ? 0 : causes.uncertainty().shared();
        double variance = shared + (1 - shared) / vehicles;
        ThreePoint one = step.attendedMinutes();
        ThreePoint all = vehicles == 1
                ? one
                : drawnIn(one, BigDecimal.valueOf(Math.sqrt(variance))).times(BigDecimal.valueOf(vehicles));
        return Activity.of(step.step(), all)
                .with(Loadings.evenly(shared / variance, facts))
                .with(onAll(causes.rework()));
    }

    private static ThreePoint drawnIn(ThreePoint points, BigDecimal share) {
        BigDecimal mean = points.mean();
        return new ThreePoint(
                mean.add(points.least().subtract(mean).multiply(share)),
                mean.add(points.likely().subtract(mean).multiply(share)),
                mean.add(points.most().subtract(mean).multiply(share)));
    }

    /** Rework on at least one of the vehicles, with what is then spent on average, so that the mean stays. */
    private Rework onAll(Rework one) {
        double any = 1 - Math.pow(1 - one.chance(), vehicles);
        return any == 0 ? Rework.NEVER : new Rework(any, one.chance() * one.share() / any);
    }

    /** Items of which the part used is charged. Of what spoils whole packs are: that is as good as certain. */
    private List<Charge> charges() {
        Set<String> byPart = ledger.purchases().stream()
                .filter(purchase -> !purchase.spoils())
                .map(Purchase::item)
                .collect(Collectors.toSet());
        Map<String, BigDecimal> costs = new LinkedHashMap<>();
        ledger.lines(LineKind.MATERIAL_COST).stream()
                .filter(line -> byPart.contains(line.subject()))
                .forEach(line -> costs.merge(line.subject(), line.amount(), BigDecimal::add));
        return costs.entrySet().stream()
                .map(cost -> new Charge(
                        cost.getKey(), causes.uncertainty().material().times(cost.getValue()), Loadings.NONE))
                .toList();
    }
}
