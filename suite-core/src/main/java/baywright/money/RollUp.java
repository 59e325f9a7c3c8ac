package baywright.money;

import baywright.library.Library;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From the work of a plan to its ledger. The lines of a step depend on that step alone, so the ledger of a plan is the
 * sum of its steps' lines and of what the job as a whole needs: set-ups of families, opened packs that spoil, waste.
 */
public final class RollUp {

    private final Library library;
    private final Rates rates;
    private final JobTerms terms;
    private final Labour labour;
    private final List<LedgerLine> lines = new ArrayList<>();

    private RollUp(Library library, Rates rates, JobTerms terms) {
        this.library = library;
        this.rates = rates;
        this.terms = terms;
        labour = new Labour(rates, terms);
    }

    /**
     * The ledger of a plan.
     *
     * @param plan    for the steps' priorities
     * @param work    what the plan takes
     * @param library for the price list
     * @throws IllegalArgumentException when the shop lacks the grade, the price list an item, or a pack does not hold
     *                                  what is used
     */
    public static Ledger of(Plan plan, PlanWork work, Library library, Rates rates, JobTerms terms) {
        return new RollUp(library, rates, terms).ledger(plan, work);
    }

    private Ledger ledger(Plan plan, PlanWork work) {
        Map<String, Priority> priorities = new HashMap<>();
        plan.steps().forEach(step -> priorities.put(step.id(), step.priority()));
        Materials materials = new Materials(library, rates, terms);
        for (StepWork step : work.steps()) {
            Priority priority = priorities.getOrDefault(step.step(), Priority.MUST);
            addTimes(step, priority);
            lines.addAll(materials.use(step, priority));
        }
        work.families().forEach(family -> addFamily(family, priorities));
        lines.addAll(materials.rests());
        addWaste(plan);
        return new Ledger(rates.currency(), terms, lines, materials.purchases());
    }

    private void addTimes(StepWork step, Priority priority) {
        List<LedgerLine> times = StepTimes.of(step, priority, terms.vehicles());
        lines.addAll(times);
        BigDecimal minutes = sum(times, LineKind.HANDS_ON).add(sum(times, LineKind.SET_UP));
        lines.addAll(labour.of(
                Optional.of(step.step()),
                priority,
                step.stage(),
                minutes,
                step.crew().skill()));
        if (StepTimes.runsAMachine(step)) {
            lines.add(labour.machine(step.step(), priority, step.stage(), sum(times, LineKind.HANDS_ON)));
        }
    }

    private void addFamily(PlanWork.FamilySetUp family, Map<String, Priority> priorities) {
        Priority opens = family.steps().stream()
                .map(step -> priorities.getOrDefault(step, Priority.MUST))
                .min(Comparator.naturalOrder())
                .orElse(Priority.MUST);
        LedgerLine time = new LedgerLine(
                LineKind.FAMILY_SET_UP,
                Optional.empty(),
                opens,
                family.family(),
                BigDecimal.valueOf(terms.vehicles()),
                "visit",
                family.minutes(),
                List.of(new Origin.FamilySetUp(family.family(), family.place(), family.steps())));
        lines.add(time);
        lines.addAll(labour.of(Optional.empty(), opens, family.family(), time.amount(), ""));
    }

    private void addWaste(Plan plan) {
        plan.steps().stream().map(Step::priority).min(Comparator.naturalOrder()).ifPresent(first -> {
            if (rates.wastePerJob().signum() > 0) {
                lines.add(new LedgerLine(
                        LineKind.WASTE,
                        Optional.empty(),
                        first,
                        "waste",
                        BigDecimal.ONE,
                        "job",
                        rates.wastePerJob(),
                        List.of(new Origin.Term("rates.wastePerJob", rates.wastePerJob()))));
            }
        });
    }

    private static BigDecimal sum(List<LedgerLine> lines, LineKind kind) {
        return lines.stream()
                .filter(line -> line.kind() == kind)
                .map(LedgerLine::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
