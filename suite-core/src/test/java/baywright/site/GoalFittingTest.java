package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.plan.AskedGoal;
import baywright.plan.JobGoal;
import baywright.plan.Step.Priority;
import baywright.site.FittedGoals.LeftOut;
import baywright.site.FittedGoals.Priced;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which goals of the demo's vans are composed under a cap and by a date, against composing every choice of them. */
class GoalFittingTest {

    @TempDir
    private static Path folder;

    private static Site site;
    private static Job vans;
    private static List<AskedGoal> asked;
    private static List<Choice> all;

    /** A choice of goals, with the plan for just these. */
    private record Choice(Set<String> kept, BigDecimal should, BigDecimal could, Money asked) {
        boolean isWorthMoreThan(Choice other) {
            int first = should.compareTo(other.should);
            return first > 0 || first == 0 && could.compareTo(other.could) > 0;
        }
    }

    @BeforeAll
    static void composeEveryChoice() throws Exception {
        DemoSite.copy("millrace-works", folder);
        site = Site.open(folder, Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        Job job = site.job(site.workspace().job("bramblegate-vans").orElseThrow());
        vans = JobEdit.of(job)
                .goals(List.of(
                        goal("maintenance-wash", Priority.MUST, "1"),
                        goal("interior-clean", Priority.SHOULD, "1"),
                        goal("wheels-clean", Priority.SHOULD, "1"),
                        goal("glass-clear", Priority.COULD, "2"),
                        goal("trim-restored", Priority.COULD, "2")))
                .job();
        asked = AskedGoal.of(vans.goals(), site.setting(vans));
        all = new ArrayList<>();
        for (int set = 0; set < 16; set++) {
            List<AskedGoal> kept = new ArrayList<>();
            for (int i = 0; i < asked.size(); i++) {
                if (i == 0 || (set & 1 << i - 1) != 0) {
                    kept.add(asked.get(i));
                }
            }
            GoalFitting alone = new GoalFitting(site, vans, PlanLimits.NONE, () -> false);
            Priced priced = alone.priced(site.compose(vans, kept, Optional.empty(), () -> false));
            assertThat(priced.isOffered()).isTrue();
            all.add(choice(kept, priced.asked().orElseThrow()));
        }
    }

    private static JobGoal goal(String id, Priority priority, String worth) {
        return new JobGoal(
                Optional.empty(),
                "",
                Optional.of(id),
                List.of(),
                List.of(),
                priority,
                Optional.of(new BigDecimal(worth)));
    }

    private static Choice choice(List<AskedGoal> kept, Money asked) {
        Set<String> ids = new HashSet<>();
        kept.forEach(g -> ids.add(g.id()));
        return new Choice(ids, worth(kept, Priority.SHOULD), worth(kept, Priority.COULD), asked);
    }

    private static BigDecimal worth(List<AskedGoal> kept, Priority priority) {
        return kept.stream()
                .filter(g -> g.priority() == priority)
                .map(AskedGoal::worth)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static FittedGoals under(BigDecimal cap) {
        return site.compose(vans, PlanLimits.NONE.withCap(cap), () -> false);
    }

    private static Choice chosen(FittedGoals fitted) {
        Priced best = fitted.best().orElseThrow();
        return choice(best.composed().composed().goals(), best.asked().orElseThrow());
    }

    @Test
    void underEachCapTheChoiceIsTheBestOfAll() {
        List<Money> caps = all.stream().map(Choice::asked).distinct().sorted().toList();
        assertThat(caps).hasSizeGreaterThan(8);
        Choice before = null;
        for (Money cap : caps) {
            FittedGoals fitted = under(cap.getAmount());
            Choice best = chosen(fitted);

            assertThat(fitted.proved()).isTrue();
            assertThat(best.asked().isGreaterThan(cap)).as("cap " + cap).isFalse();
            for (Choice other : all) {
                boolean fits = !other.asked().isGreaterThan(cap);
                assertThat(fits && other.isWorthMoreThan(best))
                        .as(cap + ": " + other)
                        .isFalse();
                boolean same = !other.isWorthMoreThan(best) && !best.isWorthMoreThan(other);
                assertThat(fits && same && other.asked().isLessThan(best.asked()))
                        .as(cap + ": " + other)
                        .isFalse();
            }
            if (before != null) {
                assertThat(before.isWorthMoreThan(best))
                        .as("more money brings no less")
                        .isFalse();
            }
            before = best;
            Set<String> told = new HashSet<>(best.kept());
            for (LeftOut out : fitted.out()) {
                told.add(out.goal().id());
                assertThat(out.with().composed().composed().goals()).contains(out.goal());
            }
            assertThat(told).hasSize(asked.size());
        }
        assertThat(before).isNotNull();
        assertThat(before.kept()).hasSize(asked.size());
    }

    /** The bound by which choices are ruled out unseen is below every plan for them, and for more than them. */
    @Test
    void noPlanCostsLessThanTheBoundOfFewerGoals() {
        GoalFitting fitting = new GoalFitting(site, vans, PlanLimits.NONE, () -> false);
        for (int few = 0; few < 16; few++) {
            BigDecimal floor = fitting.floor(BitSet.valueOf(new long[] {few}));
            assertThat(floor).isPositive();
            for (int many = few; many < 16; many++) {
                if ((few & many) == few) {
                    assertThat(floor)
                            .as("%s of %s", few, many)
                            .isLessThanOrEqualTo(all.get(many).asked().getAmount());
                }
            }
        }
    }

    @Test
    void farBelowTheLeastItIsProvedThatNothingFits() {
        assertThat(under(BigDecimal.ONE).certain()).isTrue();
        Money least = all.stream().map(Choice::asked).min(Money::compareTo).orElseThrow();
        assertThat(under(least.getAmount().subtract(new BigDecimal("0.01"))).certain())
                .as("a penny less is not ruled out")
                .isFalse();
    }

    @Test
    void aCoinBelowTheLeastNothingFitsAndTheLeastIsShown() {
        Money least = all.stream().map(Choice::asked).min(Money::compareTo).orElseThrow();

        FittedGoals fitted = under(least.getAmount().subtract(new BigDecimal("0.01")));

        assertThat(fitted.best()).isEmpty();
        assertThat(fitted.shown().asked()).contains(least);
        assertThat(fitted.shown().composed().composed().goals()).containsExactly(asked.get(0));
        assertThat(under(least.getAmount()).best()).isPresent();
    }

    @Test
    void withoutLimitsAndWithAllGoalsItIsTheWhole() {
        FittedGoals free = site.compose(vans, PlanLimits.NONE, () -> false);
        assertThat(free.best()).contains(free.whole());
        assertThat(free.out()).isEmpty();
        assertThat(free.whole().composed().composed().goals()).hasSameSizeAs(asked);
    }

    @Test
    void aDateThatSomeGoalsMissLeavesThoseOut() {
        FittedGoals free = site.compose(vans, PlanLimits.NONE, () -> false);
        LocalDateTime whole = free.whole().ready().orElseThrow();
        PlanLimits sooner = new PlanLimits(Optional.empty(), false, Optional.of(whole.minusMinutes(1)));

        FittedGoals fitted = site.compose(vans, sooner, () -> false);

        assertThat(fitted.isLate()).isFalse();
        assertThat(fitted.out()).isNotEmpty();
        assertThat(fitted.best().orElseThrow().ready().orElseThrow()).isBefore(whole);
    }

    @Test
    void aDateThatNothingKeepsIsLeftAside() {
        PlanLimits never = new PlanLimits(
                Optional.empty(), false, Optional.of(site.setting(vans).start().plusMinutes(1)));

        FittedGoals fitted = site.compose(vans, never, () -> false);

        assertThat(fitted.isLate()).isTrue();
        assertThat(chosen(fitted).kept()).hasSize(asked.size());
    }

    @Test
    void withTooManyChoicesGoalsAreTakenOneByOneAndNothingIsClaimed() {
        Money most = all.stream().map(Choice::asked).max(Money::compareTo).orElseThrow();
        PlanLimits limits = PlanLimits.NONE.withCap(most.getAmount().subtract(new BigDecimal("0.01")));

        FittedGoals fitted = new GoalFitting(site, vans, limits, () -> false, 1).fitted();

        assertThat(fitted.proved()).isFalse();
        assertThat(chosen(fitted).asked().isGreaterThan(most)).isFalse();
        assertThat(chosen(fitted).should()).isEqualByComparingTo("2");
    }

    @Test
    void itEndsWhenItIsCancelled() {
        AtomicInteger questions = new AtomicInteger();

        assertThatThrownBy(() -> site.compose(
                        vans, PlanLimits.NONE.withCap(BigDecimal.ONE), () -> questions.incrementAndGet() > 1))
                .isInstanceOf(CancellationException.class);

        assertThat(questions).hasValue(2);
    }

    @Test
    void aCapBelowNothingIsRefused() {
        assertThatThrownBy(() -> PlanLimits.NONE.withCap(new BigDecimal("-1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
    }
}
