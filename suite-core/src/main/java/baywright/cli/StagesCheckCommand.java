package baywright.cli;

import baywright.script.Problem;
import baywright.site.LibraryFolder;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright stages check PATH}: everything that is wrong with a folder of stage scripts, or with one of them. */
@Command(name = "check", resourceBundle = CommandTree.HELP)
final class StagesCheckCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(paramLabel = "PATH", arity = "1", descriptionKey = "check-path")
    private Path path;

    StagesCheckCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        boolean script = Files.isRegularFile(path);
        LibraryFolder library = LibraryPath.around(session, path);
        LibraryFolder.Checked checked = library.check(session.cache());
        LibraryFolder.Loaded loaded = checked.loaded();
        loaded.notes().forEach(session.console().err()::println);
        String only = script
                ? library.folder()
                        .relativize(path.toAbsolutePath().normalize())
                        .toString()
                        .replace('\\', '/')
                : "";
        List<Problem> problems = loaded.problems().stream()
                .filter(p -> only.isEmpty() || p.place().file().equals(only))
                .toList();
        long errors = problems.stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .count();
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("ok", errors == 0);
            answer.put("stages", loaded.library().stages().size());
            answer.put("examples", checked.examples());
            answer.set("problems", ProblemPrinter.json(problems));
            Answers.print(session, answer);
        } else {
            new ProblemPrinter(session).print(session.console().out(), library.folder(), problems);
            session.say(
                    "check.summary",
                    loaded.library().stages().size(),
                    loaded.library().states().size(),
                    loaded.library().items().size(),
                    checked.examples(),
                    errors,
                    problems.size() - errors);
        }
        return status(problems);
    }

    /** A script that cannot be read as it stands is bad input; examples that come out otherwise are a failed check. */
    private static int status(List<Problem> problems) {
        List<Problem> errors = problems.stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .toList();
        if (errors.isEmpty()) {
            return ExitStatus.FINE;
        }
        boolean onlyExamples = errors.stream().allMatch(p -> p.code().equals("example-fails"));
        return onlyExamples ? ExitStatus.STOPPED : ExitStatus.BAD_INPUT;
    }
}
