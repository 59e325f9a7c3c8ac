package baywright.cli;

import baywright.chance.Watch;
import baywright.document.ImpactOnQuotes;
import baywright.library.Library;
import baywright.pack.Pack;
import baywright.share.Impact;
import baywright.share.Taking;
import baywright.site.Site;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code baywright pack compare WORKSPACE FILE}: what a pack would change, in meaning, where it clashes and, when asked for, what it
 * would make of every job.
 */
@Command(name = "compare", resourceBundle = CommandTree.HELP)
final class PackCompareCommand implements Callable<Integer> {

    private final Session session;

    @Mixin
    private PackChoice choice;

    @Option(names = "--impact", descriptionKey = "pack-impact")
    private boolean impact;

    PackCompareCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Pack pack = choice.pack();
        Taking taking = choice.taking(session, pack);
        TakingPrinter printer = new TakingPrinter(session);
        // with errors in it, or a clash undecided, there is no library yet that jobs could be worked by
        Optional<Weighed> weighed = impact && taking.isReady() ? Optional.of(weigh(taking)) : Optional.empty();
        if (session.json()) {
            ObjectNode answer = printer.json(pack.manifest(), taking);
            weighed.ifPresent(w -> answer.set("impact", w.printer().json(w.impact())));
            Answers.print(session, answer);
        } else {
            printer.print(pack.manifest(), taking);
            weighed.ifPresent(w -> w.printer().print(w.impact()));
        }
        return taking.isReady() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private record Weighed(ImpactPrinter printer, Impact impact) {}

    private Weighed weigh(Taking taking) {
        Site site = Site.open(choice.workspace(), session.clock(), session.cache());
        Library other = taking.library();
        Impact found = Progress.during(
                session, "impact.progress", () -> Impact.of(site, other, new ImpactOnQuotes(site), Watch.NOBODY));
        return new Weighed(new ImpactPrinter(session, site, other), found);
    }
}
