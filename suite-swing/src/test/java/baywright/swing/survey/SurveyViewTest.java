package baywright.swing.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.plan.JobGoal;
import baywright.plan.Step;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.TestDesk;
import baywright.swing.api.Destination;
import baywright.swing.api.Texts;
import baywright.vehicle.Reading;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Job;
import baywright.workspace.Workspace;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SurveyViewTest {

    private static OpenShop shop;

    private TestDesk desk;
    private SurveyView view;

    @BeforeAll
    static void openTheDemo() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless())
                .as("no display: run under xvfb-run")
                .isFalse();
        Path root = Path.of("..");
        Path folder = Files.createTempDirectory("survey");
        Workspace.create(folder, root.resolve("demo/millrace-works"), root.resolve("stage-scripts"));
        shop = OpenShop.open(folder, Clock.systemUTC(), DemoShops.SCRIPTS);
        SwingUtilities.invokeAndWait(() -> {
            FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
            FlatLightLaf.setup();
        });
    }

    @BeforeEach
    void showTheEstate() throws Exception {
        doing(() -> {
            desk = new TestDesk(shop, Optional.of("green-estate"));
            view = new SurveyView(desk, Texts.beside(SurveyView.class, "texts"));
            desk.listen((before, now) -> view.show(now));
            view.show(desk.state());
            view.show(Destination.zone("rear-door-left"));
        });
    }

    private static void doing(Executable work) throws Exception {
        asking(() -> {
            try {
                work.execute();
            } catch (Exception | Error e) {
                throw e;
            } catch (Throwable e) {
                throw new AssertionError(e);
            }
            return null;
        });
    }

    private static <T> T asking(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeAndWait(task);
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e;
        }
    }

    private Job job() {
        return desk.state().job().orElseThrow();
    }

    private ZoneSurvey found(String zone) {
        return job().survey().zone(zone);
    }

    @Test
    void readingsAreShownAndThoseThatStayKeepWhereTheyCameFrom() throws Exception {
        List<Reading> before = found("rear-door-left").readings();
        doing(() -> {
            assertThat(view.zonePanel().readings().field().getText()).isEqualTo("93  88  97  95  101");
            view.zonePanel().readings().type("93 88\n97 95; 101 96.5");
        });
        List<Reading> now = found("rear-door-left").readings();
        assertThat(now.subList(0, 5)).isEqualTo(before);
        assertThat(now.get(5).micrometres()).isEqualByComparingTo("96.5");
        assertThat(now.get(5).source()).isEqualTo("entered by hand");
        doing(desk::undo);
        assertThat(found("rear-door-left").readings()).isEqualTo(before);
        assertThat(asking(() -> view.zonePanel().readings().field().getText())).isEqualTo("93  88  97  95  101");
    }

    @Test
    void whatIsNoThicknessStaysInTheFieldAndNothingIsLost() throws Exception {
        List<Reading> before = found("rear-door-left").readings();
        doing(() -> {
            view.zonePanel().readings().type("93 88 9o");
            assertThat(view.zonePanel().readings().trouble()).contains("9o").contains("above 0");
            view.show(Destination.zone("roof"));
            assertThat(view.zonePanel().readings().trouble()).isEmpty();
            view.show(Destination.zone("rear-door-left"));
            assertThat(view.zonePanel().readings().field().getText()).isEqualTo("93 88 9o");
            assertThat(view.zonePanel().readings().trouble()).contains("9o");
        });
        assertThat(found("rear-door-left").readings()).isEqualTo(before);
        assertThat(desk.titles).isEmpty();
    }

    @Test
    void inMilTheExactAmountsStay() throws Exception {
        List<Reading> before = found("rear-door-left").readings();
        doing(() -> {
            desk.settings().put("suite.units.film", "mil");
            view.show(desk.state());
        });
        String shown =
                asking(() -> new TypedReadings(desk.readout(), Texts.beside(SurveyView.class, "texts")).shown(before));
        assertThat(new TypedReadings(desk.readout(), Texts.beside(SurveyView.class, "texts")).read(shown, before))
                .isEqualTo(before);
    }

    @Test
    void severalZonesGetAFindingAtOnce() throws Exception {
        doing(() -> {
            view.vehicleView().orElseThrow().choose(List.of("bonnet", "roof"));
            view.show(desk.state());
            view.zonePanel().facts().choose("repaint", "none");
            view.zonePanel().states().add("tar-clear");
            view.zonePanel().notes().type("stone chips\n\n etched by birds ");
            view.zonePanel().counts().type("chip 12, dent 2");
        });
        for (String zone : List.of("bonnet", "roof")) {
            assertThat(found(zone).facts()).containsEntry("repaint", "none");
            assertThat(found(zone).states()).containsExactly("tar-clear");
            assertThat(found(zone).notes()).containsExactly("stone chips", "etched by birds");
            assertThat(found(zone).counts())
                    .isEqualTo(Map.of("chip", BigDecimal.valueOf(12), "dent", BigDecimal.valueOf(2)));
        }
        assertThat(found("rear-door-left").notes()).containsExactly("thin: 88 at the lowest");
        doing(() -> Stream.of(1, 2, 3, 4).forEach(i -> desk.undo()));
        assertThat(found("bonnet").facts()).isEmpty();
        assertThat(desk.state().shop().orElseThrow().unsaved()).isEmpty();
    }

    @Test
    void aPastedFileIsLookedAtBeforeItIsTaken() throws Exception {
        doing(() -> {
            ImportPanel panel = view.preview("zone,um\nroof,120\nroof,124\nbonnet,118\n");
            assertThat(panel.understood()).isEqualTo(2);
            assertThat(desk.titles).isEmpty();
            panel.addToThoseBefore();
            panel.takeButton().doClick();
        });
        assertThat(found("roof").readings()).hasSize(11);
        assertThat(found("bonnet").readings()).hasSize(10);
        doing(desk::undo);
        assertThat(found("roof").readings()).hasSize(9);
    }

    @Test
    void whatIsWrongWithAFileIsSaidByLineAndColumn() throws Exception {
        doing(() -> {
            ImportPanel panel = view.preview("zone,um\nrooff,120\nbonnet,many\n");
            assertThat(panel.problems()).contains("clipboard:2:1").contains("clipboard:3:8");
            assertThat(panel.takeButton().isEnabled()).isFalse();
        });
    }

    @Test
    void aFileWithoutAUnitCanBeHelped() throws Exception {
        doing(() -> {
            ImportPanel panel = view.preview("zone,reading\nroof,120\n");
            assertThat(panel.takeButton().isEnabled()).isFalse();
            panel.unit().setSelectedIndex(1);
            assertThat(panel.takeButton().isEnabled()).isTrue();
        });
    }

    @Test
    void aVehicleNumberIsHeldToItsForm() throws Exception {
        doing(() -> {
            view.vehiclePanel().vin().type("1G4AH59H45G11834");
            assertThat(view.vehiclePanel().vin().trouble()).contains("17 characters");
            // The worked example of 49 CFR 565.15(c), which asks for 4, and the same with another check digit.
            view.vehiclePanel().vin().type("1g4ah59h45g118341");
            assertThat(view.vehiclePanel().vin().trouble()).isEmpty();
            assertThat(view.vehiclePanel().vinNote()).isEmpty();
            view.vehiclePanel().vin().type("1G4AH59H15G118341");
            assertThat(view.vehiclePanel().vinNote()).contains("4");
        });
        assertThat(job().vehicle().vin().orElseThrow().text()).isEqualTo("1G4AH59H15G118341");
    }

    @Test
    void timesAndCapAreRefusedInOneSentence() throws Exception {
        doing(() -> {
            view.jobPanel().wanted().type("tomorrow");
            assertThat(view.jobPanel().wanted().trouble()).contains("2026-12-07 08:00");
            view.jobPanel().wanted().type("2026-12-01 08:00");
            assertThat(view.jobPanel().wanted().trouble()).contains("before it comes");
            view.jobPanel().cap().type("85O");
            assertThat(view.jobPanel().cap().trouble()).contains("85O");
            view.jobPanel().cap().type("900.50");
            assertThat(view.jobPanel().title().trouble()).isEmpty();
        });
        assertThat(job().cap().orElseThrow()).isEqualByComparingTo("900.5");
        assertThat(job().wanted())
                .isEqualTo(shop.job("green-estate").orElseThrow().wanted());
    }

    @Test
    void goalsAreAddedFromTheLibrary() throws Exception {
        int before = job().goals().size();
        doing(() -> view.jobPanel().moreGoals().choose("engine-bay-clean"));
        assertThat(job().goals()).hasSize(before + 1);
        assertThat(job().goals().get(before)).isEqualTo(JobGoal.of("engine-bay-clean", Step.Priority.MUST));
    }

    @Test
    void aNewJobIsEmptyAndSaysWhatToDo() throws Exception {
        doing(() -> {
            NewJob.add(desk, Texts.beside(SurveyView.class, "texts"), "Müller, estate", "estate");
            assertThat(view.saysThatNothingIsRead()).isTrue();
            view.show(Destination.zone("roof"));
            view.zonePanel().readings().type("120");
            assertThat(view.saysThatNothingIsRead()).isFalse();
        });
        assertThat(job().id()).isEqualTo("muller-estate");
        assertThat(job().rate()).isPresent();
    }

    @Test
    void aCopyHasAnIdOfItsOwn() throws Exception {
        doing(() -> NewJob.copy(desk, Texts.beside(SurveyView.class, "texts")));
        assertThat(job().survey())
                .isEqualTo(shop.job("green-estate").orElseThrow().survey());
        assertThat(job().id()).isNotEqualTo("green-estate");
    }

    @Test
    void withoutAJobThereIsNothingToShow() throws Exception {
        doing(() -> {
            TestDesk empty = new TestDesk();
            SurveyView other = new SurveyView(empty, Texts.beside(SurveyView.class, "texts"));
            other.show(empty.state());
            other.show(Destination.zone("roof"));
            assertThat(other.vehicleView()).isEmpty();
        });
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        doing(() -> assertThat(everything(view.component())
                        .filter(c ->
                                c instanceof AbstractButton || c instanceof JComboBox || c instanceof JTextComponent)
                        .filter(Component::isFocusable)
                        .filter(c -> !c.getClass().getName().contains("flatlaf"))
                        .filter(c -> !(c.getParent() instanceof JComboBox))
                        .filter(c -> ((Accessible) c).getAccessibleContext().getAccessibleName() == null))
                .isEmpty());
    }

    private static Stream<Component> everything(Container container) {
        return Stream.of(container.getComponents())
                .flatMap(c ->
                        c instanceof Container inner ? Stream.concat(Stream.of(c), everything(inner)) : Stream.of(c));
    }
}
