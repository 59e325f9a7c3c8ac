package baywright.cli;

import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright plan mend JOB}: the smallest changes after which nothing stops the plan, and with {@code --apply} one
 * of them written to the job. Fine when there is such a change, or when the written plan holds.
 */
@Command(name = "mend", resourceBundle = CommandTree.HELP)
final class PlanMendCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--apply", paramLabel = "N", descriptionKey = "apply")
    private Optional<Integer> apply = Optional.empty();

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "10", descriptionKey = "seconds")
    private int seconds;

    PlanMendCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        if (seconds < 1) {
            throw session.badInput("mend.seconds", seconds);
        }
        OpenedJob opened = OpenedJob.at(session, job);
        Site site = opened.site();
        RepairResult result = site.mend(opened.job(), Duration.ofSeconds(seconds));
        Optional<Repair> chosen = apply.map(n -> chosen(result, n));
        RepairPrinter printer = new RepairPrinter(session, site, opened.job(), result);
        if (chosen.isEmpty()) {
            if (session.json()) {
                Answers.print(session, printer.json());
            } else {
                printer.print(session.shown(job));
            }
            return printer.clears() ? ExitStatus.FINE : ExitStatus.STOPPED;
        }
        WorkedJob mended = write(opened, chosen.get());
        if (session.json()) {
            ObjectNode answer = printer.json();
            answer.put("applied", apply.orElseThrow());
            answer.put("holds", mended.judged().holds());
            answer.put("safetyHolds", mended.safety().holds());
            answer.set("findings", findings(mended).json(mended.findings()));
            Answers.print(session, answer);
        } else {
            printer.printOne(chosen.get(), apply.orElseThrow());
            session.console().out().println();
            session.say("mend.written", session.shown(job));
            session.console().out().println();
            findings(mended).printJudged(mended.judged(), session.shown(job));
        }
        return mended.judged().holds() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private Repair chosen(RepairResult result, int number) {
        List<Repair> repairs = result.repairs();
        if (number < 1 || number > repairs.size()) {
            throw session.badInput("mend.no-such", number, repairs.size());
        }
        return repairs.get(number - 1);
    }

    private static WorkedJob write(OpenedJob opened, Repair repair) {
        Site site = opened.site();
        Job changed = opened.job().withPlan(repair.plan());
        try (WorkspaceWriter writer = WorkspaceWriter.open(site.workspace())) {
            JobFile saved = writer.save(opened.file(), changed);
            return site.work(site.job(saved));
        }
    }

    private FindingPrinter findings(WorkedJob mended) {
        return new FindingPrinter(
                session, session.sentences(mended.setting(), mended.job().plan()));
    }
}
