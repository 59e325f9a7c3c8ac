package baywright.site;

import baywright.script.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A workspace or a library that cannot be worked with; the message has a line for each thing that is
 * wrong with it.
 */
public final class SiteTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path folder;
    private final transient List<Problem> problems;

    /**
     * Names the problems.
     *
     * @param folder   the folder to which the problems' files are relative
     * @param problems at least one, in order of place
     */
    public SiteTrouble(Path folder, List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.folder = folder;
        this.problems = List.copyOf(problems);
    }

    public Path folder() {
        return folder;
    }

    public List<Problem> problems() {
        return problems;
    }
}
