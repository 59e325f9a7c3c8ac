package baywright.library;

import baywright.library.Fact.Kind;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import baywright.script.Problems;
import baywright.script.ScriptParser;
import baywright.script.Steps;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes a library of the texts of its files. Any texts at all give a library: what is wrong is listed, and a stage with
 * an error is left out while all others are there. Files are read on all cores; the result does not depend on that.
 */
public final class LibraryLoader {

    /** The vehicle's size: known to every library without being declared, set by the vehicle's shape. */
    public static final Fact SIZE = new Fact(
            "size", Kind.NUMBER, List.of(), "1", "size of the vehicle against a medium saloon", Place.ofFile("shapes"));

    private LibraryLoader() {}

    /**
     * A library and what was wrong with its texts.
     *
     * @param library  all that could be used
     * @param problems of all files, in order of place
     * @param notes    why something that was kept of an earlier load was not used; nothing is wrong with the library
     */
    public record Loaded(Library library, List<Problem> problems, List<String> notes) {
        public Loaded {
            problems = List.copyOf(problems);
            notes = List.copyOf(notes);
        }

        public List<Problem> errors() {
            return problems.stream().filter(p -> p.severity() == Severity.ERROR).toList();
        }
    }

    /**
     * Loads every file below a folder whose name ends in {@code .groovy}, without a cache.
     *
     * @throws IOException when the folder itself cannot be listed; a file that cannot be read is a problem
     */
    public static Loaded load(Path folder, List<Item> items) throws IOException {
        return load(folder, items, ScriptCache.none());
    }

    /**
     * Loads every file below a folder whose name ends in {@code .groovy}. What the cache has of the same texts is not
     * read again; what it lacks is put there. The library and the problems are the same with any cache.
     *
     * @throws IOException when the folder itself cannot be listed; a file that cannot be read is a problem
     */
    public static Loaded load(Path folder, List<Item> items, ScriptCache cache) throws IOException {
        return load(folder, LibraryFiles.read(folder), items, cache);
    }

    /**
     * Loads a library from the texts of its files as they are now, saved or not.
     *
     * @param folder where the library is at home, by which the cache knows it
     * @param files  its files
     * @see #load(Path, List, ScriptCache)
     */
    public static Loaded load(Path folder, LibraryFiles files, List<Item> items, ScriptCache cache) {
        KeptLibrary kept = new KeptLibrary(cache.fileOf(folder), files.texts(), items);
        Optional<Loaded> whole = kept.whole();
        Loaded loaded = whole.isPresent() ? whole.get() : fresh(files.texts(), items, kept);
        List<Problem> problems = Stream.concat(files.problems().stream(), loaded.problems().stream())
                .distinct()
                .sorted()
                .toList();
        return new Loaded(loaded.library(), problems, kept.notes());
    }

    /**
     * Loads files by their names relative to the library's folder.
     *
     * @param texts text of each file by name
     * @param items the price list
     */
    public static Loaded load(Map<String, String> texts, List<Item> items) {
        Map<String, String> sorted = new TreeMap<>(texts);
        return fresh(sorted, items, new KeptLibrary(Optional.empty(), sorted, items));
    }

    private static Loaded fresh(Map<String, String> texts, List<Item> items, KeptLibrary kept) {
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService workers = Executors.newFixedThreadPool(cores, ScriptParser::deepThread);
        try {
            return load(texts, items, kept, workers);
        } finally {
            workers.shutdownNow();
        }
    }

