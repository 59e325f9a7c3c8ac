package baywright.cli;

import baywright.chance.Simulation;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan chance JOB}: what hours, cost and finish may come to, and what drives them apart. */
@Command(name = "chance", resourceBundle = CommandTree.HELP)
final class PlanChanceCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--runs", paramLabel = "N", descriptionKey = "runs", defaultValue = "100000")
    private int runs;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "seed", defaultValue = "" + Outlook.SEED)
    private long seed;

    PlanChanceCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        WorkedJob worked = opened.site().work(opened.job());
        if (worked.offer() instanceof Refusal refusal) {
            refuse(worked, refusal);
            return ExitStatus.STOPPED;
        }
        Quote quote = (Quote) worked.offer();
        Outlook outlook = opened.site().outlook(worked, quote, options());
        OutlookPrinter printer = new OutlookPrinter(
                session, opened.site(), worked, quote, outlook, opened.site().chance(worked.job(), options()));
        if (session.json()) {
            ObjectNode answer = printer.json();
            answer.set("warnings", ProblemPrinter.json(opened.warnings()));
            Answers.print(session, answer);
        } else {
            printer.print();
        }
        return ExitStatus.FINE;
    }

    private Simulation.Options options() {
        try {
            return Simulation.Options.of(seed, runs);
        } catch (IllegalArgumentException e) {
            throw session.badInput("chance.runs", String.valueOf(runs));
        }
    }

    private void refuse(WorkedJob worked, Refusal refusal) {
        FindingPrinter findings = new FindingPrinter(
                session, session.sentences(worked.setting(), worked.job().plan()));
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("job", worked.job().id());
            answer.put("quoted", false);
            answer.set("findings", findings.json(refusal.findings()));
            Answers.print(session, answer);
            return;
        }
        findings.print(refusal.stops());
        session.say("quote.refused", worked.job().title(), refusal.stops().size());
    }
}
