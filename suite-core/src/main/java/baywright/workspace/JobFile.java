package baywright.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A job's folder as it was read. A folder that cannot be used has problems and no job, and spoils no other.
 *
 * <p>Obtained from {@link Workspace}; it remembers the file's text, so that a save keeps what the program does not know
 * and notices when someone else has changed the file.
 */
public final class JobFile {

    private final String folder;
    private final Optional<Job> job;
    private final List<FileProblem> problems;
    private final Optional<Content> content;

    /**
     * The file's text and the object that it holds.
     *
     * @param readings the text of {@code readings.csv}; empty when there is none that can be read
     */
    record Content(Source source, Json.Obj document, Optional<Source> readings) {}

    JobFile(String folder, Optional<Job> job, List<FileProblem> problems, Optional<Content> content) {
        this.folder = folder;
        this.job = problems.stream().anyMatch(FileProblem::isError) ? Optional.empty() : job;
        this.problems = problems.stream().sorted().toList();
        this.content = content;
    }

    /** Name of the folder below {@code jobs}. */
    public String folder() {
        return folder;
    }

    /** The job; empty when {@link #problems} has an error. */
    public Optional<Job> job() {
        return job;
    }

    /** Errors and warnings in order of file and place. */
    public List<FileProblem> problems() {
        return problems;
    }

    Optional<Content> content() {
        return content;
    }

    /** The same folder, not to be used because of one more problem. */
    JobFile refused(FileProblem problem) {
        List<FileProblem> all = new ArrayList<>(problems);
        all.add(problem);
        return new JobFile(folder, job, all, content);
    }
}
