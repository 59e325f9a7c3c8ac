package baywright.swing.shell;

import static baywright.swing.Screen.everything;
import static baywright.swing.Screen.on;
import static baywright.swing.Screen.run;
import static baywright.swing.Screen.until;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.swing.DemoShops;
import baywright.swing.Screen;
import baywright.swing.api.ApiVersion;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShellWindowTest {

    @TempDir
    private Path folder;

    private Suite suite;

    @BeforeAll
    static void onlyWithADisplay() throws Exception {
        Screen.needed();
        run(Look.LIGHT::apply);
    }

    @BeforeEach
    void show() throws Exception {
        suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                DemoShops.SCRIPTS,
                UserSettings.inMemory(),
                Optional.of(folder.resolve("settings")),
                Optional.of(Path.of("..").toAbsolutePath().normalize()),
                Locale.UK));
        suite.start(ServiceLoader.load(SuitePlugin.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList());
        run(() -> suite.makeWindow().setVisible(true));
    }

    @AfterEach
    void close() throws Exception {
        run(() -> suite.window().dispose());
    }

    private void openTheDemo() throws Exception {
        Path shop = DemoShops.copy("millrace-works", folder.resolve("shop"));
        run(() -> suite.open(shop));
        until(() -> suite.desk().state().worked().isPresent() && !suite.isBusy());
    }

    @Test
    void aWorkspaceIsReadAndEveryWorkbenchShowsIt() throws Exception {
        openTheDemo();
        assertThat(on(() -> suite.window().getTitle()))
                .contains("Baywright")
                .contains(on(
                        () -> suite.desk().state().shop().orElseThrow().shop().name()));
        for (String workbench : suite.workbenches()) {
            run(() -> suite.show(workbench));
            assertThat(on(() -> suite.window().current())).isEqualTo(workbench);
        }
        assertThat(on(() -> suite.window().notices().notices())).isEmpty();
    }

    /** A new shop must not be a dead end: nothing can be chosen in the bar on top. */
    @Test
    void aShopWithoutJobsOffersToBeginOne() throws Exception {
        Path shop = DemoShops.copyWithoutJobs("millrace-works", folder.resolve("shop"));
        run(() -> suite.open(shop));
        until(() -> suite.desk().state().shop().isPresent() && !suite.isBusy());
        run(() -> suite.show("survey"));
        assertThat(on(() -> everything(suite.window())
                        .filter(c -> c instanceof AbstractButton && c.isShowing())
                        .map(c -> ((AbstractButton) c).getText())
                        .toList()))
                .contains("Begin a job…");
        assertThat(on(() -> suite.window().allActions().stream()
                        .map(SuiteAction::id)
                        .toList()))
                .contains("new-job");
    }

    @Test
    void aWorkspaceThatCannotBeReadSaysWhy() throws Exception {
        Path shop = DemoShops.copy("millrace-works", folder.resolve("shop"));
        Files.writeString(shop.resolve("shop.json"), "{");
        run(() -> suite.open(shop));
        until(() -> text().contains("shop.json:1:2"));
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        openTheDemo();
        for (String workbench : suite.workbenches()) {
            run(() -> suite.show(workbench));
            assertThat(on(() -> everything(suite.window())
                            .filter(c -> c instanceof AbstractButton
                                    || c instanceof JTable
                                    || c instanceof JList
                                    || c instanceof JComboBox)
                            .filter(c -> !c.getClass().getName().contains("flatlaf")
                                    && !c.getClass().getName().startsWith("javax.swing.plaf"))
                            .filter(Component::isFocusable)
                            .filter(c -> ((Accessible) c).getAccessibleContext().getAccessibleName() == null)
                            .toList()))
                    .as(workbench)
                    .isEmpty();
        }
    }

    @Test
    void aSecondPluginWithTheSameIdIsRefusedAndTheRestGoesOn() throws Exception {
        suite.start(List.of(new Named("one", "act"), new Named("one", "other"), new Named("two", "act")));
        until(() -> suite.window().notices().notices().size() == 2);
        assertThat(suite.host().actions())
                .extracting(SuiteAction::id)
                .contains("act")
                .doesNotContain("other");
    }

    @Test
    void aPluginThatThrowsOrWantsANewerInterfaceIsLeftOut() throws Exception {
        suite.start(List.of(
                new Named("late", "late") {
                    @Override
                    public PluginInfo info() {
                        return new PluginInfo("late", "Late", "1", new ApiVersion(99, 0));
                    }
                },
                new Named("broken", "broken") {
                    @Override
                    public void start(PluginContext context) {
                        super.start(context);
                        throw new IllegalStateException("meant to break");
                    }
                }));
        until(() -> suite.window().notices().notices().size() == 2);
        assertThat(suite.host().actions()).extracting(SuiteAction::id).doesNotContain("late", "broken");
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        everything(suite.window()).forEach(c -> {
            if (c instanceof JTextArea area) {
                text.append(area.getText()).append('\n');
            }
        });
        return text.toString();
    }

    /** Brings one action. */
    private static class Named implements SuitePlugin {

        private final String id;
        private final String action;

        Named(String id, String action) {
            this.id = id;
            this.action = action;
        }

        @Override
        public PluginInfo info() {
            return new PluginInfo(id, id, "1", ApiVersion.CURRENT);
        }

        @Override
        public void start(PluginContext context) {
            context.add(SuiteAction.of(action, action, desk -> {}));
        }
    }
}
