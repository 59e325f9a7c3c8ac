package baywright.script;

import java.util.List;
import java.util.stream.Collectors;

/** A script that is sound for its usual values gives nothing sensible for these ones. */
public final class ScriptFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public ScriptFault(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    /** What was wrong, in order of place. */
    public List<Problem> problems() {
        return problems;
    }
}
