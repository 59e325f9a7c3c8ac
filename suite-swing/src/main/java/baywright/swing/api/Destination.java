package baywright.swing.api;

import java.util.Map;

/**
 * A place that can be gone to.
 *
 * @param workbench id of a workbench
 * @param where     what is meant there, such as {@code file} and {@code line}, {@code step}, {@code zone}; may be empty
 */
public record Destination(String workbench, Map<String, String> where) {

    public Destination {
        where = Map.copyOf(where);
    }

    /** The line of a stage script in the library, {@code file} as problems name it, such as {@code stages/wash/rinse.groovy}; lines and columns from 1. */
    public static Destination script(String file, int line, int column) {
        return new Destination(
                "library", Map.of("file", file, "line", Integer.toString(line), "column", Integer.toString(column)));
    }

    /** A stage in the library. */
    public static Destination stage(String stage) {
        return new Destination("library", Map.of("stage", stage));
    }

    /** A step in the plan of the chosen job. */
    public static Destination step(String step) {
        return new Destination("plan", Map.of("step", step));
    }

    /** A zone in the survey of the chosen job. */
    public static Destination zone(String zone) {
        return new Destination("survey", Map.of("zone", zone));
    }
}
