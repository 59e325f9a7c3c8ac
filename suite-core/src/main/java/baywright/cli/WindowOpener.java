package baywright.cli;

import java.nio.file.Path;
import java.util.Optional;

/** The door through which the command line opens the window; the window's module offers it as a service. */
public interface WindowOpener {

    /** Whether there is a display to open a window on. */
    boolean hasDisplay();

    /**
     * Opens the window and returns at once.
     *
     * @param workspace the workspace to show; empty: the start page
     * @param home      the program's folder, with the demo and the standard stage scripts
     */
    void open(Optional<Path> workspace, Path home);
}
