package baywright.swing;

import baywright.cli.WindowOpener;
import baywright.library.ScriptCache;
import baywright.swing.api.SuitePlugin;
import baywright.swing.shell.Handover;
import baywright.swing.shell.Suite;
import baywright.swing.shell.UserSettings;
import baywright.workspace.UserFolders;
import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
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
    public boolean open(Optional<Path> workspace, Path home) {
        Handover handover = Handover.in(UserFolders.running());
        if (handover.passOn(workspace)) {
            return false;
        }
        Path folder = UserFolders.settings();
        Suite suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                ScriptCache.ofUser(),
                UserSettings.in(folder),
                Optional.of(folder),
                Optional.of(home).filter(program -> Files.isDirectory(program.resolve("demo"))),
                Locale.getDefault(Locale.Category.FORMAT)));
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> suite.fault(fault));
        suite.start(own());
        SwingUtilities.invokeLater(() -> {
            workspace.ifPresent(suite::open); // read in the background while the window is made
            suite.applyLook();
            JFrame window = suite.makeWindow();
            window.setVisible(true);
            suite.serve(handover);
        });
        return true;
    }

    @Override
    public void rehearse(Path workspace) {
        Suite suite = new Suite(new Suite.Surroundings(
                Clock.systemUTC(),
                ScriptCache.none(),
                UserSettings.inMemory(),
                Optional.empty(),
                Optional.empty(),
                Locale.getDefault(Locale.Category.FORMAT)));
        suite.start(own());
        try {
            suite.rehearse(workspace);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the rehearsal broke off", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The suite's own workbenches, in the order in which the services are listed. */
    private static List<SuitePlugin> own() {
        return ServiceLoader.load(SuitePlugin.class, SuiteOpener.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }
}
