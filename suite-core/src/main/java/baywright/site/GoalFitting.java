package baywright.site;

import baywright.money.Confidence;
import baywright.money.Quote;
import baywright.money.Rounding;
import baywright.money.SiteTerms;
import baywright.money.TaxRule;
import baywright.plan.AskedGoal;
import baywright.plan.Costing;
import baywright.plan.GoalComposition;
import baywright.plan.Plan;
import baywright.plan.Step.Priority;
import baywright.schedule.ShopScheduler;
import baywright.site.FittedGoals.LeftOut;
import baywright.site.FittedGoals.Priced;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.joda.money.Money;

/**
 * Looks for the goals that are worth most of those whose plan keeps the limits. Choices of goals are composed from the
 * worthiest down, so that the first that keeps the limits is the best: first by what should be, then by what could be. A choice
 * of which even the least that any plan for it costs is over the cap is not composed. Whether goals are dropped before a plan is
 * composed or their steps after it need not come to the same; the cheaper of the two is taken.
 */
final class GoalFitting {

    /** Plans to compose in order of worth; the whole choice among five goals is 32. */
    static final int MOST = 40;

    private static final Comparator<BigDecimal> DEARER = Comparator.reverseOrder();

    private final Site site;
    private final Job job;
    private final PlanLimits limits;
    private final BooleanSupplier cancelled;
    private final int most;
    private final List<AskedGoal> goals;
    private final List<AskedGoal> optional;
    private final Optional<Money> cap;
    private final PriceBounds bounds;
    private final Costing cost;
    private final Map<BitSet, Priced> composed = new HashMap<>();
    private final Map<BitSet, BigDecimal> floors = new HashMap<>();

    /** Whether all that did not do was over the cap by its bound. */
    private boolean certain = true;

    /** @param cancelled asked before each plan; once it is true a {@link CancellationException} is thrown */
    GoalFitting(Site site, Job job, PlanLimits limits, BooleanSupplier cancelled) {
        this(site, job, limits, cancelled, MOST);
    }

    GoalFitting(Site site, Job job, PlanLimits limits, BooleanSupplier cancelled, int most) {
        this.site = site;
        this.job = job;
        this.limits = limits;
        this.cancelled = cancelled;
        this.most = most;
        goals = AskedGoal.of(job.goals(), site.setting(job));
        optional = goals.stream().filter(g -> g.priority() != Priority.MUST).toList();
        SiteTerms terms = Terms.of(site.shop());
        bounds = new PriceBounds(terms, site.library(), limits.firmOnly());
        cost = bounds.costing(Terms.of(job, site.shop(), Confidence.TRIAL_DONE));
        cap = limits.cap().map(c -> Rounding.toCoins(site.shop().currency(), c, TaxRule.PRICES));
    }

    FittedGoals fitted() {
        Priced whole = priced(all());
        if (keeps(whole, false)) {
            return new FittedGoals(limits, whole, Optional.of(whole), whole, List.of(), false, true, true);
        }
        Priced least = priced(new BitSet());
        boolean isLate = !isInTime(least);
        if (!keeps(least, isLate)) {
            // what must be is not wanted less for money or time: nothing else can be left out
            return new FittedGoals(
                    limits, whole, Optional.empty(), least, List.of(), isLate, true, isRuledOut(new BitSet()));
        }
        List<BitSet> found = worthiest(isLate);
        boolean proved = !found.isEmpty();
        BitSet best = proved ? cheapest(found) : oneByOne(isLate);
        List<LeftOut> out = new ArrayList<>();
        for (int i = 0; i < optional.size(); i++) {
            if (!best.get(i)) {
                BitSet with = (BitSet) best.clone();
                with.set(i);
                out.add(new LeftOut(optional.get(i), priced(with)));
            }
        }
        return new FittedGoals(limits, whole, Optional.of(priced(best)), least, out, isLate, proved, proved && certain);
    }

    /** The plan for all goals, held to nothing. */
    FittedGoals everything() {
        Priced whole = priced(all());
        boolean holds = whole.composed().composed().composition().composed();
        return new FittedGoals(
                limits, whole, holds ? Optional.of(whole) : Optional.empty(), whole, List.of(), false, true, true);
    }

    private BitSet all() {
        BitSet all = new BitSet();
        all.set(0, optional.size());
        return all;
    }

