package baywright.swing.safety;

import static baywright.swing.Screen.everything;
import static baywright.swing.Screen.run;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Plan;
import baywright.safety.Caution;
import baywright.safety.DoseShare;
import baywright.safety.JobSafety;
import baywright.safety.SafetyReport;
import baywright.safety.Statements;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.SuiteAction;
import baywright.swing.parts.TrailLine;
import baywright.workspace.Job;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafetyViewTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate TUESDAY = LocalDate.of(2026, 12, 8);

    @TempDir
    private static Path folder;

    private static OpenShop millrace;

    private TestDesk desk;
    private SafetyView view;

    @BeforeAll
    static void openTheDemo() throws Exception {
        Screen.needed();
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
        millrace = OpenShop.open(DemoShops.copy("millrace-works", folder.resolve("m")), CLOCK, DemoShops.SCRIPTS);
    }

    private void open(OpenShop shop, String job) {
        desk = new TestDesk(shop, Optional.of(job));
        view = new SafetyView(desk);
        desk.listen((before, now) -> view.show(now));
        view.show(desk.state());
    }

    private Job job() {
        return desk.state().job().orElseThrow();
    }

    private SafetyReport report() {
        return desk.state().worked().orElseThrow().safety();
    }

    /** The estate with a machine of 9.4 m/s² in hand for its compounding. */
    private static OpenShop withAHardMachine() {
        Job estate = millrace.job("green-estate").orElseThrow();
        JobSafety.StepSafety hard = new JobSafety.StepSafety(0, Optional.of(new BigDecimal("9.4")), Optional.empty());
        JobSafety safety = estate.safety().with("s26", hard).with("s27", hard);
        return millrace.withJob(estate.withPlan(estate.plan(), safety));
    }

    /** The estate with paint that nobody knows, whose dust somebody must answer for. */
    private static OpenShop withUnknownPaint() {
        Job estate = millrace.job("green-estate").orElseThrow();
        return millrace.withJob(estate.withSurvey(estate.survey().withFact("paint", "unknown")));
    }

    @Test
    void eachDoseIsShownWithItsFigureItsWordAndItsSources() throws Exception {
        run(() -> {
            open(withAHardMachine(), "green-estate");
            assertThat(desk.notices).isEmpty();
            assertThat(view.shown()).isEqualTo("work");
            List<String> names = view.doses().rows().stream()
                    .map(row -> row.getAccessibleContext().getAccessibleName())
                    .toList();
            assertThat(names)
                    .contains("8 December 2026, person 1: Vibration, A(8), 5.1 m/s², above the limit")
                    .contains("8 December 2026, person 1: Noise, LEX,8h, 82.2 dB(A), above lower action value");
            List<TrailLine> trail = view.doses().rows().get(names.size() - 3).trail();
            assertThat(trail).extracting(TrailLine::to).contains(Optional.of(Destination.step("s27")));
            assertThat(trail)
                    .extracting(TrailLine::text)
                    .anySatisfy(text -> assertThat(text).contains("9.4 m/s²"))
                    .anySatisfy(text -> assertThat(text).contains("Limit 5 m/s²"))
                    .anySatisfy(text -> assertThat(text).contains("stages/arrival/trial-section.groovy"));
        });
    }

    @Test
    void eachWayOutIsOneChangeThatGivesWhatItSays() throws Exception {
        run(() -> {
            open(withAHardMachine(), "green-estate");
            Job before = job();
            assertThat(view.ways().buttons())
                    .extracting(AbstractButton::getText)
                    .containsExactly("Share it", "Spread it over days", "Change the tool");
            for (int way = 0; way < 3; way++) {
                String said = view.ways().shown().get(way);
                view.ways().buttons().get(way).doClick();
                String then = desk.readout()
                        .number(
                                BigDecimal.valueOf(DoseShare.worst(
                                                report().days(),
                                                desk.state()
                                                        .worked()
                                                        .orElseThrow()
                                                        .safe()
                                                        .settings())
                                        .orElseThrow()
                                        .value()),
                                1);
                assertThat(said).contains("A(8) " + then + " m/s², now 5.1, limit 5");
                assertThat(desk.titles).hasSize(way + 1);
                desk.undo();
                assertThat(job()).isEqualTo(before);
            }
        });
    }

    @Test
    void aWayForAPlanThatHasBeenEditedMeanwhileDoesNothing() throws Exception {
        run(() -> {
            open(withAHardMachine(), "green-estate");
            AbstractButton share = view.ways().buttons().get(0);
            desk.change(
                    "edit",
                    shop -> shop.withJob(
                            job().withPlan(new Plan(job().plan().steps().subList(0, 5)))));
            Job edited = job();
            share.doClick();
            assertThat(job()).isEqualTo(edited);
        });
    }

    @Test
    void aNamedPersonAnswersForACautionAndTakesItBack() throws Exception {
        run(() -> {
            open(withUnknownPaint(), "green-estate");
            assertThat(view.cautions().open()).isEqualTo(1);
            CautionsPanel.Form form = view.cautions().form(Caution.UNKNOWN_DUST);
            assertThat(form.name().getText()).isEmpty();
            assertThat(form.day().getText()).isEmpty();
            form.answer();
            assertThat(form.trouble()).startsWith("Type the name");
            form.name().setText("Maren Thistlewick");
            form.answer();
            assertThat(form.trouble()).startsWith("Type the day");
            form.day().setText("1875-02-30");
            form.answer();
            assertThat(form.trouble()).startsWith("Type the day");
            form.day().setText("1875-02-28");
            form.answer();
            assertThat(form.trouble()).contains("2000 to 2100");
            assertThat(desk.titles).isEmpty();
            form.day().setText("2026-12-07 08:20");
            form.answer();
            assertThat(job().safety().acknowledged("unknown-dust").orElseThrow())
                    .isEqualTo(new JobSafety.Acknowledgement(
                            "unknown-dust", "Maren Thistlewick", LocalDateTime.of(2026, 12, 7, 8, 20)));
            assertThat(view.cautions().open()).isZero();
            assertThat(report().holds()).isTrue();
            desk.undo();
            assertThat(view.cautions().open()).isEqualTo(1);
            assertThat(view.cautions().form(Caution.UNKNOWN_DUST).name().getText())
                    .isEmpty();
            desk.redo();
            everything(view.cautions())
                    .filter(c -> c instanceof AbstractButton b && b.getText().startsWith("Take the answer"))
                    .map(AbstractButton.class::cast)
                    .forEach(AbstractButton::doClick);
            assertThat(view.cautions().open()).isGreaterThan(0);
            assertThat(report().holds()).isFalse();
        });
    }

    @Test
    void whatWasTypedForACautionStaysWhileOtherThingsChange() throws Exception {
        run(() -> {
            open(withUnknownPaint(), "green-estate");
            view.cautions().form(Caution.UNKNOWN_DUST).name().setText("Maren");
            ClimatePanel.Day day = view.climate().day(TUESDAY);
            day.air().setText("18");
            day.humidity().setText("50");
            day.take(true);
            assertThat(desk.titles).hasSize(1);
            assertThat(view.cautions().form(Caution.UNKNOWN_DUST).name().getText())
                    .isEqualTo("Maren");
        });
    }

    @Test
    void airAndSurfaceAreTypedByDayAndJudged() throws Exception {
        run(() -> {
            open(millrace, "green-estate");
            ClimatePanel.Day day = view.climate().day(TUESDAY);
            day.air().setText("14");
            day.take(false);
            assertThat(day.trouble()).isEmpty();
            assertThat(desk.titles).isEmpty();
            day.take(true);
            assertThat(day.trouble()).startsWith("Type both");
            day.humidity().setText("8o");
            day.take(false);
            assertThat(day.trouble()).contains("'8o' is no number");
            day.humidity().setText("180");
            day.take(false);
            assertThat(day.trouble()).contains("at most 100");
            assertThat(job().safety().climate()).isEmpty();
            day.humidity().setText("85");
            day.surface().setText("12.5");
            day.take(false);
            assertThat(job().safety().climateOf(TUESDAY))
                    .contains(new JobSafety.DayClimate(
                            TUESDAY,
                            BigDecimal.valueOf(14),
                            BigDecimal.valueOf(85),
                            Optional.of(new BigDecimal("12.5"))));
            assertThat(day.found().shown())
                    .anySatisfy(text -> assertThat(text).contains("12.5 °C").contains("bound is 15 °C"));
            assertThat(desk.titles).hasSize(1);
            desk.undo();
            assertThat(day.air().getText()).isEmpty();
            desk.redo();
            assertThat(day.surface().getText()).isEqualTo("12.5");
            day.air().setText("");
            day.humidity().setText("");
            day.surface().setText("");
            day.take(false);
            assertThat(job().safety().climate()).isEmpty();
        });
    }

    /** A kelvin has 1.8 degrees of Fahrenheit and water freezes at 32 of them; both by definition. */
    @Test
    void temperaturesAreTypedInTheUnitsThatAreShown() throws Exception {
        run(() -> {
            open(millrace, "green-estate");
            desk.settings().put("suite.units.temperature", "fahrenheit");
            view.show(desk.state());
            ClimatePanel.Day day = view.climate().day(TUESDAY);
            day.air().setText("68");
            day.humidity().setText("50");
            day.take(true);
            assertThat(job().safety().climateOf(TUESDAY).orElseThrow().temperature())
                    .isEqualByComparingTo("20");
            assertThat(day.air().getText()).isEqualTo("68");
            day.surface().setText("-4");
            day.take(true);
            assertThat(job().safety().climateOf(TUESDAY).orElseThrow().surface().orElseThrow())
                    .isEqualByComparingTo("-20");
        });
    }

    @Test
    void productsSpeakTheChosenLanguage() throws Exception {
        run(() -> {
            open(millrace, "green-estate");
            assertThat(view.products().titles()).isNotEmpty();
            for (String language : Statements.LANGUAGES) {
                view.languages().setSelectedItem(language);
                String eyes = Statements.in(Locale.forLanguageTag(language))
                        .text("H319")
                        .orElseThrow();
                assertThat(view.products().shown().products())
                        .flatExtracting(p -> p.statements())
                        .contains("H319 " + eyes);
            }
            assertThat(everything(view.products())
                            .filter(JTextComponent.class::isInstance)
                            .map(c -> ((JTextComponent) c).getText()))
                    .anySatisfy(text -> assertThat(text).contains("oogirritatie"));
        });
    }

    @Test
    void theAdviceStaysInSightWhateverIsShown() throws Exception {
        run(() -> {
            open(millrace, "green-estate");
            assertThat(advice()).isTrue();
            desk.change("empty", shop -> shop.withJob(job().withPlan(new Plan(List.of()))));
            assertThat(view.shown()).isEqualTo("empty");
            assertThat(advice()).isTrue();
            desk.undo();
            assertThat(view.shown()).isEqualTo("work");
            DeskState now = desk.state();
            view.show(new DeskState(now.shop(), now.jobId(), Optional.empty(), List.of(), false, false));
            assertThat(view.shown()).isEqualTo("unread");
            view.show(DeskState.EMPTY);
            assertThat(view.shown()).isEqualTo("wait");
            assertThat(advice()).isTrue();
        });
    }

    private boolean advice() {
        return everything(view.component())
                .anyMatch(c -> c instanceof JTextComponent text
                        && text.getText()
                                .contains("Check the current safety data sheet; local law and licensed practice rule"));
    }

    @Test
    void theHazardSheetIsOneStepAway() throws Exception {
        run(() -> {
            open(millrace, "green-estate");
            view.languages().setSelectedItem("de");
            SuiteAction sheet = view.actions().get(0);
            sheet.does().accept(desk);
            assertThat(desk.destinations)
                    .containsExactly(new Destination("papers", Map.of("paper", "hazards", "language", "de")));
        });
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        run(() -> {
            open(withUnknownPaint(), "green-estate");
            assertThat(everything(view.component())
                            .filter(c -> c instanceof AbstractButton
                                    || c instanceof JComboBox
                                    || c instanceof JTextComponent
                                    || c instanceof DosePanel.Row)
                            .filter(Component::isFocusable)
                            .filter(c -> !c.getClass().getName().contains("flatlaf"))
                            .filter(c -> !(c.getParent() instanceof JComboBox))
                            .filter(c -> ((Accessible) c).getAccessibleContext().getAccessibleName() == null))
                    .isEmpty();
        });
    }
}
