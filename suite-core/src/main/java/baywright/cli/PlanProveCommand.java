package baywright.cli;

import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Setting;
import baywright.script.Nearest;
import baywright.site.JudgedJob;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan prove JOB}: do the steps hold, and do they hurt nobody? */
@Command(name = "prove", resourceBundle = CommandTree.HELP)
final class PlanProveCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--zones", descriptionKey = "zones")
    private boolean everyZone;

    @Option(names = "--zone", paramLabel = "ZONE", descriptionKey = "zone")
    private Optional<String> zone = Optional.empty();

    PlanProveCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        JudgedJob judged = opened.site().judge(opened.job());
        Setting setting = judged.setting();
        Plan plan = opened.job().plan();
        FindingPrinter printer = new FindingPrinter(
                session, everyZone ? session.sentencesWithEveryZone(setting, plan) : session.sentences(setting, plan));
        List<Finding> shown = zone.map(id -> of(id, judged)).orElse(judged.findings());
        if (session.json()) {
            Answers.print(session, json(opened, judged, printer, shown));
        } else if (zone.isPresent()) {
            printer.printZone(zone.get(), shown, judged);
        } else {
            printer.printJudged(judged, session.shown(job));
        }
        return judged.holds() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    /** The findings that name a zone; those of the whole plan name none. */
    private List<Finding> of(String id, JudgedJob judged) {
        Set<String> known = judged.proof().ends().keySet();
        if (!known.contains(id)) {
            String hint = Nearest.to(id, known)
                    .map(near -> session.text("nearest", near))
                    .orElse("");
            throw session.badInput("prove.no-zone", id, judged.setting().shape().title(), hint);
        }
        return judged.findings().stream().filter(f -> f.zones().contains(id)).toList();
    }

    private static ObjectNode json(OpenedJob opened, JudgedJob judged, FindingPrinter printer, List<Finding> shown) {
        ObjectNode answer = Answers.object();
        answer.put("job", opened.job().id());
        answer.put("holds", judged.holds());
        answer.put("orderHolds", judged.proof().holds());
        answer.put("safetyHolds", judged.safety().holds());
        answer.put("library", opened.site().library().hash());
        answer.set("findings", printer.json(shown));
        var clock = answer.putArray("clock");
        judged.proof().clock().forEach(slot -> {
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
