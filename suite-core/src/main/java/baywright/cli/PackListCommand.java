package baywright.cli;

import baywright.share.PackLock;
import baywright.share.Taking;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack list WORKSPACE}: the packs that a site has taken. */
@Command(name = "list", resourceBundle = CommandTree.HELP)
final class PackListCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    PackListCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        PackLock lock = Taking.lockOf(Workspace.open(workspace).root());
        if (session.json()) {
            Answers.print(session, TakingPrinter.json(lock));
        } else {
            new TakingPrinter(session).print(lock);
        }
        return ExitStatus.FINE;
    }
}
