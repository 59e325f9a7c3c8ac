package baywright.plan;

import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Step.Priority;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class LeaningTest {

    private static final Stages STAGES = new Stages()
            .opposites("dry", "wet")
            .states("masked")
            .stage(terms("towel-dry").sets("dry").takes(10))
            .stage(terms("tape-up").needs("dry").sets("masked").takes(10))
            .stage(terms("polish").needs("dry").takes(10));

    private static Step wanted(Priority priority, Step step) {
        return new Step(step.id(), step.stage(), step.zones(), step.with(), priority, step.at(), step.drivers());
    }

    private static Leaning leaning(Step... steps) {
        Prover prover = Prover.forSetting(STAGES.setting(Survey.NOTHING));
        Plan plan = Stages.plan(steps);
        return prover.leaning(plan, prover.prove(plan));
    }

    @Test
    void whatMustBeOnWhatCouldBeIsWarnedOfWhereItLeans() {
        Step could = wanted(Priority.COULD, step("s1", "towel-dry", "bonnet"));
        Step first = step("s2", "tape-up", "bonnet");
        Step second = step("s3", "polish", "bonnet");
        Leaning leaning = leaning(could, first, second);
        assertThat(leaning.broken()).containsExactly(Priority.MUST, Priority.SHOULD);
        Finding one = leaning.findings().get(0);
        assertThat(leaning.findings()).hasSize(1);
        assertThat(one.severity()).isEqualTo(Severity.WARN);
        assertThat(one.step()).hasValue("s1");
        assertThat(one.reason()).isEqualTo(new Reason.LeansOn(List.of("s2", "s3"), "s1", Priority.COULD));
        FindingText text =
                new FindingText(STAGES.setting(Survey.NOTHING), Stages.plan(could, first, second), Locale.UK);
        assertThat(text.of(one))
                .isEqualTo("towel dry (s1) is only a 'could', and tape up (s2) and one more, wanted more,"
                        + " cannot be done without it");
    }

    /** The rule forbids filming what was not dusted; no need ties the two. */
    @Test
    void whatARuleStopsThenIsToldAtTheStepThatItStops() {
        Stages stages = new Stages()
                .stage(terms("dust").takes(10))
                .stage(terms("film").takes(10))
                .forbids("dust before film", "film", "count", "dust", BigDecimal.ZERO::equals);
        Prover prover = Prover.forSetting(stages.setting());
        Plan plan = Stages.plan(wanted(Priority.COULD, step("s1", "dust", "bonnet")), step("s2", "film", "bonnet"));
        Leaning leaning = prover.leaning(plan, prover.prove(plan));
        assertThat(leaning.broken()).containsExactly(Priority.MUST, Priority.SHOULD);
        assertThat(leaning.findings())
                .extracting(Finding::reason)
                .containsExactly(new Reason.StopsAlone("s2", Priority.MUST));
        assertThat(new FindingText(stages.setting(), plan, Locale.UK)
                        .of(leaning.findings().get(0)))
                .isEqualTo(
                        "film (s2) is a 'must' and is stopped as soon as the steps that are wanted less are left out");
    }

    @Test
    void whatShouldBeOnWhatCouldBeIsANote() {
        Leaning leaning = leaning(
                wanted(Priority.COULD, step("s1", "towel-dry", "bonnet")),
                wanted(Priority.SHOULD, step("s2", "tape-up", "bonnet")));
        assertThat(leaning.broken()).containsExactly(Priority.SHOULD);
        assertThat(leaning.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
    }

    /** Dried a second time by choice: without it the first drying serves. */
    @Test
    void whatAlsoHoldsWithoutItLeansOnNothing() {
        assertThat(leaning(
                        step("s1", "towel-dry", "bonnet"),
                        wanted(Priority.COULD, step("s2", "towel-dry", "bonnet")),
                        step("s3", "tape-up", "bonnet")))
                .isEqualTo(Leaning.NONE);
    }

    @Test
    void whatIsWantedAsMuchOrMoreMayBeLeanedOn() {
        assertThat(leaning(step("s1", "towel-dry", "bonnet"), wanted(Priority.COULD, step("s2", "tape-up", "bonnet"))))
                .isEqualTo(Leaning.NONE);
    }

    /** It stops already; what would be without some of its steps is another question. */
    @Test
    void aPlanThatIsStoppedIsNotLookedAt() {
        assertThat(leaning(
                        step("s1", "polish", "roof"),
                        wanted(Priority.COULD, step("s2", "towel-dry", "bonnet")),
                        step("s3", "tape-up", "bonnet")))
                .isEqualTo(Leaning.NONE);
    }
}
