package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Step;
import baywright.safety.PersonDay;
import baywright.schedule.BookedJob;
import baywright.schedule.Help;
import baywright.schedule.OpeningTimes;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopScheduler;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.workspace.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's jobs, timed with the library as it ships. */
class TimetablesTest {

    private static final ShopScheduler.Effort SOME = new ShopScheduler.Effort(1, 2000, () -> false);

    @TempDir
    private static Path folder;

    private static Site millrace;
    private static Site saltmarsh;

    @BeforeAll
    static void openTheDemo() throws IOException {
        millrace = open("millrace-works");
        saltmarsh = open("saltmarsh-quay");
    }

    private static Site open(String name) throws IOException {
        Path to = folder.resolve(name);
        DemoSite.copy(name, to);
        return Site.open(to, Clock.fixed(Instant.parse("2026-12-01T07:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
    }

    private static BookedJob booked(Site site, String id) {
        return site.toTime(site.job(site.workspace().job(id).orElseThrow()));
    }

    private static ShopTimetable timed(Site site, BookedJob... jobs) {
        ShopTimetable timetable = ShopScheduler.timetable(
                        List.of(jobs), site.shop().calendar(), SOME)
                .orElseThrow();
        for (BookedJob job : jobs) {
            keepsItsClocks(job, timetable);
        }
        nobodyIsInTwoPlaces(timetable, site.shop().calendar());
        return timetable;
    }

    // ---- what any timetable must keep

    /**
     * The steps as they are timed, each with its start fixed, are proved by the prover's own clock: it knows nothing of
     * timetables. No stop may come that the plan does not have as it stands.
     */
    private static void keepsItsClocks(BookedJob job, ShopTimetable timetable) {
        Prover prover = Prover.forSetting(job.setting());
        Map<String, Step> steps = new HashMap<>();
        job.plan().steps().forEach(s -> steps.put(s.id(), s));
        Set<String> before = stops(prover, job.plan());
        for (int vehicle = 1; vehicle <= job.vehicles(); vehicle++) {
            int number = vehicle;
            List<Step> timed = timetable.entries().stream()
                    .filter(e -> e.job().equals(job.id()) && e.vehicle() == number && e.doing() == Doing.WORK)
                    .map(e -> at(steps.get(e.step()), e.from()))
                    .toList();
            assertThat(before).as(() -> timetable.entries().toString()).containsAll(stops(prover, new Plan(timed)));
        }
    }

    private static Set<String> stops(Prover prover, Plan plan) {
        return prover.stops(plan).stream()
                .map(f -> f.code() + " " + f.step().orElse(""))
                .collect(Collectors.toSet());
    }

    private static Step at(Step step, LocalDateTime at) {
        return new Step(
                step.id(), step.stage(), step.zones(), step.with(), step.priority(), Optional.of(at), step.drivers());
    }

    private static void nobodyIsInTwoPlaces(ShopTimetable timetable, ShopCalendar calendar) {
        List<Entry> entries = timetable.entries();
        for (int i = 0; i < entries.size(); i++) {
            for (int k = 0; k < i; k++) {
                Entry a = entries.get(i);
                Entry b = entries.get(k);
                boolean meet = a.from().isBefore(b.to()) && b.from().isBefore(a.to());
                if (meet) {
                    assertThat(Collections.disjoint(a.people(), b.people()))
                            .as(a + " and " + b)
                            .isTrue();
                    boolean same = a.job().equals(b.job()) && a.vehicle() == b.vehicle();
                    assertThat(!same
                                    && calendar.places(a.bay()) == 1
                                    && !a.bay().isEmpty()
                                    && a.bay().equals(b.bay()))
                            .as(a + " and " + b)
                            .isFalse();
                }
            }
        }
    }

    // ---- the jobs of the demo

    @Test
    void sixVansFitIntoASaturday() {
        ShopTimetable timetable = timed(millrace, booked(millrace, "bramblegate-vans"));
        assertThat(timetable.keepsPromises()).isTrue();
        assertThat(timetable.ends().get(0).end()).isBefore("2026-12-05T15:00:00");
        assertThat(timetable.proved()).isTrue();
        assertThat(timetable.entries().stream().map(Entry::waitsFor)).contains("bay wash");
    }

    @Test
    void theCoupeIsReadyForTheShow() {
        ShopTimetable timetable = timed(saltmarsh, booked(saltmarsh, "show-coupe"));
        assertThat(timetable.keepsPromises()).isTrue();
        assertThat(timetable.entries().stream().filter(e -> e.movedFrom().isPresent()))
                .extracting(Entry::step)
                .contains("s32");
    }

    @Test
    void theJobsOfAShopShareItsPeopleAndBays() {
        ShopTimetable timetable = timed(
                millrace,
                booked(millrace, "bramblegate-vans"),
                booked(millrace, "green-estate"),
                booked(millrace, "hurried-hatch"));
        assertThat(timetable.keepsPromises()).isTrue();
        assertThat(timetable.ends()).hasSize(3);
    }

    @Test
    void whoNeedsTheSameBayComesLater() {
        BookedJob estate = booked(millrace, "green-estate");
        BookedJob twin = new BookedJob("twin", estate.setting(), estate.plan(), 1, estate.wanted());
        ShopTimetable alone = timed(millrace, estate);
        ShopTimetable both = timed(millrace, estate, twin);
        assertThat(both.ends().stream().map(ShopTimetable.JobEnd::end).max(LocalDateTime::compareTo))
                .hasValueSatisfying(
                        last -> assertThat(last).isAfter(alone.ends().get(0).end()));
    }

    @Test
    void moreRoomWhereItIsTightHelps() {
        BookedJob vans = booked(millrace, "bramblegate-vans");
        BookedJob sooner = new BookedJob(
                vans.id(),
                vans.setting(),
                vans.plan(),
                vans.vehicles(),
                vans.wanted().map(w -> w.minusHours(2)));
        ShopTimetable timetable = timed(millrace, sooner);
        assertThat(timetable.keepsPromises()).isFalse();
        List<Help> helps = Help.tried(List.of(sooner), millrace.shop().calendar(), ShopScheduler.Effort.AT_ONCE);
        assertThat(helps.get(0).kind()).isEqualTo(Help.Kind.BAY);
        assertThat(helps.get(0).what()).isEqualTo("wash");
        assertThat(helps.get(0).gained()).isPositive();
    }

    // ---- what people may take in, and their rest

    /** The people of a site cut down to the first so many, open and working as told. */
    private static ShopCalendar calendar(Site site, int people, OpeningTimes hours, ShopCalendar.WorkingTime working) {
        ShopCalendar own = site.shop().calendar();
        return new ShopCalendar(
                own.zone(), hours, own.people().subList(0, people), own.bays(), own.machines(), List.of(), working);
    }

    private static double loudest(Site site, String id, ShopTimetable timetable) {
        Job job = site.job(site.workspace().job(id).orElseThrow());
        return site.exposures(List.of(job), timetable).stream()
                .filter(d -> !d.noise().isEmpty())
                .mapToDouble(PersonDay::protectedNoise)
                .max()
                .orElseThrow();
    }

    /** At most 87 dB(A) over eight hours under the protector (Directive 2003/10/EC, art. 3); six vans are more for one. */
    @Test
    void nobodyTakesInMoreNoiseThanADayAllows() {
        BookedJob vans = booked(millrace, "bramblegate-vans");
        ShopCalendar alone = calendar(millrace, 1, millrace.shop().calendar().hours(), ShopCalendar.WorkingTime.USUAL);
        ShopTimetable careless = ShopScheduler.timetable(List.of(vans.withoutLoads()), alone, SOME)
                .orElseThrow();
        ShopTimetable kept = ShopScheduler.timetable(List.of(vans), alone, SOME).orElseThrow();
        ShopTimetable shared = timed(millrace, vans);
        assertThat(loudest(millrace, vans.id(), careless)).isGreaterThan(87);
        assertThat(loudest(millrace, vans.id(), kept)).isLessThanOrEqualTo(87);
        assertThat(loudest(millrace, vans.id(), shared)).isLessThanOrEqualTo(87);
        assertThat(kept.ends().get(0).end())
                .isAfterOrEqualTo(careless.ends().get(0).end())
                .isAfter(shared.ends().get(0).end());
    }

    private static OpeningTimes always() {
        Map<DayOfWeek, List<OpeningTimes.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(day, List.of(new OpeningTimes.Span(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT)));
        }
        return new OpeningTimes(week, Set.of());
    }

    /** Hours from the end of each of a person's days to the beginning of the next, the least of them. */
    private static double leastRest(ShopTimetable timetable) {
        TreeMap<LocalDate, LocalDateTime> first = new TreeMap<>();
        TreeMap<LocalDate, LocalDateTime> last = new TreeMap<>();
        for (Entry entry : timetable.entries()) {
            for (ShopTimetable.Spell spell : entry.spells()) {
                LocalDate day = spell.from().toLocalDate();
                first.merge(day, spell.from(), (a, b) -> a.isBefore(b) ? a : b);
                last.merge(day, spell.to(), (a, b) -> a.isAfter(b) ? a : b);
            }
        }
        double least = 24;
        LocalDateTime before = null;
        for (LocalDate day : first.keySet()) {
            if (before != null) {
                least = Math.min(least, Duration.between(before, first.get(day)).toMinutes() / 60.0);
            }
            least = Math.min(
                    least, 24 - Duration.between(first.get(day), last.get(day)).toMinutes() / 60.0);
            before = last.get(day);
        }
        return least;
    }

    /** Eleven hours of rest in each 24 (Directive 2003/88/EC, art. 3), though the shop never closes. */
    @Test
    void whoWorksAloneRestsThoughTheShopIsOpen() {
        BookedJob vans = booked(millrace, "bramblegate-vans").withoutLoads();
        BookedJob twelve = new BookedJob(vans.id(), vans.setting(), vans.plan(), 12, Optional.empty());
        ShopTimetable restless = ShopScheduler.timetable(
                        List.of(twelve),
                        calendar(millrace, 1, always(), new ShopCalendar.WorkingTime(0, 1440, 10080)),
                        SOME)
                .orElseThrow();
        ShopTimetable rested = ShopScheduler.timetable(
                        List.of(twelve), calendar(millrace, 1, always(), ShopCalendar.WorkingTime.USUAL), SOME)
                .orElseThrow();
        assertThat(leastRest(restless)).isLessThan(11);
        assertThat(leastRest(rested)).isGreaterThanOrEqualTo(11);
    }

    /**
     * Plans with steps left out at random, sound or not: what is timed brings no stop that was not there, and what
     * proves can be timed.
     */
    @Test
    void whateverIsLeftOutTheOrderStillProves() {
        SplittableRandom random = new SplittableRandom(20261125);
        BookedJob estate = booked(millrace, "green-estate");
        BookedJob coupe = booked(saltmarsh, "show-coupe");
        int sound = 0;
        for (int n = 0; n < 12; n++) {
            BookedJob whole = n % 2 == 0 ? estate : coupe;
            List<Step> kept = new ArrayList<>(whole.plan().steps());
            kept.removeIf(s -> random.nextInt(5) == 0);
            BookedJob part = new BookedJob(whole.id(), whole.setting(), new Plan(kept), 1, whole.wanted());
            Site site = n % 2 == 0 ? millrace : saltmarsh;
            if (ShopScheduler.timetable(List.of(part), site.shop().calendar(), SOME)
                    .isPresent()) {
                timed(site, part);
                sound++;
            } else {
                assertThat(stops(Prover.forSetting(part.setting()), part.plan()))
                        .isNotEmpty();
            }
        }
        assertThat(sound).isGreaterThan(8);
    }
}
