package baywright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.ServiceLoader;

/** Finds the window's module and opens its window. */
final class Windows {

    private Windows() {}

    static Optional<WindowOpener> opener() {
        return ServiceLoader.load(WindowOpener.class).findFirst();
    }

    static boolean canOpen() {
        return opener().map(WindowOpener::hasDisplay).orElse(false);
    }

    /**
     * Opens the window, or says that one which was there has taken this over.
     *
     * @throws BadInput when there is no display
     */
    static void open(Session session, Optional<Path> workspace) {
        WindowOpener opener =
                opener().filter(WindowOpener::hasDisplay).orElseThrow(() -> session.badInput("open.no-display"));
        workspace.ifPresent(session.settings()::rememberWorkspace);
        if (opener.open(workspace, session.home().folder())) {
            session.noteWindowOpened();
        } else if (!session.json()) {
            session.say("open.handed-over");
        }
    }
}
