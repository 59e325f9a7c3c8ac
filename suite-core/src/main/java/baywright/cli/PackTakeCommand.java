package baywright.cli;

import baywright.pack.Consent;
import baywright.pack.Pack;
import baywright.share.TakenPack;
import baywright.share.Taking;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code baywright pack take WORKSPACE FILE}: makes a pack part of a site's library, in one step. */
@Command(name = "take", resourceBundle = CommandTree.HELP)
final class PackTakeCommand implements Callable<Integer> {

    private final Session session;

    @Mixin
    private PackChoice choice;

    @Option(names = "--accept-unknown", paramLabel = "\"NAME: WHY\"", descriptionKey = "pack-accept")
    private Optional<String> accepted = Optional.empty();

    PackTakeCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Optional<Consent> consent =
                accepted.map(text -> Consent.of(text).orElseThrow(() -> session.badInput("take.no-consent", text)));
        Pack pack = choice.pack();
        Taking taking = choice.taking(session, pack);
        TakingPrinter printer = new TakingPrinter(session);
        Optional<TakenPack> taken =
                taking.isReady() ? Optional.of(taking.take(consent, session.clock())) : Optional.empty();
        if (session.json()) {
            ObjectNode answer = printer.json(pack.manifest(), taking);
            taken.ifPresent(t -> answer.set("taken", TakingPrinter.json(t)));
            Answers.print(session, answer);
        } else {
            printer.print(pack.manifest(), taking);
            if (taken.isPresent()) {
                session.say("take.taken", session.command(), session.shown(choice.workspace()));
            } else {
                session.say("take.not-taken");
            }
        }
        return taken.isPresent() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }
}
