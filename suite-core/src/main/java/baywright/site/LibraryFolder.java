package baywright.site;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.plan.ExampleCheck;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.vehicle.Shape;
import baywright.workspace.FileProblem;
import baywright.workspace.StageFolder;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder with stage scripts, their price list and vehicle shapes.
 *
 * @param folder the folder that problems name files of: a workspace, or the folder of scripts itself
 * @param below  where the scripts are below it, ending in {@code /}; empty for the folder itself
 * @param items  the price list
 * @param shapes the vehicle shapes
 * @param before what is wrong with price list and shapes
 */
public record LibraryFolder(Path folder, String below, List<Item> items, List<Shape> shapes, List<Problem> before) {

    private static final String STAGES = "stages/";
    private static final String ITEMS = "items.json";

    /**
     * What was loaded.
     *
     * @param library  everything that could be used
     * @param problems in order of place, failed examples among them
     * @param notes    why something that was kept of an earlier load was not used
     */
    public record Loaded(Library library, List<Problem> problems, List<String> notes) {

        public Loaded {
            problems = List.copyOf(problems);
            notes = List.copyOf(notes);
        }

        /**
         * Insists on a library without errors.
         *
         * @param folder the folder that the problems name files of
         * @throws SiteTrouble with all errors when there is one
         */
        public void refuseErrors(Path folder) {
            List<Problem> errors = problems.stream()
                    .filter(p -> p.severity() == Problem.Severity.ERROR)
                    .toList();
            if (!errors.isEmpty()) {
                throw new SiteTrouble(folder, errors);
            }
        }
    }

    public LibraryFolder {
        items = List.copyOf(items);
        shapes = List.copyOf(shapes);
        before = List.copyOf(before);
    }

    /** A folder of scripts such as the standard library. */
    public static LibraryFolder of(Path folder) {
        StageFolder read = StageFolder.read(folder);
        return new LibraryFolder(read.folder(), "", read.items(), read.shapes(), asProblems(read.problems()));
    }

    /**
     * The library of a workspace.
     *
     * @throws WorkspaceException when the folder cannot be listed
     */
    public static LibraryFolder ofWorkspace(Path folder) {
        return of(Workspace.open(folder));
    }

    static LibraryFolder of(Workspace workspace) {
        return new LibraryFolder(
                workspace.root(), STAGES, workspace.items(), workspace.shapes(), asProblems(workspace.ownProblems()));
    }

    static List<Problem> asProblems(List<FileProblem> problems) {
        return problems.stream().map(FileProblem::asProblem).toList();
    }

    /**
     * A library after its examples have run.
     *
     * @param loaded the library, with failed examples among the problems
     * @param stages what the examples of each stage came to, in the library's order, their places below the folder
     */
    public record Checked(Loaded loaded, List<ExampleCheck.StageOutcome> stages) {
        public Checked {
            stages = List.copyOf(stages);
        }

        /** How many examples ran. */
        public int examples() {
            return stages.stream().mapToInt(s -> s.outcomes().size()).sum();
        }
    }

    /** Loads the scripts, checks that they fit together and runs their examples. */
    public Checked check(ScriptCache cache) {
        Loaded loaded = load(cache);
        List<ExampleCheck.StageOutcome> stages = new ExampleCheck(loaded.library(), shapes)
                .all().stream().map(this::placed).toList();
        Stream<Problem> failed =
                stages.stream().flatMap(stage -> stage.outcomes().stream()).flatMap(LibraryFolder::failures);
        List<Problem> problems =
                Stream.concat(loaded.problems().stream(), failed).sorted().toList();
        return new Checked(new Loaded(loaded.library(), problems, loaded.notes()), stages);
    }

    private ExampleCheck.StageOutcome placed(ExampleCheck.StageOutcome stage) {
        return new ExampleCheck.StageOutcome(
                stage.stage(),
                stage.outcomes().stream()
                        .map(o -> new ExampleCheck.Outcome(o.example(), placed(o.place()), o.lines()))
                        .toList(),
                stage.declared(),
                stage.unreached().stream().map(this::placed).toList());
    }

    /** What an example says that its stage does not come to, each as an error. */
    public static Stream<Problem> failures(ExampleCheck.Outcome outcome) {
        return outcome.lines().stream()
                .filter(line -> !line.met())
                .map(line -> new Problem(
                        outcome.place(),
                        Problem.Severity.ERROR,
                        "example-fails",
                        "example '" + outcome.example() + "': " + line.what() + " should be " + line.expected()
                                + ", and comes out as " + line.got(),
                        "example"));
    }

    /** Loads the scripts and checks that they fit together; examples are not run. */
    public Loaded load(ScriptCache cache) {
        LibraryLoader.Loaded loaded = loadScripts(cache);
        boolean itemsUnread = before.stream()
                .anyMatch(p -> p.severity() == Problem.Severity.ERROR
                        && p.place().file().equals(ITEMS));
        // Every use of every item would be an unknown one, and the one fault that has to be mended is hard to find.
        Stream<Problem> ofScripts = loaded.problems().stream()
                .filter(p -> !(itemsUnread && p.code().equals("unknown-item")))
                .map(this::placed);
        List<Problem> problems =
                Stream.concat(before.stream(), ofScripts).sorted().toList();
        return new Loaded(loaded.library(), problems, loaded.notes());
    }

    private LibraryLoader.Loaded loadScripts(ScriptCache cache) {
        Path scripts = folder.resolve(below);
        try {
            return LibraryLoader.load(scripts, items, cache);
        } catch (IOException e) {
            throw new WorkspaceException(scripts + ": the folder of the stage scripts cannot be read", e);
        }
    }

    private Problem placed(Problem problem) {
        return placed(problem, below);
    }

    /** A problem whose file is named from the workspace. */
    private Place placed(Place place) {
        return placed(place, below);
    }

    private static Place placed(Place place, String below) {
        return new Place(below + place.file(), place.line(), place.column());
    }

    static Problem placed(Problem problem, String below) {
        return new Problem(
                placed(problem.place(), below), problem.severity(), problem.code(), problem.message(), problem.word());
    }
}
