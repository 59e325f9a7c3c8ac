package baywright.plan;

import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.StageTerms.Reach;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws that a proof keeps whatever the plan. */
class ProverLawsTest {

    private static final List<String> STAGES =
            List.of("rinse", "dry", "foam", "wipe", "tape", "de-mask", "polish", "coat", "check", "look", "gone");
    private static final List<String> ZONES = List.of(
            "bonnet",
            "wing-left",
            "wing-right",
            "boot-lid",
            "windscreen",
            "vehicle",
            "surface:paint",
            "-bonnet",
            "bonet");

    private static final Setting SETTING = stages().setting();

    private static Stages stages() {
        return new Stages()
                .opposites("dry", "wet")
                .opposites("live", "rinsed")
                .opposites("curing", "water-safe")
                .perishing("panel-wiped", 60)
                .implying("polished", "washed")
                .states("washed", "masked", "coated", "idle")
                .madeOf("ready", "panel-wiped", "dry", "polished")
                .vehicleState("passed")
                .condition("lit")
                .bay("hall", "work", "lit")
                .family("work", 5)
                .stage(terms("rinse")
                        .sets("wet", "rinsed")
                        .clears("panel-wiped")
                        .takes(5))
                .stage(terms("dry").needs("rinsed").sets("dry").takes(ThreePoint.of("0.4", "0.6", "1.1"), "m2", "1"))
                .stage(terms("foam")
                        .on("paint", "glass")
                        .sets("wet", "live")
                        .takes(4)
                        .stands(4, 8))
                .stage(terms("wipe")
                        .needs("dry")
                        .sets("panel-wiped")
                        .takes(ThreePoint.of("0.7", "1", "1.8"), "m2", "1"))
                .stage(terms("tape")
                        .on("paint")
                        .needs("dry")
                        .prefers("washed")
                        .sets("masked")
                        .takes(7))
                .stage(terms("de-mask").needs("masked").clears("masked").takes(3))
                .stage(terms("polish")
                        .bay("work")
                        .needs("lit")
                        .needsAny("washed", "rinsed")
                        .sets("polished")
                        .clears("panel-wiped", Reach.VEHICLE, "masked")
                        .clears("water-safe", Reach.NEIGHBOURS, "")
                        .uses("polish", Quantity.of(11, Unit.MILLILITRE), "m2")
                        .setUp(8)
                        .takes(ThreePoint.of("10", "14", "23"), "m2", "2"))
                .stage(terms("coat")
                        .needs("ready")
                        .refuses("masked", "wet")
                        .sets("coated", "curing")
                        .arrives("water-safe", 720)
                        .takes(30)
                        .stands(45, 60, Optional.of(BigDecimal.valueOf(1440))))
                .stage(terms("check")
                        .refuses("live", "curing")
                        .needs("polished")
                        .sets("passed")
                        .takes(10))
                .stage(terms("look").sets("idle"));
    }

    @Provide
    Arbitrary<Plan> plans() {
        Arbitrary<List<String>> zones =
                Arbitraries.of(ZONES).list().ofMinSize(0).ofMaxSize(4);
        Arbitrary<Optional<LocalDateTime>> starts = Arbitraries.longs()
                .between(-100, 4000)
                .map(Stages.MONDAY_AT_EIGHT::plusMinutes)
                .optional(0.15);
        Arbitrary<Map<String, BigDecimal>> drivers = Arbitraries.maps(
                        Arbitraries.of("m2", "vehicle", "chip"),
                        Arbitraries.of("0", "3.5", "-2", "1E+40", "1E-40").map(BigDecimal::new))
                .ofMaxSize(1);
        Arbitrary<Map<String, Value>> with = Arbitraries.maps(
                        Arbitraries.of("passes", "load"),
                        Arbitraries.of(new BigDecimal("1E+999999"), "heavy", true)
                                .map(raw -> Value.of(raw, Place.ofFile("job.json"))))
                .ofMaxSize(1);
        return Combinators.combine(Arbitraries.of(STAGES), zones, starts, drivers, with)
                .as((stage, on, at, amounts, inputs) ->
                        new Step("", stage, on, inputs, Step.Priority.MUST, at, amounts))
                .list()
                .ofMaxSize(14)
                .map(ProverLawsTest::numbered);
    }

