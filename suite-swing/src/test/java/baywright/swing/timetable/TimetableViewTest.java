package baywright.swing.timetable;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.chance.Simulation;
import baywright.plan.Plan;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.Destination;
import baywright.swing.timetable.ChartRow.By;
import baywright.swing.timetable.Timed.Phase;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.accessibility.AccessibleContext;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The vans of the demo alone: six vehicles in one wash bay, on one Saturday. */
class TimetableViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
    private static final String VANS = "bramblegate-vans";

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private TestDesk desk;
    private TimetableView view;

    @BeforeAll
    static void openTheDemo() throws Exception {
        Screen.needed();
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
        OpenShop all =
                OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("shop")), CLOCK, DemoShops.SCRIPTS);
        shop = all.withoutJob("green-estate").withoutJob("hurried-hatch");
    }

    private void open(OpenShop opened, Optional<String> job) throws Exception {
        run(() -> {
            desk = new TestDesk(opened, job);
            view = new TimetableView(desk, new TimetableView.Patience(0, Simulation.Options.of(1, 100)));
            desk.listen((before, now) -> view.show(now));
            view.show(desk.state());
        });
    }

    private void openTimed() throws Exception {
        open(shop, Optional.of(VANS));
        settle();
    }

    private void settle() throws Exception {
        until(() -> !view.isBusy());
    }

    private Entry work(String step) throws Exception {
        return on(() -> view.timed().orElseThrow().timetable().orElseThrow().entries().stream()
                .filter(e -> e.doing() == Doing.WORK && e.step().equals(step))
                .findFirst()
                .orElseThrow());
    }

    private Optional<LocalDateTime> fixed(String step) {
        return desk.state().job().orElseThrow().plan().step(step).orElseThrow().at();
    }

    private void press(String keys) throws Exception {
        run(() -> view.chart()
                .getActionMap()
                .get(keys)
                .actionPerformed(new ActionEvent(view.chart(), ActionEvent.ACTION_PERFORMED, keys)));
    }

    @Test
    void theTimetableIsShownWithItsEndItsChainItsChanceAndWhatPeopleTakeIn() throws Exception {
        openTimed();
        assertThat(on(view::shown)).isEqualTo("chart");
        Timed timed = on(() -> view.timed().orElseThrow());
        assertThat(timed.phase()).isEqualTo(Phase.DONE);
        assertThat(timed.chance().orElseThrow().runs()).isEqualTo(100);
        assertThat(timed.jobs()).extracting(j -> j.id()).containsExactly(VANS);
        List<String> said = on(() -> view.ready().said());
        assertThat(said).anyMatch(s -> s.contains("before it is wanted"));
        assertThat(said).anyMatch(s -> s.startsWith("The end hangs on"));
        assertThat(said).anyMatch(s -> s.contains("Wash bay"));
        assertThat(said).anyMatch(s -> s.startsWith("Ready four times in five by"));
        assertThat(said).anyMatch(s -> s.startsWith("Kept: at most"));
        assertThat(desk.notices).isEmpty();
    }

    /** Every entry lies in the row of each of its people, and in that of its bay; nothing is lost or drawn twice in one row. */
    @Test
    void rowsHoldEveryEntryWhereItBelongs() throws Exception {
        openTimed();
        for (By by : By.values()) {
            run(() -> view.actions().stream()
                    .filter(a -> a.id().equals("timetable-by-" + by.name().toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow()
                    .does()
                    .accept(desk));
            ChartPicture picture = on(() -> view.chart().picture().orElseThrow());
            for (Entry entry : picture.timetable().entries()) {
                List<String> rows = picture.rows().stream()
                        .filter(r -> r.bars().stream().anyMatch(b -> b.entry().equals(entry)))
                        .map(ChartRow::title)
                        .toList();
                int people = entry.people().size();
                assertThat(rows).as(entry.toString()).hasSize(by == By.PEOPLE ? Math.max(1, people) : 1);
            }
            picture.rows().forEach(TimetableViewTest::overlapsInNoLane);
        }
    }

    private static void overlapsInNoLane(ChartRow row) {
        for (ChartRow.Bar one : row.bars()) {
            for (ChartRow.Bar other : row.bars()) {
                boolean sameLane = one.isWait() == other.isWait() && one.lane() == other.lane();
                if (sameLane && !one.equals(other)) {
                    boolean apart = !one.entry().from().isBefore(other.entry().to())
                            || !other.entry().from().isBefore(one.entry().to());
                    assertThat(apart).as(one + " and " + other).isTrue();
                }
            }
        }
    }

    @Test
    void arrowsGoFromBarToBarAndEnterGoesToTheStep() throws Exception {
        openTimed();
        press("RIGHT");
        Entry first = on(() -> view.chart().chosen().orElseThrow());
        press("RIGHT");
        Entry second = on(() -> view.chart().chosen().orElseThrow());
        assertThat(second.from()).isAfterOrEqualTo(first.to());
        assertThat(second.people()).containsAnyElementsOf(first.people());
        press("DOWN");
        Entry below = on(() -> view.chart().chosen().orElseThrow());
        assertThat(below.people()).doesNotContainAnyElementsOf(second.people());
        assertThat(on(() -> view.foot().says())).contains(below.step());
        press("ENTER");
        assertThat(desk.destinations).containsExactly(Destination.step(below.step()));
    }

    /** The reader of the screen hears what a sighted person sees. */
    @Test
    void eachBarSaysItsStepTimePersonAndBay() throws Exception {
        openTimed();
        AccessibleContext chart = on(() -> view.chart().getAccessibleContext());
        assertThat(on(chart::getAccessibleChildrenCount)).isGreaterThan(18);
        // a reader of screens may ask while another workbench is shown
        assertThat(on(() -> Optional.ofNullable(chart.getAccessibleChild(0)
                        .getAccessibleContext()
                        .getAccessibleComponent()
                        .getLocationOnScreen())))
                .isEmpty();
        List<String> names = on(() -> IntStream.range(0, chart.getAccessibleChildrenCount())
                .mapToObj(
                        i -> chart.getAccessibleChild(i).getAccessibleContext().getAccessibleName())
                .toList());
        Entry wash = work("s1");
        String times = wash.from().toLocalTime() + "-" + wash.to().toLocalTime();
        assertThat(names)
                .anySatisfy(name -> assertThat(name)
                        .contains("s1", "vehicle " + wash.vehicle(), times, "min worked", "Wash bay", "hangs on it"));
    }

    @Test
    void aNudgeFixesTheNextQuarterAndUndoTakesItBack() throws Exception {
        openTimed();
        Entry entry = work("s2");
        run(() -> view.chart().choose(entry));
        press("alt RIGHT");
        press("alt RIGHT");
        LocalDateTime next = TimeScale.beside(entry.from(), true);
        assertThat(fixed("s2")).contains(next.plusMinutes(15));
        settle();
        Plan timed = on(() -> view.timed().orElseThrow().jobs().get(0).plan());
        assertThat(timed).isEqualTo(desk.state().job().orElseThrow().plan());
        assertThat(work("s2").from()).isEqualTo(next.plusMinutes(15));
        press("DELETE");
        assertThat(fixed("s2")).isEmpty();
        run(desk::undo);
        assertThat(fixed("s2")).contains(next.plusMinutes(15));
        assertThat(desk.titles).hasSize(3);
    }

    @Test
    void aDraggedStepSaysWhatItWouldBreakAndIsFixedWhereItIsDropped() throws Exception {
        openTimed();
        Entry entry = work("s1");
        LocalDateTime early = entry.from().minusDays(1).withHour(9).withMinute(0);
        run(() -> {
            view.chart().choose(entry);
            view.chart().hang(entry, early);
        });
        until(() -> view.foot().checked().contains("Stops: "));
        assertThat(fixed("s1")).isEmpty();
        run(() -> view.chart().drop());
        assertThat(fixed("s1")).contains(early);
        run(desk::undo);
        assertThat(fixed("s1")).isEmpty();
    }

    @Test
    void aDragThatIsCalledOffChangesNothing() throws Exception {
        openTimed();
        Entry entry = work("s1");
        run(() -> view.chart().hang(entry, entry.from().plusHours(1)));
        press("ESCAPE");
        run(() -> view.chart().drop());
        assertThat(desk.titles).isEmpty();
    }

    @Test
    void zoomKeepsTheChosenBarWhereItIs() throws Exception {
        openTimed();
        Entry entry = work("s3");
        double before = on(() -> {
            view.component().setSize(1000, 600);
            view.chart().choose(entry);
            return view.chart().scale().orElseThrow().width();
        });
        press("PLUS");
        double after = on(() -> view.chart().scale().orElseThrow().width());
        assertThat(after / before).isBetween(1.24, 1.26);
        assertThat(on(() -> view.chart().chosen())).contains(entry);
    }

    @Test
    void aLateJobSaysWhatWouldHelp() throws Exception {
        open(shop.withJob(wanted(LocalDateTime.parse("2026-12-05T12:30"))), Optional.of(VANS));
        settle();
        assertThat(on(() -> view.ready().said()))
                .anyMatch(s -> s.contains("later than it is wanted"))
                .anyMatch(s -> s.contains("room for one more vehicle in Wash bay on Saturday, 5 December 2026"));
    }

    private static Job wanted(LocalDateTime at) {
        Job job = shop.job(VANS).orElseThrow();
        return new Job(
                job.id(),
                job.title(),
                job.customer(),
                job.vehicle(),
                job.vehicles(),
                job.arrives(),
                Optional.of(at),
                job.cap(),
                job.rate(),
                job.wishes(),
                job.goals(),
                job.survey(),
                job.plan(),
                job.discountLabourPercent(),
                job.safety(),
                job.language(),
                job.discountPercent());
    }

    private static Shop withoutPeople(Shop of) {
        return new Shop(
                of.id(),
                of.name(),
                of.timeZone(),
                of.language(),
                of.tax(),
                of.rates(),
                of.quote(),
                of.film(),
                of.bays(),
                List.of(),
                of.safety(),
                of.rules(),
                of.letterhead(),
                of.times());
    }

    // ---- where there is nothing to show

    @Test
    void withoutJobsItTeachesWhereToBegin() throws Exception {
        open(shop.withoutJob(VANS), Optional.empty());
        assertThat(on(view::shown)).isEqualTo("no-jobs");
        run(() -> view = new TimetableView(new TestDesk()));
        assertThat(on(view::shown)).isEqualTo("nothing");
    }

    @Test
    void aPlanWithoutStepsIsNotTimed() throws Exception {
        OpenShop without = shop.withJob(shop.job(VANS).orElseThrow().withPlan(new Plan(List.of())));
        open(without, Optional.of(VANS));
        assertThat(on(view::shown)).isEqualTo("no-arrival");
        run(() -> view.actions().stream()
                .filter(a -> a.id().equals("timetable-scope-one"))
                .findFirst()
                .orElseThrow()
                .does()
                .accept(desk));
        assertThat(on(view::shown)).isEqualTo("no-steps");
    }

    @Test
    void withoutPeopleOnlyBaysHaveRows() throws Exception {
        open(shop.withShop(withoutPeople(shop.shop())), Optional.of(VANS));
        settle();
        assertThat(on(view::shown)).isEqualTo("no-people");
        run(() -> view.actions().get(3).does().accept(desk));
        assertThat(on(view::shown)).isEqualTo("chart");
    }

    /** A start that lies years ahead leaves no timetable: it is told, and taken back it is shown again. */
    @Test
    void whereThereIsNoTimetableItSaysWhyAndUndoBringsItBack() throws Exception {
        openTimed();
        Entry entry = work("s1");
        run(() -> view.chart().choose(entry));
        run(() -> view.chart().hang(entry, entry.from().plusYears(3)));
        run(() -> view.chart().drop());
        settle();
        assertThat(on(view::shown)).isEqualTo("none");
        run(desk::undo);
        settle();
        assertThat(on(view::shown)).isEqualTo("chart");
    }
}
