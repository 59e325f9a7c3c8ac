package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.DemoSite;
import baywright.chance.Loadings;
import baywright.chance.Rework;
import baywright.chance.Simulation;
import baywright.chance.Watch;
import baywright.plan.Plan;
import baywright.plan.PlanWork;
import baywright.plan.Prover;
import baywright.plan.StepWork;
import baywright.quantity.ThreePoint;
import baywright.schedule.BookedJob;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopChance.JobChance;
import baywright.schedule.ShopScheduler;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.TimedShop;
import baywright.schedule.UncertainSteps;
import baywright.workspace.Job;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may become of the timetables of the demo's jobs, with the library as it ships. */
class ChancesTest {

    private static final ShopScheduler.Effort SOME = new ShopScheduler.Effort(1, 50, () -> false);
    private static final Simulation.Options FEW = new Simulation.Options(1, 2000, 2);

    /** Steps that always take their mean. */
    private static final UncertainSteps CERTAIN = stepsOf(UncertainSteps.APART::loadings, null);

    @TempDir
    private static Path folder;

    private static final List<Site> SITES = new ArrayList<>();

    @BeforeAll
    static void openTheDemo() throws IOException {
        for (String name : List.of("millrace-works", "saltmarsh-quay")) {
            DemoSite.copy(name, folder.resolve(name));
            SITES.add(Site.open(
                    folder.resolve(name),
                    Clock.fixed(Instant.parse("2026-12-01T07:00:00Z"), ZoneOffset.UTC),
                    DemoSite.SCRIPTS));
        }
    }

    private static UncertainSteps stepsOf(
            java.util.function.Function<StepWork, Loadings> loadings, ThreePoint minutes) {
        return new UncertainSteps() {
            @Override
            public ThreePoint minutes(StepWork step) {
                BigDecimal mean = step.elapsedMinutes();
                return minutes == null ? new ThreePoint(mean, mean, mean) : minutes;
            }

            @Override
            public Loadings loadings(StepWork step) {
                return loadings.apply(step);
            }

            @Override
            public Rework rework(StepWork step) {
                return Rework.NEVER;
            }
        };
    }

    private static List<Job> arriving(Site site) {
        return site.workspace().jobs().stream()
                .flatMap(file -> file.job().stream())
                .filter(job -> job.arrives().isPresent())
                .toList();
    }

    /** Without spread it is the timetable, for every job alone and all together. */
    @Test
    void withoutSpreadItIsTheTimetable() {
        for (Site site : SITES) {
            List<List<Job>> sets = new ArrayList<>(List.of(arriving(site)));
            arriving(site).forEach(job -> sets.add(List.of(job)));
            for (List<Job> jobs : sets) {
                for (ShopScheduler.Effort effort : List.of(ShopScheduler.Effort.AT_ONCE, SOME)) {
                    if (effort.conflicts() > 0 && jobs.size() > 1) {
                        continue;
                    }
                    TimedShop timed = site.timed(jobs, effort).orElseThrow();
                    ShopChance chance = timed.chance(CERTAIN, new Simulation.Options(1, 100, 1), Watch.NOBODY);
                    for (int j = 0; j < jobs.size(); j++) {
                        JobChance of = chance.jobs().get(j);
                        String id = of.job() + " of " + jobs.size();
                        assertThat(of.planned())
                                .isEqualTo(timed.timetable().ends().get(j).end());
                        assertThat(of.readyBy(0)).as(id).isEqualTo(of.planned());
                        assertThat(of.readyBy(1)).as(id).isEqualTo(of.planned());
                        assertThat(of.missed()).as(id).isEmpty();
                    }
                }
            }
        }
    }

    @Test
    void aSeedGivesTheSameAnswerOnAnyNumberOfThreads() {
        Site site = SITES.get(0);
        TimedShop timed =
                site.timed(arriving(site), ShopScheduler.Effort.AT_ONCE).orElseThrow();
        ShopChance one = site.chance(timed, new Simulation.Options(1, 1200, 1), Watch.NOBODY);
        assertThat(site.chance(timed, new Simulation.Options(1, 1200, 3), Watch.NOBODY))
                .isEqualTo(one);
        ShopChance other = site.chance(timed, new Simulation.Options(2, 1200, 3), Watch.NOBODY);
        assertThat(other.jobs().get(0).finish()).isNotEqualTo(one.jobs().get(0).finish());
        for (JobChance job : one.jobs()) {
            assertThat(job.readyBy(0.5)).isBeforeOrEqualTo(job.readyBy(0.8));
            assertThat(job.readyBy(0.8)).isBeforeOrEqualTo(job.readyBy(0.95));
            job.inTime().ifPresent(p -> {
                assertThat(p).isBetween(0.0, 1.0);
                assertThat(job.readyBy(p - 1e-9 < 0 ? 0 : p - 1e-9))
                        .isBeforeOrEqualTo(job.wanted().orElseThrow());
            });
            assertThat(job.roles()).allSatisfy(role -> {
                assertThat(role.criticality()).isBetween(0.0, 1.0);
                assertThat(role.correlation()).isBetween(-1.0, 1.0);
            });
            assertThat(job.causes().stream()
                            .mapToDouble(ShopChance.Cause::share)
                            .sum())
                    .isBetween(0.0, 1.05);
        }
    }

