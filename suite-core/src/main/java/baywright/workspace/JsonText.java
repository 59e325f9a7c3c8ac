package baywright.workspace;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A JSON file of this program's that lies outside a workspace's own files, read with places.
 *
 * @param value    what the file says; empty when one of the problems is an error
 * @param problems what is wrong with it, in order of place
 */
public record JsonText<T>(Optional<T> value, List<FileProblem> problems) {

    public JsonText {
        problems = List.copyOf(problems);
    }

    /**
     * Reads the bytes of a file of the form {@code baywright/KIND/VERSION}. What is wrong becomes a problem, never an exception.
     *
     * @param file the name that problems give it
     * @param read makes the value of the outermost object's fields; empty when they cannot be used
     */
    public static <T> JsonText<T> read(
            String file, byte[] bytes, String kind, int version, Function<Fields, Optional<T>> read) {
        try {
            Report report = TextFile.decode(file, bytes);
            Optional<T> value =
                    Fields.ofDocument(report, kind, version).flatMap(read).filter(v -> !report.hasErrors());
            return new JsonText<>(value, report.problems());
        } catch (TextFile.Unreadable e) {
            return new JsonText<>(Optional.empty(), List.of(e.problem()));
        }
    }

    /** The first error, for a caller that wants one line. */
    public Optional<FileProblem> error() {
        return problems.stream().filter(FileProblem::isError).findFirst();
    }
}
