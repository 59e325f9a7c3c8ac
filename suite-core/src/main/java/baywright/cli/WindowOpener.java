package baywright.cli;

import java.nio.file.Path;
import java.util.Optional;

/** The door through which the command line opens the window; the window's module offers it as a service. */
public interface WindowOpener {

    /** Whether there is a display to open a window on. */
    boolean hasDisplay();

    /**
     * Opens the window and returns at once; where a window of this user is there already, that one comes to the front instead.
     *
     * @param workspace the workspace to show; empty: the start page, or what the window that is there shows
     * @param home      the program's folder, with the demo and the standard stage scripts
     * @return whether this program has a window now and must go on until it is closed
     */
    boolean open(Optional<Path> workspace, Path home);

    /**
     * Does what a start of the window does, without a window and without a display, so that whoever archives classes meets
     * those that it needs.
     *
     * @param workspace the workspace to show
     */
    void rehearse(Path workspace);
}
