package baywright.site;

import baywright.fit.Choice;
import baywright.fit.Item;
import baywright.fit.Selection;
import baywright.fit.Selector;
import baywright.money.Ledger;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Percent;
import baywright.money.Quote;
import baywright.money.Quoting;
import baywright.money.Range;
import baywright.money.Rounding;
import baywright.money.SiteTerms;
import baywright.money.TaxRule;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.plan.StepNeeds;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The steps of one plan against a cap: what they cost together, and whether they hold without the others. */
final class Fitting implements baywright.fit.Terms {

    /** The best and the next best two. */
    private static final int CHOICES = 3;

    /** Branches to look at; beyond some seconds nobody waits. */
    private static final long MOST = 10_000;

    private final Site site;
    private final Job job;
    private final Money cap;
    private final boolean firmOnly;
    private final BooleanSupplier cancelled;
    private final SiteTerms terms;
    private final Setting setting;
    private final Prover prover;
    private final List<Step> optional;
    private final PriceBounds bounds;
    private final BigDecimal surePercent;
    private final BigDecimal slack;
    private final Map<BitSet, JudgedJob> judged = new HashMap<>();
    private final Map<BitSet, WorkedJob> worked = new HashMap<>();

    Fitting(Site site, Job job, BigDecimal cap, boolean firmOnly) {
        this(site, job, cap, firmOnly, () -> false);
    }

    /** @param cancelled asked before each price and proof; once it is true they throw a {@link CancellationException} */
    Fitting(Site site, Job job, BigDecimal cap, boolean firmOnly, BooleanSupplier cancelled) {
        if (cap.signum() < 0) {
            throw new IllegalArgumentException("cap must not be negative, got " + cap.toPlainString());
        }
        this.site = site;
        this.job = job;
        this.firmOnly = firmOnly;
        this.cancelled = cancelled;
        terms = Terms.of(site.shop());
        this.cap = Rounding.toCoins(currency(), cap, TaxRule.PRICES);
        setting = site.setting(job);
        prover = Prover.forSetting(setting);
        optional = job.plan().steps().stream()
                .filter(step -> step.priority() != Priority.MUST)
                .toList();
        bounds = new PriceBounds(terms, site.library(), firmOnly);
        surePercent = bounds.surePercent();
        slack = bounds.slack(job.plan().steps().size());
    }

    private CurrencyUnit currency() {
        return terms.rates().currency();
    }

    FittedJob fitted() {
        List<Item> items = items();
        Selection selection = Selector.of(items, this, cap.getAmount(), CHOICES, MOST);
        List<Choice> choices = new ArrayList<>(selection.choices());
        for (Optional<Choice> having : selection.having()) {
            having.filter(choice -> !choices.contains(choice)).ifPresent(choices::add);
        }
        List<FittedJob.Fate> fates = new ArrayList<>();
        for (int i = 0; i < items.size() && !choices.isEmpty(); i++) {
            fates.add(fate(i, items.get(i), choices, selection.having().get(i)));
        }
        boolean never = choices.isEmpty() && selection.smallest().isEmpty() && selection.proved();
        return new FittedJob(
                job,
                cap,
                firmOnly,
                choices.stream().map(this::fit).toList(),
                fates,
                selection.smallest().map(price -> Money.of(currency(), price)),
                never ? stops(judged(all())) : List.of(),
                selection.proved());
    }

    private FittedJob.Fit fit(Choice choice) {
        List<Step> out = new ArrayList<>();
        for (int i = 0; i < optional.size(); i++) {
            if (!choice.kept().get(i)) {
                out.add(optional.get(i));
            }
        }
        WorkedJob done = work(choice.kept());
        return new FittedJob.Fit(done, (Quote) done.offer(), out);
    }

    private FittedJob.Fate fate(int i, Item item, List<Choice> choices, Optional<Choice> having) {
        BitSet other = choices.get(0).kept();
        boolean stays = other.get(i);
        other.flip(i);
        List<Finding> stops = stops(judged(other));
        return new FittedJob.Fate(
                optional.get(i),
                stays,
                item.worth(),
                stops,
                stays || !stops.isEmpty() ? Optional.empty() : Optional.of(Money.of(currency(), price(other))),
                stays ? Optional.empty() : having.map(choice -> choices.indexOf(choice) + 1));
    }

