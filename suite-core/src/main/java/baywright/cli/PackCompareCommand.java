package baywright.cli;

import baywright.pack.Pack;
import baywright.share.Taking;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code baywright pack compare WORKSPACE FILE}: what a pack would change, in meaning, and where it clashes. */
@Command(name = "compare", resourceBundle = CommandTree.HELP)
final class PackCompareCommand implements Callable<Integer> {

    private final Session session;

    @Mixin
    private PackChoice choice;

    PackCompareCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Pack pack = choice.pack();
        Taking taking = choice.taking(session, pack);
        TakingPrinter printer = new TakingPrinter(session);
        if (session.json()) {
            Answers.print(session, printer.json(pack.manifest(), taking));
        } else {
            printer.print(pack.manifest(), taking);
        }
        return taking.isReady() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }
}
