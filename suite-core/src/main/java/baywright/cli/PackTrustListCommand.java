package baywright.cli;

import baywright.pack.TrustList;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack trust list WORKSPACE}: whose packs the workspace takes. */
@Command(name = "list", resourceBundle = CommandTree.HELP)
final class PackTrustListCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    PackTrustListCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        TrustList list = TrustList.of(WorkspacePath.root(session, workspace));
        if (session.json()) {
            ArrayNode all = Answers.array();
            list.all()
                    .forEach(one -> all.addObject()
                            .put("name", one.name())
                            .put("publicKey", one.key().toString())
                            .put("fingerprint", one.key().fingerprint())
                            .put("since", one.since().toString())
                            .put("by", one.by()));
            Answers.print(session, all);
            return ExitStatus.FINE;
        }
        if (list.all().isEmpty()) {
            session.say("pack.trust.none", session.command());
            return ExitStatus.FINE;
        }
        Table table = new Table(
                "~" + session.text("pack.trust.name"),
                session.text("pack.fingerprint"),
                session.text("pack.trust.since"),
                session.text("pack.trust.by"));
        list.all()
                .forEach(one -> table.add(
                        one.name(), one.key().fingerprint(), one.since().toString(), one.by()));
        table.print(session.console(), "");
        return ExitStatus.FINE;
    }
}
