package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImproverTest {

    private static Improvement solve(Project project) {
        return Improver.improve(project, Optional.empty(), 1, Long.MAX_VALUE, () -> false, i -> {});
    }

    /** Checked by running all activity lists through serial generation, which reaches an optimum. */
    @ParameterizedTest
    @CsvSource({"3, 16", "4, 11", "5, 10"})
    void sixActivitiesOnOneResource(int capacity, int shortest) {
        Project project = project(
                capacity,
                new int[] {3, 4, 2, 2, 5, 3},
                new int[] {2, 2, 3, 2, 2, 1},
                List.of(Lag.after(0, 2), Lag.after(0, 3), Lag.after(1, 4), Lag.after(2, 5), Lag.after(3, 5)));
        Improvement found = solve(project);
        assertThat(found.proved()).isTrue();
        assertThat(found.lowerBound()).isEqualTo(shortest);
        assertThat(TimetableCheck.faults(project, found.best().orElseThrow())).isEmpty();
    }

    /** Another network, checked the same way. */
    @ParameterizedTest
    @CsvSource({"3, 13", "4, 12"})
    void sevenActivitiesOnOneResource(int capacity, int shortest) {
        Project project = project(
                capacity,
                new int[] {4, 3, 5, 2, 4, 1, 3},
                new int[] {1, 2, 2, 1, 2, 3, 1},
                List.of(
                        Lag.after(0, 2),
                        Lag.after(0, 3),
                        Lag.after(1, 3),
                        Lag.after(1, 4),
                        Lag.after(2, 5),
                        Lag.after(3, 6),
                        Lag.after(4, 6)));
        assertThat(solve(project).lowerBound()).isEqualTo(shortest);
    }

    /** A project of activities 0…n-1 on one resource and an end after all of them. */
    private static Project project(int capacity, int[] minutes, int[] takes, List<Lag> waits) {
        List<Activity> activities = new ArrayList<>();
        List<Lag> lags = new ArrayList<>(waits);
        for (int i = 0; i < minutes.length; i++) {
            activities.add(Activity.of("a" + i, minutes[i], Need.of(0, takes[i])));
            lags.add(Lag.after(i, minutes.length));
        }
        activities.add(Activity.of("end", 0));
        return new Project(
                activities, List.of(Resource.of("r", capacity)), lags, List.of(), Goal.end(minutes.length), 100);
    }

    // ---- against trying everything

    /** What the property covers is shown by its statistics: with and without a solution, with pauses, choices, holds. */
    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void findsWhatTryingEverythingFinds(@ForAll("small") Project project) {
        OptionalLong best = EveryTimetable.best(project);
        Improvement found = solve(project);
        Statistics.label("solution").collect(best.isPresent());
        assertThat(found.proved()).isTrue();
        assertThat(found.best().isPresent()).isEqualTo(best.isPresent());
        if (best.isPresent()) {
            assertThat(found.best().orElseThrow().goal()).isEqualTo(best.getAsLong());
            assertThat(found.lowerBound()).isEqualTo(best.getAsLong());
            assertThat(TimetableCheck.faults(project, found.best().get())).isEmpty();
        }
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void theFirstTimetableIsSoundAndNotBetterThanTheBest(@ForAll("small") Project project) {
        Optional<Timetable> first = Serial.first(project);
        Statistics.label("found").collect(first.isPresent());
        first.ifPresent(timetable -> {
            assertThat(TimetableCheck.faults(project, timetable)).isEmpty();
            assertThat(timetable.goal()).isGreaterThanOrEqualTo(solve(project).lowerBound());
        });
    }

    @Provide
    Arbitrary<Project> small() {
        return Arbitraries.randomValue(random -> {
            int n = 3 + random.nextInt(2);
            Hours shifts = new Hours(List.of(new Window(0, 5), new Window(7, 11), new Window(12, 30)));
            List<Resource> resources = new ArrayList<>();
            resources.add(new Resource(
                    "r0",
                    2,
                    List.of(new Resource.Absence(new Window(1, 2 + random.nextInt(3)), 1 + random.nextInt(2)))));
            resources.add(Resource.of("r1", 1));
            List<Activity> activities = new ArrayList<>();
            List<Lag> lags = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                List<Need> needs = new ArrayList<>();
                if (random.nextInt(4) > 0) {
                    needs.add(
                            random.nextBoolean()
                                    ? new Need(List.of(0, 1), 1 + random.nextInt(4) / 3, 1)
                                    : Need.of(0, 1 + random.nextInt(2)));
                }
                int kind = random.nextInt(3);
                activities.add(new Activity(
                        "a" + i,
                        random.nextInt(5),
                        kind == 0 ? Hours.ALWAYS : shifts,
                        kind == 2,
                        random.nextInt(3),
                        random.nextInt(5) == 0 ? 4 : Hours.END_OF_TIME,
                        needs));
                for (int j = 0; j < i; j++) {
                    if (random.nextInt(2) == 0) {
                        int least = random.nextInt(3);
                        OptionalInt most =
                                random.nextInt(3) > 0 ? OptionalInt.of(least + random.nextInt(4)) : OptionalInt.empty();
                        lags.add(
                                new Lag(j, point(random.nextInt(3)), i, point(2 - random.nextInt(3)), least, most, ""));
                    }
                }
            }
            List<Hold> holds = random.nextInt(3) > 0
                    ? List.of()
                    : List.of(new Hold("h", List.of(0, n - 1), new Need(List.of(0, 1), 1, 1)));
            List<Goal.Term> terms = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                terms.add(new Goal.Term(i, 1, 6 + random.nextInt(8), random.nextInt(3)));
            }
            return new Project(activities, resources, lags, holds, new Goal(terms), 16);
        });
    }

    /** The same with budgets of both resources over three days of five or six minutes, and rest from day to day. */
    @Provide
    Arbitrary<Project> smallWithDays() {
        return Combinators.combine(small(), Arbitraries.integers().between(0, Integer.MAX_VALUE))
                .as((project, seed) -> {
                    Random random = new Random(seed);
                    List<Window> days = List.of(new Window(0, 5), new Window(5, 10), new Window(10, 16));
                    Map<Integer, Long> loads = new HashMap<>();
                    for (int i = 0; i < project.activities().size(); i++) {
                        loads.put(i, (long) random.nextInt(6));
                    }
                    List<Budget> budgets = new ArrayList<>();
                    List<Rest> rests = new ArrayList<>();
                    for (int r = 0; r < 2; r++) {
                        if (random.nextInt(4) > 0) {
                            budgets.add(new Budget("dose", r, 3 + random.nextInt(4), days, loads));
                        }
                        if (random.nextInt(2) > 0) {
                            rests.add(new Rest(r, random.nextInt(4), 2 + random.nextInt(4), List.of(0, 5, 10)));
                        }
                    }
                    return new Project(
                            project.activities(),
                            project.resources(),
                            project.lags(),
                            project.holds(),
                            project.goal(),
                            project.horizon(),
                            budgets,
                            rests);
                });
    }

    @Property(tries = 400, shrinking = ShrinkingMode.OFF)
    void daysAreKeptAsTryingEverythingKeepsThem(@ForAll("smallWithDays") Project project) {
        findsWhatTryingEverythingFinds(project);
        Statistics.label("budgets and rests")
                .collect(project.budgets().size(), project.rests().size());
        theFirstTimetableIsSoundAndNotBetterThanTheBest(project);
    }

    /** Whatever can be done with the people there are can be done when there is one more. */
    @Property(tries = 200, shrinking = ShrinkingMode.OFF)
    void oneMorePersonMakesNothingLater(@ForAll("smallWithDays") Project project) {
        Improvement before = solve(project);
        Improvement after = solve(withOneMore(project));
        if (before.best().isPresent()) {
            assertThat(after.best().orElseThrow().goal())
                    .isLessThanOrEqualTo(before.best().get().goal());
        }
    }

    /** One more of the second resource, for whom the same budgets count. */
    private static Project withOneMore(Project project) {
        List<Resource> resources = new ArrayList<>(project.resources());
        resources.add(Resource.of("one more", 1));
        List<Activity> activities = project.activities().stream()
                .map(a -> new Activity(
                        a.id(),
                        a.minutes(),
                        a.hours(),
                        a.breaks(),
                        a.earliest(),
                        a.latest(),
                        a.needs().stream().map(ImproverTest::orOneMore).toList()))
                .toList();
        List<Hold> holds = project.holds().stream()
                .map(h -> new Hold(h.id(), h.activities(), orOneMore(h.need())))
                .toList();
        List<Budget> budgets = new ArrayList<>(project.budgets());
        project.budgets().stream()
                .filter(b -> b.resource() == 1)
                .forEach(b -> budgets.add(new Budget(b.id(), 2, b.most(), b.periods(), b.loads())));
        List<Rest> rests = new ArrayList<>(project.rests());
        project.rests().stream()
                .filter(r -> r.resource() == 1)
                .forEach(r -> rests.add(new Rest(2, r.least(), r.span(), r.cuts())));
        return new Project(
                activities, resources, project.lags(), holds, project.goal(), project.horizon(), budgets, rests);
    }

    private static Need orOneMore(Need need) {
        List<Integer> able = new ArrayList<>(need.anyOf());
        if (able.contains(1)) {
            able.add(2);
        }
        return new Need(able, need.count(), need.amount());
    }

    private static Lag.Point point(int drawn) {
        return drawn == 0 ? Lag.Point.START : Lag.Point.END;
    }

    // ---- being stopped

    @Test
    void whoStopsKeepsTheBest() {
        Project project = Psplib.project(Psplib.known("j60").get(1));
        Timetable first = Serial.first(project).orElseThrow();
        AtomicInteger better = new AtomicInteger();
        Improvement kept = Improver.improve(
                project, Optional.of(first), 1, Long.MAX_VALUE, () -> better.get() > 0, i -> better.incrementAndGet());
        assertThat(better).hasValue(1);
        assertThat(kept.best().orElseThrow().goal()).isLessThan(first.goal());
        assertThat(kept.lowerBound()).isLessThanOrEqualTo(kept.best().get().goal());
        assertThat(TimetableCheck.faults(project, kept.best().get())).isEmpty();
    }

    @Test
    void stoppedAtOnceItGivesTheFirstBack() {
        Project project = Psplib.project(Psplib.known("j60").get(1));
        Optional<Timetable> first = Serial.first(project);
        assertThat(Improver.improve(project, first, 1, Long.MAX_VALUE, () -> true, i -> {})
                        .best())
                .isEqualTo(first);
    }

    @Test
    void theSameSeedAndEffortGiveTheSame() {
        Project project = Psplib.project(Psplib.known("j60").get(4));
        Improvement one = Improver.improve(project, Optional.empty(), 7, 600, () -> false, i -> {});
        Improvement two = Improver.improve(project, Optional.empty(), 7, 600, () -> false, i -> {});
        assertThat(one).isEqualTo(two);
        assertThat(one.proved()).isFalse();
        assertThat(one.gap()).isPositive();
    }
}
