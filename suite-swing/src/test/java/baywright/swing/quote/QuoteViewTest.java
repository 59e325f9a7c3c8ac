package baywright.swing.quote;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.document.QuoteChange;
import baywright.money.BuildUp.Bar;
import baywright.money.BuildUp.What;
import baywright.money.LedgerLine;
import baywright.money.LineKind;
import baywright.money.Quote;
import baywright.plan.Edit;
import baywright.plan.Plan;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.site.FittedJob;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Remark;
import baywright.swing.parts.TrailLine;
import baywright.workspace.Job;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drives the quote workbench through its tables, fields and buttons on a desk in memory, over the demo's jobs. What is reckoned is the
 * core's; here it is held that the window says the same, and that each edit can be undone.
 */
class QuoteViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private static Path folder;

    private static OpenShop shop;
    private static TestDesk estateDesk;
    private static QuoteView estate;

    @BeforeAll
    static void openTheDemo() throws Exception {
        Screen.needed();
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
        shop = OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("shop")), CLOCK, DemoShops.SCRIPTS);
        run(() -> {
            estateDesk = new TestDesk(shop, Optional.of("green-estate"));
            estate = view(estateDesk);
        });
    }

    private static QuoteView view(TestDesk desk) {
        QuoteView view = (QuoteView) new QuoteWorkbench().open(desk);
        view.show(desk.state());
        return view;
    }

    private static Quote quote(TestDesk desk) {
        return (Quote) desk.state().worked().orElseThrow().offer();
    }

    private static Plan plan(TestDesk desk) {
        return desk.state().job().orElseThrow().plan();
    }

    @Test
    void partsOfThePlanStandBesideEachOtherWithTheirPrices() throws Exception {
        run(() -> {
            var table = estate.options().table();
            assertThat(table.getRowCount()).isEqualTo(3);
            assertThat(table.getValueAt(2, 1))
                    .as("the whole at the price of the quote, which is held to the penny elsewhere")
                    .isEqualTo("1,030.53");
            List<BigDecimal> prices = estate.options().choices().stream()
                    .map(c -> ((Quote) c.worked().offer()).price().gross().getAmount())
                    .toList();
            assertThat(prices).isSorted().doesNotHaveDuplicates();
        });
    }

    @Test
    void takingAPartIsOneEditThatUndoBringsBack() throws Exception {
        run(() -> {
            Plan before = plan(estateDesk);
            estate.options().table().setRowSelectionInterval(2, 2);
            assertThat(estate.options().taking().isEnabled())
                    .as("the whole is the plan")
                    .isFalse();
            estate.options().table().setRowSelectionInterval(0, 0);
            estate.options().taking().doClick();
            assertThat(plan(estateDesk).steps())
                    .isNotEmpty()
                    .allMatch(step -> step.priority() == Priority.MUST)
                    .hasSizeLessThan(before.steps().size());
            assertThat(estateDesk.titles).endsWith("Make ‘Must only’ the plan");
            estateDesk.undo();
            assertThat(plan(estateDesk)).isEqualTo(before);
        });
    }

    @Test
    void whatFitsUnderATypedCapIsTheCoresAnswerAndCanBeTaken() throws Exception {
        run(() -> {
            FitPart fit = estate.fit();
            FittedJob found = fit.fitted().orElseThrow();
            assertThat(found.cap().getAmount()).as("the job's own cap").isEqualByComparingTo("850");
            assertThat(found.fits().get(0).quote().range().high().gross().getAmount())
                    .isLessThanOrEqualTo(new BigDecimal("850"));
            assertThat(fit.told().get(0)).contains("Proved");
            assertThat(fit.ways().getModel().getSize()).isEqualTo(found.fits().size());
            assertThat(fit.fates().getModel().getSize()).isEqualTo(found.fates().size());

            Plan before = plan(estateDesk);
            fit.ways().setSelectedIndex(1);
            fit.taking().doClick();
            assertThat(plan(estateDesk).steps())
                    .containsExactlyElementsOf(
                            found.fits().get(1).worked().job().plan().steps());
            estateDesk.undo();
            assertThat(plan(estateDesk)).isEqualTo(before);
        });
    }

    @Test
    void aWayThatWasFoundForAnOlderPlanIsNotTaken() throws Exception {
        run(() -> {
            Plan before = plan(estateDesk);
            Step last = before.steps().get(before.steps().size() - 1);
            estateDesk.change(
                    "Drop",
                    s -> s.withJob(s.job("green-estate").orElseThrow().withPlan(before.without(List.of(last.id())))));
            estate.fit().ways().setSelectedIndex(0);
            estate.fit().taking().doClick();
            assertThat(estateDesk.notices.get(estateDesk.notices.size() - 1).text())
                    .contains("changed meanwhile");
            assertThat(plan(estateDesk).steps()).hasSize(before.steps().size() - 1);
            estateDesk.undo();
        });
    }

    @Test
    void aCapThatIsNoAmountIsToldAndNothingIsLookedFor() throws Exception {
        run(() -> {
            TestDesk desk = new TestDesk(shop, Optional.of("bramblegate-vans"));
            QuoteView view = view(desk);
            view.fit().field().setText("8,5 pounds");
            view.fit().field().postActionEvent();
            assertThat(view.fit().told().get(0)).contains("8,5 pounds").contains("such as 850");
            assertThat(view.fit().fitted()).isEmpty();
            assertThat(view.fit().taking().isEnabled()).isFalse();
            view.fit().field().setText("1");
            view.fit().field().postActionEvent();
            assertThat(view.fit().told().get(0))
                    .contains("smallest cap")
                    .contains(desk.readout()
                            .money(view.fit().fitted().orElseThrow().smallest().orElseThrow()));
        });
    }

    /** Sums by hand over the ledger, line by line, against what the rows say. */
    @Test
    void theTableAddsUpToThePriceAndEachRowLeadsToItsSources() throws Exception {
        run(() -> {
            BuildUpPart part = estate.buildUp();
            Quote quote = quote(estateDesk);
            BigDecimal labour = quote.ledger().lines().stream()
                    .filter(line -> line.kind() == LineKind.LABOUR)
                    .map(LedgerLine::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            Bar first = part.rows().bar(0);
            assertThat(first.amount()).isEqualByComparingTo(labour);
            part.choose(0);
            List<TrailLine> lines = part.lines();
            assertThat(lines.stream().filter(l -> l.text().contains(" h × ")))
                    .hasSameSizeAs(quote.ledger().lines(LineKind.LABOUR));
            assertThat(places(lines)).contains("plan", "library");
            part.choose(rowOf(part, What.LINES, LineKind.MATERIAL));
            assertThat(part.lines())
                    .filteredOn(l ->
                            l.to().filter(to -> to.where().containsKey("item")).isPresent())
                    .allMatch(l -> l.text().contains("a pack of"))
                    .isNotEmpty();
            part.choose(rowOf(part, What.PRICE, null));
            assertThat(part.lines())
                    .singleElement()
                    .extracting(TrailLine::text)
                    .asString()
                    .contains("GBP 1,030.53");
            assertThat(part.table().getValueAt(rowOf(part, What.PRICE, null), BuildUpRows.AMOUNT))
                    .isEqualTo("1,030.53");
            for (int row = 0; row < part.rows().getRowCount(); row++) {
                part.choose(row);
                assertThat(part.lines()).as("row %d", row + 1).isNotEmpty();
            }
        });
    }

    private static List<String> places(List<TrailLine> lines) {
        return lines.stream()
                .flatMap(l -> l.to().stream())
                .map(Destination::workbench)
                .distinct()
                .toList();
    }

    private static int rowOf(BuildUpPart part, What what, LineKind kind) {
        return IntStream.range(0, part.rows().getRowCount())
                .filter(row -> part.rows().bar(row).what() == what
                        && (kind == null || part.rows().bar(row).kind().orElseThrow() == kind))
                .findFirst()
                .orElseThrow();
    }

    /** The bars of the picture stand where a click finds their rows, and a sum is as high as its share of the highest. */
    @Test
    void aBarOfTheChartBelongsToItsRow() throws Exception {
        run(() -> {
            BuildUpChart chart = estate.buildUp().chart();
            estate.buildUp().table().clearSelection();
            chart.setSize(600, 240);
            BufferedImage image = new BufferedImage(600, 240, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, 600, 240);
            chart.paint(g);
            g.dispose();
            Color strong = baywright.swing.api.Colours.of("accent");
            List<Integer> sums = IntStream.range(0, estate.buildUp().rows().getRowCount())
                    .filter(estate.buildUp().rows()::isSum)
                    .boxed()
                    .toList();
            List<Integer> seen = IntStream.range(0, 600)
                    .filter(x -> IntStream.range(0, 240).anyMatch(y -> image.getRGB(x, y) == strong.getRGB()))
                    .map(chart::rowAt)
                    .distinct()
                    .boxed()
                    .toList();
            assertThat(seen).isEqualTo(sums);
        });
    }

    @Test
    void theChanceOfALossIsTheShareOfRunsThatCostMore() throws Exception {
        run(() -> {
            OutlookPart.Seen seen = estate.outlook().seen().orElseThrow();
            double net = quote(estateDesk).price().net().getAmount().doubleValue();
            double[] costs = seen.outlook().cost().sorted();
            long dear = Arrays.stream(costs).filter(cost -> cost > net).count();
            String percent = String.format(Locale.UK, "%.1f %%", 100.0 * dear / costs.length);
            assertThat(estate.outlook().words()).contains("GBP 858.77 in " + percent + " of the runs");
            assertThat(estate.outlook().words()).contains("20,000 runs").contains("timetable");
            estate.outlook().choose(OutlookPart.Of.READY);
            assertThat(estate.outlook().chosen()).isEqualTo(OutlookPart.Of.READY);
        });
    }

    @Test
    void aQuoteIsKeptAndWhatHasChangedSinceIsTold() throws Exception {
        Path own = DemoShops.copy("millrace-works", folder.resolve("keeping"));
        OpenShop opened = OpenShop.open(own, CLOCK, DemoShops.SCRIPTS);
        run(() -> {
            TestDesk desk = new TestDesk(opened, Optional.of("bramblegate-vans"));
            QuoteView view = view(desk);
            assertThat(view.kept().entries().getModel().getSize()).isZero();
            view.kept().keeping().doClick();
            assertThat(view.kept().entries().getModel().getSize()).isEqualTo(1);
            assertThat(own.resolve("jobs/bramblegate-vans/quotes/2026-001-v1.json"))
                    .exists();
            assertThat(view.kept().about()).contains("GBP 597.40").contains("Nothing that it rests on has changed");

            desk.change("Whole depth", s -> {
                Job job = s.job("bramblegate-vans").orElseThrow();
                return s.withJob(
                        job.withPlan(new Edit.ChangeInput("s2", "depth", Optional.empty()).applyTo(job.plan())));
            });
            view.show(desk.state());
            assertThat(view.kept().about())
                    .contains("Today it would be "
                            + desk.readout().money(quote(desk).price().gross()))
                    .contains("more.");
            assertThat(view.kept().changes())
                    .filteredOn(change -> change.kind() == QuoteChange.Kind.STEP)
                    .extracting(QuoteChange::subject)
                    .containsExactly("s2");
            view.kept().keeping().doClick();
            assertThat(desk.notices.get(desk.notices.size() - 1).text()).contains("Save everything first");
            assertThat(view.kept().entries().getModel().getSize()).isEqualTo(1);
        });
    }

    @Test
    void aKeptQuoteThatIsBrokenIsToldAndTheOthersAreShown() throws Exception {
        Path own = DemoShops.copyWithFewScripts("millrace-works", folder.resolve("broken"));
        Path quotes = Files.createDirectories(own.resolve("jobs/bramblegate-vans/quotes"));
        Files.writeString(quotes.resolve("2026-001-v1.json"), "{\"schema\": ");
        OpenShop opened = OpenShop.open(own, CLOCK, DemoShops.SCRIPTS);
        run(() -> {
            QuoteView view = view(new TestDesk(opened, Optional.of("bramblegate-vans")));
            assertThat(view.kept().entries().getModel().getSize()).isEqualTo(1);
            assertThat(view.kept().about()).contains("2026-001-v1.json").contains("restore it from a copy");
        });
    }

    @Test
    void aStoppedPlanSaysWhatStopsItAndHasNoQuoteToKeep() throws Exception {
        run(() -> {
            TestDesk desk = new TestDesk(shop, Optional.of("hurried-hatch"));
            QuoteView view = view(desk);
            long stops = desk.state().worked().orElseThrow().findings().stream()
                    .filter(f -> f.severity() == Severity.STOP)
                    .count();
            assertThat(stops).isPositive();
            assertThat(view.stops().count()).isEqualTo((int) stops);
            assertThat(view.kept().keeping().isEnabled()).isFalse();
            assertThat(view.outlook().seen()).isEmpty();
            assertThat(view.options().told(0)).contains("stop it");
        });
    }

    @Test
    void aRemarkThatStopsHoldsTheQuoteBack() throws Exception {
        run(() -> {
            TestDesk desk = new TestDesk(shop, Optional.of("bramblegate-vans"));
            QuoteView view = (QuoteView) new QuoteWorkbench().open(desk);
            DeskState state = desk.state();
            Remark remark = new Remark("rule", Severity.STOP, Optional.empty(), Optional.empty(), "Set up a platform.");
            view.show(new DeskState(
                    state.shop(), state.jobId(), state.worked(), List.of(remark), state.working(), state.unsaved()));
            assertThat(view.stops().count()).isEqualTo(1);
            assertThat(view.outlook().seen()).isEmpty();
        });
    }

    @Test
    void aJobWithoutStepsShowsTheWayToThePlan() throws Exception {
        run(() -> {
            OpenShop bare =
                    shop.withJob(shop.job("bramblegate-vans").orElseThrow().withPlan(new Plan(List.of())));
            TestDesk desk = new TestDesk(bare, Optional.of("bramblegate-vans"));
            QuoteView view = view(desk);
            assertThat(view.shown()).isEqualTo("empty");
            view.show(DeskState.EMPTY);
            assertThat(view.shown()).isEqualTo("nothing");
        });
    }

    @Test
    void thePagesAreShownByAnotherWorkbench() throws Exception {
        run(() -> {
            estate.actions().stream()
                    .filter(a -> a.id().equals("quote-pages"))
                    .findFirst()
                    .orElseThrow()
                    .does()
                    .accept(estateDesk);
            assertThat(estateDesk
                            .destinations
                            .get(estateDesk.destinations.size() - 1)
                            .workbench())
                    .isEqualTo("papers");
        });
    }

    /** RFC 4180: a header and a line for each line of the ledger; the amounts of the price add up to the exact net. */
    @Test
    void theLinesAreWrittenForASpreadsheet() throws Exception {
        Path file = folder.resolve("lines.csv");
        var worked = on(() -> estateDesk.state().worked().orElseThrow());
        LedgerSheet sheet = new LedgerSheet();
        assertThat(sheet.canMake(worked)).isTrue();
        sheet.write(worked, Locale.UK, file);
        try (Stream<String> lines = Files.lines(file)) {
            BigDecimal net = lines.map(line -> line.split(","))
                    .filter(cells -> cells[2].equals("price"))
                    .map(cells -> new BigDecimal(cells[cells.length - 2]))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(net.setScale(2, java.math.RoundingMode.HALF_UP)).isEqualByComparingTo("858.78");
        }
        assertThat(estateDesk.notices).noneMatch(n -> n.weight() == Notice.Weight.FAILED);
    }
}
