package baywright.cli;

import baywright.site.Site;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright shop timetable WORKSPACE}: all jobs with a day of arrival, timed together. */
@Command(name = "timetable", resourceBundle = CommandTree.HELP)
final class ShopTimetableCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "3", descriptionKey = "timetable-seconds")
    private int seconds;

    @Option(names = "--chance", descriptionKey = "timetable-chance")
    private boolean chance;

    ShopTimetableCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Site site = Site.open(workspace, session.clock(), session.cache());
        List<Job> booked = new ArrayList<>();
        for (JobFile file : site.workspace().jobs()) {
            if (file.job().isEmpty()) {
                Path folder = workspace.resolve("jobs").resolve(file.folder());
                session.console()
                        .err()
                        .println(session.text(
                                "timetable.skipped", file.folder(), session.command(), session.shown(folder)));
            }
            file.job().filter(j -> j.arrives().isPresent()).ifPresent(booked::add);
        }
        if (booked.isEmpty()) {
            throw session.badInput("timetable.no-job", session.shown(workspace));
        }
        return new TimetableAnswer(session, site, booked, seconds, chance).give();
    }
}
