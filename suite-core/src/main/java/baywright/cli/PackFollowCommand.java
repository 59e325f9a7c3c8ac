package baywright.cli;

import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.remote.Fetched;
import baywright.remote.SharedLibrary;
import baywright.share.TakenPack;
import baywright.share.Taking;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack follow WORKSPACE [REMOTE]}: takes what is new on the main line of a shared library. */
@Command(name = "follow", resourceBundle = CommandTree.HELP)
final class PackFollowCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(index = "0", paramLabel = "WORKSPACE", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(index = "1", arity = "0..1", paramLabel = "REMOTE", descriptionKey = "shared-remote")
    private Optional<String> remote = Optional.empty();

    @Option(names = "--branch", paramLabel = "BRANCH", defaultValue = "main", descriptionKey = "shared-branch")
    private String branch;

    @Option(names = "--site", paramLabel = "SITE", descriptionKey = "shared-site")
    private Optional<String> site = Optional.empty();

    @Option(names = "--compare", descriptionKey = "shared-compare")
    private boolean compareOnly;

    @Option(names = "--offline", descriptionKey = "shared-offline")
    private boolean offline;

    @Mixin
    private ClashChoice clashes;

    @Option(names = "--downgrade", descriptionKey = "pack-downgrade")
    private boolean downgrade;

    @Option(names = "--accept-unknown", paramLabel = "\"NAME: WHY\"", descriptionKey = "pack-accept")
    private Optional<String> accepted = Optional.empty();

    PackFollowCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Optional<Consent> consent =
                accepted.map(text -> Consent.of(text).orElseThrow(() -> session.badInput("take.no-consent", text)));
        SharedDesk desk = new SharedDesk(session, workspace);
        try (SharedLibrary library =
                remote.map(to -> desk.following(to, branch, site)).orElseGet(desk::opened)) {
            if (!offline) {
                Fetched fetched = desk.during(library::fetch);
                if (fetched.isEmpty()) {
                    return tellEmpty();
                }
                if (fetched.isRewritten() && !session.json()) {
                    session.say("shared.rewritten");
                }
            }
            return follow(desk, library, consent);
        }
    }

    private int tellEmpty() {
        if (session.json()) {
            Answers.print(session, Answers.object().put("empty", true));
        } else {
            session.say("shared.empty", session.command());
        }
        return ExitStatus.STOPPED;
    }

    private int follow(SharedDesk desk, SharedLibrary library, Optional<Consent> consent) {
        Manifest manifest = library.main().manifest();
        boolean isUpToDate = library.state().isUpToDate();
        Taking taking = desk.during(
                watch -> library.taking(desk.workspace(), clashes.choice(session, downgrade), session.cache()));
        boolean takes = taking.isReady() && !compareOnly && !isUpToDate;
        Optional<TakenPack> taken = takes ? Optional.of(taking.take(consent, session.clock())) : Optional.empty();
        TakingPrinter printer = new TakingPrinter(session);
        if (session.json()) {
            ObjectNode answer = printer.json(manifest, taking);
            answer.put("upToDate", isUpToDate || taken.isPresent());
            taken.ifPresent(t -> answer.set("taken", TakingPrinter.json(t)));
            Answers.print(session, answer);
        } else if (isUpToDate) {
            session.say("shared.up-to-date", manifest.name());
        } else {
            printer.print(manifest, taking);
            tell(taken.isPresent());
        }
        return isUpToDate || taking.isReady() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    private void tell(boolean taken) {
        if (taken) {
            session.say("take.taken", session.command(), session.shown(workspace));
        } else if (!compareOnly) {
            session.say("take.not-taken");
        }
    }
}
