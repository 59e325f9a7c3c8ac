package baywright.cli;

import baywright.document.CardHtml;
import baywright.document.JobCard;
import baywright.money.Refusal;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan card JOB}: what the crew takes along. */
@Command(name = "card", resourceBundle = CommandTree.HELP)
final class PlanCardCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Mixin
    private PaperOptions paper = new PaperOptions();

    @Option(names = "--no-photos", descriptionKey = "no-photos")
    private boolean noPhotos;

    PlanCardCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        if (!paper.wanted()) {
            throw session.badInput("document.nowhere");
        }
        OpenedJob opened = OpenedJob.at(session, job);
        String language = paper.language(session, opened.site().shop(), opened.job());
        paper.check(session, Optional.empty());
        WorkedJob worked = opened.site().work(opened.job());
        FindingPrinter findings = new FindingPrinter(
                session, session.sentences(worked.setting(), worked.job().plan()));
        ObjectNode answer = Answers.object();
        answer.put("job", worked.job().id());
        if (worked.offer() instanceof Refusal refusal) {
            if (session.json()) {
                answer.put("made", false);
                answer.set("findings", findings.json(refusal.findings()));
                Answers.print(session, answer);
            } else {
                findings.print(refusal.stops());
                session.say(
                        "card.refused", worked.job().title(), refusal.stops().size());
            }
            return ExitStatus.STOPPED;
        }
        JobCard card = JobCard.of(opened.site(), worked, language, !noPhotos);
        paper.write(session, opened.site().shop().localeOf(language), sheet -> CardHtml.of(card, sheet));
        if (session.json()) {
            answer.put("made", true);
            Answers.print(session, answer);
        }
        return ExitStatus.FINE;
    }
}
