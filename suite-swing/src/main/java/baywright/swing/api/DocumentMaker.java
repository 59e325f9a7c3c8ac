package baywright.swing.api;

import baywright.site.WorkedJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** A document to hand out. */
public interface DocumentMaker {

    /** Stable kebab-case id. */
    String id();

    /** What it is, in the user's language: “Job card”. */
    String title();

    /** How its files end, without the dot. */
    String extension();

    /** Whether there is anything to hand out, such as a quote only for a plan that holds. */
    boolean canMake(WorkedJob job);

    /**
     * Writes the document whole or not at all; called off the event thread.
     *
     * @throws IOException when it cannot be written
     */
    void write(WorkedJob job, Locale language, Path file) throws IOException;
}
