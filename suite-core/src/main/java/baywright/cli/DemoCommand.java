package baywright.cli;

import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.JobFile;
import baywright.workspace.UserFolders;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright demo}: copies the invented shops, proves and prices every job, and opens the window where there is a
 * display. A job of the demo is planned wrong on purpose; the exit status is fine all the same.
 */
@Command(name = "demo", resourceBundle = CommandTree.HELP)
final class DemoCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "FOLDER", arity = "0..1", descriptionKey = "demo-folder")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--no-window", descriptionKey = "no-window")
    private boolean noWindow;

    DemoCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Path target = folder.orElseGet(() -> UserFolders.home().resolve("baywright-demo"));
        List<DemoFolder.Copy> copies = new DemoFolder(session).copyTo(target);
        List<Worked> all = new ArrayList<>();
        for (DemoFolder.Copy copy : copies) {
            Site site = Site.open(copy.workspace(), session.clock(), session.cache());
            for (JobFile file : site.workspace().jobs()) {
                all.add(new Worked(copy, site, file, site.work(site.job(file))));
            }
        }
        if (session.json()) {
            Answers.print(session, json(all));
        } else {
            print(copies, all);
        }
        if (!noWindow && Windows.canOpen()) {
            Windows.open(session, Optional.of(copies.get(0).workspace()));
        }
        return ExitStatus.FINE;
    }

    /** A job of the demo with its result. */
    private record Worked(DemoFolder.Copy copy, Site site, JobFile file, WorkedJob job) {
        Path path() {
            return copy.workspace().resolve("jobs").resolve(file.folder());
        }

        long count(Severity severity) {
            return job.findings().stream()
                    .map(Finding::severity)
                    .filter(severity::equals)
                    .count();
        }
    }

    private void print(List<DemoFolder.Copy> copies, List<Worked> all) {
        copies.forEach(copy ->
                session.say("demo." + Answers.word(copy.fate()), session.shown(copy.workspace()), copy.changed()));
        session.console().out().println();
        Table table = new Table(
                session.text("demo.job"),
                session.text("demo.proof"),
                ">" + session.text("quote.hands-on"),
                ">" + session.text("figure.net"),
                ">" + session.text("figure.price"),
                session.text("quote.cap"));
        for (Worked worked : all) {
            Numbers numbers = new Numbers(worked.site().shop().locale());
            Optional<Quote> quote = worked.job().offer() instanceof Quote q ? Optional.of(q) : Optional.empty();
            table.add(
                    worked.copy().site() + "/" + worked.file().folder(),
                    verdict(worked),
                    numbers.duration(worked.job().minutes()),
                    quote.map(q -> numbers.money(q.price().net())).orElse("–"),
                    quote.map(q -> numbers.money(q.price().gross())).orElse("–"),
                    quote.flatMap(Quote::cap)
                            .map(fit -> fit.fits()
                                    ? session.text("quote.fits", numbers.money(fit.spare()))
                                    : session.text("quote.over", numbers.money(fit.over())))
                            .orElse(""));
        }
        table.print(session.console(), "");
        session.console().out().println();
        all.stream()
                .filter(worked -> worked.job().offer() instanceof Quote)
                .findFirst()
                .ifPresent(worked -> session.say("demo.next.quote", session.command(), session.shown(worked.path())));
        all.stream()
                .filter(worked -> !worked.job().judged().holds())
                .findFirst()
                .ifPresent(worked -> session.say("demo.next.prove", session.command(), session.shown(worked.path())));
    }

    private String verdict(Worked worked) {
        Console console = session.console();
        long stops = worked.count(Severity.STOP);
        long warns = worked.count(Severity.WARN);
        String stop = stops == 0
                ? console.paint(Ink.GOOD, session.text("demo.holds"))
                : console.paint(Ink.STOP, session.text("demo.stops", stops));
        return warns == 0 ? stop : stop + ", " + console.paint(Ink.WARN, session.text("demo.warns", warns));
    }

    private static ArrayNode json(List<Worked> all) {
        ArrayNode jobs = Answers.array();
        for (Worked worked : all) {
            ObjectNode one = worked.job().offer() instanceof Quote quote
                    ? QuoteJson.of(worked.job(), quote)
                    : Answers.object().put("job", worked.job().job().id()).put("quoted", false);
            one.put("path", worked.path().toString());
            one.put("stops", worked.count(Severity.STOP));
            one.put("warns", worked.count(Severity.WARN));
            jobs.add(one);
        }
        return jobs;
    }
}
