package baywright.cli;

import baywright.pack.Consent;
import baywright.pack.Version;
import baywright.remote.Acceptance;
import baywright.remote.Accepted;
import baywright.remote.SharedLibrary;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack accept WORKSPACE SITE}: makes a proposal part of the main line. */
@Command(name = "accept", resourceBundle = CommandTree.HELP)
final class PackAcceptCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(index = "0", paramLabel = "WORKSPACE", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(index = "1", paramLabel = "SITE", descriptionKey = "shared-of")
    private String site;

    @Mixin
    private ClashChoice clashes;

    @Mixin
    private SignerChoice signer;

    @Option(names = "--version", paramLabel = "VERSION", descriptionKey = "shared-version")
    private Optional<String> version = Optional.empty();

    @Option(names = "--compare", descriptionKey = "shared-compare-acceptance")
    private boolean compareOnly;

    @Option(names = "--accept-unknown", paramLabel = "\"NAME: WHY\"", descriptionKey = "pack-accept")
    private Optional<String> accepted = Optional.empty();

    PackAcceptCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Optional<Consent> consent =
                accepted.map(text -> Consent.of(text).orElseThrow(() -> session.badInput("take.no-consent", text)));
        version.filter(text -> !Version.isVersion(text)).ifPresent(text -> {
            throw session.badInput("pack.make.no-version", text);
        });
        SharedDesk desk = new SharedDesk(session, workspace);
        try (SharedLibrary library = desk.opened()) {
            desk.during(library::fetch);
            Acceptance acceptance = desk.during(watch -> library.acceptance(
                    desk.workspace(), library.proposal(site), clashes.choice(session, false), session.cache()));
            boolean accepts = acceptance.isReady() && !compareOnly;
            Optional<Accepted> done =
                    accepts ? Optional.of(accept(desk, library, acceptance, consent)) : Optional.empty();
            ObjectNode answer = Answers.object();
            new ProposalPrinter(session).show(acceptance, answer);
            if (session.json()) {
                done.ifPresent(d -> answer.putObject("accepted")
                        .put("version", d.version().toString())
                        .put("commit", d.commit()));
                Answers.print(session, answer);
            } else {
                done.ifPresent(
                        d -> session.say("shared.accepted", d.version(), session.command(), session.shown(workspace)));
                if (done.isEmpty() && !compareOnly) {
                    session.say("shared.not-accepted");
                }
            }
            return acceptance.isReady() ? ExitStatus.FINE : ExitStatus.STOPPED;
        }
    }

    private Accepted accept(SharedDesk desk, SharedLibrary library, Acceptance acceptance, Optional<Consent> consent) {
        var who = signer.who(session, desk.workspace());
        var key = signer.key(session, desk.workspace());
        return desk.during(watch ->
                library.accept(desk.workspace(), acceptance, version.map(Version::of), who, key, consent, watch));
    }
}
