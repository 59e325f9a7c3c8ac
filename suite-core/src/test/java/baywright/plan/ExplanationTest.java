package baywright.plan;

import static baywright.plan.Stages.line;
import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import baywright.library.StageTerms.Reach;
import baywright.plan.Explanation.Account;
import baywright.plan.Explanation.Change;
import baywright.plan.Explanation.Giver;
import baywright.plan.Explanation.Kind;
import baywright.plan.Explanation.Link;
import baywright.plan.Explanation.Moment;
import baywright.plan.Explanation.Way;
import baywright.plan.Explanation.Where;
import baywright.script.Place;
import baywright.vehicle.Survey;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static final Setting SETTING = new Stages()
            .opposites("dry", "wet")
            .states("washed", "wiped", "coated", "bare", "masked")
            .vehicleState("parked")
            .condition("lit")
            .bay("hall", "work", "lit")
            .stage(terms("wash").needs("parked").sets("washed", "wet").clears("wiped"))
            .stage(terms("dry").needs("washed").sets("dry"))
            .stage(terms("wipe").needs("dry").sets("wiped").takes(1))
            .stage(terms("coat")
                    .bay("work")
                    .needs("wiped", "lit")
                    .refuses("wet")
                    .sets("coated"))
            .stage(terms("look").prefers("washed").needsAny("coated", "bare"))
            .stage(terms("mask").sets("masked"))
            .stage(terms("sand").clears("wiped", Reach.NEIGHBOURS, "masked"))
            .setting(new Survey(Map.of(), List.of("parked"), Map.of()));

    private static Link link(
            String step, String state, boolean gone, Giver giver, String by, int asked, Optional<Place> given) {
        return new Link(
                step,
                state,
                gone ? Kind.REFUSED : Kind.NEEDED,
                gone,
                "",
                giver,
                by,
                List.of(giver == Giver.SURVEY ? "vehicle" : "bonnet"),
                "",
                line(stageOf(step) + ".groovy", asked),
                given);
    }

    private static String stageOf(String step) {
        return Map.of("a", "wash", "b", "dry", "c", "wipe", "d", "coat").get(step);
    }

    private static Optional<Place> at(String stage, int line) {
        return Optional.of(line(stage + ".groovy", line));
    }

    @Test
    void everyStepKnowsWhatItReliesOnAndWhatReliesOnIt() {
        Explanation told = Explanation.of(
                SETTING,
                plan(
                        step("a", "wash", "bonnet"),
                        step("b", "dry", "bonnet"),
                        step("c", "wipe", "bonnet"),
                        step("d", "coat", "bonnet")));

        assertThat(told.step("a").orElseThrow().reliesOn())
                .containsExactly(link("a", "parked", false, Giver.SURVEY, "", 2, Optional.empty()));
        assertThat(told.step("d").orElseThrow().reliesOn())
                .containsExactlyInAnyOrder(
                        link("d", "wiped", false, Giver.STEP, "c", 2, at("wipe", 3)),
                        link("d", "lit", false, Giver.BAY, "hall", 3, Optional.empty()),
                        link("d", "wet", true, Giver.STEP, "b", 4, at("dry", 3)));
        Account dry = told.step("b").orElseThrow();
        assertThat(dry.carries())
                .containsExactlyInAnyOrder(
                        link("c", "dry", false, Giver.STEP, "b", 2, at("dry", 3)),
                        link("d", "wet", true, Giver.STEP, "b", 4, at("dry", 3)));
        assertThat(dry.makes()).containsExactly(new Where("dry", List.of("bonnet"), at("dry", 3)));
        assertThat(dry.ends()).containsExactly(new Where("wet", List.of("bonnet"), at("dry", 3)));
        assertThat(dry.serves()).containsExactly("d");
        assertThat(told.step("d").orElseThrow().lasts())
                .containsExactly(new Where("coated", List.of("bonnet"), at("coat", 5)));
        assertThat(told.step("d").orElseThrow().serves()).isEmpty();
        assertThat(told.zone("bonnet").orElseThrow().moments())
                .startsWith(
                        new Moment(
                                "a",
                                Way.WORKS,
                                List.of(
                                        new Change("wet", true, "a", at("wash", 4)),
                                        new Change("washed", true, "a", at("wash", 3)))),
                        new Moment(
                                "b",
                                Way.WORKS,
                                List.of(
                                        new Change("dry", true, "b", at("dry", 3)),
                                        new Change("wet", false, "b", at("dry", 3)))));
        assertThat(told.zone("boot-lid").orElseThrow().moments()).isEmpty();
        assertThat(told.zone("vehicle").orElseThrow().found()).containsExactly("parked");
    }

    @Test
    void aStepThatMasksIsReliedOnWhereItKeepsASpreadingEffectAway() {
        Step sand = step("d", "sand", "bonnet");
        Explanation told = Explanation.of(
                SETTING,
                plan(
                        step("a", "wash", "surface:paint"),
                        step("b", "dry", "surface:paint"),
                        step("c", "wipe", "wing-left", "boot-lid"),
                        step("m", "mask", "wing-left", "wing-right", "boot-lid"),
                        sand,
                        step("e", "coat", "wing-left")));

        assertThat(told.step("m").orElseThrow().carries())
                .as("the right wing had nothing to lose, and no dust reaches the boot lid")
                .containsExactly(new Link(
                        "d",
                        "masked",
                        Kind.SHIELDS,
                        false,
                        "wiped",
                        Giver.STEP,
                        "m",
                        List.of("wing-left"),
                        "",
                        line("sand.groovy", 2),
                        at("mask", 2)));
        assertThat(told.zone("wing-left").orElseThrow().moments())
                .extracting(Moment::step)
                .doesNotContain("d");
    }

    @Test
    void whatTimeDoesIsNoStepsDoing() {
        Stages stages = new Stages()
                .perishing("wiped", 60)
                .opposites("soft", "cured")
                .stage(terms("wipe").sets("wiped").takes(1))
                .stage(terms("paint").sets("soft").arrives("cured", 30).takes(1))
                .stage(terms("work").takes(90));
        Explanation told = Explanation.of(
                stages.setting(),
                plan(step("a", "wipe", "bonnet"), step("b", "paint", "bonnet"), step("c", "work", "boot-lid")));

        Account work = told.step("c").orElseThrow();
        assertThat(work.makes()).isEmpty();
        assertThat(work.ends()).isEmpty();
        assertThat(told.step("a").orElseThrow().ends()).isEmpty();
        assertThat(told.zone("bonnet").orElseThrow().moments())
                .last()
                .isEqualTo(new Moment(
                        "c",
                        Way.ITSELF,
                        List.of(
                                new Change("wiped", false, "a", at("states", 1)),
                                new Change("soft", false, "b", at("paint", 3)),
                                new Change("cured", true, "b", at("paint", 3)))));
    }

    @Test
    void whoEndsOnlyWhatItBeganIsNotReliedOnForThat() {
        Stages stages = new Stages()
                .opposites("soft", "cured")
                .stage(terms("wax").sets("soft").arrives("cured", 30))
                .stage(terms("hand-over").refuses("soft"));
        Explanation once =
                Explanation.of(stages.setting(), plan(step("a", "wax", "bonnet"), step("b", "hand-over", "bonnet")));
        assertThat(once.step("a").orElseThrow().carries()).isEmpty();

        Setting found = stages.setting(new Survey(Map.of(), List.of("soft"), Map.of()));
        Explanation renewed = Explanation.of(found, plan(step("a", "wax", "bonnet"), step("b", "hand-over", "bonnet")));
        assertThat(renewed.step("a").orElseThrow().carries())
                .extracting(Link::state, Link::gone)
                .containsExactly(tuple("soft", true));
    }

    @Test
    void withoutAStepTheProofFindsWhatReliedOnIt() {
        Plan plan = plan(
                step("a", "wash", "bonnet"),
                step("b", "dry", "bonnet"),
                step("c", "wipe", "bonnet"),
                step("d", "coat", "bonnet"),
                step("e", "look", "bonnet", "boot-lid"));
        Without dry = Without.of(SETTING, plan, "b");
        assertThat(dry.brings())
                .extracting(f -> f.step().orElseThrow(), Finding::code, Finding::zones)
                .containsExactly(
                        tuple("c", "need-unmet", List.of("bonnet")), tuple("d", "must-not-hold", List.of("bonnet")));
        assertThat(dry.loses()).containsExactly(new Where("dry", List.of("bonnet"), Optional.empty()));
        assertThat(dry.gains()).containsExactly(new Where("wet", List.of("bonnet"), Optional.empty()));
        assertThat(dry.mends()).isEmpty();
        assertThat(new FindingPlaces(SETTING, plan).of(dry.brings().get(0))).isEqualTo(at("wipe", 2));
        assertThat(new FindingPlaces(SETTING, plan).of(dry.brings().get(1))).isEqualTo(at("coat", 4));

        Without coat = Without.of(SETTING, plan, "d");
        assertThat(coat.brings())
                .as("the boot lid lacked it before")
                .extracting(Finding::zones)
                .containsExactly(List.of("bonnet"));
        assertThat(Without.of(SETTING, plan, "e").brings()).isEmpty();
        assertThat(Without.of(SETTING, plan(step("a", "wash", "bonnet"), step("b", "coat", "bonnet")), "a")
                        .mends())
                .extracting(Finding::code)
                .containsExactly("must-not-hold");
    }

    @Provide
    Arbitrary<Plan> plans() {
        Arbitrary<String> zones = Arbitraries.of("bonnet", "wing-left", "surface:paint", "vehicle");
        return Arbitraries.of("wash", "dry", "wipe", "coat", "look", "mask", "sand")
                .flatMap(stage -> zones.map(zone -> step("", stage, zone)))
                .list()
                .ofMaxSize(12)
                .map(steps -> new Plan(IntStream.range(0, steps.size())
                        .mapToObj(i -> step(
                                "s" + i,
                                steps.get(i).stage(),
                                steps.get(i).zones().get(0)))
                        .toList()));
    }

    @Property(tries = 300)
    void anUnmetNeedIsNeverALink(@ForAll("plans") Plan plan) {
        Explanation told = Explanation.of(SETTING, plan);
        ExplanationText text = new ExplanationText(SETTING, plan, Locale.UK);
        told.steps()
                .forEach(s -> s.reliesOn()
                        .forEach(l ->
                                assertThat(text.reliesOn(l) + text.carries(l)).doesNotContain("{")));
        for (Finding finding : Prover.prove(SETTING, plan).findings()) {
            if (finding.reason() instanceof Reason.NeedUnmet unmet) {
                assertThat(told.step(unmet.step()).orElseThrow().reliesOn())
                        .noneMatch(l -> !l.gone()
                                && unmet.anyOf().contains(l.state())
                                && l.zones().stream().anyMatch(finding.zones()::contains));
            }
        }
    }

    /** The vehicle as a whole is named only as long as no zone is concerned, so that a step less may name it. */
    private static Set<List<String>> stops(Plan plan, String but) {
        return Prover.prove(SETTING, plan).findings().stream()
                .filter(f -> f.severity() == Severity.STOP && !f.step().equals(Optional.of(but)))
                .flatMap(f -> f.zones().stream()
                        .filter(zone -> !zone.equals("vehicle"))
                        .map(zone -> List.of(f.step().orElse(""), f.code(), zone, needed(f))))
                .collect(Collectors.toSet());
    }

    private static String needed(Finding finding) {
        return finding.reason() instanceof Reason.NeedUnmet unmet ? String.valueOf(unmet.anyOf()) : "";
    }

    /** It may have spoilt something: then fewer stop. */
    @Property(tries = 300)
    void aStepThatNothingReliesOnIsMissedByNobody(@ForAll("plans") Plan plan) {
        Explanation told = Explanation.of(SETTING, plan);
        for (Step step : plan.steps()) {
            if (told.step(step.id()).orElseThrow().carries().isEmpty()) {
                Plan without = new Edit.Drop(step.id()).applyTo(plan);
                assertThat(stops(plan, step.id())).containsAll(stops(without, step.id()));
            }
        }
    }
}
