package baywright.swing.api;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A way to bring in a file. */
public interface Importer {

    /** Stable kebab-case id. */
    String id();

    /** What it brings in, in the user's language: “Paint readings”. */
    String title();

    /** How such files end, without the dot. */
    List<String> extensions();

    /**
     * Reads a file; called off the event thread.
     *
     * @param state the desk when the user asked
     * @return the edit that brings it in
     * @throws IOException when it cannot be used; the message says where, what and how to mend it
     */
    Change read(Path file, DeskState state) throws IOException;
}
