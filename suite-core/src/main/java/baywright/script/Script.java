package baywright.script;

import java.util.List;

/**
 * A parsed file.
 *
 * @param file     name relative to the library's folder
 * @param body     its statements; what could not be read is left out
 * @param problems what was wrong with its text, in order of place
 */
public record Script(String file, List<Node> body, List<Problem> problems) {
    public Script {
        body = List.copyOf(body);
        problems = List.copyOf(problems);
    }
}
