package baywright.cli;

import baywright.library.Library;
import baywright.library.Stage;
import baywright.script.Nearest;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code baywright stages show ID}: what a stage says, with its inputs and facts at their usual values. */
@Command(name = "show", resourceBundle = CommandTree.HELP)
final class StagesShowCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "ID", arity = "1", descriptionKey = "stage-id")
    private String id;

    @Option(names = "--in", paramLabel = "PATH", descriptionKey = "in")
    private Optional<Path> in = Optional.empty();

    StagesShowCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Library library = LibraryPath.usable(session, in);
        Stage stage = library.stageById().get(id);
        if (stage == null) {
            throw session.badInput(
                    "show.none", id, Nearest.hint(id, library.stageById().keySet()));
        }
        StagePrinter printer = new StagePrinter(session, library);
        if (session.json()) {
            Answers.print(session, printer.json(stage));
        } else {
            printer.print(stage);
        }
        return ExitStatus.FINE;
    }
}
