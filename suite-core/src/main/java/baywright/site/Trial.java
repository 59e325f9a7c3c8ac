package baywright.site;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.money.Confidence;
import baywright.money.JobTerms;
import baywright.money.Ledger;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.RollUp;
import baywright.plan.ExampleCheck;
import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.safety.Label;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.workspace.Shop;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One stage tried out: a plan of a single step on a vehicle of a shape, at the shop's rates. Nothing is asked of what comes before
 * the step.
 *
 * @param stage   the stage
 * @param setting what the step was worked out against
 * @param plan    the one step
 * @param work    what it takes
 * @param ledger  what it costs the shop and a customer
 * @param faults  what is wrong with the step itself, such as an input outside its bounds
 */
public record Trial(Stage stage, Setting setting, Plan plan, PlanWork work, Ledger ledger, List<Finding> faults) {

    /** Id of the one step. */
    public static final String STEP = "trial";

    private static final LocalDateTime ANY_DAY = LocalDateTime.of(2026, 1, 1, 8, 0);

    /**
     * What a stage is tried on.
     *
     * @param shape   the vehicle
     * @param zones   ids of its zones; empty: all that the stage works on
     * @param with    inputs that differ from their usual values
     * @param facts   surveyed facts that differ from their usual values, as text
     * @param drivers amounts of counted drivers such as {@code chip}
     */
    public record On(
            Shape shape,
            List<String> zones,
            Map<String, Value> with,
            Map<String, String> facts,
            Map<String, BigDecimal> drivers) {
        public On {
            zones = List.copyOf(zones);
            with = Map.copyOf(with);
            facts = Map.copyOf(facts);
            drivers = Map.copyOf(drivers);
        }

        /** A whole vehicle with everything at its usual value. */
        public static On whole(Shape shape) {
            return new On(shape, List.of(), Map.of(), Map.of(), Map.of());
        }
    }

    /** What becomes of zones with the same terms. */
    public record Change(List<String> zones, StageTerms.Effect effect) {
        public Change {
            zones = List.copyOf(zones);
        }
    }

    /**
     * A consumable that is taken or whose dangers are named.
     *
     * @param item  its entry in the price list
     * @param label what its statements ask to be shown
     * @param place the line that names it
     */
    public record Danger(Item item, Label label, Place place) {}

    public Trial {
        faults = List.copyOf(faults);
    }

    /**
     * Tries a stage of a library.
     *
     * @param library with the stage as it is meant to be tried
     * @param stage   id of a stage of it
     * @param on      vehicle, zones and values
     * @param shop    whose rates, bays and film limits apply
     * @throws IllegalArgumentException when the library has no such stage
     */
    public static Trial of(Library library, String stage, On on, Shop shop) {
        Stage tried = Optional.ofNullable(library.stageById().get(stage))
                .orElseThrow(() -> new IllegalArgumentException("no stage is called '" + stage + "'"));
        List<String> zones = on.zones().isEmpty() ? ExampleCheck.zonesOf(tried, on.shape()) : on.zones();
        Step step = new Step(STEP, stage, zones, on.with(), Step.Priority.MUST, Optional.empty(), on.drivers());
        Plan plan = new Plan(List.of(step));
        Survey survey = new Survey(on.facts(), List.of(), Map.of());
        Setting setting = new Setting(library, on.shape(), survey, shop.bays(), ANY_DAY, shop.film(), shop.rules());
        Prover prover = Prover.forSetting(setting);
        Proof proof = prover.prove(plan);
        PlanWork work = prover.work(plan);
        JobTerms terms = JobTerms.at(shop.rates().charge().keySet().iterator().next(), Confidence.TRIAL_DONE);
        Ledger ledger = RollUp.of(plan, work, library, shop.rates(), terms);
        return new Trial(
                tried,
                setting,
                plan,
                work,
                ledger,
                proof.findings().stream().filter(ExampleCheck::isFault).toList());
    }

    /** What the step takes; empty when it cannot be worked out, which the faults explain. */
    public Optional<StepWork> step() {
        return work.steps().stream().findFirst();
    }

    /** What becomes of the zones, in order of writing. */
    public List<Change> changes() {
        return step().stream()
                .flatMap(s -> s.parts().stream())
                .flatMap(part -> part.terms().effects().stream().map(effect -> new Change(part.zones(), effect)))
                .toList();
    }

    /** The items taken, and those whose dangers the stage names, each once. */
    public List<Danger> dangers() {
        Map<String, Place> places = new LinkedHashMap<>();
        step().ifPresent(s ->
                s.uses().forEach(u -> places.putIfAbsent(u.item(), u.trail().place())));
        terms().flatMap(t -> t.hazards().from().stream())
                .forEach(f -> places.putIfAbsent(f.id(), f.origin().place()));
        List<Danger> dangers = new ArrayList<>();
        places.forEach((id, place) -> Optional.ofNullable(
                        setting.library().itemById().get(id))
                .filter(item -> !item.hazards().isEmpty())
                .ifPresent(item -> dangers.add(new Danger(item, Label.ofCodes(item.hazards()), place))));
        return dangers;
    }

    /** Physical dangers, each kind once with its highest level. */
    public List<StageTerms.Risk> risks() {
        Map<String, StageTerms.Risk> risks = new LinkedHashMap<>();
        terms().flatMap(t -> t.hazards().risks().stream())
                .forEach(r -> risks.merge(r.kind(), r, (a, b) -> level(b).compareTo(level(a)) > 0 ? b : a));
        return List.copyOf(risks.values());
    }

    private static BigDecimal level(StageTerms.Risk risk) {
        return risk.level().map(q -> q.inBase()).orElse(BigDecimal.ZERO);
    }

    /** Protection that stage and items ask for, each once. */
    public List<String> protection() {
        return Stream.concat(
                        terms().flatMap(t -> t.hazards().wear().stream()).map(StageTerms.Named::id),
                        dangers().stream().flatMap(d -> d.item().protection().stream()))
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private Stream<StageTerms> terms() {
        return step().stream().flatMap(s -> s.parts().stream()).map(StepWork.Part::terms);
    }

    /** Everything that the step by itself costs the shop: labour, materials, machine, their share of the overhead; nothing that a job needs once. */
    public BigDecimal cost() {
        return ledger.linesOf(STEP).stream()
                .filter(line -> line.kind().column() == LineKind.Column.COST)
                .map(LedgerLine::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What the step by itself adds to a price without tax, at the shop's first charge-out rate. */
    public BigDecimal net() {
        return ledger.linesOf(STEP).stream()
                .filter(line -> line.kind().column() == LineKind.Column.PRICE)
                .map(LedgerLine::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
