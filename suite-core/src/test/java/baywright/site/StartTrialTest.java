package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import baywright.DemoSite;
import baywright.plan.Edit;
import baywright.plan.Finding;
import baywright.schedule.ShopScheduler;
import baywright.schedule.TimedShop;
import baywright.workspace.Job;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fixed starts that are tried, and timetables told while they are made. */
class StartTrialTest {

    @TempDir
    private static Path folder;

    private static Site site;
    private static Job vans;

    @BeforeAll
    static void openTheDemo() throws Exception {
        DemoSite.copy("millrace-works", folder);
        site = Site.open(folder, Clock.fixed(Instant.parse("2026-12-01T07:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        vans = site.jobs().stream()
                .filter(j -> j.id().equals("bramblegate-vans"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStartBeforeTheVehicleIsThereIsFoundAndNamesItsStep() {
        StartTrial trial = StartTrial.of(
                site,
                site.judge(vans),
                "s2",
                Optional.of(vans.arrives().orElseThrow().minusDays(1)));
        assertThat(trial.judged().holds()).isFalse();
        assertThat(trial.gained())
                .extracting(Finding::code, f -> f.step().orElse(""))
                .contains(tuple("before-start", "s2"));
        assertThat(trial.gained()).isSortedAccordingTo(Comparator.comparing(Finding::severity));
    }

    @Test
    void theStartThatAStepHasAnywayFindsNothingNewAndTheWayBackTakesItAway() {
        JudgedJob now = site.judge(vans);
        StartTrial same = StartTrial.of(site, now, "s1", vans.arrives());
        assertThat(same.gained()).isEmpty();
        assertThat(same.gone()).isEmpty();
        StartTrial early = StartTrial.of(
                site, now, "s1", Optional.of(vans.arrives().orElseThrow().minusDays(1)));
        StartTrial back = StartTrial.of(site, early.judged(), "s1", Optional.empty());
        assertThat(back.gained()).isEmpty();
        assertThat(back.gone()).isEqualTo(early.gained());
    }

    @Test
    void theTimetableMadeAtOnceIsToldBeforeBetterOnes() {
        List<Job> jobs = List.of(vans);
        List<TimedShop> told = new ArrayList<>();
        TimedShop end = site.timed(jobs, new ShopScheduler.Effort(1, 500, () -> false), told::add)
                .orElseThrow();
        assertThat(told.get(0).timetable().entries())
                .isEqualTo(site.timed(jobs, ShopScheduler.Effort.AT_ONCE)
                        .orElseThrow()
                        .timetable()
                        .entries());
        assertThat(end.timetable().gap())
                .isLessThanOrEqualTo(told.get(0).timetable().gap());
    }

    @Test
    void whoStopsTheSearchKeepsTheBestSoFar() {
        assertThat(site.timed(List.of(vans), new ShopScheduler.Effort(1, Long.MAX_VALUE, () -> true), t -> {}))
                .isPresent();
    }

    @Test
    void aPlanWithoutATimetableSaysWhy() {
        LocalDateTime arrives = vans.arrives().orElseThrow();
        Job one = vans.withPlan(new Edit.Delay("s1", Optional.of(arrives.plusYears(3))).applyTo(vans.plan()));
        assertThat(site.timed(List.of(one), ShopScheduler.Effort.AT_ONCE)).isEmpty();
        List<NoTimetable> why = site.whyNotTimed(List.of(one), () -> ShopScheduler.Effort.AT_ONCE);
        assertThat(why).singleElement().extracting(NoTimetable::overLimits).isEqualTo(false);
        TimetableText text =
                new TimetableText(site, List.of(one), new Numbers(site.shop().locale()), Locale.UK);
        assertThat(text.none(why.get(0)).get(0)).startsWith(vans.title()).contains("no timetable");
    }
}
