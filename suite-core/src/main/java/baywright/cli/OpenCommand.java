package baywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright open WORKSPACE}: the window. */
@Command(name = "open", resourceBundle = CommandTree.HELP)
final class OpenCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "WORKSPACE", arity = "1", descriptionKey = "workspace")
    private Path workspace;

    OpenCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        if (!Files.isRegularFile(workspace.resolve("shop.json"))) {
            throw session.badInput("open.no-workspace", workspace);
        }
        Windows.open(session, Optional.of(workspace.toAbsolutePath().normalize()));
        return ExitStatus.FINE;
    }
}
