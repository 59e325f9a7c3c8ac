package baywright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code baywright completion}: a script that lets bash and zsh complete the words of this program. */
@Command(name = "completion", resourceBundle = CommandTree.HELP)
final class CompletionCommand implements Callable<Integer> {

    private final Session session;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        session.console().out().print(AutoComplete.bash("baywright", spec.root().commandLine()));
        return ExitStatus.FINE;
    }
}
