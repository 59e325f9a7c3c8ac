package baywright.swing.library;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.site.OpenShop;
import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.swing.api.Texts;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuidePaneTest {

    private static final String FILE = "stages/arrival/bug-removal.groovy";
    private static final List<String> TERMS =
            List.of("states.groovy", "surfaces.groovy", "families.groovy", "facts.groovy");

    @TempDir
    private static Path folder;

    private static OpenShop shop;

    private TestDesk desk;
    private LibraryView view;
    private GuidePane guide;

    /** The terms of the library without its stages, which loads fast. */
    @BeforeAll
    static void open() throws Exception {
        Screen.needed();
        run(() -> {
            FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
            FlatLightLaf.setup();
        });
        DemoShops.copy("millrace-works", folder.resolve("shop"));
        try (Stream<Path> all = Files.walk(folder.resolve("shop/stages"))) {
            for (Path script : all.filter(p -> p.toString().endsWith(".groovy")).toList()) {
                if (!TERMS.contains(script.getFileName().toString())) {
                    Files.delete(script);
                }
            }
        }
        shop = OpenShop.open(folder.resolve("shop"), Clock.systemUTC(), DemoShops.SCRIPTS);
    }

    @BeforeEach
    void show() throws Exception {
        run(() -> {
            desk = new TestDesk(shop);
            view = (LibraryView) new LibraryWorkbench().open(desk);
            guide = new GuidePane(desk, Texts.beside(LibraryView.class, "texts"), shop, DemoShops.SCRIPTS, view::take);
        });
    }

    private GuidePane.Page page() throws Exception {
        return on(guide::page);
    }

    private void answerAll() throws Exception {
        run(() -> guide.title().setText("Bug removal"));
        run(guide::next);
        run(() -> guide.surfaces().get("paint").doClick());
        run(guide::next);
        run(guide::next);
        run(() -> guide.choose("tar-solvent"));
        run(guide::next);
        run(guide::next);
        run(() -> guide.sets().get("tar-clear").doClick());
        run(guide::next);
        until(() -> guide.nextButton().isEnabled());
    }

    @Test
    void answersBecomeAStageThatPassesTheCheckAndIsSavedWithUndo() throws Exception {
        run(() -> guide.choose("nothing of that name"));
        answerAll();
        assertThat(page()).isEqualTo(GuidePane.Page.TRIAL);
        assertThat(guide.script()).contains("from 'tar-solvent'", "sets 'tar-clear'", "example ");
        assertThat(desk.state().shop().orElseThrow().texts()).doesNotContainKey(FILE);
        run(guide::next);
        OpenShop with = desk.state().shop().orElseThrow().reloaded(DemoShops.SCRIPTS);
        assertThat(with.isSound()).isTrue();
        assertThat(with.site().library().stageById()).containsKey("bug-removal");
        assertThat(desk.saves).isEqualTo(1);
        assertThat(view.script().file()).isEqualTo(FILE);
        run(desk::undo);
        assertThat(desk.state().shop().orElseThrow().texts()).doesNotContainKey(FILE);
    }

    @Test
    void aPageIsNotLeftWhileSomethingOnItIsWrong() throws Exception {
        run(guide::next);
        assertThat(page()).isEqualTo(GuidePane.Page.NAME);
        assertThat(guide.wrong()).isNotBlank();
        run(() -> guide.title().setText("Bug removal"));
        assertThat(guide.wrong()).isBlank();
        run(guide::next);
        run(guide::next);
        assertThat(page()).isEqualTo(GuidePane.Page.WHERE);
        run(() -> guide.surfaces().get("glass").doClick());
        run(guide::next);
        run(() -> guide.likely().setText("soon"));
        run(guide::next);
        assertThat(page()).isEqualTo(GuidePane.Page.TIME);
        run(guide::back);
        assertThat(page()).isEqualTo(GuidePane.Page.WHERE);
        assertThat(guide.script()).contains("worksOn 'glass'").doesNotContain("attended");
    }
}
