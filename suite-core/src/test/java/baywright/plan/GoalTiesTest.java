package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import baywright.plan.Explanation.Where;
import baywright.plan.Step.Priority;
import baywright.plan.Without.GoalLoss;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What plans leave of goals, and which steps serve them. */
class GoalTiesTest {

    private static final Setting SETTING = new Stages()
            .opposites("dry", "wet")
            .states("washed", "sealed", "shining")
            .vehicleState("handed-over")
            .madeOf("finished", "sealed", "shining")
            .stage(terms("wash").sets("washed", "wet"))
            .stage(terms("dry").needs("washed").sets("dry"))
            .stage(terms("seal").refuses("wet").sets("sealed"))
            .stage(terms("shine").sets("shining"))
            .stage(terms("spoil").clears("sealed"))
            .stage(terms("hand-over").on("vehicle").sets("handed-over"))
            .setting();

    private static final List<JobGoal> GOALS = List.of(
            goal("Sealed", Priority.MUST, List.of("bonnet", "boot-lid"), "sealed"),
            goal("Finished", Priority.COULD, List.of("bonnet"), "finished"),
            goal("Handed over", Priority.SHOULD, List.of("vehicle"), "handed-over"));
    private static final List<AskedGoal> ASKED = AskedGoal.of(GOALS, SETTING);
    private static final AskedGoal SEALED = ASKED.get(0);
    private static final AskedGoal FINISHED = ASKED.get(1);

    private static final Plan PLAN = plan(
            step("a", "wash", "bonnet", "boot-lid"),
            step("b", "dry", "bonnet", "boot-lid"),
            step("c", "seal", "bonnet", "boot-lid"),
            step("d", "shine", "bonnet"),
            step("e", "hand-over", "vehicle"));

    private static JobGoal goal(String title, Priority priority, List<String> zones, String... states) {
        return new JobGoal(
                Optional.empty(), title, Optional.empty(), List.of(states), zones, priority, Optional.empty());
    }

    private static Where on(String state, String... zones) {
        return new Where(state, List.of(zones), Optional.empty());
    }

    private static List<GoalEnd> ends(Plan plan) {
        return GoalEnd.of(SETTING, ASKED, Prover.prove(SETTING, plan));
    }

    private static GoalTies ties(Plan plan) {
        return new GoalTies(SETTING, plan, ASKED);
    }

    @Test
    void aStepServesAGoalByWhatItLeavesAndThroughThoseThatRelyOnIt() {
        GoalTies ties = ties(PLAN);

        assertThat(ties.of("c", List.of()))
                .extracting(t -> t.goal().title(), GoalTies.Tie::wants, GoalTies.Tie::through)
                .containsExactly(
                        tuple("Sealed", List.of(on("sealed", "bonnet", "boot-lid")), List.of()),
                        tuple("Finished", List.of(on("finished", "bonnet")), List.of()));
        assertThat(ties.of("d", List.of())).extracting(t -> t.goal().title()).containsExactly("Finished");
        assertThat(ties.of("b", List.of()))
                .extracting(t -> t.goal().title(), GoalTies.Tie::wants, GoalTies.Tie::through)
                .containsExactly(tuple("Sealed", List.of(), List.of("c")), tuple("Finished", List.of(), List.of("c")));
        assertThat(ties.of("a", List.of())).as("through the drying").hasSize(2);
        assertThat(ties.of("e", List.of())).extracting(t -> t.goal().title()).containsExactly("Handed over");
    }

    @Test
    void theTieIsWorded() {
        GoalTies ties = ties(PLAN);
        ExplanationText text = new ExplanationText(SETTING, PLAN, Locale.UK);

        assertThat(ties.of("c", List.of()).stream().map(text::tie))
                .containsExactly(
                        "asked for by goal 'Sealed' (must), which wants 'sealed' on bonnet, boot lid",
                        "asked for by goal 'Finished' (could), which wants 'finished' on bonnet");
        assertThat(ties.of("b", List.of()).stream().map(text::tie))
                .startsWith("asked for by goal 'Sealed' (must), through seal (c)");
        assertThat(Without.of(SETTING, PLAN, "c", ties).goals().stream().flatMap(l -> text.loss(l).stream()))
                .startsWith("goal 'Sealed' (must), which wants 'sealed' on bonnet, boot lid");
    }

    @Test
    void aStepThatANewerOneMakesNeedlessServesNoGoal() {
        Plan twice = plan(step("a", "seal", "bonnet"), step("b", "spoil", "bonnet"), step("c", "seal", "bonnet"));

        assertThat(ties(twice).of("a", List.of())).isEmpty();
        assertThat(ties(twice).of("c", List.of())).isNotEmpty();
    }

    @Test
    void withoutAStepGoalsAreLostOrTheStepsThatServeThemStop() {
        assertThat(Without.of(SETTING, PLAN, "c", ties(PLAN)).goals())
                .containsExactly(
                        new GoalLoss(SEALED, List.of(on("sealed", "bonnet", "boot-lid")), List.of()),
                        new GoalLoss(FINISHED, List.of(on("finished", "bonnet")), List.of()));
        assertThat(Without.of(SETTING, PLAN, "b", ties(PLAN)).goals())
                .as("the sealant stops on wet paint")
                .containsExactly(
                        new GoalLoss(SEALED, List.of(), List.of("c")), new GoalLoss(FINISHED, List.of(), List.of("c")));
        assertThat(Without.of(SETTING, PLAN, "c").goals()).as("no goals").isEmpty();
    }