    private static Plan numbered(List<Step> steps) {
        List<Step> all = new ArrayList<>();
        for (Step step : steps) {
            all.add(named(step, "s" + (all.size() + 1)));
        }
        return new Plan(all);
    }

    private static Step named(Step step, String id) {
        return new Step(id, step.stage(), step.zones(), step.with(), step.priority(), step.at(), step.drivers());
    }

    @Property(tries = 500)
    void noPlanMakesAProofFailAndEveryFindingHasItsWords(@ForAll("plans") Plan plan) {
        Proof proof = Prover.prove(SETTING, plan);
        FindingText text = new FindingText(SETTING, plan, Locale.UK);

        assertThat(proof.clock()).hasSameSizeAs(plan.steps());
        assertThat(proof.findings()).allSatisfy(f -> {
            assertThat(Codes.ALL).contains(f.code());
            assertThat(text.of(f)).isNotBlank().doesNotContain("{");
        });
        assertThat(PlanWork.of(SETTING, plan).attendedMinutes().mean()).isNotNegative();
    }

    @Property(tries = 200)
    void provingTwiceWithOneProverGivesWhatANewOneGives(@ForAll("plans") Plan plan, @ForAll("plans") Plan other) {
        Prover prover = Prover.forSetting(SETTING);
        prover.prove(other);

        assertThat(prover.prove(plan)).isEqualTo(Prover.prove(SETTING, plan));
        assertThat(prover.stops(plan))
                .isEqualTo(prover.prove(plan).findings().stream()
                        .filter(f -> f.severity() == Severity.STOP)
                        .toList());
    }

    @Property(tries = 300)
    void aStepThatTouchesNothingOfTheOthersChangesNoFinding(@ForAll("plans") Plan any, @ForAll Random random) {
        Plan plan = new Plan(any.steps().stream().map(ProverLawsTest::onZones).toList());
        Plan more = with(
                plan,
                Stages.step("extra", "look", "far"),
                random.nextInt(plan.steps().size() + 1));
        List<Zone> zones = new ArrayList<>(Stages.front().zones());
        zones.add(Stages.zone("far", "wheel", "1"));
        Setting setting = stages().setting(new Shape("front", "Front", BigDecimal.ONE, zones), Survey.NOTHING);

        assertThat(Prover.prove(setting, more).findings())
                .isEqualTo(Prover.prove(setting, plan).findings());
    }

    /** A step on the vehicle as a whole touches every zone, so it is put on one. */
    private static Step onZones(Step step) {
        List<String> zones = step.zones().stream()
                .map(z -> z.equals("vehicle") ? "bonnet" : z)
                .toList();
        return new Step(step.id(), step.stage(), zones, step.with(), step.priority(), step.at(), step.drivers());
    }

    private static Plan with(Plan plan, Step step, int where) {
        List<Step> steps = new ArrayList<>(plan.steps());
        steps.add(where, step);
        return new Plan(steps);
    }

    @Property(tries = 300)
    void theOrderOfZonesInAStepChangesNothing(@ForAll("plans") Plan plan, @ForAll Random random) {
        Plan shuffled = new Plan(plan.steps().stream()
                .map(s -> {
                    List<String> zones = new ArrayList<>(s.zones());
                    Collections.shuffle(zones, random);
                    return new Step(s.id(), s.stage(), zones, s.with(), s.priority(), s.at(), s.drivers());
                })
                .toList());

        Proof before = Prover.prove(SETTING, plan);
        Proof after = Prover.prove(SETTING, shuffled);
        assertThat(after.clock()).isEqualTo(before.clock());
        assertThat(after.ends()).isEqualTo(before.ends());
        assertThat(after.findings()).containsExactlyInAnyOrderElementsOf(before.findings());
    }

