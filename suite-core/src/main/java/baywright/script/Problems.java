package baywright.script;

import baywright.script.Problem.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong, each thing once, up to 200 a file. Not for several threads at a time. */
public final class Problems {

    private final Set<Problem> all = new LinkedHashSet<>();

    /** Takes a problem; its message becomes one line of bounded length, whatever a script's texts held. */
    public void add(Problem problem) {
        if (all.size() < Limits.PROBLEMS) {
            String line = problem.message().replaceAll("\\R|\t", " ");
            String message = line.length() > Limits.MESSAGE ? line.substring(0, Limits.MESSAGE) + " …" : line;
            all.add(new Problem(problem.place(), problem.severity(), problem.code(), message, problem.word()));
        }
    }

    public void addAll(Collection<Problem> more) {
        more.forEach(this::add);
    }

    public void error(Place place, String code, String message) {
        error(place, code, message, "");
    }

    /** An error with the vocabulary word whose reference helps. */
    public void error(Place place, String code, String message, String word) {
        add(new Problem(place, Severity.ERROR, code, message, word));
    }

    public void warning(Place place, String code, String message, String word) {
        add(new Problem(place, Severity.WARNING, code, message, word));
    }

    /** How many errors there are so far; a caller compares two counts to see whether its part was clean. */
    public long errors() {
        return all.stream().filter(p -> p.severity() == Severity.ERROR).count();
    }

    /** All of them in order of place. */
    public List<Problem> sorted() {
        List<Problem> list = new ArrayList<>(all);
        list.sort(null);
        return List.copyOf(list);
    }
}
