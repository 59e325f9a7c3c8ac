package baywright.cli;

import baywright.library.Family;
import baywright.library.Library;
import baywright.library.Stage;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code baywright stages list}: the stages of a library by family. */
@Command(name = "list", resourceBundle = CommandTree.HELP)
final class StagesListCommand implements Callable<Integer> {

    private final Session session;

    @Option(names = "--in", paramLabel = "PATH", descriptionKey = "in")
    private Optional<Path> in = Optional.empty();

    StagesListCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        Library library = LibraryPath.usable(session, in);
        if (session.json()) {
            ArrayNode all = Answers.array();
            library.stages().forEach(stage -> {
                ObjectNode one = all.addObject();
                one.put("id", stage.id());
                one.put("title", stage.title());
                one.put("family", stage.family());
                one.put("revision", stage.revision());
            });
            Answers.print(session, all);
            return ExitStatus.FINE;
        }
        Table table = new Table("", "", "~");
        for (Family family : library.families()) {
            List<Stage> stages = library.stages().stream()
                    .filter(s -> s.family().equals(family.id()))
                    .toList();
            String name = session.console().paint(Ink.HEAD, family.title());
            for (int i = 0; i < stages.size(); i++) {
                table.add(i == 0 ? name : "", stages.get(i).id(), stages.get(i).title());
            }
        }
        table.print(session.console(), "");
        return ExitStatus.FINE;
    }
}
