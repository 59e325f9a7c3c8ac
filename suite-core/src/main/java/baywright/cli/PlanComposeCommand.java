package baywright.cli;

import baywright.site.ComposedJob;
import baywright.site.FittedGoals;
import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright plan compose JOB}: a plan made from the job's goals, as many as its cap and date allow, and with
 * {@code --apply} that plan written to the job. Fine when the plan proves, keeps the cap and grants every goal that must
 * be.
 */
@Command(name = "compose", resourceBundle = CommandTree.HELP)
final class PlanComposeCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Mixin
    private CapOptions given;

    @Option(names = "--all-goals", descriptionKey = "all-goals")
    private boolean allGoals;

    @Option(names = "--apply", descriptionKey = "apply-composed")
    private boolean apply;

    PlanComposeCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Site site = opened.site();
        PlanLimits limits = given.limits(session, site, opened.job());
        FittedGoals fitted = Progress.during(
                session,
                "compose.progress",
                () -> allGoals ? site.composeAll(opened.file()) : site.compose(opened.file(), limits));
        ComposedJob shown = fitted.shown().composed();
        boolean can = fitted.best().isPresent();
        if (apply && can) {
            write(opened, shown);
        }
        Lateness lateness = Lateness.of(session, site, fitted.shown(), limits);
        ComposePrinter printer = new ComposePrinter(session, site, opened.job(), fitted, limits, lateness);
        if (session.json()) {
            ObjectNode answer = printer.json();
            answer.put("applied", apply && can);
            answer.set("warnings", ProblemPrinter.json(opened.warnings()));
            Answers.print(session, answer);
        } else {
            printer.print();
            printer.printNext(apply, can, session.shown(job));
        }
        return can
                        && shown.composed().grantsAllMusts()
                        && shown.worked().proof().holds()
                        && !fitted.isLate()
                ? ExitStatus.FINE
                : ExitStatus.STOPPED;
    }

    private static void write(OpenedJob opened, ComposedJob composed) {
        Site site = opened.site();
        try (WorkspaceWriter writer = WorkspaceWriter.open(site.workspace())) {
            writer.save(opened.file(), composed.worked().job());
        }
    }
}