    @Property(tries = 300)
    void theOrderOfZonesInTheVehicleChangesOnlyTheirOrder(@ForAll("plans") Plan plan, @ForAll Random random) {
        List<Zone> zones = new ArrayList<>(Stages.front().zones());
        Collections.shuffle(zones, random);
        Setting other = stages().setting(new Shape("front", "Front", BigDecimal.ONE, zones), Survey.NOTHING);

        Proof before = Prover.prove(SETTING, plan);
        Proof after = Prover.prove(other, plan);
        assertThat(after.clock()).isEqualTo(before.clock());
        assertThat(after.ends()).isEqualTo(before.ends());
        assertThat(sorted(after)).containsExactlyInAnyOrderElementsOf(sorted(before));
    }

    private static List<Finding> sorted(Proof proof) {
        return proof.findings().stream()
                .map(f -> new Finding(
                        f.code(),
                        f.severity(),
                        f.step(),
                        f.zones().stream().sorted().toList(),
                        f.reason()))
                .toList();
    }

    @Property(tries = 200)
    void otherIdsGiveTheSameFindingsUnderThoseIds(@ForAll("plans") Plan plan) {
        Map<String, String> names = new HashMap<>();
        Plan renamed = new Plan(plan.steps().stream()
                .map(s -> {
                    names.put(s.id(), "step-" + s.id().substring(1) + "-");
                    return named(s, names.get(s.id()));
                })
                .toList());

        String before = Prover.prove(SETTING, plan).findings().toString();
        String after = Prover.prove(SETTING, renamed).findings().toString();
        assertThat(after.replaceAll("step-(\\d+)-", "s$1")).isEqualTo(before);
    }

    @Property(tries = 200)
    void workAddsUpOverZonesAndSteps(@ForAll("plans") Plan plan) {
        Prover prover = Prover.forSetting(SETTING);
        PlanWork whole = prover.work(plan);
        ThreePoint sum =
                whole.steps().stream().map(StepWork::attendedMinutes).reduce(ThreePoint.ZERO, ThreePoint::plus);
        BigDecimal fixed =
                whole.steps().stream().map(StepWork::setUpMinutes).reduce(whole.familyMinutes(), BigDecimal::add);
        assertThat(whole.attendedMinutes().likely())
                .isEqualByComparingTo(sum.likely().add(fixed));

        for (Step step : plan.steps()) {
            prover.work(step).filter(w -> step.drivers().isEmpty()).ifPresent(w -> {
                Map<String, BigDecimal> parts = new HashMap<>();
                w.zones().stream()
                        .map(z -> new Step(
                                step.id(), step.stage(), List.of(z), step.with(), step.priority(), step.at(), Map.of()))
                        .flatMap(s -> prover.work(s).orElseThrow().attended().stream())
                        .filter(a -> !a.trail().driver().equals("vehicle"))
                        .forEach(
                                a -> parts.merge(a.trail().driver(), a.minutes().most(), BigDecimal::add));
                Map<String, BigDecimal> all = w.attended().stream()
                        .filter(a -> !a.trail().driver().equals("vehicle"))
                        .collect(Collectors.toMap(
                                a -> a.trail().driver(), a -> a.minutes().most(), BigDecimal::add));
                assertThat(all.keySet()).isEqualTo(parts.keySet());
                all.forEach((driver, minutes) -> assertThat(minutes).isEqualByComparingTo(parts.get(driver)));
            });
        }
    }

    @Property(tries = 200)
    void whatTheSurveyNotesOnAllZonesIsWhatItNotesOnEach(@ForAll("plans") Plan plan) {
        ZoneSurvey wet = new ZoneSurvey(Map.of(), List.of("wet"), Map.of(), List.of(), false, List.of());
        Map<String, ZoneSurvey> each = SETTING.shape().zones().stream()
                .filter(z -> !z.id().equals("vehicle"))
                .collect(Collectors.toMap(Zone::id, z -> wet));

        Proof whole = Prover.prove(stages().setting(new Survey(Map.of(), List.of("wet"), Map.of())), plan);
        Proof apart = Prover.prove(stages().setting(new Survey(Map.of(), List.of(), each)), plan);
        assertThat(apart).isEqualTo(whole);
    }
}
