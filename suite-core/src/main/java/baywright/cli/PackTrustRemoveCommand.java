package baywright.cli;

import baywright.pack.TrustList;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack trust remove WORKSPACE NAME}: takes somebody's packs no longer; what was taken stays. */
@Command(name = "remove", resourceBundle = CommandTree.HELP)
final class PackTrustRemoveCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", index = "0", descriptionKey = "workspace")
    private Path workspace;

    @Parameters(paramLabel = "NAME", index = "1", descriptionKey = "trust-name")
    private String name;

    PackTrustRemoveCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Path root = WorkspacePath.root(session, workspace);
        TrustList.of(root).without(name).save(Workspace.open(root));
        if (session.json()) {
            Answers.print(session, Answers.object().put("removed", name));
        } else {
            session.say("pack.trust.removed", name);
        }
        return ExitStatus.FINE;
    }
}