    private static Loaded load(Map<String, String> texts, List<Item> items, KeptLibrary kept, ExecutorService workers) {
        List<FileDraft> files = inParallel(
                workers,
                texts.entrySet().stream()
                        .<Callable<FileDraft>>map(e -> () -> file(e.getKey(), e.getValue(), kept))
                        .toList());
        Declared<State> states = new Declared<>("state");
        Declared<Surface> surfaces = new Declared<>("surface");
        Declared<Family> families = new Declared<>("family");
        Declared<Fact> facts = new Declared<>("fact");
        Declared<JobFactor> factors = new Declared<>("factor");
        Declared<FileBlock.Met> met = new Declared<>("stage");
        Declared<Constant> constants = new Declared<>("constant");
        Map<String, Problems> problemsOf = new HashMap<>();
        Map<String, List<FileBlock.Met>> seconds = new HashMap<>();
        Declared<Item> stock = new Declared<>("item");
        Problems ignored = new Problems();
        items.forEach(i -> stock.add(i, Item::id, i2 -> Place.ofFile("items.json"), ignored));
        Set<String> broken = new LinkedHashSet<>();
        for (FileDraft file : files) {
            FileBlock block = file.block();
            Problems problems = file.problems();
            block.states().forEach(s -> states.add(s.state(), State::id, State::place, problems));
            block.surfaces().forEach(s -> surfaces.add(s, Surface::id, Surface::place, problems));
            block.families().forEach(f -> families.add(f, Family::id, Family::place, problems));
            block.facts().forEach(f -> facts.add(f, Fact::id, Fact::place, problems));
            block.factors().forEach(f -> factors.add(f.factor(), JobFactor::id, JobFactor::place, problems));
            block.constants().forEach(c -> constants.add(c, Constant::id, Constant::place, problems));
            for (FileBlock.Met one : block.stages()) {
                problemsOf.putIfAbsent(one.id(), problems);
                boolean first = !met.has(one.id());
                met.add(one, FileBlock.Met::id, FileBlock.Met::place, problems);
                if (first && file.broken()) {
                    broken.add(one.id());
                }
                if (!first) {
                    seconds.computeIfAbsent(file.file(), f -> new ArrayList<>()).add(one);
                }
            }
        }
        Surroundings around = new Surroundings(withSize(facts), constants);
        Inheritance inheritance = new Inheritance(met, problemsOf);
        Map<String, List<Lineage>> linesOf = inheritance.lines().stream()
                .collect(Collectors.groupingBy(l -> l.own().place().file()));
        // The stages of a file share its steps: one after the other, so that the same one is the first without any.
        Map<String, StageDraft> drafts = new HashMap<>();
        inParallel(
                        workers,
                        files.stream()
                                .<Callable<List<StageDraft>>>map(f -> () ->
                                        drafts(linesOf.getOrDefault(f.file(), List.of()), around, broken, f.steps()))
                                .toList())
                .forEach(ofFile -> ofFile.forEach(d -> drafts.put(d.stage().id(), d)));
        List<StageDraft> stages =
                inheritance.lines().stream().map(l -> drafts.get(l.own().id())).toList();
        List<StageDraft> useless = inParallel(
                        workers,
                        files.stream()
                                .<Callable<List<StageDraft>>>map(f -> () ->
                                        useless(f, seconds.getOrDefault(f.file(), List.of()), inheritance, around))
                                .toList())
                .stream()
                .flatMap(List::stream)
                .toList();
        Set<String> ids = new LinkedHashSet<>(met.ids());
        LibraryLint lint = new LibraryLint(states, surfaces, families, facts, stock, ids);
        for (FileDraft file : files) {
            file.block().states().forEach(s -> lint.state(s, file.problems()));
            file.block().factors().forEach(f -> lint.factor(f, file.problems()));
        }
        List<StageDraft> all = Stream.concat(stages.stream(), useless.stream()).toList();
        all.forEach(lint::stage);
        new Reachability(states, all).judge();
        List<Rule> rules = new RuleReader(
                        new RuleReader.Known(states, surfaces, families, stock, around),
                        stages.stream().map(StageDraft::stage).toList(),
                        Optional.of(RuleReader.goods(stock, stages)))
                .read(files);
        List<Goal> goals = GoalBlock.sound(files, states, surfaces);
        files.forEach(around::noteUnused);

        Map<String, Problems> ofStages = inheritance.settled(stages, broken);
        List<Problem> problems = new ArrayList<>();
        files.forEach(f -> problems.addAll(f.problems().sorted()));
        useless.forEach(s -> problems.addAll(s.problems().sorted()));
        ofStages.values().forEach(p -> problems.addAll(p.sorted()));
        List<Stage> usable = stages.stream()
                .map(StageDraft::stage)
                .filter(s -> ofStages.get(s.id()).errors() == 0)
                .filter(s -> !broken.contains(s.id()))
                .toList();
        Library library = Library.of(
                        states.all(),
                        surfaces.all(),
                        families.all(),
                        facts.all(),
                        factors.all(),
                        stock.all(),
                        usable,
                        rules,
                        kept.inputs())
                .withGoals(goals);
        List<Problem> told = problems.stream().distinct().sorted().toList();
        kept.keep(files, told, usable);
        return new Loaded(library, told, List.of());
    }

    /** The facts that a script may ask for. */
    static List<Fact> withSize(Declared<Fact> facts) {
        List<Fact> known = new ArrayList<>(facts.all());
        if (!facts.has(SIZE.id())) {
            known.add(SIZE);
        }
        return known;
    }

    private static List<StageDraft> drafts(List<Lineage> lines, Surroundings around, Set<String> broken, Steps steps) {
        return lines.stream()
                .map(l -> StageDraft.read(l, around, !broken.contains(l.own().id()), steps))
                .toList();
    }

    /** Stages that cannot be used, since they have no id or one that is taken; what else is wrong is told as well. */
    private static List<StageDraft> useless(
            FileDraft file, List<FileBlock.Met> seconds, Inheritance inheritance, Surroundings around) {
        Stream<StageDraft> nameless =
                file.block().nameless().stream().map(m -> StageDraft.read(new Lineage(m), around, false, file.steps()));
        Stream<StageDraft> second = seconds.stream()
                .map(m -> StageDraft.read(
                        inheritance.ofSecond(m, file.problems()),
                        around,
                        !file.broken() && inheritance.isComplete(m),
                        file.steps()));
        return Stream.concat(nameless, second).toList();
    }

    private static FileDraft file(String name, String text, KeptLibrary kept) {
        return FileDraft.of(kept.script(name).orElseGet(() -> ScriptParser.parseHere(name, text)));
    }

    private static <T> List<T> inParallel(ExecutorService workers, List<Callable<T>> tasks) {
        List<T> results = new ArrayList<>();
        try {
            for (Future<T> future : workers.invokeAll(tasks)) {
                results.add(future.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("loading the library was interrupted", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e.getCause());
        }
        return results;
    }
}
