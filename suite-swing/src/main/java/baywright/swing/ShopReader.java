package baywright.swing;

import java.nio.file.Path;

/** Reads a workspace into what the window shows. Called off the event thread. */
@FunctionalInterface
interface ShopReader {

    /**
     * Reads, proves and prices everything in a workspace.
     *
     * @throws RuntimeException with a message for people when it cannot be opened
     */
    ShopView read(Path workspace);
}
