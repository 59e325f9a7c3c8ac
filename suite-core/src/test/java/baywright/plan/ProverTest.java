package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.StageTerms.Reach;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProverTest {

    private static Stages wet() {
        return new Stages()
                .opposites("dry", "wet")
                .states("rinsed", "masked", "polished")
                .stage(terms("rinse").sets("wet", "rinsed").takes(5))
                .stage(terms("towel-dry").needs("wet").sets("dry").takes(10))
                .stage(terms("tape-up").needs("dry").sets("masked").takes(10));
    }

    private static Reason onlyReason(Proof proof) {
        assertThat(proof.findings()).hasSize(1);
        return proof.findings().get(0).reason();
    }

    private static Reason unmet(String step, String state, Cause... because) {
        return new Reason.NeedUnmet(step, List.of(state), "", List.of(because));
    }

    private static BigDecimal minutes(long minutes) {
        return BigDecimal.valueOf(minutes);
    }

    @Test
    void aPlanInOrderHolds() {
        Proof proof = wet().prove(
                        step("s1", "rinse", "bonnet"),
                        step("s2", "towel-dry", "bonnet"),
                        step("s3", "tape-up", "bonnet"));

        assertThat(proof.findings()).isEmpty();
        assertThat(proof.holds()).isTrue();
        assertThat(proof.ends().get("bonnet")).containsExactlyInAnyOrder("dry", "rinsed", "masked");
        assertThat(proof.ends().get("boot-lid")).isEmpty();
        assertThat(proof.clock())
                .extracting(s -> s.step() + " " + s.start() + "-" + s.end() + " " + s.waited())
                .containsExactly("s1 0-5 0", "s2 5-15 0", "s3 15-25 0");
    }

    @Test
    void aNeedThatNothingMeetsSaysSoForAllItsZonesAtOnce() {
        Proof proof = wet().prove(step("s1", "tape-up", "wing-left", "bonnet"));

        assertThat(onlyReason(proof)).isEqualTo(unmet("s1", "dry", new Cause.NeverSet("dry")));
        Finding finding = proof.findings().get(0);
        assertThat(finding.code()).isEqualTo("need-unmet");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.step()).contains("s1");
        assertThat(finding.zones()).containsExactly("bonnet", "wing-left");
    }

    @Test
    void theChainRunsFromWhoClearedBackToWhoSetAndOnToWhoSetsLater() {
        Proof proof = wet().prove(
                        step("s1", "rinse", "bonnet"),
                        step("s2", "towel-dry", "bonnet"),
                        step("s3", "rinse", "bonnet"),
                        step("s4", "tape-up", "bonnet"),
                        step("s5", "towel-dry", "bonnet"));

        assertThat(onlyReason(proof))
                .isEqualTo(unmet(
                        "s4",
                        "dry",
                        new Cause.ClearedBy("dry", "s3"),
                        new Cause.SetBy("dry", "s2"),
                        new Cause.SetLater("dry", "s5")));
    }

    @Test
    void zonesWithDifferentCausesGiveDifferentFindings() {
        Proof proof = wet().prove(
                        step("s1", "rinse", "bonnet"),
                        step("s2", "towel-dry", "bonnet"),
                        step("s3", "rinse", "bonnet"),
                        step("s4", "tape-up", "bonnet", "boot-lid"));

        assertThat(proof.findings()).extracting(Finding::zones).containsExactly(List.of("bonnet"), List.of("boot-lid"));
    }

    @Test
    void whatTheSurveyFoundHoldsAndAZonesOwnGoesBeforeTheVehicles() {
        ZoneSurvey dry = new ZoneSurvey(Map.of(), List.of("dry"), Map.of(), List.of(), false, List.of());
        Survey survey = new Survey(Map.of(), List.of("wet"), Map.of("bonnet", dry));
        Stages stages = wet().stage(terms("polish").refuses("wet"));

        Proof proof = Prover.prove(
                stages.setting(survey), Stages.plan(step("s1", "tape-up", "bonnet"), step("s2", "polish", "boot-lid")));

        assertThat(onlyReason(proof))
                .isEqualTo(new Reason.MustNotHold("s2", "wet", "", List.of(new Cause.Surveyed("wet"))));
    }

    @Test
    void whatMustNotHoldNamesWhoSetItAndWhoEndsItLater() {
        Stages stages = wet().stage(terms("coat").refuses("masked"))
                .stage(terms("de-mask").clears("masked"));
        Survey survey = new Survey(Map.of(), List.of("dry"), Map.of());

        Proof proof = Prover.prove(
                stages.setting(survey),
                Stages.plan(
                        step("s1", "tape-up", "bonnet"),
                        step("s2", "coat", "bonnet"),
                        step("s3", "de-mask", "bonnet")));

        assertThat(proof.findings()).extracting(Finding::code).containsExactly("must-not-hold");
        assertThat(onlyReason(proof))
                .isEqualTo(new Reason.MustNotHold(
                        "s2",
                        "masked",
                        "",
                        List.of(new Cause.SetBy("masked", "s1"), new Cause.ClearedLater("masked", "s3"))));
    }

    @Test
    void aWishOnlyWarns() {
        Proof proof = wet().stage(terms("polish").prefers("masked")).prove(step("s1", "polish", "bonnet"));

        assertThat(proof.findings())
                .extracting(f -> f.code() + " " + f.severity())
                .containsExactly("prefers WARN");
        assertThat(proof.holds()).isTrue();
    }

    @Test
    void oneOfSeveralIsEnoughAndWhenNoneHoldsAllAreNamed() {
        Stages stages = wet().stage(terms("polish").needsAny("masked", "rinsed"));

        assertThat(stages.prove(step("s1", "rinse", "bonnet"), step("s2", "polish", "bonnet"))
                        .findings())
                .isEmpty();
        assertThat(onlyReason(stages.prove(step("s1", "polish", "bonnet"))))
                .isEqualTo(new Reason.NeedUnmet(
                        "s1",
                        List.of("masked", "rinsed"),
                        "",
                        List.of(new Cause.NeverSet("masked"), new Cause.NeverSet("rinsed"))));
    }

    @Test
    void aStateMadeOfOthersIsReadOffAndItsMissingPartNamed() {
        Stages stages = new Stages()
                .states("washed", "clayed")
                .madeOf("decontaminated", "washed", "clayed")
                .stage(terms("wash").sets("washed"))
                .stage(terms("clay").sets("clayed"))
                .stage(terms("polish").needs("decontaminated"));

        assertThat(onlyReason(stages.prove(step("s1", "wash", "bonnet"), step("s2", "polish", "bonnet"))))
                .isEqualTo(unmet("s2", "decontaminated", new Cause.NeverSet("clayed")));
        Proof whole = stages.prove(
                step("s1", "wash", "bonnet"), step("s2", "clay", "bonnet"), step("s3", "polish", "bonnet"));
        assertThat(whole.findings()).isEmpty();
        assertThat(whole.ends().get("bonnet")).contains("decontaminated");
    }

    @Test
    void whatIsImpliedComesWithAStateAndTakesItAlongWhenItGoes() {
        Stages stages = new Stages()
                .implying("seams-dry", "dry")
                .opposites("dry", "wet")
                .stage(terms("blow-out").sets("seams-dry"))
                .stage(terms("rinse").sets("wet"))
                .stage(terms("tape-up").needs("dry", "seams-dry"));

        assertThat(stages.prove(step("s1", "blow-out", "bonnet"), step("s2", "tape-up", "bonnet"))
                        .findings())
                .isEmpty();
        Proof rinsed = stages.prove(
                step("s1", "blow-out", "bonnet"), step("s2", "rinse", "bonnet"), step("s3", "tape-up", "bonnet"));
        assertThat(rinsed.findings()).hasSize(2);
        assertThat(rinsed.ends().get("bonnet")).containsExactly("wet");
    }

    @Test
    void clearsComeFirstSoAStageMayRenewWhatItClears() {
        Stages stages = wet().stage(terms("wash").sets("rinsed").clears("rinsed"));

        assertThat(stages.prove(step("s1", "wash", "bonnet")).ends().get("bonnet"))
                .contains("rinsed");
    }

    @Test
    void whatReachesTheVehicleSparesWhatIsGuardedButNotTheStepsOwnZone() {
        Stages stages = new Stages()
                .states("panel-wiped", "masked")
                .stage(terms("wipe").sets("panel-wiped"))
                .stage(terms("tape-up").sets("masked"))
                .stage(terms("polish").clears("panel-wiped", Reach.VEHICLE, "masked"))
                .stage(terms("coat").needs("panel-wiped"));

        Proof proof = stages.prove(
                step("s1", "wipe", "surface:paint"),
                step("s2", "tape-up", "boot-lid", "wing-left"),
                step("s3", "polish", "wing-left"),
                step("s4", "coat", "surface:paint"));

        assertThat(proof.findings()).hasSize(1);
        assertThat(proof.findings().get(0).zones()).containsExactly("bonnet", "wing-left", "wing-right");
    }

    @Test
    void whatReachesNeighboursStopsThere() {
        Stages stages = new Stages()
                .states("panel-wiped")
                .stage(terms("wipe").sets("panel-wiped"))
                .stage(terms("dress").clears("panel-wiped", Reach.NEIGHBOURS, ""))
                .stage(terms("coat").needs("panel-wiped"));

        Proof proof = stages.prove(
                step("s1", "wipe", "surface:paint"),
                step("s2", "dress", "wing-left"),
                step("s3", "coat", "surface:paint"));

        assertThat(proof.findings().get(0).zones()).containsExactly("bonnet", "wing-left");
    }

    @Test
    void aStateRunsOutAfterItsTimeAndNotBefore() {
        Stages stages = new Stages()
                .perishing("panel-wiped", 60)
                .stage(terms("wipe").sets("panel-wiped").takes(20))
                .stage(terms("coat").needs("panel-wiped").takes(90));

        assertThat(stages.prove(step("s1", "wipe", "bonnet"), at(step("s2", "coat", "bonnet"), 80))
                        .findings())
                .isEmpty();
        assertThat(onlyReason(stages.prove(step("s1", "wipe", "bonnet"), at(step("s2", "coat", "bonnet"), 81))))
                .isEqualTo(
                        unmet("s2", "panel-wiped", new Cause.Perished("panel-wiped", "s1", minutes(61), minutes(60))));
    }

    @Test
    void aStepWaitsForWhatComesByItselfUnlessItsStartIsFixed() {
        Stages stages = new Stages()
                .opposites("curing", "water-safe")
                .stage(terms("coat").sets("curing").arrives("water-safe", 720).takes(90))
                .stage(terms("vacuum").takes(30))
                .stage(terms("rinse").refuses("curing").takes(5))
                .stage(terms("hand-over").needs("water-safe").takes(10));

        Proof open = stages.prove(
                step("s1", "coat", "bonnet"), step("s2", "vacuum", "boot-lid"), step("s3", "rinse", "bonnet"));
        assertThat(open.findings()).isEmpty();
        assertThat(open.clock())
                .extracting(s -> s.start() + " " + s.waited())
                .containsExactly("0 0", "90 0", "810 690");

        Proof fixed = stages.prove(step("s1", "coat", "bonnet"), at(step("s2", "hand-over", "vehicle"), 180));
        assertThat(onlyReason(fixed))
                .isEqualTo(unmet("s2", "water-safe", new Cause.NotYet("water-safe", "s1", minutes(630))));
        assertThat(fixed.findings().get(0).zones()).containsExactly("bonnet");
    }

    @Test
    void aLaterPromiseTakesThePlaceOfAnEarlierOne() {
        Stages stages = new Stages()
                .states("water-safe")
                .stage(terms("coat")
                        .clears("water-safe")
                        .arrives("water-safe", 720)
                        .takes(10))
                .stage(terms("hand-over").needs("water-safe"));

        Proof proof = stages.prove(
                step("s1", "coat", "bonnet"), step("s2", "coat", "bonnet"), step("s3", "hand-over", "vehicle"));

        assertThat(proof.clock().get(2).start()).isEqualByComparingTo("740");
    }

    @Test
    void aFixedStartThatComesTooSoonOrTooLateForAWaitIsAStop() {
        Stages stages = new Stages()
                .states("live")
                .stage(terms("foam").sets("live").takes(4).stands(4, 8))
                .stage(terms("rinse").clears("live").takes(5));
        Step foam = step("s1", "foam", "bonnet");
        Step rinse = step("s2", "rinse", "bonnet");

        assertThat(stages.prove(foam, rinse).findings()).isEmpty();
        assertThat(stages.prove(foam, at(rinse, 8)).findings()).isEmpty();
        assertThat(stages.prove(foam, at(rinse, 12)).findings()).isEmpty();
        assertThat(onlyReason(stages.prove(foam, at(rinse, 5))))
                .isEqualTo(new Reason.TooSoon("s2", "s1", minutes(1), minutes(4), ""));
        assertThat(onlyReason(stages.prove(foam, at(rinse, 134))))
                .isEqualTo(new Reason.TooLate("s2", "s1", minutes(130), minutes(8), ""));
    }

    @Test
    void whatStandsIsNoHindranceElsewhereAndIsMissedWhenNothingFollows() {
        Stages stages = new Stages()
                .states("live")
                .stage(terms("foam").sets("live").takes(4).stands(4, 8))
                .stage(terms("vacuum").takes(30));

        Proof proof = stages.prove(step("s1", "foam", "bonnet"), step("s2", "vacuum", "boot-lid"));

        assertThat(proof.clock().get(1).start()).isEqualByComparingTo("4");
        assertThat(onlyReason(proof)).isEqualTo(new Reason.LeftStanding("s1", minutes(8), ""));
    }

    @Test
    void waitsOfOneStageFollowEachOther() {
        Stages stages = new Stages()
                .states("x")
                .stage(terms("ozone").takes(10).stands(30, 60).stands(45));

        Proof proof = stages.prove(step("s1", "ozone", "vehicle"), step("s2", "ozone", "bonnet"));

        assertThat(proof.clock().get(1).start()).isEqualByComparingTo("85");
        assertThat(proof.findings()).isEmpty();
    }

    @Test
    void twoStepsAtOnceStopOnOneZoneAndWarnOnTwo() {
        Stages stages = new Stages().states("x").stage(terms("polish").takes(30));

        Proof one = stages.prove(step("s1", "polish", "bonnet"), at(step("s2", "polish", "bonnet"), 20));
        assertThat(one.findings().get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(onlyReason(one)).isEqualTo(new Reason.Overlaps("s2", "s1", minutes(10)));
        Proof two = stages.prove(step("s1", "polish", "bonnet"), at(step("s2", "polish", "boot-lid"), 20));
        assertThat(two.findings().get(0).severity()).isEqualTo(Severity.WARN);
        assertThat(two.holds()).isTrue();
    }

    @Test
    void aStartBeforeTheVehicleIsThereIsAStop() {
        Stages stages = new Stages().states("x").stage(terms("polish").takes(30));

        assertThat(onlyReason(stages.prove(at(step("s1", "polish", "bonnet"), -10))))
                .isEqualTo(new Reason.BeforeStart("s1", minutes(10)));
    }

    @Test
    void theBayThatGivesAllConditionsIsChosenAndTheBestOneNamedWhenNoneDoes() {
        Stages stages = new Stages()
                .condition("cool")
                .condition("lit")
                .condition("still")
                .bay("apron", "work", "cool")
                .bay("hall", "work", "cool", "lit")
                .stage(terms("check").bay("work").needs("cool", "lit"))
                .stage(terms("coat").bay("work").needs("cool", "lit", "still"))
                .stage(terms("film").bay("film").needs("still"));

        assertThat(stages.prove(step("s1", "check", "bonnet")).findings()).isEmpty();
        assertThat(onlyReason(stages.prove(step("s1", "coat", "bonnet"))))
                .isEqualTo(unmet("s1", "still", new Cause.BayLacks("still", "hall")));
        assertThat(onlyReason(stages.prove(step("s1", "film", "bonnet")))).isEqualTo(new Reason.NoBay("s1", "film"));
    }

    @Test
    void aStateOfTheVehicleIsSetOnceAndFoundFromEveryZone() {
        Stages stages = new Stages()
                .vehicleState("booked-in")
                .stage(terms("arrival").sets("booked-in"))
                .stage(terms("wash").needs("booked-in"));

        assertThat(stages.prove(step("s1", "arrival", "vehicle"), step("s2", "wash", "bonnet", "boot-lid"))
                        .findings())
                .isEmpty();
        assertThat(stages.prove(step("s1", "wash", "bonnet", "boot-lid")).findings())
                .extracting(Finding::zones)
                .containsExactly(List.of("bonnet", "boot-lid"));
    }

    @Test
    void aStepOnTheVehicleLooksAtEveryZoneThatAStateConcerns() {
        Stages stages = wet().stage(terms("final-wipe").needs("dry").refuses("masked"));

        Proof proof = stages.prove(
                step("s1", "rinse", "bonnet", "boot-lid"),
                step("s2", "towel-dry", "bonnet"),
                step("s3", "tape-up", "bonnet"),
                step("s4", "final-wipe", "vehicle"));

        assertThat(proof.findings())
                .extracting(f -> f.code() + f.zones())
                .containsExactly("must-not-hold[bonnet]", "need-unmet[boot-lid]");
        assertThat(stages.prove(step("s1", "final-wipe", "vehicle")).findings())
                .extracting(f -> f.code() + f.zones())
                .containsExactly("need-unmet[vehicle]");
    }

    @Test
    void aStepOnTheVehicleWorksOnEveryZone() {
        Proof proof = wet().prove(
                        step("s1", "rinse", "vehicle"),
                        step("s2", "towel-dry", "vehicle"),
                        step("s3", "tape-up", "windscreen"));

        assertThat(proof.findings()).isEmpty();
    }
}
