package baywright.swing;

import baywright.cli.WindowOpener;
import baywright.library.ScriptCache;
import baywright.swing.api.SuitePlugin;
import baywright.swing.shell.Look;
import baywright.swing.shell.Suite;
import baywright.swing.shell.UserSettings;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** Opens the window for the command line. */
public final class SuiteOpener implements WindowOpener {

    @Override
    public boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    @Override
    public void open(Optional<Path> workspace, Path home) {
        Suite suite = new Suite(
                Clock.systemUTC(),
                ScriptCache.ofUser(),
                UserSettings.inMemory(),
                Locale.getDefault(Locale.Category.FORMAT));
        suite.start(own());
        SwingUtilities.invokeLater(() -> {
            Look.LIGHT.apply();
            JFrame window = suite.makeWindow();
            window.setVisible(true);
            workspace.ifPresent(suite::open);
        });
    }

    /** The suite's own workbenches, in the order in which the services are listed. */
    private static List<SuitePlugin> own() {
        return ServiceLoader.load(SuitePlugin.class, SuiteOpener.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }
}
