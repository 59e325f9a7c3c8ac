package baywright.pack;

import baywright.library.Fact;
import baywright.library.Family;
import baywright.library.Goal;
import baywright.library.Item;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.library.StageLanguage;
import baywright.library.State;
import baywright.library.Surface;
import baywright.script.Problem;
import baywright.workspace.SharedItems;
import baywright.workspace.Shown;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * Makes a pack of what a workspace has: scripts, items with what they may do to people, shapes and texts. What is the site's own, such
 * as rates, people, bays, tax and jobs, never gets into one; prices only when they are asked for.
 */
public final class PackMaker {

    /**
     * What the maker says of a pack; see {@link Manifest}.
     *
     * @param prices whether the items' prices go along
     */
    public record About(
            String id,
            Version version,
            String who,
            String why,
            String licence,
            List<Manifest.Need> needs,
            boolean prices) {}

    /**
     * Which stages go into a pack; all of them when both are empty.
     *
     * @param families ids of whole families
     * @param stages   ids of stages
     */
    public record Selection(Set<String> families, Set<String> stages) {

        /** Everything that a workspace has. */
        public static final Selection EVERYTHING = new Selection(Set.of(), Set.of());

        public Selection {
            families = Set.copyOf(families);
            stages = Set.copyOf(stages);
        }

        boolean isEverything() {
            return families.isEmpty() && stages.isEmpty();
        }

        boolean has(Stage stage) {
            return isEverything() || families.contains(stage.family()) || stages.contains(stage.id());
        }
    }

    /**
     * A pack that was made.
     *
     * @param pack     not signed yet
     * @param leftOut  scripts of rules, goals and factors that speak of what is not in the pack, by their names in the workspace
     * @param problems of the pack's files; with an error among them the pack is of no use to anybody
     */
    public record Made(Pack pack, List<String> leftOut, List<Problem> problems) {

        public Made {
            leftOut = List.copyOf(leftOut);
            problems = List.copyOf(problems);
        }

        /** What makes the pack useless. */
        public List<Problem> errors() {
            return problems.stream()
                    .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                    .toList();
        }
    }

    private final Workspace workspace;
    private final List<Pack> beside;
    private final SortedMap<String, String> scripts;
    private final Library library;

    private PackMaker(Workspace workspace, List<Pack> beside) {
        this.workspace = workspace;
        this.beside = beside;
        try {
            LibraryFiles read = LibraryFiles.read(workspace.stages());
            read.problems().stream().findFirst().ifPresent(problem -> {
                throw new WorkspaceException(Pack.STAGES + problem.place() + ": " + problem.message());
            });
            this.scripts = new TreeMap<>(read.texts());
        } catch (IOException e) {
            throw new WorkspaceException(
                    Pack.STAGES + ": the folder of the stage scripts cannot be read (" + PackFile.reason(e) + ")", e);
        }
        this.library = LibraryLoader.load(scripts, workspace.items()).library();
    }

    /**
     * Makes a pack. The same workspace, selection and words give the same bytes.
     *
     * @param beside packs that it needs, so that their names are known
     * @throws WorkspaceException when a file of the workspace cannot be used or nothing is called as the selection says
     */
    public static Made make(Workspace workspace, Selection selection, About about, List<Pack> beside) {
        workspace.ownProblems().stream()
                .filter(problem -> problem.isError() && problem.file().equals(Pack.ITEMS))
                .findFirst()
                .ifPresent(problem -> {
                    throw new WorkspaceException(problem.toString());
                });
        return new PackMaker(workspace, beside).make(selection, about);
    }

    private Made make(Selection selection, About about) {
        refuseUnknown("family", selection.families(), library.families(), Family::id);
        refuseUnknown("stage", selection.stages(), library.stages(), Stage::id);
        SortedMap<String, String> chosen = selection.isEverything() ? new TreeMap<>(scripts) : chosen(selection);
        List<String> leftOut = new ArrayList<>();
        while (true) {
            Pack pack = pack(selection, about, chosen);
            PackScripts.Checked checked = PackScripts.check(pack, beside);
            Set<String> loose = selection.isEverything() ? Set.of() : loose(checked.errors());
            if (loose.isEmpty()) {
                return new Made(pack, leftOut.stream().sorted().toList(), checked.problems());
            }
            loose.forEach(name -> {
                chosen.remove(name);
                leftOut.add(Pack.STAGES + name);
            });
        }
    }

    private static <T> void refuseUnknown(String kind, Set<String> asked, List<T> all, Function<T, String> id) {
        List<String> known = all.stream().map(id).toList();
        asked.stream().filter(one -> !known.contains(one)).sorted().findFirst().ifPresent(one -> {
            String nearest = Shown.nearest(one, known);
            throw new WorkspaceException("no " + kind + " of the workspace is called " + Shown.quoted(one)
                    + (nearest.isEmpty() ? "" : "; " + nearest));
        });
    }

