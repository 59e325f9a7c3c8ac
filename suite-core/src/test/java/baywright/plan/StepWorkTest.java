package baywright.plan;

import static baywright.plan.Stages.line;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.JobFactor;
import baywright.library.StageTerms;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepWorkTest {

    private static final ThreePoint FIVE = ThreePoint.of("5", "5", "5");

    private static JobFactor factor(String fact, Map<String, BigDecimal> values, String onlyPer, boolean items) {
        return new JobFactor(
                fact, fact, values, List.of(), List.of(), List.of(), onlyPer, items, line("factors.groovy", 3));
    }

    private static JobFactor hardness(boolean items) {
        Map<String, BigDecimal> values = Map.of("soft", new BigDecimal("0.85"), "hard", new BigDecimal("1.3"));
        return factor("hardness", values, "", items);
    }

    private static Stages polishing() {
        return new Stages()
                .states("polished")
                .fact("hardness", "medium", "soft", "medium", "hard")
                .family("work", 8)
                .stage(terms("polish")
                        .on("paint")
                        .dependingOn("hardness")
                        .takes(ThreePoint.of("10", "14", "23"), "m2", "2")
                        .takes(FIVE, "vehicle", "1")
                        .setUp(8)
                        .stands(15, 30)
                        .uses("polish", Quantity.of(11, Unit.MILLILITRE), "m2")
                        .removes("0.5", "1", "2"));
    }

    private static StepWork only(Setting setting, Step step) {
        return PlanWork.of(setting, Stages.plan(step)).steps().get(0);
    }

    private static Survey hardBonnet() {
        ZoneSurvey hard = new ZoneSurvey(Map.of("hardness", "hard"), List.of(), Map.of(), List.of(), false, List.of());
        return new Survey(Map.of("hardness", "soft"), List.of(), Map.of("bonnet", hard));
    }

    @Test
    void linesCountByWhatTheZonesMeasureAndCarryTheirTrail() {
        StepWork work = only(polishing().setting(), step("s1", "polish", "bonnet", "boot-lid"));

        StepWork.Attended byArea = work.attended().get(0);
        assertThat(byArea.minutes()).isEqualTo(ThreePoint.of("52.0", "72.8", "119.6"));
        assertThat(byArea.trail().driver()).isEqualTo("m2");
        assertThat(byArea.trail().amount()).isEqualByComparingTo("2.6");
        assertThat(byArea.trail().source()).isEqualTo(Trail.Source.SHAPE);
        assertThat(byArea.trail().times()).isEqualByComparingTo("2");
        assertThat(byArea.trail().place()).isEqualTo(line("polish.groovy", 2));
        assertThat(byArea.trail().zones()).containsExactly("bonnet", "boot-lid");
        assertThat(byArea.trail().given()).containsExactly(new Trail.Given("hardness", "medium", Trail.Giver.USUAL));
        assertThat(work.attendedMinutes()).isEqualTo(ThreePoint.of("57.0", "77.8", "124.6"));
        assertThat(work.setUpMinutes()).isEqualByComparingTo("8");
        assertThat(work.usualStanding()).isEqualByComparingTo("15");
        assertThat(work.mostStanding()).hasValueSatisfying(m -> assertThat(m).isEqualByComparingTo("30"));
        assertThat(work.items().get("polish")).isEqualTo(Quantity.of("28.6", Unit.MILLILITRE));
        assertThat(work.removalOf("bonnet")).isEqualTo(ThreePoint.of("0.5", "1", "2"));
        assertThat(work.removalOf("windscreen")).isEqualTo(ThreePoint.ZERO);
    }

    @Test
    void anAmountInTheStepGoesBeforeTheSurveysAndTheSurveysBeforeTheShapes() {
        Stages stages = new Stages()
                .states("x")
                .stage(terms("touch-in").takes(ThreePoint.of("3", "6", "12"), "chip", "1"))
                .stage(terms("read").takes(ThreePoint.of("1", "1", "1"), "panel", "1"));
        ZoneSurvey chips = new ZoneSurvey(
                Map.of(),
                List.of(),
                Map.of("chip", BigDecimal.TEN, "panel", BigDecimal.valueOf(3)),
                List.of(),
                false,
                List.of());
        Setting setting = stages.setting(new Survey(Map.of(), List.of(), Map.of("bonnet", chips)));

        Trail surveyed = only(setting, step("s1", "touch-in", "bonnet", "boot-lid"))
                .attended()
                .get(0)
                .trail();
        assertThat(surveyed.amount()).isEqualByComparingTo("10");
        assertThat(surveyed.source()).isEqualTo(Trail.Source.SURVEY);
        Trail both = only(setting, step("s1", "read", "bonnet", "boot-lid"))
                .attended()
                .get(0)
                .trail();
        assertThat(both.amount()).isEqualByComparingTo("4");
        assertThat(both.source()).isEqualTo(Trail.Source.SURVEY_AND_SHAPE);
        Step twelve = new Step(
                "s1",
                "touch-in",
                List.of("bonnet"),
                Map.of(),
                Step.Priority.MUST,
                Optional.empty(),
                Map.of("chip", BigDecimal.valueOf(12)));
        Trail written = only(setting, twelve).attended().get(0).trail();
        assertThat(written.amount()).isEqualByComparingTo("12");
        assertThat(written.source()).isEqualTo(Trail.Source.STEP);
    }

    @Test
    void zonesThatDifferInAFactAreWorkedOutApartAndAddUpWithWhatIsOfTheWholeUseOnce() {
        Stages stages = polishing().factor(hardness(true));

        StepWork work = only(stages.setting(hardBonnet()), step("s1", "polish", "bonnet", "boot-lid"));

        assertThat(work.parts())
                .extracting(StepWork.Part::zones)
                .containsExactly(List.of("bonnet"), List.of("boot-lid"));
        assertThat(work.attended())
                .extracting(a -> a.trail().driver() + " "
                        + a.minutes().likely().stripTrailingZeros().toPlainString())
                .containsExactly("m2 54.6", "vehicle 6.5", "m2 26.18");
        assertThat(work.attended().get(0).trail().factors())
                .containsExactly(new Trail.Applied(
                        "hardness", "hardness", "hard", new BigDecimal("1.3"), line("factors.groovy", 3)));
        assertThat(work.setUps()).hasSize(1);
        assertThat(work.items().get("polish").amount()).isEqualByComparingTo("31.735");
        assertThat(work.removals()).hasSize(2);
    }

    @Test
    void factorsTouchItemsOnlyWhereTheySaySo() {
        StepWork work = only(polishing().factor(hardness(false)).setting(hardBonnet()), step("s1", "polish", "bonnet"));

        assertThat(work.attended().get(0).minutes().likely()).isEqualByComparingTo("54.6");
        assertThat(work.items().get("polish").amount()).isEqualByComparingTo("16.5");
    }

    @Test
    void theSizeOfTheShapeMultipliesAsItIs() {
        Shape estate = new Shape(
                "estate", "Estate", new BigDecimal("1.1"), Stages.front().zones());
        Stages stages = polishing().factor(factor("size", Map.of(), "vehicle", false));

        StepWork work = only(stages.setting(estate, Survey.NOTHING), step("s1", "polish", "bonnet"));

        assertThat(work.attended())
                .extracting(a -> a.minutes().likely().stripTrailingZeros().toPlainString())
                .containsExactly("42", "5.5");
        assertThat(work.setUpMinutes()).isEqualByComparingTo("8");
    }

    @Test
    void aFamilyIsSetUpOnceForAllItsSteps() {
        PlanWork work = PlanWork.of(
                polishing().setting(),
                Stages.plan(
                        step("s1", "polish", "bonnet"),
                        step("s2", "polish", "boot-lid"),
                        step("s3", "gone", "bonnet")));

        assertThat(work.steps()).extracting(StepWork::step).containsExactly("s1", "s2");
        assertThat(work.families()).hasSize(1);
        assertThat(work.families().get(0).steps()).containsExactly("s1", "s2");
        assertThat(work.familyMinutes()).isEqualByComparingTo("8");
        // 2 × (2.6/2 m² on average × 14 × 2 + 5 + 8) + 8 = 72.8 + 26 + 8
        assertThat(work.attendedMinutes().likely()).isEqualByComparingTo("106.8");
    }

    @Test
    void amountsOfOneItemInTwoUnitsAreAddedInTheBaseUnit() {
        assertThat(PlanWork.sum(Quantity.of("0.2", Unit.LITRE), Quantity.of("75", Unit.MILLILITRE)))
                .isEqualTo(Quantity.of("275.0", Unit.MILLILITRE));
    }

    @Test
    void helpersShortenAsTheCrewSaysAndNoFurther() {
        StageTerms.Crew crew = terms("x").crew(1, "1", "0.57").build().crew();

        assertThat(StepWork.share(crew, 1)).isEqualByComparingTo("1");
        assertThat(StepWork.share(crew, 2)).isEqualByComparingTo("0.57");
        assertThat(StepWork.share(crew, 5)).isEqualByComparingTo("0.57");
        assertThat(StepWork.share(terms("x").crew(4).build().crew(), 4)).isEqualByComparingTo("0.25");
    }

    @Test
    void twoPeopleThatAStageAsksForMoveTheClock() {
        Stages stages =
                new Stages().states("x").stage(terms("film").takes(60).setUp(30).crew(2, "1", "0.6"));

        Proof proof = stages.prove(step("s1", "film", "bonnet"));

        assertThat(proof.clock().get(0).end()).isEqualByComparingTo("66");
    }
}
