package baywright.cli;

import baywright.site.FittedJob;
import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright plan fit JOB}: which steps that need not be stay under a cap, and with {@code --apply} one of the ways
 * written to the job. Fine when there is a way.
 */
@Command(name = "fit", resourceBundle = CommandTree.HELP)
final class PlanFitCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Mixin
    private CapOptions given;

    @Option(names = "--apply", paramLabel = "N", descriptionKey = "apply-fit")
    private Optional<Integer> apply = Optional.empty();

    PlanFitCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Site site = opened.site();
        if (opened.job().plan().steps().isEmpty()) {
            throw session.badInput("fit.no-steps", session.command(), session.shown(job));
        }
        PlanLimits limits = given.limits(session, site, opened.job());
        BigDecimal most = limits.cap().orElseThrow(() -> session.badInput("fit.no-cap"));
        FittedJob fitted =
                Progress.during(session, "fit.progress", () -> site.fit(opened.job(), most, limits.firmOnly()));
        apply.ifPresent(number -> write(opened, fitted, number));
        FitPrinter printer = new FitPrinter(session, site, fitted);
        if (session.json()) {
            ObjectNode answer = printer.json();
            apply.ifPresent(number -> answer.put("applied", number));
            answer.set("warnings", ProblemPrinter.json(opened.warnings()));
            Answers.print(session, answer);
        } else {
            printer.print();
            printer.printNext(apply, session.shown(job));
        }
        return fitted.fits().isEmpty() ? ExitStatus.STOPPED : ExitStatus.FINE;
    }

    private void write(OpenedJob opened, FittedJob fitted, int number) {
        if (number < 1 || number > fitted.fits().size()) {
            throw session.badInput("fit.no-such", number, fitted.fits().size());
        }
        try (WorkspaceWriter writer = WorkspaceWriter.open(opened.site().workspace())) {
            writer.save(opened.file(), fitted.fits().get(number - 1).worked().job());
        }
    }
}
