package baywright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.swing.api.ApiVersion;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.PluginContext;
import baywright.swing.api.PluginInfo;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.shell.Suite;
import baywright.swing.shell.UserSettings;
import java.awt.Graphics;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.ImageIcon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher does once after a build, so that the window starts from an archive of classes. */
class RehearsalTest {

    @TempDir
    private Path folder;

    private Path shop;

    @BeforeEach
    void demo() throws Exception {
        shop = DemoShops.copy("millrace-works", folder.resolve("shop"));
    }

    /** A workbench that counts how often it is painted with a worked job. */
    private static final class Probe implements SuitePlugin, Workbench, WorkbenchView {

        private final boolean broken;
        private int painted;
        private DeskState shown;

        Probe(boolean broken) {
            this.broken = broken;
        }

        @Override
        public PluginInfo info() {
            return new PluginInfo("probe", "probe", "1", new ApiVersion(1, 0));
        }

        @Override
        public void start(PluginContext suite) {
            suite.add(this);
        }

        @Override
        public String id() {
            return "probe";
        }

        @Override
        public String title() {
            return "Probe";
        }

        @Override
        public Icon icon() {
            return new ImageIcon();
        }

        @Override
        public int order() {
            return 1;
        }

        @Override
        public WorkbenchView open(Desk desk) {
            return this;
        }

        @Override
        public JComponent component() {
            return new JPanel() {
                private static final long serialVersionUID = 1L;

                @Override
                protected void paintComponent(Graphics g) {
                    painted++;
                }
            };
        }

        @Override
        public void show(DeskState state) {
            if (broken) {
                throw new IllegalStateException("the probe is broken");
            }
            shown = state;
        }
    }

    private Suite suite(Probe probe) {
        Suite suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                DemoShops.SCRIPTS,
                UserSettings.inMemory(),
                Optional.empty(),
                Optional.empty(),
                Locale.UK));
        suite.start(List.of(probe));
        return suite;
    }

    @Test
    void eachWorkbenchIsPaintedWithTheFirstJobWorkedOut() throws Exception {
        Probe probe = new Probe(false);

        suite(probe).rehearse(shop);

        assertThat(probe.painted).isEqualTo(1);
        assertThat(probe.shown.worked()).isPresent();
    }

    @Test
    void whatBreaksIsNotHidden() {
        assertThatThrownBy(() -> suite(new Probe(true)).rehearse(shop))
                .isInstanceOf(InvocationTargetException.class)
                .hasRootCauseMessage("the probe is broken");
    }

    @Test
    void theSuitesOwnWorkbenchesAreAllShown() {
        new SuiteOpener().rehearse(shop);
    }
}
