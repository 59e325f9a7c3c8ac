package baywright.plan;

import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.plan.Composition.Because;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ComposerTest {

    private static final String[] STATES = {"p", "q", "r", "t"};

    private static List<Wish> fullCorrection() {
        return List.of(
                Wish.must("decontaminated", "surface:paint"),
                Wish.must("polished", "surface:paint"),
                Wish.must("refined", "surface:paint"),
                Wish.must("finish-checked", "surface:paint"),
                Wish.must("coated", "surface:paint"),
                Wish.must("handed-over", "vehicle"));
    }

    private static List<Wish> wedding() {
        return List.of(
                Wish.must("polished", "surface:paint"),
                Wish.must("finish-checked", "surface:paint"),
                Wish.must("sealed", "surface:paint"),
                Wish.must("washed", "surface:wheel"),
                new Wish("dressed", List.of("surface:wheel"), Step.Priority.SHOULD),
                new Wish("glass-clean", List.of("surface:glass"), Step.Priority.SHOULD),
                new Wish("cabin-clean", List.of("surface:cabin"), Step.Priority.COULD),
                Wish.must("handed-over", "vehicle"));
    }

    private static List<Wish> vans() {
        return List.of(
                Wish.must("washed", "surface:paint", "surface:glass", "surface:wheel"),
                Wish.must("dry", "surface:paint", "surface:glass"),
                Wish.must("dressed", "surface:wheel"),
                Wish.must("vacuumed", "surface:cabin"));
    }

    private static List<Wish> show() {
        return List.of(
                Wish.must("refined", "surface:paint", "-rear-quarter-right"),
                // the boot lid was painted 20 days before: it is not waxed on this visit's first days
                Wish.must("waxed", "surface:paint", "-boot-lid"),
                Wish.must("polished", "surface:bright-metal"),
                Wish.must("coated", "surface:wheel"),
                Wish.must("glass-clean", "surface:glass"),
                Wish.must("handed-over", "vehicle"));
    }

    private static Composition compose(String site, String job, List<Wish> wishes) {
        Demo demo = Demo.site(site);
        Setting setting = demo.setting(demo.job(job));
        Composition composition = Composer.compose(setting, wishes, true);
        assertSound(setting, wishes, composition);
        return composition;
    }

    /** It proves, grants the wishes, has no step to spare and a reason for each. */
    private static void assertSound(Setting setting, List<Wish> wishes, Composition composition) {
        Prover prover = Prover.forSetting(setting);
        Plan plan = composition.plan();
        assertThat(composition.composed()).isTrue();
        assertThat(composition.unmet()).isEmpty();
        assertThat(prover.stops(plan)).isEmpty();
        assertThat(lost(prover, setting, plan, wishes)).isEmpty();
        assertThat(composition.least())
                .isLessThanOrEqualTo(composition.minutes().add(new BigDecimal("0.01")));
        long warnings = warnings(prover, plan);
        for (Step step : plan.steps()) {
            Plan without = new Edit.Drop(step.id()).applyTo(plan);
            boolean spare = prover.stops(without).isEmpty()
                    && lost(prover, setting, without, wishes).isEmpty()
                    && warnings(prover, without) <= warnings;
            assertThat(spare).as("step %s can be spared", step).isFalse();
            assertThat(composition.reasons()).extracting(Because::step).contains(step.id());
        }
    }

    private static long warnings(Prover prover, Plan plan) {
        return prover.prove(plan).findings().stream()
                .filter(f -> f.severity() == Severity.WARN)
                .count();
    }

    private static List<String> lost(Prover prover, Setting setting, Plan plan, List<Wish> wishes) {
        Map<String, Set<String>> ends = prover.prove(plan).ends();
        List<String> lost = new ArrayList<>();
        for (Wish wish : wishes) {
            boolean whole = ends.get("vehicle").contains(wish.state());
            for (String zone : ZoneChoice.resolve(wish.zones(), setting.shape())) {
                if (!whole && !ends.get(zone).contains(wish.state())) {
                    lost.add(wish.state() + " on " + zone);
                }
            }
        }
        return lost;
    }

    private static List<String> stages(Composition composition) {
        return composition.plan().steps().stream().map(Step::stage).toList();
    }

    @Test
    void theVansAreComposedFromTheirSurvey() {
        assertThat(stages(compose("millrace-works", "bramblegate-vans", vans())))
                .contains("vacuum", "tyre-dressing");
    }

    @Test
    void theEstateIsComposedFromItsSurveyWithTheWeightOfEachWishOnItsSteps() {
        Composition composition = compose("millrace-works", "green-estate", wedding());

        assertThat(stages(composition)).contains("claying", "film-survey", "panel-wipe", "sealant", "handover");
        assertThat(composition.plan().steps())
                .filteredOn(s -> s.stage().equals("tyre-dressing"))
                .extracting(Step::priority)
                .containsOnly(Step.Priority.SHOULD);
        assertThat(composition.plan().steps())
                .filteredOn(s -> s.stage().equals("sealant"))
                .extracting(Step::priority)
                .containsOnly(Step.Priority.MUST);
    }

    @Test
    void theCoupeIsComposedFromItsSurveyWithATrialWhereThePaintIsOld() {
        assertThat(stages(compose("saltmarsh-quay", "show-coupe", show())))
                .contains("trial-section", "finishing-polish", "wax", "wheel-coating");
    }

    @Test
    void aFullCorrectionIsProvedTheCheapest() {
        Composition composition = compose("millrace-works", "hurried-hatch", fullCorrection());

        assertThat(composition.provedCheapest()).isTrue();
        assertThat(stages(composition))
                .containsSubsequence(
                        "contact-wash",
                        "iron-removal",
                        "claying",
                        "towel-dry",
                        "tape-up",
                        "polish",
                        "finishing-polish",
                        "panel-wipe",
                        "finish-check",
                        "ceramic-coating",
                        "final-inspection",
                        "handover");
        assertThat(composition.proof().findings())
                .allSatisfy(f -> assertThat(f.reason()).isInstanceOf(Reason.RuleSpeaks.class))
                .extracting(Finding::zones)
                .as("only plastic, which no gauge reads")
                .containsOnly(List.of("front-bumper", "rear-bumper", "mirror-left", "mirror-right"));
    }

    @Test
    void nothingIsWettedAndDriedWhereOneStepTakesTheDustAway() {
        List<String> stages = stages(compose("millrace-works", "green-estate", wedding()));

        assertThat(stages.subList(stages.indexOf("dust-down"), stages.size()))
                .doesNotContain("pressure-rinse", "final-rinse", "towel-dry");
    }

    @Test
    void theReasonOfAStepNamesWhoReliesOnIt() {
        Stages stages = new Stages()
                .states("washed", "polished")
                .stage(terms("wash").on("paint").sets("washed").takes(10))
                .stage(terms("polish")
                        .on("paint")
                        .needs("washed")
                        .sets("polished")
                        .takes(30));

        Composition composition = Composer.compose(stages.setting(), List.of(Wish.must("polished", "bonnet")), true);

        assertThat(composition.reasons())
                .containsExactly(
                        new Because("s1", "washed", false, List.of("bonnet"), "s2"),
                        new Because("s2", "polished", false, List.of("bonnet"), ""));
        EditText text = new EditText(stages.setting(), Locale.UK);
        assertThat(composition.reasons().stream().map(b -> text.of(b, composition.plan())))
                .containsExactly(
                        "because polish (s2) needs 'washed' on bonnet", "because 'polished' is wanted on bonnet");
        assertThat(composition.provedCheapest()).isTrue();
        assertThat(composition.minutes()).isEqualByComparingTo("40");
    }

    @Test
    void aWishThatNothingGrantsIsNamedAndTheOthersAreComposed() {
        Stages stages = new Stages()
                .states("washed", "coated")
                .stage(terms("wash").on("paint").sets("washed").takes(10));
        Wish coated = new Wish("coated", List.of("bonnet"), Step.Priority.COULD);

        Composition composition =
                Composer.compose(stages.setting(), List.of(Wish.must("washed", "bonnet"), coated), true);

        assertThat(composition.unmet()).containsExactly(new Unmet(coated, new Hindrance.NoStage("coated")));
        assertThat(composition.composed()).isTrue();
        assertThat(stages(composition)).containsExactly("wash");
    }

    @Property(tries = 100)
    void noPlanOfUpToFourStepsIsCheaper(@ForAll long seed) {
        Setting setting = randomSetting(seed);
        Prover prover = Prover.forSetting(setting);
        String state = STATES[new Random(seed).nextInt(STATES.length)];
        BigDecimal least = cheapestByTryingAll(prover, state, new ArrayList<>(), 4);

        Composition composition = Composer.compose(setting, List.of(Wish.must(state, "bonnet")), false);

        if (least != null) {
            assertThat(composition.least()).isLessThanOrEqualTo(least);
            if (least.signum() > 0) {
                assertThat(composition.composed()).isTrue();
                assertThat(composition.provedCheapest()).isTrue();
                assertThat(composition.minutes()).isLessThanOrEqualTo(least);
            }
        }
    }

    /** A plan for more that is known makes the plan for less no dearer, and nothing that only the more needed stays. */
    @Property(tries = 60)
    void whatIsKnownForMoreMakesLessNoDearer(@ForAll long seed) {
        Setting setting = randomSetting(seed);
        Random random = new Random(seed);
        Wish one = Wish.must(STATES[random.nextInt(STATES.length)], "bonnet");
        Wish other = Wish.must(STATES[random.nextInt(STATES.length)], "bonnet");
        Composer.Options alone = new Composer.Options(false, Costing.MINUTES);
        Composition more = Composer.compose(setting, List.of(one, other), alone);
        Composition less = Composer.compose(setting, List.of(one), alone);

        Composition known = Composer.compose(
                setting,
                List.of(one),
                new Composer.Options(false, Costing.MINUTES, Delays.NONE, Optional.of(more.plan()), () -> false));

        assertThat(known.composed() || !less.composed()).isTrue();
        if (less.composed()) {
            assertThat(known.cost()).isLessThanOrEqualTo(less.cost());
        }
    }

    @Test
    void ofAPlanThatIsKnownOnlyWhatServesTheWishIsTaken() {
        Stages stages = new Stages()
                .states("washed", "polished", "glass-clean")
                .stage(terms("wash").on("paint").sets("washed").takes(10))
                .stage(terms("polish")
                        .on("paint")
                        .needs("washed")
                        .sets("polished")
                        .takes(30))
                .stage(terms("glass").on("glass").sets("glass-clean").takes(5));
        Plan known = new Plan(
                List.of(step("a", "wash", "bonnet"), step("b", "glass", "windscreen"), step("c", "polish", "bonnet")));

        Composition composition = Composer.compose(
                stages.setting(),
                List.of(Wish.must("polished", "bonnet")),
                new Composer.Options(true, Costing.MINUTES, Delays.NONE, Optional.of(known), () -> false));

        assertThat(stages(composition)).containsExactly("wash", "polish");
        assertThat(composition.provedCheapest()).isTrue();
    }

    @Test
    void aCancelledComposingEnds() {
        Stages stages = new Stages()
                .states("washed")
                .stage(terms("wash").on("paint").sets("washed").takes(10));

        assertThatThrownBy(() -> Composer.compose(
                        stages.setting(),
                        List.of(Wish.must("washed", "bonnet")),
                        new Composer.Options(true, Costing.MINUTES, Delays.NONE, Optional.empty(), () -> true)))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void aStepThatOnlyARuleAsksForNamesTheRule() {
        Setting setting = new Stages()
                .states("dusted", "sealed")
                .stage(terms("dust").on("paint").sets("dusted").takes(5))
                .stage(terms("seal").on("paint").sets("sealed").takes(20))
                .forbids("dust before sealing", "seal", "count", "dust", BigDecimal.ZERO::equals)
                .setting();
        List<AskedGoal> goals = AskedGoal.of(
                List.of(new JobGoal(
                        Optional.empty(),
                        "Sealed",
                        Optional.empty(),
                        List.of("sealed"),
                        List.of("bonnet"),
                        Step.Priority.SHOULD,
                        Optional.empty())),
                setting);

        GoalComposition composed = GoalComposition.of(setting, goals, new Composer.Options(true, Costing.MINUTES));

        Plan plan = composed.composition().plan();
        assertThat(stages(composed.composition())).containsExactly("dust", "seal");
        assertThat(plan.steps().get(0).priority())
                .as("as much wanted as the step that the rule forbids without it")
                .isEqualTo(Step.Priority.SHOULD);
        String seal = "seal (" + plan.steps().get(1).id() + ")";
        ComposeText text = new ComposeText(composed, Locale.UK);
        assertThat(text.why(plan.steps().get(0)))
                .containsExactly("because a rule forbids " + seal + " on bonnet without it: dust before sealing");
        assertThat(text.why(plan.steps().get(1))).containsExactly("asked for by Sealed: 'sealed' on bonnet");
        assertThat(new GoalTies(setting, plan, goals)
                        .of(
                                plan.steps().get(0).id(),
                                List.of(plan.steps().get(1).id())))
                .extracting(tie -> tie.goal().title())
                .containsExactly("Sealed");
    }

    private static Setting randomSetting(long seed) {
        Random random = new Random(seed);
        Stages stages =
                random.nextBoolean() ? new Stages().opposites("p", "q").states("r", "t") : new Stages().states(STATES);
        stages.family("work", random.nextInt(3) * 4);
        for (int s = 0; s < 4; s++) {
            Stages.Terms terms = terms("w" + s).on("paint").takes(1 + random.nextInt(9));
            for (int k = random.nextInt(3); k > 0; k--) {
                String state = STATES[random.nextInt(STATES.length)];
                if (random.nextInt(3) == 0) {
                    terms.refuses(state);
                } else {
                    terms.needs(state);
                }
            }
            if (random.nextBoolean()) {
                terms.clears(STATES[random.nextInt(STATES.length)]);
            }
            stages.stage(terms.sets(STATES[random.nextInt(STATES.length)]));
        }
        return stages.setting(Survey.NOTHING);
    }

    /** Attended minutes of the cheapest plan for one zone, by trying every row of stages; null when there is none. */
    private static BigDecimal cheapestByTryingAll(Prover prover, String state, List<Step> steps, int left) {
        Plan plan = new Plan(steps);
        if (!prover.stops(plan).isEmpty()) {
            return null;
        }
        BigDecimal least = prover.prove(plan).ends().get("bonnet").contains(state)
                ? prover.work(plan).attendedMinutes().mean()
                : null;
        for (int s = 0; left > 0 && s < 4; s++) {
            List<Step> more = new ArrayList<>(steps);
            more.add(step("s" + steps.size(), "w" + s, "bonnet"));
            BigDecimal found = cheapestByTryingAll(prover, state, more, left - 1);
            least = found != null && (least == null || found.compareTo(least) < 0) ? found : least;
        }
        return least;
    }
}