    /**
     * The choices of most worth that keep the limits; none when there are too many choices to compose. Leaving out one more
     * goal is worth no more, so that what follows from a choice comes after it.
     */
    private List<BitSet> worthiest(boolean anyDate) {
        PriorityQueue<BitSet> open =
                new PriorityQueue<>(byWorth().thenComparing(BitSet::cardinality, Comparator.reverseOrder()));
        Set<BitSet> met = new HashSet<>(Set.of(all()));
        open.add(all());
        List<BitSet> found = new ArrayList<>();
        for (int looked = 0; !open.isEmpty(); looked++) {
            BitSet next = open.remove();
            if (!found.isEmpty() && byWorth().compare(found.get(0), next) < 0) {
                break;
            }
            if (looked == most) {
                return List.of();
            }
            boolean ruledOut = isRuledOut(next);
            if (!ruledOut && keeps(priced(next), anyDate)) {
                found.add(next);
                continue;
            }
            certain &= ruledOut;
            for (int i = next.nextSetBit(0); i >= 0; i = next.nextSetBit(i + 1)) {
                BitSet less = (BitSet) next.clone();
                less.clear(i);
                if (met.add(less)) {
                    open.add(less);
                }
            }
        }
        return found;
    }

    private boolean isRuledOut(BitSet chosen) {
        return cap.filter(c -> floor(chosen).compareTo(c.getAmount()) > 0).isPresent();
    }

    /** What is held to the cap of no plan for these goals is less, with tax. */
    BigDecimal floor(BitSet chosen) {
        goOn();
        return floors.computeIfAbsent(
                (BitSet) chosen.clone(),
                some -> GoalComposition.least(site.setting(job), with(some), true, cost)
                        .multiply(bounds.leastTax())
                        .subtract(slack()));
    }

    /** A plan for fewer goals has hardly more steps than that for all; twice as many are more than enough. */
    private BigDecimal slack() {
        return bounds.slack(2
                * priced(all())
                        .composed()
                        .composed()
                        .composition()
                        .plan()
                        .steps()
                        .size());
    }

    private Comparator<BitSet> byWorth() {
        return Comparator.comparing((BitSet set) -> worth(set, Priority.SHOULD), DEARER)
                .thenComparing(set -> worth(set, Priority.COULD), DEARER);
    }

    private BigDecimal worth(BitSet set, Priority priority) {
        return set.stream()
                .mapToObj(optional::get)
                .filter(g -> g.priority() == priority)
                .map(AskedGoal::worth)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private BitSet cheapest(List<BitSet> found) {
        return found.stream()
                .min(Comparator.comparing(set -> priced(set).asked().orElseThrow()))
                .orElseThrow();
    }

    /** Goals put in one after the other, the worthiest first, where that keeps the limits. */
    private BitSet oneByOne(boolean anyDate) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < optional.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing((Integer i) -> optional.get(i).priority())
                .thenComparing(i -> optional.get(i).worth(), DEARER));
        BitSet chosen = new BitSet();
        for (int i : order) {
            chosen.set(i);
            if (!keeps(priced(chosen), anyDate)) {
                chosen.clear(i);
            }
        }
        return chosen;
    }

    private boolean keeps(Priced plan, boolean anyDate) {
        return plan.isOffered()
                && cap.filter(c -> plan.asked().orElseThrow().isGreaterThan(c)).isEmpty()
                && (anyDate || isInTime(plan));
    }

    private boolean isInTime(Priced plan) {
        return limits.wanted()
                .flatMap(wanted -> plan.ready().map(ready -> !ready.isAfter(wanted)))
                .orElse(true);
    }

    private Priced priced(BitSet chosen) {
        Priced known = composed.get(chosen);
        if (known == null) {
            known = compose(chosen);
            composed.put((BitSet) chosen.clone(), known);
        }
        return known;
    }

    private Priced compose(BitSet chosen) {
        goOn();
        Optional<Plan> known = chosen.equals(all())
                ? Optional.empty()
                : Optional.of(priced(all()).composed().composed().composition().plan());
        return priced(site.compose(job, with(chosen), known, cancelled));
    }

    private void goOn() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("the search for goals that fit was cancelled");
        }
    }

    private List<AskedGoal> with(BitSet chosen) {
        return goals.stream()
                .filter(g -> g.priority() == Priority.MUST || chosen.get(optional.indexOf(g)))
                .toList();
    }

    Priced priced(ComposedJob plan) {
        Optional<Money> asked = plan.worked().offer() instanceof Quote quote
                ? Optional.of(
                        limits.firmOnly()
                                ? quote.price().gross()
                                : quote.range().high().gross())
                : Optional.empty();
        Optional<LocalDateTime> ready = asked.flatMap(
                        a -> site.timed(List.of(plan.worked().job()), ShopScheduler.Effort.AT_ONCE))
                .map(timed -> timed.timetable().ends().get(0).end());
        return new Priced(plan, asked, ready);
    }
}
