package baywright.cli;

import baywright.document.KeptQuote;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.schedule.ShopChance;
import baywright.site.Numbers;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright plan quote JOB}: the price of a plan that proves, or why there is none. */
@Command(name = "quote", resourceBundle = CommandTree.HELP)
final class PlanQuoteCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--trail", descriptionKey = "trail")
    private boolean everyTrail;

    @Option(names = "--trail-of", paramLabel = "WHAT", descriptionKey = "trail-of")
    private Optional<String> trailOf = Optional.empty();

    @Mixin
    private QuoteFiles files = new QuoteFiles();

    PlanQuoteCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        files.check(session, opened);
        if (files.kept().isPresent()) {
            return new KeptQuotePrinter(session, opened, files).print();
        }
        WorkedJob worked = opened.site().work(opened.job());
        FindingPrinter findings = new FindingPrinter(
                session, session.sentences(worked.setting(), worked.job().plan()));
        if (worked.offer() instanceof Quote quote) {
            Optional<KeptQuote> kept = files.keep(session, opened, worked, quote);
            show(opened, worked, quote, findings, kept);
            files.write(session, opened, worked, quote, kept);
            return ExitStatus.FINE;
        }
        refuse(worked, (Refusal) worked.offer(), findings);
        return ExitStatus.STOPPED;
    }

    private void show(
            OpenedJob opened, WorkedJob worked, Quote quote, FindingPrinter findings, Optional<KeptQuote> kept) {
        TrailPrinter trails =
                new TrailPrinter(session, new Numbers(opened.site().shop().locale()), worked, quote);
        if (session.json()) {
            ObjectNode answer = QuoteJson.of(worked, quote);
            kept.ifPresent(k -> answer.put("kept", k.number() + "-v" + k.version()));
            answer.set("outlook", outlook(opened, worked, quote).figuresJson());
            answer.set("findings", findings.json(worked.findings()));
            answer.set("warnings", ProblemPrinter.json(opened.warnings()));
            wantedTrail().ifPresent(what -> answer.set("trail", trails.json(what)));
            Answers.print(session, answer);
            return;
        }
        if (trailOf.isEmpty() || everyTrail) {
            new QuotePrinter(session, opened.site(), worked, quote).print(findings, outlook(opened, worked, quote));
        }
        wantedTrail().ifPresent(trails::print);
    }

    private OutlookPrinter outlook(OpenedJob opened, WorkedJob worked, Quote quote) {
        Optional<ShopChance.JobChance> chance =
                worked.job().wanted().flatMap(wanted -> opened.site().chance(worked.job(), Outlook.usual()));
        return new OutlookPrinter(
                session, opened.site(), worked, quote, opened.site().outlook(worked, quote, Outlook.usual()), chance);
    }

    /** What the trail is asked for; the empty text means everything. */
    private Optional<String> wantedTrail() {
        return everyTrail ? Optional.of("") : trailOf;
    }

    private void refuse(WorkedJob worked, Refusal refusal, FindingPrinter findings) {
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("job", worked.job().id());
            answer.put("quoted", false);
            answer.set("findings", findings.json(refusal.findings()));
            answer.set("waysOut", new RemedyPrinter(session, worked.safety()).json());
            Answers.print(session, answer);
            return;
        }
        findings.print(refusal.stops());
        new RemedyPrinter(session, worked.safety()).print(session.shown(job));
        session.say("quote.refused", worked.job().title(), refusal.stops().size());
    }
}
