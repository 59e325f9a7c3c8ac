package baywright.swing.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import baywright.editor.Completion;
import baywright.editor.Rename;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.TestDesk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Texts;
import baywright.swing.library.LibraryContents.Entry;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main ways through the library workbench, by its models and actions. */
class LibraryViewTest {

    private static final String IRON = "stages/decontamination/iron-removal.groovy";

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private TestDesk desk;
    private LibraryView view;

    @BeforeAll
    static void open() throws IOException {
        assumeFalse(GraphicsEnvironment.isHeadless(), "needs a display");
        copy(Path.of("../demo/millrace-works"), folder);
        Path from = Path.of("../stage-scripts");
        Files.copy(from.resolve("items.json"), folder.resolve("items.json"));
        for (String part :
                List.of("states.groovy", "surfaces.groovy", "families.groovy", "facts.groovy", "shapes.json")) {
            Files.createDirectories(folder.resolve("stages"));
            Files.copy(from.resolve(part), folder.resolve("stages").resolve(part));
        }
        copy(from.resolve("decontamination"), folder.resolve("stages/decontamination"));
        shop = OpenShop.open(folder, Clock.systemUTC(), DemoShops.SCRIPTS);
        FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
        FlatLightLaf.setup();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                Files.createDirectories(target.getParent());
                Files.copy(path, target);
            }
        }
    }

    @BeforeEach
    void show() {
        onEventThread(() -> {
            desk = new TestDesk(shop, Optional.empty());
            view = (LibraryView) new LibraryWorkbench().open(desk);
            desk.listen((before, now) -> view.show(now));
            view.show(desk.state());
        });
    }

    private static void onEventThread(Runnable does) {
        try {
            SwingUtilities.invokeAndWait(does);
        } catch (InterruptedException | InvocationTargetException e) {
            throw new AssertionError(e.getCause() == null ? e : e.getCause());
        }
    }

    private void openIron() {
        view.show(Destination.stage("iron-removal"));
    }

    private void type(String what, int at) {
        view.script().area().insert(what, at);
    }

    private int offset(String of) {
        return view.script().text().indexOf(of);
    }

    private String textOf(String file) {
        return desk.state().shop().orElseThrow().texts().get(file);
    }

    @Test
    void theTreeHasEveryStageByFamilyAndEveryKindHasAName() {
        assertThat(view.contents().find("stage", "iron-removal").map(Entry::title))
                .hasValue("Iron fallout removal");
        assertThat(view.contents().groups())
                .anyMatch(g -> g.kind().equals("stage") && g.title().equals("Decontamination"))
                .anyMatch(g -> g.kind().equals("item") && !g.entries().isEmpty())
                .allSatisfy(
                        g -> assertThat(Texts.beside(LibraryView.class, "texts").of("tree.kind." + g.kind()))
                                .isNotBlank());
        assertThat(view.contents().groups().stream()
                        .filter(g -> g.kind().equals("stage"))
                        .mapToInt(g -> g.entries().size())
                        .sum())
                .isEqualTo(shop.site().library().stages().size());
    }

    @Test
    void aSearchFindsTitlesIdsAndWords() {
        assertThat(view.contents().found("fallout").find("stage", "iron-removal"))
                .isPresent();
        assertThat(view.contents().found("IRON-rem").find("stage", "iron-removal"))
                .isPresent();
        assertThat(view.contents().found("sulphide gas").find("stage", "iron-removal"))
                .isPresent();
        assertThat(view.contents().found("zzyzx").count()).isZero();
        onEventThread(() -> view.tree().search().setText("fallout"));
        assertThat(view.tree().tree().getRowCount()).isBetween(2, 6);
    }

    @Test
    void aStageOpensWithItsFigures() {
        onEventThread(() -> {
            openIron();
            view.trial().chooseZones("bonnet");
        });
        assertThat(view.script().file()).isEqualTo(IRON);
        assertThat(view.trial()
                        .trial()
                        .orElseThrow()
                        .step()
                        .orElseThrow()
                        .attendedMinutes()
                        .likely())
                .isEqualByComparingTo("0.9");
        assertThat(view.tree().chosen().map(Entry::id)).hasValue("iron-removal");
    }

    @Test
    void whatIsTypedMovesTheFiguresAndUndoTakesItBack() {
        onEventThread(() -> {
            openIron();
            view.trial().chooseZones("bonnet");
            view.script().area().replaceRange("0.8", offset("0.6.min"), offset("0.6.min") + 3);
        });
        assertThat(textOf(IRON)).contains("0.4.min, 0.8.min, 1.0.min");
        assertThat(view.trial()
                        .trial()
                        .orElseThrow()
                        .step()
                        .orElseThrow()
                        .attendedMinutes()
                        .likely())
                .isEqualByComparingTo("1.2");
        onEventThread(() -> desk.undo());
        assertThat(view.script().text()).isEqualTo(shop.texts().get(IRON));
        assertThat(view.trial()
                        .trial()
                        .orElseThrow()
                        .step()
                        .orElseThrow()
                        .attendedMinutes()
                        .likely())
                .isEqualByComparingTo("0.9");
        onEventThread(() -> desk.redo());
        assertThat(view.script().text()).contains("0.8.min");
    }

    @Test
    void keysOfOneBurstAreOneStepOfUndo() {
        onEventThread(() -> {
            openIron();
            int at = offset("stage(");
            for (char c : "// slower\n".toCharArray()) {
                type(String.valueOf(c), at++);
            }
        });
        assertThat(textOf(IRON)).contains("// slower\nstage(");
        onEventThread(() -> desk.undo());
        assertThat(textOf(IRON)).isEqualTo(shop.texts().get(IRON));
        assertThat(view.script().text()).isEqualTo(shop.texts().get(IRON));
    }

    @Test
    void aMistakeIsMarkedListedAndMended() {
        onEventThread(() -> {
            openIron();
            view.script().area().replaceRange("wahsed", offset("washed"), offset("washed") + 6);
        });
        assertThat(view.script().marked()).extracting(Problem::message).anyMatch(m -> m.contains("'wahsed'"));
        assertThat(view.problems().rows().getModel().getSize()).isPositive();
        assertThat(view.contents().find("stage", "iron-removal").map(Entry::grade))
                .hasValue(LibraryContents.Grade.ERROR);
        assertThat(view.trial().trial())
                .as("the last version without errors still shows")
                .isPresent();
        Problem problem = view.script().marked().stream()
                .filter(p -> p.message().contains("'wahsed'"))
                .findFirst()
                .orElseThrow();
        onEventThread(() -> view.mend(problem));
        assertThat(view.script().text()).isEqualTo(shop.texts().get(IRON));
        assertThat(view.script().marked()).noneMatch(p -> p.message().contains("'wahsed'"));
    }

    @Test
    void theCaretIsToldWhatStandsThere() {
        onEventThread(() -> {
            openIron();
            view.script().area().setCaretPosition(offset("'iron-clear'") + 2);
        });
        assertThat(view.script().atCaret()).startsWith("state 'iron-clear'");
    }

    @Test
    void aProposalIsPutInWithItsSlots() {
        onEventThread(() -> {
            openIron();
            int at = offset("    before {") + "    before {\n".length();
            type("        prefers ''\n", at);
            int caret = at + "        prefers '".length();
            view.script().area().setCaretPosition(caret);
            var proposals =
                    Completion.at(view.script().text(), caret, shop.site().library());
            assertThat(proposals).extracting(p -> p.label()).contains("tar-clear");
            view.script()
                    .take(proposals.stream()
                            .filter(p -> p.label().equals("tar-clear"))
                            .findFirst()
                            .orElseThrow());
        });
        assertThat(textOf(IRON)).contains("prefers 'tar-clear'");
    }

    @Test
    void inputsAreRealControls() {
        onEventThread(() -> {
            openIron();
            view.trial().chooseZones("bonnet");
            ((JSpinner) view.trial().controls().control("passes").orElseThrow()).setValue(2);
        });
        assertThat(view.trial()
                        .trial()
                        .orElseThrow()
                        .step()
                        .orElseThrow()
                        .attendedMinutes()
                        .likely())
                .isEqualByComparingTo("1.8");
    }

    @Test
    void anAmountOutOfBoundsIsRefusedInItsField() {
        onEventThread(() -> {
            openIron();
            String inputs = "measure 'depth', from: 1.um, to: 5.um, usual: 2.um\n        ";
            type(inputs, offset("count 'passes'"));
            JTextField field =
                    (JTextField) view.trial().controls().control("depth").orElseThrow();
            field.setText("9");
            assertThat(view.trial().controls().with()).isEmpty();
            field.setText("3");
            assertThat(view.trial().controls().with()).containsKey("depth");
        });
        assertThat(view.trial().trial().orElseThrow().faults()).isEmpty();
    }

    @Test
    void examplesShowWhatFails() {
        onEventThread(() -> {
            openIron();
            view.bench().setSelectedIndex(1);
        });
        assertThat(view.examples().outcome().orElseThrow().passes()).isTrue();
        onEventThread(() -> view.script().area().replaceRange("0.9", offset("0.6.min"), offset("0.6.min") + 3));
        assertThat(view.examples().outcome().orElseThrow().passes()).isFalse();
    }

    @Test
    void changesAreToldByMeaning() {
        onEventThread(() -> {
            openIron();
            view.bench().setSelectedIndex(2);
        });
        assertThat(view.changes().changes()).isEmpty();
        onEventThread(() -> {
            type("// a remark says nothing new\n", 0);
            view.script().area().replaceRange("0.7", offset("0.6.min"), offset("0.6.min") + 3);
        });
        assertThat(view.changes().changes()).hasSize(1);
        assertThat(view.changes().changes().get(0).now().map(Place::line)).hasValue(24);
        onEventThread(() -> view.changes().against("tar-removal"));
        assertThat(view.changes().changes()).hasSizeGreaterThan(3);
    }

    @Test
    void problemsStayInSightHoweverLongTheScript() {
        onEventThread(() -> {
            JFrame frame = new JFrame();
            frame.add(view.component());
            frame.setSize(1000, 600);
            openIron();
            frame.addNotify();
            frame.validate();
            assertThat(view.problems().getHeight()).isGreaterThan(80);
            assertThat(view.script().area().getHeight()).isGreaterThan(80);
            frame.dispose();
        });
    }

    @Test
    void aStateIsRenamedEverywhereInOneStep() {
        Rename.Subject what = new Rename.Subject(Rename.Kind.STATE, "", "iron-clear");
        onEventThread(() -> {
            openIron();
            assertThat(view.preview(what, "iron-free")).contains(IRON + ": line ");
            assertThat(view.preview(what, "washed")).contains("already there");
            view.rename(what, "iron-free");
        });
        assertThat(textOf(IRON)).contains("sets 'iron-free'");
        assertThat(desk.state().shop().orElseThrow().isSound()).isTrue();
        onEventThread(() -> desk.undo());
        assertThat(desk.state().shop().orElseThrow().unsaved()).isEmpty();
    }

    @Test
    void stagesAreMadeCopiedAndDeletedWithUndo() {
        onEventThread(() -> {
            view.create(new LibraryDialogs.Wish("rinse-again", "Rinse again", "wash", ""));
            assertThat(view.script().file()).isEqualTo("stages/wash/rinse-again.groovy");
            assertThat(view.trial().trial()).isPresent();
            view.copy("rinse-again", "rinse-thrice", "Rinse thrice");
            assertThat(view.contents().find("stage", "rinse-thrice")).isPresent();
            view.delete("rinse-thrice");
            assertThat(view.contents().find("stage", "rinse-thrice")).isEmpty();
            assertThat(view.script().file()).isEmpty();
            desk.undo();
            assertThat(view.contents().find("stage", "rinse-thrice")).isPresent();
            desk.undo();
            desk.undo();
        });
        assertThat(desk.state().shop().orElseThrow().unsaved()).isEmpty();
    }

    @Test
    void anIdComesFromTheTitleAndABadOneIsRefused() {
        LibraryDialogs dialogs = new LibraryDialogs(Texts.beside(LibraryView.class, "texts"));
        assertThat(LibraryDialogs.idOf("  Felgen gründlich (2×) ")).isEqualTo("felgen-grundlich-2");
        assertThat(dialogs.why("Rinse", "rinse", id -> false)).isEmpty();
        assertThat(dialogs.why("", "rinse", id -> false)).isNotEmpty();
        assertThat(dialogs.why("Rinse", "Rinse!", id -> false)).isNotEmpty();
        assertThat(dialogs.why("Rinse", "rinse", id -> true)).contains("rinse");
    }

    @Test
    void layingOutLeavesAWellLaidScriptAlone() {
        onEventThread(() -> {
            openIron();
            view.format();
        });
        assertThat(desk.titles).isEmpty();
        onEventThread(() -> {
            type("   ", offset("title "));
            view.format();
        });
        assertThat(textOf(IRON)).isEqualTo(shop.texts().get(IRON));
    }

    @Test
    void aPlaceInThePriceListIsChosenInTheTree() {
        onEventThread(() -> {
            view.show(new Destination("library", Map.of("item", "ppe-allowance")));
            assertThat(view.tree().chosen()).map(Entry::id).contains("ppe-allowance");
        });
    }

    @Test
    void withoutAShopNothingBreaks() {
        onEventThread(() -> {
            view.show(DeskState.EMPTY);
            view.show(Destination.stage("iron-removal"));
            view.show(Destination.script("stages/none.groovy", 3, 1));
            view.show(new Destination("library", Map.of("file", IRON, "line", "99999999999")));
        });
        assertThat(view.actions()).allSatisfy(a -> assertThat(a.title()).isNotBlank());
        assertThat(List.of(view.focus())).isNotEmpty();
    }
}
