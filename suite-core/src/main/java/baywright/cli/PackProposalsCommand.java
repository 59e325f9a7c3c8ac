package baywright.cli;

import baywright.pack.PackRefused;
import baywright.remote.Acceptance;
import baywright.remote.Proposal;
import baywright.remote.SharedLibrary;
import baywright.share.Choice;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright pack proposals WORKSPACE}: what the sites propose, in meaning. */
@Command(name = "proposals", resourceBundle = CommandTree.HELP)
final class PackProposalsCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    @Option(names = "--offline", descriptionKey = "shared-offline")
    private boolean offline;

    PackProposalsCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        SharedDesk desk = new SharedDesk(session, workspace);
        try (SharedLibrary library = desk.opened()) {
            if (!offline) {
                desk.during(library::fetch);
            }
            List<Proposal> all = library.proposals();
            ProposalPrinter printer = new ProposalPrinter(session);
            ArrayNode answer = Answers.array();
            for (Proposal proposal : all) {
                ObjectNode one = answer.addObject();
                try {
                    Acceptance acceptance = desk.during(
                            watch -> library.acceptance(desk.workspace(), proposal, Choice.ALL, session.cache()));
                    printer.show(acceptance, one);
                } catch (PackRefused e) {
                    printer.showRefused(proposal, e.getMessage(), one);
                }
            }
            if (session.json()) {
                Answers.print(session, answer);
            } else if (all.isEmpty()) {
                session.say("shared.no-proposals");
            }
            return ExitStatus.FINE;
        }
    }
}
