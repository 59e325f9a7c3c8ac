package baywright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.OneStep;
import baywright.schedule.OpeningTimes.Span;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The least help on one day against trying every help with every order of jobs, minute by minute. A shop of one bay that is
 * open two hours on Monday to Wednesday; each job is one step. Where every job ends as early as its order allows, some order
 * is the best (J. Blazewicz, J. Lenstra, A. Rinnooy Kan, Discrete Applied Mathematics 5 (1983) 11-24, on active schedules).
 */
class HelpOnADayTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);
    private static final int DAYS = 3;
    private static final int OPENING = 8 * 60;
    private static final int CLOSING = 10 * 60;
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;
    private static final int LATE_WEIGHT = 20;
    private static final ShopScheduler.Effort PLENTY = new ShopScheduler.Effort(1, 100_000, () -> false);

    /** Times are minutes from Monday, midnight. */
    private record Work(int from, int minutes, int wanted) {}

    /** Help as this test reads it; a day of -1: none. */
    private record Extra(Help.Kind kind, int day) {
        boolean is(Help.Kind what, int minute) {
            return kind == what && minute / DAY == day;
        }
    }

    private static LocalDateTime moment(int minute) {
        return MONDAY.atStartOfDay().plusMinutes(minute);
    }

    private static ShopCalendar shop(int people) {
        List<Span> hours = List.of(new Span(LocalTime.of(8, 0), LocalTime.of(10, 0)));
        List<ShopCalendar.Hand> hands = new ArrayList<>();
        for (int p = 0; p < people; p++) {
            // every second one has hours of their own, the same ones
            Optional<OpeningTimes> own = p % 2 == 0 ? Optional.empty() : Optional.of(week(hours));
            hands.add(new ShopCalendar.Hand("p" + p, "P", List.of(), own));
        }
        return new ShopCalendar(ZoneId.of("Europe/London"), week(hours), hands, Map.of("box", 1), Map.of());
    }

    private static OpeningTimes week(List<Span> hours) {
        return new OpeningTimes(
                Map.of(DayOfWeek.MONDAY, hours, DayOfWeek.TUESDAY, hours, DayOfWeek.WEDNESDAY, hours), Set.of());
    }

    private static List<BookedJob> booked(List<Work> works) {
        List<BookedJob> jobs = new ArrayList<>();
        for (Work work : works) {
            jobs.add(new BookedJob(
                    "j" + jobs.size(),
                    OneStep.setting(work.minutes(), moment(work.from())),
                    OneStep.plan(),
                    1,
                    Optional.of(moment(work.wanted()))));
        }
        return jobs;
    }

    // ---- by minutes

    private static boolean open(int minute, Extra extra) {
        int day = minute / DAY;
        int closing = CLOSING + (extra.is(Help.Kind.HOUR, minute) ? HOUR : 0);
        return day % 7 < DAYS && minute % DAY >= OPENING && minute % DAY < closing;
    }

    private static int room(int minute, Extra extra) {
        return extra.is(Help.Kind.BAY, minute) ? 2 : 1;
    }

    private static int hands(int minute, int people, Extra extra) {
        return people + (extra.is(Help.Kind.PERSON, minute) ? 1 : 0);
    }

    /** The least of ends and twentyfold lateness, and the most lateness of the orders that reach it. */
    private record Best(long goal, long late) {}

    private static Best best(List<Work> works, int people, Extra extra) {
        Best[] best = {new Best(Long.MAX_VALUE, 0)};
        orders(works, new ArrayList<>(), order -> {
            Best found = inOrder(order, people, extra);
            boolean better = found.goal() < best[0].goal();
            if (better || (found.goal() == best[0].goal() && found.late() > best[0].late())) {
                best[0] = found;
            }
        });
        return best[0];
    }

    private static void orders(List<Work> rest, List<Work> order, java.util.function.Consumer<List<Work>> each) {
        if (rest.isEmpty()) {
            each.accept(order);
        }
        for (int i = 0; i < rest.size(); i++) {
            List<Work> others = new ArrayList<>(rest);
            List<Work> longer = new ArrayList<>(order);
            longer.add(others.remove(i));
            orders(others, longer, each);
        }
    }

    private static Best inOrder(List<Work> order, int people, Extra extra) {
        int[] busy = new int[14 * DAY];
        long goal = 0;
        long late = 0;
        for (Work work : order) {
            int start = work.from();
            while (!fits(busy, start, work.minutes(), people, extra)) {
                start++;
            }
            for (int minute = start; minute < start + work.minutes(); minute++) {
                busy[minute]++;
            }
            int end = start + work.minutes();
            int over = Math.max(0, end - work.wanted());
            goal += end + (long) LATE_WEIGHT * over;
            late += over;
        }
        return new Best(goal, late);
    }

    private static boolean fits(int[] busy, int start, int minutes, int people, Extra extra) {
        for (int minute = start; minute < start + minutes; minute++) {
            int most = Math.min(room(minute, extra), hands(minute, people, extra));
            if (!open(minute, extra) || busy[minute] >= most) {
                return false;
            }
        }
        return true;
    }

    // ---- the comparison

    private static long goal(List<ShopTimetable.JobEnd> ends) {
        return ends.stream()
                .mapToLong(e ->
                        Duration.between(MONDAY.atStartOfDay(), e.end()).toMinutes() + LATE_WEIGHT * e.lateMinutes())
                .sum();
    }

    private static int day(LocalDateTime at) {
        return (int) java.time.temporal.ChronoUnit.DAYS.between(MONDAY, at.toLocalDate());
    }

    private static List<Work> drawn(Random random) {
        List<Work> works = new ArrayList<>();
        int size = 3 + random.nextInt(3);
        for (int i = 0; i < size; i++) {
            int from = OPENING + DAY * random.nextInt(2);
            int minutes = 25 + 5 * random.nextInt(8);
            int wanted = from + 40 + 20 * random.nextInt(9) + DAY * random.nextInt(2);
            works.add(new Work(from, minutes, wanted));
        }
        return works;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void theLeastIsTheLeastOfAllThatWereTriedMinuteByMinute(int people) {
        Random random = new Random(20261130L + people);
        int inTime = 0;
        int notEnough = 0;
        for (int n = 0; n < 60; n++) {
            List<Work> works = drawn(random);
            List<BookedJob> jobs = booked(works);
            ShopCalendar shop = shop(people);
            ShopTimetable now = ShopScheduler.timetable(jobs, shop, PLENTY).orElseThrow();
            Best without = best(works, people, new Extra(Help.Kind.HOUR, -1));
            assertThat(goal(now.ends())).as("%s", works).isEqualTo(without.goal());
            if (now.keepsPromises()) {
                continue;
            }
            Optional<Help> help = Help.leastOnADay(jobs, shop, now, PLENTY);
            int last = now.ends().stream().mapToInt(e -> day(e.end())).max().orElseThrow();
            int first = day(now.entries().get(0).from());
            boolean named = false;
            for (Help.Kind kind : Help.Kind.values()) {
                for (int d = last; d >= first && !named; d--) {
                    if (kind != Help.Kind.BAY && d % 7 >= DAYS) {
                        continue;
                    }
                    Best with = best(works, people, new Extra(kind, d));
                    named = help.isPresent()
                            && help.get().kind() == kind
                            && help.get().day().orElseThrow().equals(MONDAY.plusDays(d))
                            && help.get().late() == 0;
                    if (named) {
                        assertThat(goal(help.get().ends()))
                                .as("%s %s", works, help)
                                .isEqualTo(with.goal());
                    } else {
                        assertThat(with.late())
                                .as("%s: %s on day %s", works, kind, d)
                                .isPositive();
                    }
                }
            }
            inTime += named ? 1 : 0;
            notEnough += named ? 0 : 1;
            assertThat(named).isEqualTo(help.filter(h -> h.late() == 0).isPresent());
            help.ifPresent(h -> {
                assertThat(h.late()).isLessThan(now.lateMinutes());
                assertThat(ShopScheduler.timetable(jobs, h.in(shop), PLENTY)
                                .orElseThrow()
                                .ends())
                        .isEqualTo(h.ends());
            });
        }
        assertThat(inTime).isPositive();
        assertThat(notEnough).isPositive();
    }

    // ---- by hand

    /** Two jobs of an hour and one of half an hour in one bay on Monday, 8 to 10: the last does not fit by half an hour. */
    @Test
    void anHourMoreIsTheLeastWhereItIsEnough() {
        List<BookedJob> jobs = booked(List.of(
                new Work(OPENING, 60, OPENING + 180),
                new Work(OPENING, 60, OPENING + 180),
                new Work(OPENING, 30, OPENING + 180)));
        ShopTimetable now = ShopScheduler.timetable(jobs, shop(2), PLENTY).orElseThrow();
        assertThat(now.keepsPromises()).isFalse();
        Help help = Help.leastOnADay(jobs, shop(2), now, PLENTY).orElseThrow();
        assertThat(help.kind()).isEqualTo(Help.Kind.HOUR);
        assertThat(help.day()).contains(MONDAY);
        assertThat(help.late()).isZero();
        assertThat(help.ends().stream().map(ShopTimetable.JobEnd::end).max(LocalDateTime::compareTo))
                .contains(moment(OPENING + 150));
    }

    /** Two jobs that are both wanted after an hour: no closing hour helps, a second place does, for there are two people. */
    @Test
    void roomIsNamedWhereTheBayIsWhatIsTight() {
        List<BookedJob> jobs =
                booked(List.of(new Work(OPENING, 60, OPENING + 60), new Work(OPENING, 60, OPENING + 60)));
        ShopTimetable now = ShopScheduler.timetable(jobs, shop(2), PLENTY).orElseThrow();
        Help help = Help.leastOnADay(jobs, shop(2), now, PLENTY).orElseThrow();
        assertThat(help.kind()).isEqualTo(Help.Kind.BAY);
        assertThat(help.what()).isEqualTo("box");
        assertThat(help.late()).isZero();
        ShopTimetable alone = ShopScheduler.timetable(jobs, shop(1), PLENTY).orElseThrow();
        assertThat(Help.leastOnADay(jobs, shop(1), alone, PLENTY)).isEmpty();
    }

    /** The second place is there on its day only. */
    @Test
    void whatIsThereForADayIsNotThereOnOthers() {
        List<BookedJob> jobs = booked(List.of(
                new Work(OPENING + DAY, 60, OPENING + DAY + 60), new Work(OPENING + DAY, 60, OPENING + DAY + 60)));
        ShopCalendar monday = new ShopCalendar(
                shop(2).zone(),
                shop(2).hours(),
                shop(2).people(),
                Map.of(),
                Map.of(),
                List.of(new ShopCalendar.Room("box", MONDAY)));
        assertThat(ShopScheduler.timetable(jobs, monday, PLENTY).orElseThrow().keepsPromises())
                .isFalse();
        ShopCalendar tuesday = new ShopCalendar(
                monday.zone(),
                monday.hours(),
                monday.people(),
                Map.of(),
                Map.of(),
                List.of(new ShopCalendar.Room("box", MONDAY.plusDays(1))));
        assertThat(ShopScheduler.timetable(jobs, tuesday, PLENTY).orElseThrow().keepsPromises())
                .isTrue();
    }
}
