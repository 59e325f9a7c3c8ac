package baywright.cli;

import baywright.remote.Proposal;
import baywright.remote.SharedLibrary;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack decline WORKSPACE SITE}: takes a proposal away at the remote. */
@Command(name = "decline", resourceBundle = CommandTree.HELP)
final class PackDeclineCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(index = "0", paramLabel = "WORKSPACE", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(index = "1", paramLabel = "SITE", descriptionKey = "shared-of")
    private String site;

    PackDeclineCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        SharedDesk desk = new SharedDesk(session, workspace);
        try (SharedLibrary library = desk.opened()) {
            Proposal declined = desk.during(watch -> {
                library.fetch(watch);
                Proposal proposal = library.proposal(site);
                library.decline(proposal, watch);
                return proposal;
            });
            if (session.json()) {
                Answers.print(session, Answers.object().put("declined", declined.commit()));
            } else {
                session.say("shared.declined", site);
            }
            return ExitStatus.FINE;
        }
    }
}