    /** The order in which jobs are named does not matter where it does not matter to their timetable. */
    @Test
    void theOrderOfTheJobsDoesNotMatter() {
        Site site = SITES.get(0);
        List<Job> jobs = arriving(site);
        Simulation.Options few = new Simulation.Options(1, 500, 2);
        for (int i = 1; i < jobs.size(); i++) {
            Job a = jobs.get(i - 1);
            Job b = jobs.get(i);
            TimedShop ab =
                    site.timed(List.of(a, b), ShopScheduler.Effort.AT_ONCE).orElseThrow();
            TimedShop ba =
                    site.timed(List.of(b, a), ShopScheduler.Effort.AT_ONCE).orElseThrow();
            if (Set.copyOf(ab.timetable().entries())
                    .equals(Set.copyOf(ba.timetable().entries()))) {
                ShopChance one = site.chance(ab, few, Watch.NOBODY);
                ShopChance other = site.chance(ba, few, Watch.NOBODY);
                assertThat(other.job(a.id()).orElseThrow().finish())
                        .isEqualTo(one.job(a.id()).orElseThrow().finish());
                assertThat(other.job(b.id()).orElseThrow().finish())
                        .isEqualTo(one.job(b.id()).orElseThrow().finish());
                return;
            }
        }
        throw new AssertionError("no two jobs of the demo keep their timetable when they change places");
    }

    private record OneStep(Instant start, JobChance chance) {}

    /** A job in a shop where everything is there for it at any time: its one step, on some vehicles alike. */
    private static OneStep oneStep(int vehicles, ThreePoint minutes) {
        Map<DayOfWeek, List<OpeningTimes.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(day, List.of(new OpeningTimes.Span(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT)));
        }
        for (Site site : SITES) {
            for (Job job : arriving(site)) {
                for (var step : job.plan().steps()) {
                    BookedJob booked = site.toTime(job);
                    Plan plan = new Plan(List.of(step));
                    PlanWork work = Prover.forSetting(booked.setting()).work(plan);
                    if (step.at().isEmpty()
                            && work.families().isEmpty()
                            && work.steps().size() == 1
                            && work.steps().get(0).usualStanding().signum() == 0) {
                        Map<String, Integer> bays = new HashMap<>();
                        booked.setting().bays().forEach(b -> bays.put(b.id(), vehicles));
                        ShopCalendar calendar = new ShopCalendar(
                                site.shop().timeZone(), new OpeningTimes(week, Set.of()), List.of(), bays, Map.of());
                        TimedShop timed = ShopScheduler.timed(
                                        List.of(new BookedJob(
                                                job.id(), booked.setting(), plan, vehicles, Optional.empty())),
                                        calendar,
                                        ShopScheduler.Effort.AT_ONCE)
                                .orElseThrow();
                        assertThat(timed.timetable().entries())
                                .allMatch(e -> e.doing() == Doing.WORK)
                                .allMatch(e -> e.from().equals(booked.setting().start()));
                        ShopChance chance = timed.chance(
                                stepsOf(s -> Loadings.NONE, minutes),
                                new Simulation.Options(3, 100_000, 2),
                                Watch.NOBODY);
                        Instant start =
                                booked.setting().start().atZone(calendar.zone()).toInstant();
                        return new OneStep(start, chance.jobs().get(0));
                    }
                }
            }
        }
        throw new AssertionError("no step of the demo is without set-up and wait");
    }

    /**
     * So many equal steps side by side, all must end: quantiles of {@code F(x)^k} of beta-PERT (30, 45, 90) by numerical
     * integration, apart from this project; here in whole minutes, rounded up. The mean of one step is 50, which the
     * critical chain of any number of them would promise.
     */
    @ParameterizedTest
    @CsvSource({"1, 59.4115, 69.4445, 0.5391", "2, 64.6430, 72.9265, 0.2906", "3, 67.2780, 74.6700, 0.1567"})
    void whatMustAllEndEndsLater(int vehicles, double p80, double p95, double withinMean) {
        OneStep one = oneStep(vehicles, ThreePoint.of("30", "45", "90"));
        JobChance chance = one.chance();
        double from = Duration.between(chance.origin(), one.start()).toMinutes();
        assertThat(chance.finish().reached(0)).isGreaterThan(from + 30);
        assertThat(chance.finish().reached(0.8) - from).isEqualTo(Math.ceil(p80), within(1.0));
        assertThat(chance.finish().reached(0.95) - from).isEqualTo(Math.ceil(p95), within(1.0));
        assertThat(chance.finish().within(from + 50))
                .isEqualTo(withinMean, within(4 * Math.sqrt(withinMean * (1 - withinMean) / 100_000)));
        assertThat(chance.roles().stream()
                        .mapToDouble(ShopChance.Role::criticality)
                        .sum())
                .isGreaterThanOrEqualTo(1);
    }

    @Test
    void stopsWhenItIsToldTo() {
        Site site = SITES.get(0);
        TimedShop timed = site.timed(arriving(site).subList(0, 1), ShopScheduler.Effort.AT_ONCE)
                .orElseThrow();
        Watch impatient = new Watch() {
            @Override
            public boolean cancelled() {
                return true;
            }

            @Override
            public void done(int runs, int all) {}
        };
        assertThatThrownBy(() -> site.chance(timed, FEW, impatient)).isInstanceOf(CancellationException.class);
    }
}
