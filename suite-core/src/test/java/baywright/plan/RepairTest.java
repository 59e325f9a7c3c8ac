package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.RepairResult.Smallest;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RepairTest {

    private static final Repair.Options PATIENT = Repair.Options.USUAL.within(Duration.ofMinutes(1));

    private static Stages wet() {
        return new Stages()
                .opposites("dry", "wet")
                .states("rinsed", "masked")
                .stage(terms("rinse").sets("wet", "rinsed").takes(5))
                .stage(terms("towel-dry").needs("wet").sets("dry").takes(10))
                .stage(terms("tape-up").needs("dry").sets("masked").takes(10))
                .stage(terms("coat").needs("dry").refuses("masked").takes(20))
                .stage(terms("de-mask").needs("masked").clears("masked").takes(5));
    }

    private static Step optional(Step step) {
        return new Step(
                step.id(), step.stage(), step.zones(), step.with(), Step.Priority.COULD, step.at(), step.drivers());
    }

    private static RepairResult find(Stages stages, Step... steps) {
        return Repair.find(stages.setting(), plan(steps), PATIENT);
    }

    private static List<Edit> best(RepairResult result) {
        assertThat(result.provedSmallest()).isTrue();
        return result.repairs().get(0).edits();
    }

    @Test
    void aPlanThatHoldsNeedsNoEdit() {
        RepairResult result = find(wet(), step("s1", "rinse", "bonnet"), step("s2", "towel-dry", "bonnet"));

        assertThat(best(result)).isEmpty();
        assertThat(result.repairs().get(0).addedCost()).isEqualByComparingTo("0");
    }

    @Test
    void aStateThatNothingSetsIsSetByAnInsertedStepOnTheZonesThatLackIt() {
        RepairResult result =
                find(wet(), step("s1", "rinse", "bonnet", "wing-left"), step("s2", "tape-up", "bonnet", "wing-left"));

        assertThat(best(result)).hasSize(1);
        assertThat(best(result).get(0)).isInstanceOf(Edit.Insert.class);
        Edit.Insert insert = (Edit.Insert) best(result).get(0);
        assertThat(insert.step().stage()).isEqualTo("towel-dry");
        assertThat(insert.step().zones()).containsExactly("bonnet", "wing-left");
        assertThat(insert.position()).isEqualTo(1);
        assertThat(result.repairs().get(0).addedCost()).isEqualByComparingTo("10");
    }

    @Test
    void whatComesTooLateIsMovedRatherThanDoneTwice() {
        RepairResult result = find(
                wet(),
                step("s1", "rinse", "bonnet"),
                step("s2", "towel-dry", "bonnet"),
                step("s3", "tape-up", "bonnet"),
                step("s4", "coat", "bonnet"),
                step("s5", "de-mask", "bonnet"));

        assertThat(best(result)).isIn(List.of(new Edit.Move("s5", 3)), List.of(new Edit.Move("s4", 4)));
        assertThat(result.repairs())
                .hasSizeGreaterThan(1)
                .allMatch(r -> r.edits().size() == 1);
    }

    @Test
    void aStepThatLacksOnlyOneZoneIsWidened() {
        RepairResult result = find(
                wet(),
                step("s1", "rinse", "bonnet", "boot-lid"),
                step("s2", "towel-dry", "bonnet"),
                step("s3", "tape-up", "bonnet", "boot-lid"));

        assertThat(result.repairs())
                .extracting(Repair::edits)
                .contains(List.of(new Edit.ChangeZones("s2", List.of("bonnet", "boot-lid"))));
    }

    @Test
    void aChainOfMissingStepsIsInsertedWhole() {
        assertThat(best(find(wet(), step("s1", "tape-up", "bonnet"))))
                .extracting(e -> ((Edit.Insert) e).step().stage())
                .containsExactlyInAnyOrder("rinse", "towel-dry");
    }

    @Test
    void anInputIsChangedWhereThatIsEnough() {
        Stages stages = wet().stage(
                        terms("wipe").input(Inputs.choice("cloth", "dry", "damp")),
                        (with, facts) -> "damp".equals(Inputs.text(with, "cloth"))
                                ? terms("wipe").sets("wet").build()
                                : terms("wipe").needs("dry").takes(1).build());

        RepairResult result = find(stages, step("s1", "rinse", "bonnet"), step("s2", "wipe", "bonnet"));

        assertThat(result.repairs())
                .extracting(r -> r.edits().get(0))
                .anyMatch(e ->
                        e instanceof Edit.ChangeInput change && change.input().equals("cloth"));
    }

    @Test
    void aFixedStartThatComesTooSoonIsDelayedJustEnough() {
        Stages stages = new Stages()
                .stage(terms("coat").takes(10).stands(60))
                .stage(terms("buff").takes(5));

        RepairResult result = find(stages, step("s1", "coat", "bonnet"), at(step("s2", "buff", "bonnet"), 30));

        assertThat(result.repairs())
                .extracting(Repair::edits)
                .contains(List.of(new Edit.Delay("s2", Optional.of(Stages.MONDAY_AT_EIGHT.plusMinutes(70)))));
    }

    @Test
    void aProductThatStandsTooLongIsRinsedInTime() {
        Stages stages = new Stages()
                .opposites("live", "rinsed")
                .stage(terms("foam").sets("live").takes(5).stands(0, 10))
                .stage(terms("wheels").takes(30))
                .stage(terms("rinse").sets("rinsed").takes(5));

        RepairResult result = find(
                stages, step("s1", "foam", "bonnet"), step("s2", "wheels", "boot-lid"), step("s3", "rinse", "bonnet"));

        assertThat(best(result)).hasSize(1);
        assertThat(best(result).get(0)).isInstanceOf(Edit.Move.class);
    }

    @Test
    void aWaitFromBeforeThatHoldsUpWhatIsBetweenIsMovedAway() {
        Stages stages = new Stages()
                .stage(terms("dust").takes(5).stands(15))
                .stage(terms("brush").takes(5).stands(0, 10))
                .stage(terms("foam").takes(5))
                .stage(terms("rinse").takes(5));

        Plan plan = plan(
                step("s1", "dust", "bonnet"),
                step("s2", "brush", "boot-lid"),
                step("s3", "foam", "bonnet"),
                step("s4", "rinse", "boot-lid"));
        RepairResult result = Repair.find(
                stages.setting(),
                plan,
                new Repair.Options(Duration.ofMinutes(1), 10_000, 8, 20, () -> false, Optional.empty()));

        assertThat(result.repairs())
                .extracting(Repair::edits)
                .anyMatch(edits -> edits.stream()
                        .allMatch(e ->
                                e instanceof Edit.Move move && move.stepId().equals("s1")));
    }

    @Test
    void workThatMayBeLeftIsLeftOnlyWhenNothingElseOfTheSizeWill() {
        Step[] steps = {step("s1", "rinse", "bonnet"), optional(step("s2", "tape-up", "bonnet"))};

        assertThat(best(find(wet(), steps)).get(0)).isInstanceOf(Edit.Insert.class);

        Stages dryless = new Stages().states("dry").stage(terms("tape-up").needs("dry"));
        RepairResult only = find(dryless, optional(step("s2", "tape-up", "bonnet")));
        assertThat(best(only)).containsExactly(new Edit.Drop("s2"));
        assertThat(only.lossOnly()).isEmpty();
    }

    @Test
    void aStopThatOnlyLeavingMustWorkCouldMendIsNamed() {
        Stages stages = new Stages().states("dry").stage(terms("tape-up").needs("dry"));

        RepairResult result = find(stages, step("s1", "tape-up", "bonnet"));

        assertThat(result.lossOnly()).extracting(Finding::code).containsExactly(Codes.NEED_UNMET);
        assertThat(result.repairs().get(0).edits()).containsExactly(new Edit.Drop("s1"));
    }

    @Test
    void whatARuleForbidsIsMendedByTheStageThatItAsksFor() {
        Stages stages = wet().forbids("rinse-first", "coat", "count", "rinse", BigDecimal.ZERO::equals);

        RepairResult result = find(stages, step("s1", "coat", "bonnet"));

        assertThat(best(result))
                .extracting(e -> ((Edit.Insert) e).step().stage())
                .containsExactlyInAnyOrder("rinse", "towel-dry");
        assertThat(Prover.prove(stages.setting(), result.repairs().get(0).plan())
                        .holds())
                .isTrue();
        assertThat(result.unmendable()).isEmpty();
    }

    @Test
    void whatARuleForbidsBecauseOfWhatComesLaterIsMoved() {
        Stages stages = wet().forbids("rinse-first", "towel-dry", "later", "rinse", Boolean.TRUE::equals);

        RepairResult result = find(
                stages,
                step("s1", "rinse", "bonnet"),
                step("s2", "towel-dry", "bonnet"),
                step("s3", "rinse", "bonnet"));

        assertThat(best(result)).hasSize(1);
        assertThat(best(result).get(0)).isInstanceOf(Edit.Move.class);
    }

    @Test
    void aRuleThatForbidsForWhatWasFoundIsMendedOnlyByLeavingTheWorkOut() {
        Stages stages = wet().forbids("no-coat", "coat", "zone.surface", "", "paint"::equals);

        RepairResult result = find(
                stages, step("s1", "rinse", "bonnet"), step("s2", "towel-dry", "bonnet"), step("s3", "coat", "bonnet"));

        assertThat(result.lossOnly()).extracting(Finding::code).containsExactly(Codes.RULE_FORBIDS);
        assertThat(best(result)).containsExactly(new Edit.Drop("s3"));
    }

    @Test
    void aRuleThatTheShopHasSoftenedNeedsNoMending() {
        Stages stages = wet().forbids("no-coat", "coat", "zone.surface", "", "paint"::equals);
        Setting strict = stages.setting();
        Setting softened = new Setting(
                strict.library(),
                strict.shape(),
                strict.survey(),
                strict.bays(),
                strict.start(),
                strict.film(),
                new HouseRules(Map.of("no-coat", "tried on our own cars"), Map.of()));
        Plan plan =
                plan(step("s1", "rinse", "bonnet"), step("s2", "towel-dry", "bonnet"), step("s3", "coat", "bonnet"));

        assertThat(best(Repair.find(softened, plan, PATIENT))).isEmpty();
    }

    @Test
    void twoStepsOfOneIdAreBeyondAnyEdit() {
        RepairResult result = find(wet(), step("s1", "rinse", "bonnet"), step("s1", "rinse", "bonnet"));

        assertThat(result.unmendable()).extracting(Finding::code).contains(Codes.STEP_TWICE);
        assertThat(result.repairs()).isEmpty();
    }

    @Test
    void aStepOnAWrongSurfaceKeepsTheZonesThatFit() {
        Stages stages = new Stages().stage(terms("polish").on("paint").takes(5));

        assertThat(best(find(stages, step("s1", "polish", "bonnet", "windscreen"))))
                .containsExactly(new Edit.ChangeZones("s1", List.of("bonnet")));
    }

    @Test
    void moneyDecidesBetweenRepairsOfOneSizeWhereAPriceIsGiven() {
        Stages stages = new Stages()
                .states("dry")
                .stage(terms("towel-dry").sets("dry").takes(10))
                .stage(terms("blow-dry").sets("dry").takes(20))
                .stage(terms("tape-up").needs("dry"));
        Plan plan = plan(step("s1", "tape-up", "bonnet"));

        RepairResult byTime = Repair.find(stages.setting(), plan, PATIENT);
        RepairResult byPrice = Repair.find(stages.setting(), plan, PATIENT.pricedBy(RepairTest::towelsAreDear));

        assertThat(stage(byTime)).isEqualTo("towel-dry");
        assertThat(stage(byPrice)).isEqualTo("blow-dry");
        assertThat(byPrice.repairs().get(0).addedCost()).isEqualByComparingTo("1");
    }

    private static String stage(RepairResult result) {
        return ((Edit.Insert) result.repairs().get(0).edits().get(0)).step().stage();
    }

    private static BigDecimal towelsAreDear(Plan plan) {
        return plan.steps().stream()
                .map(s -> Map.of("towel-dry", 9, "blow-dry", 1).getOrDefault(s.stage(), 0))
                .map(BigDecimal::valueOf)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void aSearchThatIsCalledOffSaysSo() {
        RepairResult result =
                Repair.find(wet().setting(), plan(step("s1", "tape-up", "bonnet")), PATIENT.cancelledBy(() -> true));

        assertThat(result.proof()).isEqualTo(Smallest.CANCELLED);
        assertThat(result.provedSmallest()).isFalse();
    }

    @Test
    void theHurriedHatchIsMendedInFiveEditsAndProvedSo() {
        Demo demo = Demo.site("millrace-works");
        Job job = demo.job("hurried-hatch");
        Setting setting = demo.setting(job);

        RepairResult result = Repair.find(setting, job.plan(), PATIENT);

        assertThat(result.provedSmallest()).isTrue();
        assertThat(result.repairs()).hasSize(3);
        for (Repair repair : result.repairs()) {
            assertThat(repair.edits()).hasSize(5);
            assertThat(Prover.prove(setting, repair.plan()).holds()).isTrue();
            assertThat(repair.edits().stream()
                            .filter(Edit.Insert.class::isInstance)
                            .map(e -> ((Edit.Insert) e).step().stage()))
                    .contains("panel-wipe", "film-survey", "blow-out-and-stand");
        }
    }
}
