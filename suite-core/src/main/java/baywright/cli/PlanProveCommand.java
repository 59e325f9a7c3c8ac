package baywright.cli;

import baywright.plan.Finding;
import baywright.plan.Proof;
import baywright.plan.Prover;
import baywright.plan.Setting;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright plan prove JOB}: does the order of the steps hold? */
@Command(name = "prove", resourceBundle = CommandTree.HELP)
final class PlanProveCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    PlanProveCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Setting setting = opened.site().setting(opened.job());
        Proof proof = Prover.prove(setting, opened.job().plan());
        FindingPrinter printer = new FindingPrinter(
                session, session.sentences(setting, opened.job().plan()));
        if (session.json()) {
            Answers.print(session, json(opened, proof, printer));
        } else {
            print(opened, proof, printer);
        }
        return proof.holds() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private void print(OpenedJob opened, Proof proof, FindingPrinter printer) {
        List<Finding> findings = proof.findings();
        printer.print(findings);
        Console console = session.console();
        String verdict = proof.holds()
                ? console.paint(Ink.GOOD, session.text("prove.holds"))
                : console.paint(Ink.STOP, session.text("prove.stopped"));
        session.say(
                "prove.verdict",
                opened.job().title(),
                opened.job().plan().steps().size(),
                verdict,
                printer.summary(findings));
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
