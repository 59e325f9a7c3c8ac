package baywright.cli;

import baywright.pack.Manifest;
import baywright.remote.Acceptance;
import baywright.remote.Proposal;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Shows what a site proposes and what accepting it would make of the main line. */
final class ProposalPrinter {

    private final Session session;
    private final TakingPrinter printer;

    ProposalPrinter(Session session) {
        this.session = session;
        this.printer = new TakingPrinter(session);
    }

    private void head(Proposal proposal, String words) {
        session.console().out().println(session.console().paint(Ink.HEAD, proposal.site()) + "  " + words);
    }

    /** For people at once, for programs into an object. */
    void show(Acceptance acceptance, ObjectNode one) {
        Proposal proposal = acceptance.proposal();
        Manifest manifest = proposal.manifest().orElseThrow();
        if (session.json()) {
            common(proposal, one);
            one.put("who", manifest.who()).put("why", manifest.why());
            one.put("ready", acceptance.isReady())
                    .put("known", acceptance.standing().isKnown());
            one.put("next", acceptance.next().toString());
            printer.addChanges(one, acceptance.changes());
            printer.addClashes(one, acceptance.clashes(), name -> List.of());
            ArrayNode items = one.putArray("items");
            acceptance.items().forEach(items::add);
            one.set("problems", ProblemPrinter.json(acceptance.problems()));
            return;
        }
        head(proposal, manifest.who() + ": " + manifest.why());
        session.console().out().println(printer.standing(acceptance.standing()));
        printer.print(acceptance.changes(), acceptance.items(), acceptance.clashes(), acceptance.problems());
    }

    void showRefused(Proposal proposal, String why, ObjectNode one) {
        if (session.json()) {
            common(proposal, one);
            one.put("refused", why);
        } else {
            head(proposal, session.text("shared.refused", why));
        }
    }

    private static void common(Proposal proposal, ObjectNode one) {
        one.put("site", proposal.site())
                .put("commit", proposal.commit())
                .put("at", proposal.at().toString());
    }
}