    @Test
    void whatAPlanLeavesOfAGoalIsToldForAllZonesAndForOne() {
        Plan spoilt = plan(
                step("a", "seal", "bonnet", "boot-lid"), step("b", "spoil", "boot-lid"), step("c", "shine", "bonnet"));

        List<GoalEnd> ends = ends(spoilt);

        assertThat(ends).extracting(GoalEnd::met).containsExactly(false, true, false);
        assertThat(ends.get(0).lacks()).containsExactly(on("sealed", "boot-lid"));
        assertThat(ends.get(0).on("bonnet")).get().extracting(GoalEnd::met).isEqualTo(true);
        assertThat(ends.get(0).on("boot-lid")).get().extracting(GoalEnd::met).isEqualTo(false);
        assertThat(ends.get(0).on("windscreen")).isEmpty();
        assertThat(ends.get(2).on("vehicle")).get().extracting(GoalEnd::met).isEqualTo(false);
    }

    @Test
    void aMissedGoalThatMustBeWarnsAndAnotherIsNoted() {
        Proof proof = Prover.prove(SETTING, plan(step("a", "seal", "bonnet")));

        List<Finding> findings = GoalEnd.findings(SETTING, GOALS, proof);

        assertThat(findings)
                .extracting(Finding::code, Finding::severity, Finding::zones)
                .containsExactly(
                        tuple("goal-missed", Severity.WARN, List.of("boot-lid")),
                        tuple("goal-missed", Severity.NOTE, List.of("bonnet")),
                        tuple("goal-missed", Severity.NOTE, List.of("vehicle")));
        assertThat(new FindingText(SETTING, PLAN, Locale.UK).of(findings.get(0)))
                .isEqualTo("the plan ends without 'sealed' on boot lid, which the goal 'Sealed' wants");
        assertThat(ends(PLAN)).allMatch(GoalEnd::met);
    }

    @Test
    void aGoalAboutZonesThatTheVehicleHasNotCannotBeMissed() {
        JobGoal wheels = goal("Wheels", Priority.MUST, List.of("surface:wheel"), "washed");

        assertThat(GoalEnd.findings(SETTING, List.of(wheels), Prover.prove(SETTING, PLAN)))
                .isEmpty();
    }

    @Test
    void aGoalThatTheLibraryHasNotIsToldWithTheNearest() {
        Demo demo = Demo.site("millrace-works");
        Setting setting = demo.setting(demo.job("bramblegate-vans"));
        Plan plan = demo.job("bramblegate-vans").plan();

        List<Finding> findings = GoalEnd.findings(
                setting, List.of(JobGoal.of("maintenance-wsh"), JobGoal.of("x")), Prover.prove(setting, plan));

        FindingText text = new FindingText(setting, plan, Locale.UK);
        assertThat(findings)
                .extracting(Finding::code, Finding::severity)
                .containsOnly(tuple("goal-gone", Severity.WARN));
        assertThat(findings.stream().map(text::of))
                .containsExactly(
                        "the job names the goal 'maintenance-wsh', which the library does not have;"
                                + " nearest is 'maintenance-wash'",
                        "the job names the goal 'x', which the library does not have");
    }

    @ParameterizedTest
    @CsvSource({
        "millrace-works, bramblegate-vans",
        "millrace-works, green-estate",
        "millrace-works, hurried-hatch",
        "saltmarsh-quay, show-coupe"
    })
    void thePlansOfTheDemoReachTheirGoals(String site, String job) {
        Demo demo = Demo.site(site);
        Setting setting = demo.setting(demo.job(job));
        List<AskedGoal> goals = AskedGoal.of(demo.job(job).goals(), setting);

        List<GoalEnd> ends =
                GoalEnd.of(setting, goals, Prover.prove(setting, demo.job(job).plan()));

        assertThat(ends).hasSameSizeAs(goals).allMatch(GoalEnd::met);
    }

    @Provide
    Arbitrary<Plan> plans() {
        return Arbitraries.of("wash", "dry", "seal", "shine", "spoil")
                .flatMap(stage -> Arbitraries.of("bonnet", "boot-lid", "surface:paint")
                        .map(zone -> step(stage + zone.length(), stage, zone)))
                .list()
                .uniqueElements(Step::id)
                .ofMaxSize(9)
                .map(Plan::new);
    }

    /** The survey found nothing, so that what holds in the end was made by a step. */
    @Property(tries = 200)
    void whatHoldsOfAGoalInTheEndIsServedByAStep(@ForAll("plans") Plan plan) {
        GoalTies ties = ties(plan);
        for (GoalEnd end : ties.ends()) {
            boolean served = plan.steps().stream()
                    .anyMatch(s -> ties.of(s.id(), List.of()).stream()
                            .anyMatch(t ->
                                    t.goal().equals(end.goal()) && !t.wants().isEmpty()));
            assertThat(end.holds().isEmpty() || served).isTrue();
        }
    }

    @Property(tries = 200)
    void aStepThatServesNoGoalIsMissedByNone(@ForAll("plans") Plan plan) {
        GoalTies ties = ties(plan);
        for (Step step : plan.steps()) {
            if (ties.of(step.id(), List.of()).isEmpty()) {
                assertThat(Without.of(SETTING, plan, step.id(), ties).goals()).isEmpty();
            }
        }
    }
}
