package baywright.swing.shell;

import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.Screen;
import baywright.swing.TestDesk;
import baywright.workspace.Workspace;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewShopFormTest {

    @TempDir
    private Path home;

    private final List<Path> made = new ArrayList<>();
    private NewShopForm form;

    @BeforeAll
    static void onlyWithADisplay() throws Exception {
        Screen.needed();
        run(Look.LIGHT::apply);
    }

    @BeforeEach
    void show() throws Exception {
        form = on(() -> new NewShopForm(
                new TestDesk(), Path.of("..", "stage-scripts").toAbsolutePath(), home, Locale.UK, made::add));
    }

    private void type(String path, String text) throws Exception {
        run(() -> form.field(path).setText(text));
    }

    @Test
    void aShopIsMadeBelowItsNameAndHandedOn() throws Exception {
        type("name", "Mill Lane");
        type("people[0].name", "Ilse Brandmoor");
        type("rates.wage", "17.50");
        assertThat(on(() -> form.folder().getText()))
                .isEqualTo(home.resolve("mill-lane").toString());
        run(form::make);
        until(() -> !made.isEmpty());
        Workspace workspace = Workspace.open(home.resolve("mill-lane"));
        assertThat(workspace.problems()).isEmpty();
        assertThat(workspace.shop().orElseThrow().rates().wage()).isEqualByComparingTo("17.50");
    }

    @Test
    void nothingIsMadeWhileSomethingIsWrongAndEachFieldSaysWhatItIs() throws Exception {
        assertThat(form.wrong("name")).isEmpty();
        type("hours.monday", "noon");
        type("bays[1].kind", "lit, Größe");
        run(form::make);
        assertThat(form.wrong("name")).contains("give a text");
        assertThat(form.wrong("people[0].name")).isNotEmpty();
        assertThat(form.wrong("hours.monday")).contains("08:00-12:00");
        assertThat(form.wrong("bays[1].kind")).contains("is no id");
        assertThat(form.wrong("currency")).isEmpty();
        type("name", "Mill Lane");
        assertThat(form.wrong("name")).isEmpty();
        assertThat(home).isEmptyDirectory();
    }

    @Test
    void aFolderThatCannotBeUsedIsSaidAndTheFormStays() throws Exception {
        type("name", "Mill Lane");
        type("people[0].name", "Ilse Brandmoor");
        Files.writeString(home.resolve("mill-lane"), "a file");
        run(form::make);
        until(() -> !form.wrong("folder").isEmpty());
        assertThat(form.wrong("folder")).contains("mill-lane");
        assertThat(on(() -> form.button().isEnabled())).isTrue();
        run(() -> form.folder().setText("not/absolute"));
        run(form::make);
        assertThat(form.wrong("folder")).contains("whole path");
        assertThat(made).isEmpty();
    }
}
