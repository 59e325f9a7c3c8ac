package baywright.cli;

import baywright.plan.Plan;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Setting;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan prove JOB}: does the order of the steps hold? */
@Command(name = "prove", resourceBundle = CommandTree.HELP)
final class PlanProveCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--zones", descriptionKey = "zones")
    private boolean everyZone;

    PlanProveCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Setting setting = opened.site().setting(opened.job());
        Proof proof = Prover.prove(setting, opened.job().plan());
        Plan plan = opened.job().plan();
        FindingPrinter printer = new FindingPrinter(
                session, everyZone ? session.sentencesWithEveryZone(setting, plan) : session.sentences(setting, plan));
        if (session.json()) {
            Answers.print(session, json(opened, proof, printer));
        } else {
            printer.printProof(opened.job(), proof);
        }
        return proof.holds() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private static ObjectNode json(OpenedJob opened, Proof proof, FindingPrinter printer) {
        ObjectNode answer = Answers.object();
        answer.put("job", opened.job().id());
        answer.put("holds", proof.holds());
        answer.put("library", opened.site().library().hash());
        answer.set("findings", printer.json(proof.findings()));
        var clock = answer.putArray("clock");
        proof.clock().forEach(slot -> {
            ObjectNode one = clock.addObject();
            one.put("step", slot.step());
            one.put("startMinutes", Answers.figure(slot.start()));
            one.put("endMinutes", Answers.figure(slot.end()));
            one.put("waitedMinutes", Answers.figure(slot.waited()));
        });
        answer.set("warnings", ProblemPrinter.json(opened.warnings()));
        return answer;
    }
}
