package baywright.swing;

import baywright.cli.WindowOpener;
import baywright.library.ScriptCache;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Opens the window for the command line. */
public final class SuiteOpener implements WindowOpener {

    @Override
    public boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    @Override
    public void open(Optional<Path> workspace, Path home) {
        SwingUtilities.invokeLater(() -> {
            Look.LIGHT.apply();
            MainWindow window = new MainWindow(
                    new SiteReader(Clock.systemUTC(), Locale.getDefault(Locale.Category.FORMAT), ScriptCache.ofUser()));
            window.setVisible(true);
            workspace.ifPresent(window::open);
        });
    }
}
