package baywright.plan;

import static baywright.plan.Stages.line;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Input;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepFaultsTest {

    private static final Place FIELD = Place.ofFile("job.json");

    private static Value value(Object raw) {
        return Value.of(raw, FIELD);
    }

    private static Input input(String name, Input.Kind kind, Object usual, Object least, Object most) {
        return new Input(
                name,
                kind,
                kind == Input.Kind.CHOICE ? List.of("light", "heavy") : List.of(),
                kind == Input.Kind.MEASURE ? Optional.of(Dimension.THICKNESS) : Optional.empty(),
                Optional.ofNullable(least).map(StepFaultsTest::value),
                Optional.ofNullable(most).map(StepFaultsTest::value),
                value(usual),
                "",
                line("polish.groovy", 3));
    }

    private static Stages polishing() {
        return new Stages()
                .states("polished", "checked")
                .stage(terms("polish")
                        .on("paint")
                        .input(input("load", Input.Kind.CHOICE, "light", null, null))
                        .input(input("passes", Input.Kind.COUNT, BigDecimal.ONE, BigDecimal.ONE, BigDecimal.valueOf(3)))
                        .input(input(
                                "grit",
                                Input.Kind.MEASURE,
                                Quantity.of(2, Unit.MICROMETRE),
                                Quantity.of(1, Unit.MICROMETRE),
                                Quantity.of(5, Unit.MICROMETRE)))
                        .input(input("two-sided", Input.Kind.YES_NO, false, null, null))
                        .sets("polished")
                        .takes(10))
                .stage(terms("check").needs("polished").sets("checked"));
    }

    private static Step with(String input, Object raw) {
        return new Step(
                "s1",
                "polish",
                List.of("bonnet"),
                Map.of(input, value(raw)),
                Step.Priority.MUST,
                Optional.empty(),
                Map.of());
    }

    private static List<Reason> reasons(Step... steps) {
        return polishing().prove(steps).findings().stream().map(Finding::reason).toList();
    }

    @Test
    void whatFitsItsInputIsTaken() {
        assertThat(reasons(with("load", "heavy"))).isEmpty();
        assertThat(reasons(with("passes", new BigDecimal("3.0")))).isEmpty();
        assertThat(reasons(with("grit", Quantity.of(5, Unit.MICROMETRE)))).isEmpty();
        assertThat(reasons(with("grit", "0.1 mil"))).isEmpty();
        assertThat(reasons(with("grit", "2.5.um"))).isEmpty();
        assertThat(reasons(with("two-sided", true))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "load | medium | one of 'light', 'heavy'",
                "grit | 6 um | an amount from 1.um to 5.um",
                "grit | 2 ml | an amount from 1.um to 5.um",
                "grit | fine | an amount from 1.um to 5.um",
                "grit | 1e99999 um | an amount from 1.um to 5.um",
                "passes | two | a whole number from 1 to 3",
                "two-sided | maybe | true or false",
                "lod | heavy | the input 'load'",
                "temperature | 4 | one of the inputs 'load', 'passes', 'grit', 'two-sided'",
            })
    void aTextThatDoesNotFitSaysWhatWould(String name, String text, String wanted) {
        assertThat(reasons(with(name, text))).hasSize(1).first().isInstanceOfSatisfying(Reason.BadInput.class, r -> {
            assertThat(r.input()).isEqualTo(name);
            assertThat(r.met()).isEqualTo(text);
            assertThat(r.wanted()).isEqualTo(wanted);
        });
    }

    @Test
    void aNumberOutsideItsRangeIsRefusedAndTheUsualOneUsed() {
        assertThat(reasons(with("passes", BigDecimal.valueOf(4))))
                .containsExactly(new Reason.BadInput("s1", "passes", "4", "a whole number from 1 to 3"));
        assertThat(reasons(with("passes", new BigDecimal("1.5")))).hasSize(1);
        assertThat(reasons(with("passes", new BigDecimal("1E+999999999")))).hasSize(1);
    }

    @Test
    void aStageThatIsGoneIsNamedWithTheNearestAndNeedsAfterItAreStillReported() {
        assertThat(reasons(step("s1", "polsih", "bonnet"), step("s2", "check", "bonnet")))
                .containsExactly(
                        new Reason.StageGone("s1", "polsih", "polish"),
                        new Reason.NeedUnmet("s2", List.of("polished"), "", List.of(new Cause.NeverSet("polished"))));
    }

    @Test
    void aZoneThatIsNotThereIsNamedWithTheNearest() {
        assertThat(reasons(step("s1", "polish", "bonnet", "boot-ild", "surface:pant")))
                .containsExactly(
                        new Reason.ZoneUnknown("s1", "boot-ild", "boot-lid"),
                        new Reason.ZoneUnknown("s1", "surface:pant", ""));
    }

    @Test
    void aStepWithoutZonesIsAStopAlsoWhereTheVehicleHasNoneOfASurface() {
        assertThat(reasons(step("s1", "polish"))).containsExactly(new Reason.NoZone("s1"));
        assertThat(reasons(step("s1", "polish", "surface:wheel"))).containsExactly(new Reason.NoZone("s1"));
    }

    @Test
    void zonesOfAWrongSurfaceAreNamedAndLeftOut() {
        Proof proof = polishing().prove(step("s1", "polish", "bonnet", "windscreen"));

        assertThat(proof.findings()).hasSize(1);
        Finding finding = proof.findings().get(0);
        assertThat(finding.code()).isEqualTo("wrong-surface");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.zones()).containsExactly("windscreen");
        assertThat(finding.reason()).isEqualTo(new Reason.WrongSurface("s1", "glass", List.of("paint")));
        assertThat(proof.ends().get("windscreen")).isEmpty();
        assertThat(proof.ends().get("bonnet")).containsExactly("polished");
    }

    @Test
    void twoStepsWithOneIdAreAStop() {
        assertThat(reasons(step("s1", "polish", "bonnet"), step("s1", "check", "bonnet")))
                .containsExactly(new Reason.StepTwice("s1", 2));
    }

    @Test
    void anAmountBelowZeroOrBeyondReasonIsRefused() {
        for (String amount : List.of("-1", "1E+30", "1E-30")) {
            Step step = new Step(
                    "s1",
                    "polish",
                    List.of("bonnet"),
                    Map.of(),
                    Step.Priority.MUST,
                    Optional.empty(),
                    Map.of("m2", new BigDecimal(amount)));
            assertThat(reasons(step)).containsExactly(new Reason.BadDriver("s1", "m2", amount));
        }
    }

    @Test
    void aStageThatCannotBeWorkedOutIsAFindingAtItsStep() {
        Stages stages = polishing().stage(terms("broken"), (with, facts) -> {
            throw new IllegalStateException("divides by zero");
        });

        assertThat(stages.prove(step("s1", "broken", "bonnet")).findings())
                .extracting(Finding::reason)
                .containsExactly(new Reason.StageFails("s1", "broken", "divides by zero"));
    }

    @Test
    void factsAndStatesOfTheSurveyThatTheLibraryDoesNotKnowComeFirst() {
        Stages stages = polishing().fact("hardness", "medium", "soft", "medium", "hard");
        Survey survey = new Survey(Map.of("hardness", "sfot", "hardnes", "soft"), List.of("polishd"), Map.of());

        assertThat(Prover.prove(stages.setting(survey), Stages.plan(step("s1", "check", "bonnet")))
                        .findings())
                .extracting(Finding::reason)
                .startsWith(
                        new Reason.BadFact("hardnes", "soft", "", "hardness"),
                        new Reason.BadFact("hardness", "sfot", "one of 'soft', 'medium', 'hard'", "soft"),
                        new Reason.StateUnknown("polishd", "polished"));
    }
}
