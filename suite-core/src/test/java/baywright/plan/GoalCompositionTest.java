package baywright.plan;

import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Step.Priority;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Goals of jobs on the shipped demo vehicles and on small libraries. */
class GoalCompositionTest {

    private static GoalComposition compose(Setting setting, JobGoal... goals) {
        return GoalComposition.of(
                setting, AskedGoal.of(List.of(goals), setting), new Composer.Options(true, Costing.MINUTES));
    }

    private static JobGoal states(Priority priority, List<String> zones, String... states) {
        return new JobGoal(Optional.empty(), "", Optional.empty(), List.of(states), zones, priority, Optional.empty());
    }

    private static Setting hatch() {
        Demo demo = Demo.site("millrace-works");
        return demo.setting(demo.job("hurried-hatch"));
    }

    private static List<String> why(GoalComposition composed) {
        ComposeText text = new ComposeText(composed, Locale.UK);
        return composed.composition().unmet().stream().map(text::of).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "millrace-works, bramblegate-vans",
        "millrace-works, green-estate",
        "millrace-works, hurried-hatch",
        "saltmarsh-quay, show-coupe"
    })
    void everyDemoJobIsComposedFromItsSurveyAndGoalsAndProvesWithoutAStop(String site, String job) {
        Demo demo = Demo.site(site);
        Setting setting = demo.setting(demo.job(job));

        GoalComposition composed = compose(setting, demo.job(job).goals().toArray(JobGoal[]::new));

        assertThat(composed.composition().composed()).isTrue();
        assertThat(Prover.prove(setting, composed.composition().plan()).holds()).isTrue();
        ComposeText text = new ComposeText(composed, Locale.UK);
        assertThat(composed.composition().plan().steps())
                .allSatisfy(step -> assertThat(text.why(step)).isNotEmpty());
    }

    @Test
    void whatTheFilmForbidsIsGivenUpOnItsZonesAloneAndTheRuleIsNamed() {
        Demo demo = Demo.site("saltmarsh-quay");
        Setting setting = demo.setting(demo.job("show-coupe"));

        GoalComposition composed = compose(setting, JobGoal.of("one-step-finish"));

        assertThat(why(composed))
                .singleElement()
                .asString()
                .startsWith("'polished' on rear quarter right: a rule forbids"
                        + " it: No abrasive on film under the stop limit");
        assertThat(composed.grantsAllMusts()).isFalse();
        assertThat(composed.composition().composed()).isTrue();
        assertThat(composed.composition().proof().ends().get("rear-quarter-right"))
                .contains("finish-checked")
                .doesNotContain("polished");
        assertThat(composed.composition().proof().ends().get("bonnet")).contains("polished");
    }

    @Test
    void freshPaintIsNotWaxedOnAccountOfItsAge() {
        Demo demo = Demo.site("saltmarsh-quay");
        Setting setting = demo.setting(demo.job("show-coupe"));

        GoalComposition composed = compose(setting, states(Priority.MUST, List.of("boot-lid", "roof"), "waxed"));

        assertThat(why(composed))
                .singleElement()
                .asString()
                .startsWith("'waxed' on boot lid: a rule forbids it: Nothing" + " is put on fresh paint");
        assertThat(composed.composition().proof().ends().get("roof")).contains("waxed");
    }

    @Test
    void unreadablePaintIsPolishedButNotCompounded() {
        GoalComposition polished = compose(hatch(), states(Priority.MUST, List.of("front-bumper"), "polished"));
        GoalComposition compounded = compose(hatch(), states(Priority.MUST, List.of("front-bumper"), "compounded"));

        assertThat(polished.grantsAllMusts()).isTrue();
        assertThat(why(compounded)).singleElement().asString().contains("A gauge cannot read this zone");
    }

    @Test
    void ofTwoGoalsThatExcludeEachOtherTheMoreWantedIsGranted() {
        GoalComposition composed = compose(
                hatch(),
                states(Priority.SHOULD, List.of("bonnet"), "sealed"),
                states(Priority.COULD, List.of("bonnet"), "waxed", "coated"));

        assertThat(composed.composition().composed()).isTrue();
        assertThat(composed.composition().proof().ends().get("bonnet")).contains("sealed");
        assertThat(why(composed)).anySatisfy(w -> assertThat(w).contains("it can be had alone, but not together with"));
    }

    @Test
    void aGoalNarrowedToZonesAsksForNothingElsewhere() {
        GoalComposition composed = compose(hatch(), JobGoal.of("one-step-finish", Priority.MUST, "bonnet", "glass"));

        assertThat(composed.goals().get(0).wishes()).extracting(Wish::zones).containsOnly(List.of("bonnet"));
        assertThat(composed.grantsAllMusts()).isTrue();
    }

    @Test
    void aGoalAboutZonesThatTheVehicleHasNotIsNotHad() {
        GoalComposition composed = compose(
                hatch(),
                JobGoal.of("glass-clear", Priority.COULD, "bonnet"),
                JobGoal.of("maintenance-wash", Priority.MUST, "bonnet"));

        assertThat(composed.missed()).extracting(AskedGoal::id).containsExactly("glass-clear");
        assertThat(composed.grantsAllMusts()).isTrue();
    }

    @Test
    void twoGoalsOfOneKindHaveIdsOfTheirOwn() {
        List<AskedGoal> asked = AskedGoal.of(
                List.of(
                        JobGoal.of("one-step-finish", Priority.MUST, "bonnet"),
                        JobGoal.of("one-step-finish", Priority.COULD, "roof")),
                hatch());

        assertThat(asked).extracting(AskedGoal::id).containsExactly("one-step-finish", "one-step-finish-2");
    }

    @Test
    void aStepNamesTheGoalsThatAskedForIt() {
        GoalComposition composed = compose(hatch(), JobGoal.of("glass-clear"), JobGoal.of("interior-clean"));
        ComposeText text = new ComposeText(composed, Locale.UK);
        Step glass = composed.composition().plan().steps().stream()
                .filter(s -> s.stage().equals("glass-clean-in-and-out"))
                .findFirst()
                .orElseThrow();

        assertThat(text.why(glass)).contains("asked for by Glass clear, Interior clean: 'glass-clean'");
    }

    @Test
    void aStepThatOnlyALesserGoalNeedsIsWantedNoMoreThanIt() {
        GoalComposition composed = compose(hatch(), JobGoal.of("lamps-clear", Priority.COULD), JobGoal.of("hand-over"));

        assertThat(composed.composition().plan().steps())
                .filteredOn(s -> s.stage().equals("headlamp-restoration"))
                .extracting(Step::priority)
                .containsExactly(Priority.COULD);
    }

    @Test
    void whatAStageLacksIsNamed() {
        Stages stages = new Stages()
                .states("washed", "coated", "primed")
                .stage(terms("wash").on("paint").sets("washed").takes(10))
                .stage(terms("coat").on("paint").needs("primed").sets("coated").takes(10));

        GoalComposition composed = compose(
                stages.setting(),
                states(Priority.MUST, List.of("bonnet"), "washed"),
                states(Priority.COULD, List.of("bonnet"), "coated"));

        assertThat(composed.composition().unmet())
                .extracting(Unmet::why)
                .containsExactly(new Hindrance.Lacks("coat", "primed", false));
        assertThat(composed.grantsAllMusts()).isTrue();
    }

    @Test
    void whatAStageMustNotFindAndNothingEndsIsNamed() {
        Stages stages = new Stages()
                .states("washed", "coated")
                .stage(terms("wash").on("paint").sets("washed").takes(10))
                .stage(terms("coat")
                        .on("paint")
                        .needs("washed")
                        .refuses("washed")
                        .sets("coated")
                        .takes(10));

        GoalComposition composed = compose(stages.setting(), states(Priority.MUST, List.of("bonnet"), "coated"));

        assertThat(composed.grantsAllMusts()).isFalse();
        assertThat(composed.composition().unmet()).hasSize(1);
    }

    @Test
    void noGoalsGiveNoPlan() {
        GoalComposition composed = compose(hatch());

        assertThat(composed.composition().composed()).isFalse();
        assertThat(composed.composition().plan().steps()).isEmpty();
    }
}