    private static List<Finding> stops(JudgedJob done) {
        return done.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .toList();
    }

    private BitSet all() {
        BitSet all = new BitSet();
        all.set(0, optional.size());
        return all;
    }

    private Job with(BitSet kept) {
        List<Step> steps = new ArrayList<>();
        int place = 0;
        for (Step step : job.plan().steps()) {
            if (step.priority() == Priority.MUST || kept.get(place++)) {
                steps.add(step);
            }
        }
        Plan plan = new Plan(steps);
        return job.withPlan(plan, job.safety().kept(job.plan(), plan));
    }

    private JudgedJob judged(BitSet kept) {
        return judged.computeIfAbsent((BitSet) kept.clone(), set -> site.judgeOneOfMany(with(set), setting, prover));
    }

    private WorkedJob work(BitSet kept) {
        return worked.computeIfAbsent((BitSet) kept.clone(), set -> site.work(with(set)));
    }

    private void goOn() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException("the search for what fits was cancelled");
        }
    }

    @Override
    public boolean stands(BitSet kept) {
        goOn();
        return prover.stops(with(kept).plan()).isEmpty() && judged(kept).holds();
    }

    /** Steps as the places of items: a need that a step which stays anyway meets is none. */
    @Override
    public List<Need> needs() {
        List<Step> steps = job.plan().steps();
        List<Need> needs = new ArrayList<>();
        for (StepNeeds.Need need : StepNeeds.of(prover, job.plan())) {
            if (need.anyOf().stream().allMatch(s -> optional.contains(steps.get(s)))) {
                BitSet anyOf = new BitSet();
                need.anyOf().forEach(s -> anyOf.set(optional.indexOf(steps.get(s))));
                needs.add(new Need(optional.indexOf(steps.get(need.step())), anyOf));
            }
        }
        return needs;
    }

    @Override
    public BigDecimal price(BitSet kept) {
        goOn();
        Job part = with(kept);
        PlanWork work = prover.work(part.plan());
        Ledger ledger = site.ledger(part, setting, work);
        if (firmOnly) {
            return gross(part, ledger, BigDecimal.ZERO);
        }
        Proof proof = prover.prove(part.plan());
        BigDecimal percent = proof.holds() ? site.contingencyPercent(part.plan(), proof, work, ledger) : surePercent;
        return gross(part, ledger, percent);
    }

    @Override
    public BigDecimal floor(BitSet kept) {
        goOn();
        Job part = with(kept);
        Ledger ledger = site.ledger(part, setting, prover.work(part.plan()));
        return gross(part, ledger, surePercent).subtract(slack);
    }

    private BigDecimal gross(Job part, Ledger ledger, BigDecimal percent) {
        Range range = Quoting.range(setting, part.plan(), ledger, terms, percent);
        return range.high().gross().getAmount();
    }

    /**
     * A step is worth its own price. What it adds at least is its labour and those materials that are charged by what is
     * used; what is used of an opened pack may be paid for already.
     */
    List<Item> items() {
        PlanWork work = prover.work(job.plan());
        Ledger ledger = site.ledger(job, setting, work);
        BigDecimal tax = bounds.leastTax();
        List<Item> items = new ArrayList<>();
        for (Step step : optional) {
            BigDecimal labour = BigDecimal.ZERO;
            BigDecimal used = BigDecimal.ZERO;
            BigDecimal opened = BigDecimal.ZERO;
            for (LedgerLine line : ledger.linesOf(step.id())) {
                if (line.kind() == LineKind.LABOUR || line.kind() == LineKind.DISCOUNT) {
                    labour = labour.add(line.amount());
                } else if (isMaterial(line) && spoils(line.subject())) {
                    opened = opened.add(line.amount());
                } else if (isMaterial(line)) {
                    used = used.add(line.amount());
                }
            }
            BigDecimal least =
                    labour.multiply(Percent.raised(surePercent)).add(used).multiply(tax);
            items.add(new Item(
                    step.id(),
                    step.priority() == Priority.SHOULD ? 0 : 1,
                    labour.add(used).add(opened),
                    least));
        }
        return items;
    }

    private static boolean isMaterial(LedgerLine line) {
        return line.kind() == LineKind.MATERIAL || line.kind() == LineKind.MATERIAL_DISCOUNT;
    }

    private boolean spoils(String item) {
        return site.library().itemById().get(item).spoils();
    }
}
