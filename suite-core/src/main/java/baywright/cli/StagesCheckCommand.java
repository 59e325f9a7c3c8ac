package baywright.cli;

import baywright.plan.ExampleCheck;
import baywright.script.Problem;
import baywright.site.LibraryFolder;
import com.fasterxml.jackson.databind.node.ArrayNode;
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
            answer.set("coverage", coverage(checked.stages()));
            answer.set("problems", ProblemPrinter.json(problems));
            Answers.print(session, answer);
        } else {
            ProblemPrinter printer = new ProblemPrinter(session);
            printer.print(session.console().out(), library.folder(), problems);
            List<ExampleCheck.StageOutcome> partly = checked.stages().stream()
                    .filter(s -> !s.unreached().isEmpty())
                    .filter(s -> only.isEmpty() || s.unreached().get(0).file().equals(only))
                    .toList();
            partly.forEach(stage -> printPartly(printer, library.folder(), stage));
            session.say(
                    "check.summary",
                    loaded.library().stages().size(),
                    loaded.library().states().size(),
                    loaded.library().items().size(),
                    checked.examples(),
                    errors,
                    problems.size() - errors);
            if (partly.isEmpty() && checked.examples() > 0) {
                session.say("check.reached");
            }
        }
        return status(problems);
    }

    private void printPartly(ProblemPrinter printer, Path folder, ExampleCheck.StageOutcome stage) {
        session.say(
                "check.partly",
                stage.stage(),
                stage.coveragePercent(),
                stage.declared(),
                stage.unreached().size());
        stage.unreached().forEach(place -> printer.printPlace(session.console().out(), folder, place));
    }

    private static ArrayNode coverage(List<ExampleCheck.StageOutcome> stages) {
        ArrayNode all = Answers.array();
        for (ExampleCheck.StageOutcome stage : stages) {
            ObjectNode one = all.addObject();
            one.put("stage", stage.stage());
            one.put("examples", stage.outcomes().size());
            one.put("declared", stage.declared());
            one.put("percent", stage.coveragePercent());
            ArrayNode unreached = one.putArray("unreached");
            stage.unreached().forEach(place -> unreached.add(place.toString()));
        }
        return all;
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
