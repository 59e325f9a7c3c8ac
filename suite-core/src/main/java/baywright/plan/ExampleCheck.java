package baywright.plan;

import baywright.library.Example;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Runs the worked examples of stages: each is a plan of one step on a vehicle of a shape that nothing is known of. */
public final class ExampleCheck {

    /** An amount of an item may miss what its example says by this share. */
    private static final BigDecimal TOLERANCE = new BigDecimal("0.02");

    /** Findings that say that the step itself is wrong, whatever comes before it. */
    private static final Set<String> FAULTS = Set.of(
            Codes.BAD_DRIVER,
            Codes.BAD_FACT,
            Codes.BAD_INPUT,
            Codes.NO_ZONE,
            Codes.STAGE_FAILS,
            Codes.WRONG_SURFACE,
            Codes.ZONE_UNKNOWN);

    /**
     * One figure of an example.
     *
     * @param what     {@code attended}, {@code standing}, an item's id, {@code removes}, or a state's id
     * @param expected as the example says
     * @param got      as the stage works out
     * @param met      whether that is within what was expected
     */
    public record Line(String what, String expected, String got, boolean met) {}

    /** One example with its figures; {@code place} is that of the example. */
    public record Outcome(String example, Place place, List<Line> lines) {
        public Outcome {
            lines = List.copyOf(lines);
        }

        public boolean passes() {
            return lines.stream().allMatch(Line::met);
        }
    }

    /**
     * All examples of a stage.
     *
     * @param stage     stage id
     * @param outcomes  in order of writing
     * @param declared  lines of its terms that any inputs and facts tried bring about
     * @param unreached those of them that no example brings about, in order of place
     */
    public record StageOutcome(String stage, List<Outcome> outcomes, int declared, List<Place> unreached) {
        public StageOutcome {
            outcomes = List.copyOf(outcomes);
            unreached = List.copyOf(unreached);
        }

        public boolean passes() {
            return outcomes.stream().allMatch(Outcome::passes);
        }

        /** Share of the declared lines that some example reaches, in whole per cent, rounded down. */
        public int coveragePercent() {
            return declared == 0 ? 100 : (declared - unreached.size()) * 100 / declared;
        }
    }

    private static final LocalDateTime ANY_DAY = LocalDateTime.of(2026, 1, 1, 8, 0);

    private final Library library;
    private final Map<String, Shape> shapes = new HashMap<>();

    /** For the stages of a library on these shapes. */
    public ExampleCheck(Library library, List<Shape> shapes) {
        this.library = library;
        shapes.forEach(s -> this.shapes.putIfAbsent(s.id(), s));
    }

    /** Every stage of the library, in its order. */
    public List<StageOutcome> all() {
        return library.stages().stream().map(this::of).toList();
    }

    /** One stage. */
    public StageOutcome of(Stage stage) {
        TermsLines lines = new TermsLines(stage, library.facts());
        List<Outcome> outcomes = new ArrayList<>();
        for (Example example : stage.examples()) {
            List<Line> found = new ArrayList<>();
            Shape shape = shapes.get(example.shape());
            if (shape == null) {
                String nearest = Nearest.hintOrAll(example.shape(), shapes.keySet());
                found.add(new Line("on", "a vehicle shape", "'" + example.shape() + "'" + nearest, false));
            } else {
                run(stage, example, shape, found, lines);
            }
            outcomes.add(new Outcome(example.name(), example.place(), found));
        }
        return new StageOutcome(stage.id(), outcomes, lines.declared().size(), lines.unreached());
    }

    private void run(Stage stage, Example example, Shape shape, List<Line> found, TermsLines lines) {
        Step step = new Step(
                "example",
                stage.id(),
                zones(stage, example, shape),
                example.with(),
                Step.Priority.MUST,
                Optional.empty(),
                drivers(example));
        Plan plan = new Plan(List.of(step));
        Setting setting = new Setting(library, shape, survey(example), List.of(), ANY_DAY);
        Prover prover = Prover.forSetting(setting);
        FindingText text = new FindingText(setting, plan, Locale.ENGLISH);
        Proof proof = prover.prove(plan);
        proof.findings().stream()
                .filter(ExampleCheck::isFault)
                .forEach(f -> found.add(new Line("step", "a step that can be done", text.of(f), false)));
        Optional<StepWork> work = prover.work(step);
        work.ifPresent(w -> w.parts().forEach(p -> lines.reach(p.terms())));
        work.ifPresent(w -> figures(example, w, found));
        work.ifPresent(w -> states(example, w, proof.ends(), prover.endsWithPromises(plan), found));
    }