    /** Scripts of the chosen stages and of what those are like, and every script that declares no stage. */
    private SortedMap<String, String> chosen(Selection selection) {
        Set<String> ofStages = files(library.stages(), stage -> stage.place().file());
        Set<String> names = new HashSet<>();
        library.stages().stream()
                .filter(selection::has)
                .forEach(stage -> names.add(stage.place().file()));
        SortedMap<String, String> chosen = new TreeMap<>();
        scripts.forEach((name, text) -> {
            if (!ofStages.contains(name) || names.contains(name)) {
                chosen.put(name, text);
            }
        });
        addLikenesses(chosen);
        return chosen;
    }

    /** A stage that is like another is nothing without it. */
    private void addLikenesses(SortedMap<String, String> chosen) {
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Stage stage : library.stages()) {
                boolean isAbsent = !chosen.containsKey(stage.place().file());
                if (isAbsent && isLiked(stage.id(), chosen.values())) {
                    chosen.put(stage.place().file(), scripts.get(stage.place().file()));
                    grown = true;
                }
            }
        }
    }

    private static boolean isLiked(String id, Collection<String> texts) {
        return texts.stream()
                .anyMatch(text -> text.contains("like: '" + id + "'") || text.contains("like: \"" + id + "\""));
    }

    private static <T> Set<String> files(List<T> all, Function<T, String> file) {
        Set<String> files = new HashSet<>();
        all.forEach(one -> files.add(file.apply(one)));
        return files;
    }

    /** Scripts with errors that declare rules, goals and factors alone: they speak of stages that were not chosen. */
    private Set<String> loose(List<Problem> errors) {
        Set<String> rules = files(library.rules(), (Rule rule) -> rule.place().file());
        rules.addAll(
                files(library.factors(), (JobFactor factor) -> factor.place().file()));
        rules.addAll(files(library.goals(), (Goal goal) -> goal.place().file()));
        Stream.of(
                        files(library.stages(), (Stage s) -> s.place().file()),
                        files(library.states(), (State s) -> s.place().file()),
                        files(library.surfaces(), (Surface s) -> s.place().file()),
                        files(library.families(), (Family f) -> f.place().file()),
                        files(library.facts(), (Fact f) -> f.place().file()))
                .forEach(rules::removeAll);
        Set<String> wrong = files(errors, problem -> problem.place().file().substring(Pack.STAGES.length()));
        rules.retainAll(wrong);
        return rules;
    }

    private Pack pack(Selection selection, About about, SortedMap<String, String> chosen) {
        SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);
        chosen.forEach((name, text) -> files.put(Pack.STAGES + name, text.getBytes(StandardCharsets.UTF_8)));
        if (selection.isEverything()) {
            besideScripts().forEach(path -> files.put(Pack.STAGES + path.getFileName(), bytes(path)));
        }
        List<Item> items = selection.isEverything() ? workspace.items() : named(chosen.values());
        if (!items.isEmpty()) {
            Optional<CurrencyUnit> currency =
                    workspace.shop().filter(shop -> about.prices()).map(shop -> shop.currency());
            files.put(Pack.ITEMS, SharedItems.of(items, currency).bytes());
        }
        for (String path : files.keySet()) {
            PackPath.fault(path).ifPresent(fault -> {
                throw new PackRefused(about.id(), fault.refusal(), fault.values());
            });
        }
        return of(about, files);
    }

    /**
     * A pack of files that somebody has put together.
     *
     * @param parts by path, without manifest and signature
     * @throws PackRefused when they cannot be a pack
     */
    public static Pack of(About about, Map<String, byte[]> parts) {
        SortedMap<String, byte[]> files = new TreeMap<>(PackPath.ORDER);
        files.putAll(parts);
        List<Manifest.Entry> entries = new ArrayList<>();
        files.forEach((path, bytes) -> entries.add(new Manifest.Entry(path, Sha256.of(bytes), bytes.length)));
        Manifest manifest = new Manifest(
                about.id(),
                about.version(),
                about.who(),
                about.why(),
                about.licence(),
                about.needs(),
                StageLanguage.VERSION,
                about.prices(),
                entries);
        files.put(Pack.MANIFEST, ManifestJson.bytes(manifest));
        return PackContent.judge(about.id(), files);
    }

    /** Shapes and words; other files are the site's own. */
    private List<Path> besideScripts() {
        try (Stream<Path> all = Files.list(workspace.stages())) {
            return all.filter(path -> PackPath.isKnown(Pack.STAGES + path.getFileName()))
                    .filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new WorkspaceException(Pack.STAGES + ": the folder cannot be read (" + PackFile.reason(e) + ")", e);
        }
    }

    private static byte[] bytes(Path path) {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(PackZip.LARGEST_FILE + 1);
        } catch (IOException e) {
            throw new WorkspaceException(
                    Pack.STAGES + path.getFileName() + ": the file cannot be read (" + PackFile.reason(e) + ")", e);
        }
    }

    /** Items whose id stands between quotation marks in a script: at least all that the scripts use. */
    private List<Item> named(Collection<String> texts) {
        return workspace.items().stream()
                .filter(item -> texts.stream()
                        .anyMatch(
                                text -> text.contains("'" + item.id() + "'") || text.contains("\"" + item.id() + "\"")))
                .toList();
    }
}
