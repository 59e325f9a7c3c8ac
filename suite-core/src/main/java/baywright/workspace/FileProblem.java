package baywright.workspace;

import baywright.script.Place;
import baywright.script.Problem;
import java.util.Comparator;

/**
 * One thing wrong with a file of a workspace.
 *
 * @param file     path relative to the workspace, with {@code /}
 * @param line     from 1; 0 when the whole file is meant
 * @param column   from 1, in code points; 0 when the whole file is meant
 * @param field    path of the field such as {@code plan.steps[3].with.passes}; empty when no field is meant
 * @param severity whether the file can be used all the same
 * @param what     what was met; no full stop
 * @param mend     how to mend it; may be empty; no full stop
 */
public record FileProblem(String file, int line, int column, String field, Severity severity, String what, String mend)
        implements Comparable<FileProblem> {

    private static final Comparator<FileProblem> BY_PLACE = Comparator.comparing(FileProblem::file)
            .thenComparingInt(FileProblem::line)
            .thenComparingInt(FileProblem::column)
            .thenComparing(FileProblem::message);

    /** An error makes the file's content unusable; a warning does not. */
    public enum Severity {
        ERROR,
        WARNING
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** Field, what was met and how to mend it, in one line. */
    public String message() {
        return (field.isEmpty() ? "" : field + ": ") + what + (mend.isEmpty() ? "" : "; " + mend);
    }

    /** The same among the problems of scripts. */
    public Problem asProblem() {
        Problem.Severity graver = isError() ? Problem.Severity.ERROR : Problem.Severity.WARNING;
        return new Problem(new Place(file, line, column), graver, "file", message(), "");
    }

    @Override
    public int compareTo(FileProblem other) {
        return BY_PLACE.compare(this, other);
    }

    @Override
    public String toString() {
        return file + (line == 0 ? "" : ":" + line + ":" + column) + ": " + message();
    }
}
