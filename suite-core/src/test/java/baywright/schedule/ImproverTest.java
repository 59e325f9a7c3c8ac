package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
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
