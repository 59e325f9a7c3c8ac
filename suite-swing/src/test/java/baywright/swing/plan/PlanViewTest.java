package baywright.swing.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.library.Input;
import baywright.plan.Plan;
import baywright.plan.PlanComparison.Kind;
import baywright.plan.Severity;
import baywright.plan.StateCourse;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.TestDesk;
import baywright.swing.api.Destination;
import baywright.swing.parts.TrailLine;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.GraphicsEnvironment;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JSpinner;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drives the plan workbench through its table, fields and actions on a desk in memory, over the demo's jobs. */
class PlanViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);

    private static OpenShop shop;

    private TestDesk desk;
    private PlanView view;

    @BeforeAll
    static void openTheDemo(@TempDir Path folder) throws IOException {
        assumeThat(GraphicsEnvironment.isHeadless()).as("no display").isFalse();
        DemoShops.copy("millrace-works", folder);
        shop = OpenShop.open(folder, CLOCK, DemoShops.SCRIPTS);
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
    }

    @BeforeEach
    void openTheWorkbench() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            desk = new TestDesk(shop, Optional.of("green-estate"));
            view = (PlanView) new PlanWorkbench().open(desk);
            desk.listen((before, now) -> view.show(now));
            view.show(desk.state());
        });
    }

    /** What fails on the event thread fails the test with its own message. */
    private static void onEvents(Runnable work) throws Exception {
        Throwable[] thrown = new Throwable[1];
        SwingUtilities.invokeAndWait(() -> {
            try {
                work.run();
            } catch (Throwable e) {
                thrown[0] = e;
            }
        });
        if (thrown[0] instanceof Error error) {
            throw error;
        }
        if (thrown[0] instanceof Exception exception) {
            throw exception;
        }
    }

    private Plan plan() {
        return desk.state().job().orElseThrow().plan();
    }

    private List<String> ids() {
        return plan().steps().stream().map(Step::id).toList();
    }

    private Step step(String id) {
        return plan().step(id).orElseThrow();
    }

    private void choose(String... steps) {
        view.table().choose(List.of(steps), true);
    }

    private void press(String keys) {
        press(view.table(), JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, keys);
    }

    private static void press(JComponent on, int when, String keys) {
        Object name = on.getInputMap(when).get(KeyStroke.getKeyStroke(keys));
        on.getActionMap().get(name).actionPerformed(new ActionEvent(on, 0, keys));
    }

    private void act(String id) {
        view.actions().stream()
                .filter(a -> a.id().equals("plan-" + id))
                .findFirst()
                .orElseThrow()
                .does()
                .accept(desk);
    }

    private String lastTitle() {
        return desk.titles.get(desk.titles.size() - 1);
    }

    private long stops() {
        return desk.state().worked().orElseThrow().findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .count();
    }

    @Test
    void everyStepStandsInARowWithItsFigures() throws Exception {
        onEvents(() -> {
            StepRows rows = view.table().rows();
            assertThat(rows.getRowCount()).isEqualTo(plan().steps().size());
            for (Step step : rows.steps()) {
                assertThat(rows.minutes(step.id())).isPresent();
                assertThat(rows.start(step.id())).isPresent();
                assertThat(rows.price(step.id())).isPresent();
            }
        });
    }

    @Test
    void altUpMovesTheChosenStepAndUndoBringsItBack() throws Exception {
        onEvents(() -> {
            List<String> before = ids();
            choose(before.get(4));
            press("alt UP");

            assertThat(ids()).startsWith(before.get(0), before.get(1), before.get(2), before.get(4), before.get(3));
            assertThat(lastTitle()).isEqualTo("Move ‘Alkaline pre-wash’ up");
            assertThat(view.table().chosen()).containsExactly(before.get(4));
            desk.undo();
            assertThat(ids()).isEqualTo(before);
            assertThat(view.table().chosen()).containsExactly(before.get(4));
        });
    }

    @Test
    void severalStepsMoveDownTogether() throws Exception {
        onEvents(() -> {
            List<String> before = ids();
            choose(before.get(1), before.get(2));
            press("alt DOWN");

            assertThat(ids()).startsWith(before.get(0), before.get(3), before.get(1), before.get(2));
            assertThat(desk.titles).hasSize(1);
        });
    }

    @Test
    void theFirstStepStaysWhereItIs() throws Exception {
        onEvents(() -> {
            choose(ids().get(0));
            press("alt UP");
            assertThat(desk.titles).isEmpty();
        });
    }

    @Test
    void deleteDropsAndControlDCopies() throws Exception {
        onEvents(() -> {
            int steps = plan().steps().size();
            String second = ids().get(1);
            choose(second);
            press("ctrl D");
            assertThat(plan().steps()).hasSize(steps + 1);
            assertThat(plan().steps().get(2).stage())
                    .isEqualTo(plan().steps().get(1).stage());
            choose(second);
            press("DELETE");
            assertThat(ids()).doesNotContain(second);
            assertThat(view.table().chosen()).hasSize(1);
            desk.undo();
            desk.undo();
            assertThat(plan().steps()).hasSize(steps);
        });
    }

    @Test
    void aStageIsAddedWhereItStopsLeast() throws Exception {
        onEvents(() -> {
            long stops = stops();
            view.stages().search().setText("tar-removal");
            view.stages().tree().setSelectionRow(1);
            String stage = view.stages().chosen().orElseThrow();
            view.table().clearSelection();
            press(view.stages().tree(), JComponent.WHEN_FOCUSED, "ENTER");

            assertThat(desk.titles).hasSize(1);
            assertThat(stops()).as("stops with a step more").isEqualTo(stops);
            assertThat(view.table().only().orElseThrow().stage()).isEqualTo(stage);
        });
    }

    @Test
    void anInputIsSetByItsControlWhichStaysAndUndoBringsItBack() throws Exception {
        onEvents(() -> {
            var stages = shop.site().library().stageById();
            Step before = plan().steps().stream()
                    .filter(s -> !stages.get(s.stage()).inputs().isEmpty())
                    .findFirst()
                    .orElseThrow();
            Input input = stages.get(before.stage()).inputs().get(0);
            choose(before.id());
            JComponent control = view.step().inputs().control(input.name()).orElseThrow();
            if (control instanceof JComboBox<?> box) {
                box.setSelectedIndex(box.getSelectedIndex() == 0 ? 1 : 0);
            } else if (control instanceof JSpinner spinner) {
                spinner.setValue(spinner.getNextValue() == null ? spinner.getPreviousValue() : spinner.getNextValue());
            } else {
                ((JCheckBox) control).doClick();
            }

            assertThat(step(before.id()).with()).isNotEqualTo(before.with());
            assertThat(lastTitle()).startsWith("Change ‘" + input.name() + "’ of");
            assertThat(view.step().inputs().control(input.name()).orElseThrow()).isSameAs(control);
            desk.undo();
            assertThat(step(before.id())).isEqualTo(before);
        });
    }

    @Test
    void priorityZonesAndStartAreEditedInPlace() throws Exception {
        onEvents(() -> {
            String id = ids().get(1);
            choose(id);
            view.step().priority(Priority.COULD).doClick();
            assertThat(step(id).priority()).isEqualTo(Priority.COULD);

            view.step().zones().choices().setSelectedIndex(0);
            press(view.step().zones().choices(), JComponent.WHEN_FOCUSED, "SPACE");
            assertThat(step(id).zones()).contains("-bonnet");

            view.step().start().fixed().doClick();
            assertThat(step(id).at()).isPresent();
            view.step().start().fixed().doClick();
            assertThat(step(id).at()).isEmpty();
            assertThat(desk.titles).hasSize(4);
        });
    }

    @Test
    void theWholePlanIsMendedByOneButton() throws Exception {
        onEvents(() -> {
            String dropped = plan().steps().stream()
                    .filter(s -> s.stage().contains("dry"))
                    .findFirst()
                    .orElseThrow()
                    .id();
            choose(dropped);
            press("DELETE");
            long before = stops();
            assertThat(before).isPositive();
            view.table().clearSelection();
            view.repairs().look(Duration.ofSeconds(60));

            assertThat(view.overview().ways()).isNotEmpty();
            view.overview().ways().get(0).does().run();
            assertThat(stops()).isZero();
            assertThat(lastTitle()).startsWith("Mend the plan with");
            desk.undo();
            assertThat(stops()).isEqualTo(before);
        });
    }

    @Test
    void everyFigureTellsWhatItComesFrom() throws Exception {
        onEvents(() -> {
            List<List<TrailLine>> lines = view.foot().lines();
            assertThat(lines).hasSize(5).allSatisfy(some -> assertThat(some).isNotEmpty());
            assertThat(lines.get(3))
                    .allSatisfy(
                            line -> assertThat(line.to().orElseThrow().where()).containsKeys("file", "line"));
            assertThat(lines.get(4)).anySatisfy(line -> assertThat(line.to()).contains(Destination.step(ids().get(0))));
        });
    }

    @Test
    void composingShowsWhatItWouldBeAndTakingItIsOneChange() throws Exception {
        onEvents(() -> {
            Plan before = plan();
            act("compose");
            assertThat(desk.notices).isEmpty();
            ComparePanel panel = view.comparing().orElseThrow();
            assertThat(desk.titles).isEmpty();
            assertThat(panel.comparison().rows()).isNotEmpty();
            panel.take().doClick();

            assertThat(desk.titles).containsExactly("Take the composed plan");
            assertThat(stops()).isZero();
            assertThat(view.comparing()).isEmpty();
            desk.undo();
            assertThat(plan()).isEqualTo(before);
        });
    }

    /** The estate's cap is 850: not all that it could have fits. */
    @Test
    void composingKeepsToTheCapAndSaysWhatIsLeftOutAndWhenItIsReady() throws Exception {
        onEvents(() -> {
            act("compose");

            List<String> notes = view.comparing().orElseThrow().notes();
            assertThat(notes)
                    .contains("It grants 7 of 8 wishes, every one that must be among them.")
                    .anySatisfy(note -> assertThat(note).contains("below the cap of"))
                    .anySatisfy(
                            note -> assertThat(note).startsWith("Left out: ").contains(" over the cap"))
                    .anySatisfy(note -> assertThat(note).startsWith("Ready ").contains("wanted by"));
        });
    }

    @Test
    void aPlanKeptAsideIsComparedAndSwapped() throws Exception {
        onEvents(() -> {
            Plan first = plan();
            act("keep");
            choose(ids().get(0));
            press("DELETE");
            act("compare");
            assertThat(desk.notices).hasSize(1);
            ComparePanel panel = view.comparing().orElseThrow();
            assertThat(panel.comparison().rows().get(0).kind()).isEqualTo(Kind.RIGHT_ONLY);
            assertThat(panel.comparison().differences()).isEqualTo(1);
            panel.take().doClick();
            assertThat(plan()).isEqualTo(first);
            act("compare");
            assertThat(view.comparing().orElseThrow().comparison().rows().get(0).kind())
                    .isEqualTo(Kind.LEFT_ONLY);
        });
    }

    @Test
    void theStatesOfAZoneAreShownOnDemand() throws Exception {
        onEvents(() -> {
            assertThat(view.states().table().course()).isEmpty();
            view.show(new Destination("plan", Map.of("zone", "bonnet")));

            StateCourse course = view.states().table().course().orElseThrow();
            assertThat(course.zone()).isEqualTo("bonnet");
            assertThat(course.steps()).isEqualTo(ids());
        });
    }

    @Test
    void aStepIsShownWhenItIsGoneTo() throws Exception {
        onEvents(() -> {
            String last = ids().get(ids().size() - 1);
            view.show(Destination.step(last));
            assertThat(view.table().chosen()).containsExactly(last);
            view.show(Destination.step("nowhere"));
            assertThat(view.table().chosen()).isEmpty();
        });
    }

    @Test
    void anEmptyPlanTakesAFirstStep() throws Exception {
        onEvents(() -> {
            desk.change(
                    "Empty",
                    open -> open.withJob(open.job("green-estate").orElseThrow().withPlan(new Plan(List.of()))));
            assertThat(view.table().getRowCount()).isZero();
            view.stages().search().setText("arrival-check");
            press(view.stages().search(), JComponent.WHEN_FOCUSED, "ENTER");

            assertThat(plan().steps()).hasSize(1);
            assertThat(plan().steps().get(0).zones()).containsExactly("vehicle");
        });
    }

    @Test
    void aStageThatIsGoneIsNamedAndCanBeDropped() throws Exception {
        onEvents(() -> {
            Step lost = new Step(
                    ids().get(3),
                    "no-such-stage",
                    List.of("no-such-zone"),
                    Map.of(),
                    Priority.MUST,
                    Optional.empty(),
                    Map.of());
            desk.change(
                    "Spoil",
                    open -> open.withJob(open.job("green-estate")
                            .map(j -> j.withPlan(j.plan().with(lost)))
                            .orElseThrow()));
            choose(lost.id());
            assertThat(view.step().told().shown())
                    .anySatisfy(told -> assertThat(told.severity()).isEqualTo(Severity.STOP));
            press("DELETE");
            assertThat(ids()).doesNotContain(lost.id());
        });
    }
}
