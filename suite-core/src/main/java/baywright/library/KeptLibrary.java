package baywright.library;

import baywright.library.LibraryLoader.Loaded;
import baywright.script.DamagedData;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import baywright.script.Problems;
import baywright.script.Script;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What is kept of one library between runs, held against the texts of this run. A library that was never kept borrows
 * from the one that was kept last: a new shop, a copy and a second site mostly have the same scripts.
 */
final class KeptLibrary {

    private final Optional<CacheFile> file;
    private final Map<String, String> texts;
    private final List<Item> items;
    private final String inputs;
    private final String build;
    private final LazyStages lazy = new LazyStages();
    private final Optional<LibraryImage> image;
    private final Optional<CacheFile> lender;
    private final List<String> notes = new ArrayList<>();

    KeptLibrary(Optional<CacheFile> file, Map<String, String> texts, List<Item> items) {
        this.file = file;
        this.texts = texts;
        this.items = items;
        this.inputs = Hashes.of(texts, items);
        this.build = file.isPresent() ? BuildMark.here() : "";
        this.lender = file.filter(f -> !f.exists()).flatMap(CacheFile::latestOther);
        this.image = lender.isPresent() ? read(lender.get(), why -> {}) : file.flatMap(f -> read(f, this::note));
    }

    private Optional<LibraryImage> read(CacheFile from, Consumer<String> trouble) {
        CacheFile.Found found = from.read();
        found.note().ifPresent(trouble);
        if (found.bytes().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LibraryImage.read(found.bytes().get(), build, lazy));
        } catch (LibraryImage.Outdated e) {
            return Optional.empty(); // as after every new version of the program: nobody needs to know
        } catch (DamagedData e) {
            trouble.accept(e.getMessage());
            return Optional.empty();
        }
    }

    private void note(String why) {
        notes.add(file.orElseThrow().path() + ": what was kept of this library is not used: " + why);
    }

    /** Hash of everything that the library is made of. */
    String inputs() {
        return inputs;
    }

    List<String> notes() {
        return List.copyOf(notes);
    }

    /** The library as it was kept, if it was made of just these texts. */
    Optional<Loaded> whole() {
        Optional<Loaded> whole = image.filter(i -> i.inputs().equals(inputs))
                .filter(i -> i.scripts().keySet().equals(texts.keySet()))
                .flatMap(this::library);
        if (whole.isPresent()) {
            lender.flatMap(l -> l.read().bytes()).ifPresent(this::write);
        }
        return whole;
    }

    /** Rules of a library that has errors are judged again: which of them are sound is not kept. */
    private Optional<Loaded> library(LibraryImage from) {
        Declared<State> states = new Declared<>("state");
        Declared<Surface> surfaces = new Declared<>("surface");
        Declared<Family> families = new Declared<>("family");
        Declared<Fact> facts = new Declared<>("fact");
        Declared<JobFactor> factors = new Declared<>("factor");
        Declared<Constant> constants = new Declared<>("constant");
        Declared<Item> stock = new Declared<>("item");
        Problems told = new Problems();
        List<FileDraft> files = new ArrayList<>();
        items.forEach(i -> stock.add(i, Item::id, i2 -> Place.ofFile("items.json"), told));
        lazy.ready(this::draft, new Surroundings(List.of(), constants));
        for (String name : texts.keySet()) {
            if (from.scripts().get(name).isOnlyWork()) {
                continue;
            }
            files.add(lazy.file(name));
            FileBlock block = lazy.file(name).block();
            block.states().forEach(s -> states.add(s.state(), State::id, State::place, told));
            block.surfaces().forEach(s -> surfaces.add(s, Surface::id, Surface::place, told));
            block.families().forEach(f -> families.add(f, Family::id, Family::place, told));
            block.facts().forEach(f -> facts.add(f, Fact::id, Fact::place, told));
            block.constants().forEach(c -> constants.add(c, Constant::id, Constant::place, told));
            block.factors().forEach(f -> factors.add(f.factor(), JobFactor::id, JobFactor::place, told));
        }
        boolean hasErrors = from.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
        if (hasErrors && files.stream().anyMatch(f -> !f.block().rules().isEmpty())) {
            return Optional.empty();
        }
        Surroundings around = new Surroundings(LibraryLoader.withSize(facts), constants);
        lazy.ready(this::draft, around);
        RuleReader.Known known = new RuleReader.Known(states, surfaces, families, stock, around);
        Library library = Library.of(
                        states.all(),
                        surfaces.all(),
                        families.all(),
                        facts.all(),
                        factors.all(),
                        stock.all(),
                        from.stages(),
                        new RuleReader(known, from.stages(), Optional.empty()).read(files),
                        inputs)
                .withGoals(GoalBlock.sound(files, states, surfaces));
        return Optional.of(new Loaded(library, from.problems(), List.of()));
    }

    private FileDraft draft(String name) {
        KeptScript kept = image.orElseThrow().scripts().get(name);
        return kept == null ? FileDraft.nothing(name) : FileDraft.of(kept.script(texts.get(name)));
    }

    /** A file's script as it was kept, if it was read from the same text. */
    Optional<Script> script(String name) {
        KeptScript kept = image.map(i -> i.scripts().get(name)).orElse(null);
        if (kept == null || !kept.textHash().equals(Hashes.of(texts.get(name)))) {
            return Optional.empty();
        }
        try {
            return Optional.of(kept.script());
        } catch (DamagedData e) {
            return Optional.empty();
        }
    }

    /** Keeps a library for the next run, in place of what was kept before. */
    void keep(List<FileDraft> files, List<Problem> problems, List<Stage> stages) {
        if (file.isEmpty()) {
            return;
        }
        if (lender.isEmpty() && image.filter(i -> i.inputs().equals(inputs)).isPresent()) {
            return;
        }
        Map<String, KeptScript> scripts = new LinkedHashMap<>();
        for (FileDraft draft : files) {
            KeptScript.of(
                            draft.script(),
                            Hashes.of(texts.get(draft.file())),
                            draft.block().isOnlyStages())
                    .ifPresent(s -> scripts.put(s.file(), s));
        }
        byte[] made = new LibraryImage(inputs, scripts, problems, stages).bytes(build);
        try {
            LibraryImage.read(made, build, new LazyStages());
        } catch (DamagedData e) {
            notes.add("this library is not kept for the next time: " + e.getMessage());
            return;
        }
        write(made);
    }

    private void write(byte[] bytes) {
        try {
            file.orElseThrow().write(bytes);
        } catch (IOException e) {
            notes.add(file.orElseThrow().path() + ": this library is not kept for the next time: "
                    + (e.getMessage() == null ? "the file cannot be written" : e.getMessage()));
        }
    }
}
