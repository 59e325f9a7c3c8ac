package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A timetable's order, with planned and with other times. */
class FixedOrderTest {

    private static int[] planned(Project project) {
        return project.activities().stream().mapToInt(Activity::minutes).toArray();
    }

    private static FixedOrder.Day day(Project project, Timetable timetable, int... minutes) {
        FixedOrder.Day day = FixedOrder.of(project, timetable).new Day();
        day.pass(minutes);
        return day;
    }

    private static List<Integer> ends(Project project, FixedOrder.Day day) {
        List<Integer> ends = new ArrayList<>();
        for (int i = 0; i < project.activities().size(); i++) {
            ends.add(day.end(i));
        }
        return ends;
    }

    /** The library of Kolisch, Sprecher, European Journal of Operational Research 96 (1997) 205: capacities above one. */
    @ParameterizedTest
    @ValueSource(strings = {"j30", "j60", "j120"})
    void plannedTimesGiveTheTimetableOfPublishedProjects(String set) {
        for (Psplib.Known known : Psplib.known(set)) {
            Project project = Psplib.project(known);
            Timetable timetable = Serial.first(project).orElseThrow();
            assertThat(ends(project, day(project, timetable, planned(project)))).isEqualTo(timetable.ends());
        }
    }

    private static Timetable again(Project project, Timetable timetable, FixedOrder.Day day) {
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < project.activities().size(); i++) {
            starts.add(day.start(i));
        }
        List<Integer> ends = ends(project, day);
        long goal = project.goal().at(ends.stream().mapToInt(e -> e).toArray());
        return new Timetable(starts, ends, timetable.taken(), timetable.held(), goal);
    }

    /**
     * With hours, pauses, absences, holds and longest waits, by the independent check of timetables. Where there are longest
     * waits or holds, a timetable made at once may put something off that need not be.
     */
    @Test
    void plannedTimesGiveTheTimetableOfAShop() {
        SplittableRandom random = new SplittableRandom(5);
        int made = 0;
        int limited = 0;
        int exact = 0;
        for (int round = 0; round < 600; round++) {
            Project project = project(random);
            Optional<Timetable> timetable = Serial.first(project);
            if (timetable.isPresent()) {
                made++;
                FixedOrder order = FixedOrder.of(project, timetable.get());
                limited += order.limits().isEmpty() ? 0 : 1;
                FixedOrder.Day day = order.new Day();
                day.pass(planned(project));
                boolean mayBePutOff = !project.holds().isEmpty()
                        || project.lags().stream().anyMatch(lag -> lag.most().isPresent());
                exact += mayBePutOff ? 0 : 1;
                for (int i = 0; i < project.activities().size(); i++) {
                    int start = timetable.get().start(i);
                    assertThat(day.start(i)).as(i + " in round " + round).isLessThanOrEqualTo(start);
                    assertThat(day.start(i) == start || mayBePutOff)
                            .as(i + " in round " + round)
                            .isTrue();
                }
                Timetable again = again(project, timetable.get(), day);
                assertThat(TimetableCheck.faults(project, again))
                        .as("round " + round)
                        .isEmpty();
                assertThat(order.limits()).noneMatch(day::misses);
            }
        }
        assertThat(made).isGreaterThan(200);
        assertThat(limited).isGreaterThan(50);
        assertThat(exact).isGreaterThan(20);
    }

    /** Whatever times come: waits are kept, and nobody and nothing serves two at once. */
    @Test
    void anyTimesKeepWaitsAndResources() {
        SplittableRandom random = new SplittableRandom(6);
        for (int round = 0; round < 300; round++) {
            Project project = project(random);
            Optional<Timetable> found = Serial.first(project);
            if (found.isEmpty()) {
                continue;
            }
            int[] minutes = other(project, random);
            FixedOrder.Day day = day(project, found.get(), minutes);
            for (Lag lag : project.lags()) {
                assertThat(day.start(lag.to())).isGreaterThanOrEqualTo(day.end(lag.from()) + lag.least());
            }
            for (int r = 0; r < project.resources().size(); r++) {
                assertThat(mostAtOnce(project, found.get(), day, r))
                        .isLessThanOrEqualTo(project.resources().get(r).capacity());
            }
        }
    }

    /** Where the order is fixed there are none of the anomalies of Graham, Bell System Technical Journal 45 (1966) 1563. */
    @Test
    void longerTimesAndMoreWaitsNeverEndAnythingEarlier() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 300; round++) {
            Project project = project(random);
            Optional<Timetable> found = Serial.first(project);
            if (found.isEmpty()) {
                continue;
            }
            int[] minutes = other(project, random);
            List<Integer> ends = ends(project, day(project, found.get(), minutes));
            int[] longer = minutes.clone();
            longer[random.nextInt(longer.length)] += 1 + random.nextInt(20);
            List<Integer> later = ends(project, day(project, found.get(), longer));
            List<Lag> more = new ArrayList<>();
            project.lags().forEach(l -> more.add(Lag.after(l.from(), l.to(), l.least())));
            Project free = with(project, List.copyOf(more));
            int to = 1 + random.nextInt(project.activities().size() - 1);
            int from = random.nextInt(to);
            int since = random.nextInt(10);
            boolean inOrder = found.get().end(from) <= found.get().start(to);
            if (inOrder) {
                more.add(Lag.after(from, to, since));
            }
            List<Integer> without = ends(project, day(free, found.get(), minutes));
            List<Integer> waiting = ends(project, day(with(project, more), found.get(), minutes));
            for (int i = 0; i < ends.size(); i++) {
                assertThat(later.get(i)).as("round " + round).isGreaterThanOrEqualTo(ends.get(i));
                assertThat(waiting.get(i)).as("round " + round).isGreaterThanOrEqualTo(without.get(i));
            }
        }
    }

    private static Project with(Project project, List<Lag> lags) {
        return new Project(
                project.activities(), project.resources(), lags, project.holds(), project.goal(), project.horizon());
    }

    private static int[] other(Project project, SplittableRandom random) {
        return project.activities().stream()
                .mapToInt(a -> a.minutes() == 0 ? 0 : random.nextInt(1, 2 * a.minutes() + 1))
                .toArray();
    }

    private static int mostAtOnce(Project project, Timetable timetable, FixedOrder.Day day, int r) {
        int most = 0;
        for (int at = 0; at < project.activities().size(); at++) {
            int minute = day.start(at);
            int taken = 0;
            for (int i = 0; i < project.activities().size(); i++) {
                for (int k = 0; k < timetable.taken().get(i).size(); k++) {
                    boolean takes = timetable.taken().get(i).get(k).contains(r);
                    if (takes && day.start(i) <= minute && minute < day.end(i)) {
                        taken += project.activities().get(i).needs().get(k).amount();
                    }
                }
            }
            for (int h = 0; h < project.holds().size(); h++) {
                List<Integer> members = project.holds().get(h).activities();
                int from = members.stream().mapToInt(day::start).min().orElseThrow();
                int to = members.stream().mapToInt(day::end).max().orElseThrow();
                boolean holds = timetable.held().get(h).contains(r) && from <= minute && minute < to;
                taken += holds ? project.holds().get(h).need().amount() : 0;
            }
            most = Math.max(most, taken);
        }
        return most;
    }

    private static Project project(SplittableRandom random) {
        List<Window> windows = new ArrayList<>();
        List<Resource.Absence> away = new ArrayList<>();
        for (int d = 0; d < 40; d++) {
            windows.add(new Window(100 * d, 100 * d + 30));
            windows.add(new Window(100 * d + 40, 100 * d + 70));
            if (random.nextInt(3) == 0) {
                int from = 100 * d + random.nextInt(20);
                away.add(new Resource.Absence(new Window(from, from + 1 + random.nextInt(25)), 1));
            }
        }
        Hours hours = new Hours(windows);
        List<Resource> resources = List.of(
                new Resource("one", 1, away), Resource.of("other", 1), Resource.of("bay", 2), Resource.of("tools", 2));
        int n = 4 + random.nextInt(8);
        List<Activity> activities = new ArrayList<>();
        List<Lag> lags = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Need> needs = new ArrayList<>();
            if (random.nextInt(4) > 0) {
                needs.add(new Need(List.of(0, 1), 1, 1));
            }
            if (random.nextInt(4) == 0) {
                needs.add(Need.of(3, 1 + random.nextInt(2)));
            }
            boolean breaks = random.nextBoolean();
            int minutes = random.nextInt(breaks ? 60 : 25);
            int earliest = random.nextInt(3) == 0 ? random.nextInt(80) : 0;
            Hours when = random.nextInt(6) == 0 ? Hours.ALWAYS : hours;
            activities.add(new Activity("a" + i, minutes, when, breaks, earliest, Hours.END_OF_TIME, needs));
            for (int back = 1; back <= 2 && back <= i; back++) {
                if (random.nextInt(2) == 0) {
                    int least = random.nextInt(4) == 0 ? random.nextInt(30) : 0;
                    OptionalInt most =
                            random.nextInt(3) == 0 ? OptionalInt.of(least + random.nextInt(25)) : OptionalInt.empty();
                    lags.add(new Lag(i - back, Lag.Point.END, i, Lag.Point.START, least, most, ""));
                }
            }
        }
        List<Hold> holds = random.nextBoolean()
                ? List.of(
                        new Hold("first", List.of(0, 1), Need.of(2, 1)),
                        new Hold("second", List.of(2, 3), Need.of(2, 2)))
                : List.of();
        return new Project(activities, resources, lags, holds, Goal.end(n - 1), 4000);
    }

    /**
     * By hand, minutes: wipe 20; coat 90 from the end of the wipe to 60 later, and not before 200; lamp 45 from 30 to 40 after
     * the coat; hand-over 720 after the coat. The wipe is pulled along (longest paths with negative arcs: Bartusch, Möhring,
     * Radermacher, Annals of Operations Research 16 (1988) 201).
     */
    @Test
    void whatMustBeFollowedInTimeWaits() {
        Project project = coating(200);
        Timetable timetable = Serial.first(project).orElseThrow();
        FixedOrder order = FixedOrder.of(project, timetable);
        FixedOrder.Day day = order.new Day();
        day.pass(20, 90, 45, 0);
        assertThat(List.of(day.start(0), day.start(1), day.start(2), day.start(3)))
                .containsExactly(120, 200, 320, 1010);
        assertThat(order.limits()).hasSize(1).noneMatch(day::misses);
        // a wipe that takes 85 minutes ends at 205, and nothing is missed; one of 10 ends at 130, 70 before the coat
        day.pass(85, 90, 45, 0);
        assertThat(day.start(1)).isEqualTo(205);
        assertThat(order.limits()).noneMatch(day::misses);
        day.pass(10, 90, 45, 0);
        assertThat(order.limits()).extracting(day::misses).containsExactly(true);
    }

    private static Project coating(int coatFrom) {
        return new Project(
                List.of(
                        Activity.of("wipe", 20),
                        Activity.of("coat", 90).from(coatFrom),
                        Activity.of("lamp", 45),
                        Activity.of("hand-over", 0)),
                List.of(),
                List.of(Lag.between(0, 1, 0, 60), Lag.between(1, 2, 30, 40), Lag.after(1, 3, 720)),
                List.of(),
                Goal.end(3),
                5000);
    }

    /** By hand: the longest wait to what begins when it may can never be missed, so it is no matter of chance. */
    @Test
    void aWaitThatAlwaysFitsIsNoLimit() {
        Project project = coating(0);
        FixedOrder order = FixedOrder.of(project, Serial.first(project).orElseThrow());
        FixedOrder.Day day = order.new Day();
        day.pass(20, 90, 45, 0);
        assertThat(order.limits()).isEmpty();
        assertThat(List.of(day.start(0), day.start(1), day.start(2), day.start(3)))
                .containsExactly(0, 20, 140, 830);
    }

    /** By hand: A 10 and B 10 with one person, C 25 beside them, D after all. */
    @Test
    void theEndHangsOnWhatWasOverLast() {
        Project project = new Project(
                List.of(
                        Activity.of("a", 10, Need.of(0, 1)),
                        Activity.of("b", 10, Need.of(0, 1)),
                        Activity.of("c", 25),
                        Activity.of("d", 5)),
                List.of(Resource.of("person", 1)),
                List.of(Lag.after(0, 3), Lag.after(1, 3), Lag.after(2, 3)),
                List.of(),
                Goal.end(3),
                500);
        FixedOrder order = FixedOrder.of(project, Serial.first(project).orElseThrow());
        FixedOrder.Day day = order.new Day();
        day.pass(10, 10, 25, 5);
        assertThat(day.hungOn(3)).containsExactly(false, false, true, true);
        day.pass(10, 20, 25, 5);
        assertThat(day.end(3)).isEqualTo(35);
        assertThat(day.hungOn(3)).containsExactly(true, true, false, true);
        day.pass(10, 15, 25, 5);
        assertThat(day.hungOn(3)).containsExactly(true, true, true, true);
    }

    @Test
    void refusesAWaitToAnEnd() {
        Project project = new Project(
                List.of(Activity.of("a", 10), Activity.of("b", 10)),
                List.of(),
                List.of(new Lag(0, Lag.Point.END, 1, Lag.Point.END, 5, OptionalInt.empty(), "")),
                List.of(),
                Goal.end(1),
                500);
        Timetable timetable = Serial.first(project).orElseThrow();
        assertThatThrownBy(() -> FixedOrder.of(project, timetable)).hasMessageContaining("ends at a start");
    }
}
