package baywright.cli;

import baywright.share.TakingBack;
import baywright.workspace.Workspace;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright pack undo WORKSPACE}: takes the pack that was taken last back, in one step. */
@Command(name = "undo", resourceBundle = CommandTree.HELP)
final class PackUndoCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    PackUndoCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        TakingBack.Back back = TakingBack.takeBack(Workspace.open(workspace), session.cache());
        TakingPrinter printer = new TakingPrinter(session);
        if (session.json()) {
            Answers.print(session, TakingPrinter.json(back.after()));
        } else {
            session.say("take.undone");
            printer.print(back.after());
        }
        return ExitStatus.FINE;
    }
}
