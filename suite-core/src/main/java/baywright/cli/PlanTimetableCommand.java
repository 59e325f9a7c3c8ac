package baywright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan timetable JOB}: when each step is done, by whom and where. */
@Command(name = "timetable", resourceBundle = CommandTree.HELP)
final class PlanTimetableCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "3", descriptionKey = "timetable-seconds")
    private int seconds;

    @Option(names = "--chance", descriptionKey = "timetable-chance")
    private boolean chance;

    PlanTimetableCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        return new TimetableAnswer(session, opened.site(), List.of(opened.job()), seconds, chance).give();
    }
}
