package baywright.workspace;

import baywright.script.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong with one file, all of it, so that nobody mends one line only to meet the next. */
final class Report {

    /** More than this many help nobody; the file is garbled as a whole. */
    private static final int MOST = 100;

    private final Source source;
    private final List<FileProblem> problems = new ArrayList<>();
    private boolean hasErrors;

    Report(Source source) {
        this.source = source;
    }

    static FileProblem ofFile(String file, String what, String mend) {
        return new FileProblem(file, 0, 0, "", FileProblem.Severity.ERROR, what, mend);
    }

    Source source() {
        return source;
    }

    void error(int offset, String field, String what, String mend) {
        add(offset, field, FileProblem.Severity.ERROR, what, mend);
    }

    void warning(int offset, String field, String what, String mend) {
        add(offset, field, FileProblem.Severity.WARNING, what, mend);
    }

    private void add(int offset, String field, FileProblem.Severity severity, String what, String mend) {
        hasErrors |= severity == FileProblem.Severity.ERROR;
        if (problems.size() == MOST) {
            return;
        }
        Place place = source.place(offset);
        problems.add(new FileProblem(source.file(), place.line(), place.column(), field, severity, what, mend));
    }

    boolean hasErrors() {
        return hasErrors;
    }

    int count() {
        return problems.size();
    }

    /** In order of place. */
    List<FileProblem> problems() {
        return problems.stream().sorted().toList();
    }

    /**
     * The value that {@code make} makes when nothing was wrong so far; else empty, as a value made of stand-ins must not
     * leave the reader.
     */
    <T> Optional<T> whenSound(Supplier<T> make) {
        return hasErrors() ? Optional.empty() : Optional.of(make.get());
    }
}