    /** Whether a finding says that a step itself is wrong, whatever comes before it. */
    public static boolean isFault(Finding finding) {
        return FAULTS.contains(finding.code());
    }

    private static List<String> zones(Stage stage, Example example, Shape shape) {
        return example.zones().isEmpty() ? zonesOf(stage, shape) : example.zones();
    }

    /** Ids of the zones of a shape that a stage works on, in the shape's order. */
    public static List<String> zonesOf(Stage stage, Shape shape) {
        return shape.zones().stream()
                .filter(z -> stage.surfaces().isEmpty() || stage.surfaces().contains(z.surface()))
                .map(Zone::id)
                .toList();
    }

    private static Map<String, BigDecimal> drivers(Example example) {
        Map<String, BigDecimal> drivers = new HashMap<>();
        example.drivers().forEach((driver, value) -> {
            if (value.raw() instanceof BigDecimal amount) {
                drivers.put(driver, amount);
            }
        });
        return drivers;
    }

    /** What must be gone afterwards is there before, so that it takes the stage to clear it. */
    private static Survey survey(Example example) {
        Map<String, String> facts = new HashMap<>();
        example.given().forEach((fact, value) -> facts.put(fact, Texts.of(value)));
        return new Survey(facts, example.clears(), Map.of());
    }

    private static void figures(Example example, StepWork work, List<Line> found) {
        BigDecimal attended = work.attendedMinutes().mean().add(work.setUpMinutes());
        example.attended().ifPresent(b -> found.add(between("attended", b, attended, Unit.MINUTE)));
        example.standing().ifPresent(b -> found.add(between("standing", b, work.usualStanding(), Unit.MINUTE)));
        example.uses().forEach((item, expected) -> found.add(use(item, expected, work)));
        example.removes()
                .ifPresent(b -> work.zones().stream()
                        .map(work::removalOf)
                        .map(ThreePoint::likely)
                        .distinct()
                        .forEach(likely -> found.add(between("removes", b, likely, Unit.MICROMETRE))));
    }

    private static Line between(String what, Example.Between expected, BigDecimal got, Unit unit) {
        boolean met = got.compareTo(expected.least().inBase()) >= 0
                && got.compareTo(expected.most().inBase()) <= 0;
        String range = expected.least() + " to " + expected.most();
        return new Line(what, range, shown(got) + " " + unit.symbol(), met);
    }

    private static Line use(String item, Quantity expected, StepWork work) {
        Quantity got = work.items().getOrDefault(item, new Quantity(BigDecimal.ZERO, expected.unit()));
        boolean alike = got.dimension() == expected.dimension();
        BigDecimal slack = expected.inBase().abs().multiply(TOLERANCE);
        boolean met = alike && got.inBase().subtract(expected.inBase()).abs().compareTo(slack) <= 0;
        return new Line(
                item,
                expected.toString(),
                shown(got.amount()) + " " + got.unit().symbol(),
                met);
    }

    /** What a stage sets holds when it is done or comes by itself later; what it clears is gone when it is done. */
    private static void states(
            Example example,
            StepWork work,
            Map<String, Set<String>> ends,
            Map<String, Set<String>> later,
            List<Line> found) {
        for (String state : example.sets()) {
            boolean met = holdsOnAll(state, work.zones(), ends) || holdsOnAll(state, work.zones(), later);
            found.add(new Line(state, "holds", met ? "holds" : "does not hold", met));
        }
        for (String state : example.clears()) {
            boolean met = holdsOnNone(state, work.zones(), ends);
            found.add(new Line(state, "does not hold", met ? "does not hold" : "holds", met));
        }
    }

    private static boolean holdsOnAll(String state, List<String> zones, Map<String, Set<String>> ends) {
        return ends.get(VehicleIndex.VEHICLE).contains(state)
                || touched(zones, ends).stream().allMatch(z -> ends.get(z).contains(state));
    }

    private static boolean holdsOnNone(String state, List<String> zones, Map<String, Set<String>> ends) {
        return !ends.get(VehicleIndex.VEHICLE).contains(state)
                && touched(zones, ends).stream().noneMatch(z -> ends.get(z).contains(state));
    }

    /** A step on the vehicle as a whole acts on every zone. */
    private static List<String> touched(List<String> zones, Map<String, Set<String>> ends) {
        if (!zones.contains(VehicleIndex.VEHICLE)) {
            return zones;
        }
        return ends.keySet().stream()
                .filter(z -> !z.equals(VehicleIndex.VEHICLE))
                .toList();
    }

    private static String shown(BigDecimal number) {
        BigDecimal rounded = number.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
