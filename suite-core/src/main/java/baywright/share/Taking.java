package baywright.share;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.LibraryFiles;
import baywright.library.LibraryLoader;
import baywright.library.ScriptCache;
import baywright.library.Stage;
import baywright.library.StageChange;
import baywright.library.StageComparison;
import baywright.pack.Consent;
import baywright.pack.Manifest;
import baywright.pack.Pack;
import baywright.pack.PackNeeds;
import baywright.pack.PackSignature;
import baywright.pack.Standing;
import baywright.pack.TrustList;
import baywright.plan.ExampleCheck;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.share.Clash.Side;
import baywright.site.LibraryFolder;
import baywright.vehicle.Shape;
import baywright.workspace.FileProblem;
import baywright.workspace.FilesChange;
import baywright.workspace.FilesChange.Replaced;
import baywright.workspace.JsonText;
import baywright.workspace.LibraryTexts;
import baywright.workspace.SharedItems;
import baywright.workspace.Shop;
import baywright.workspace.Shown;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import baywright.workspace.WorkspaceWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What taking a pack would come to: worked out as a whole, shown, and then made in one step or not at all. Nothing is written before
 * {@link #take}.
 *
 * <p>{@code stages/} stays the library that is read. Beside it {@code packs/ID/} keeps what was taken of the pack as it came; what the site
 * has made of it is the difference between the two, and is merged with the next version.
 */
public final class Taking {

    /** What takes the last change back, as a text of {@link FilesChange}. */
    static final String UNDO = "packs/undo.json";

    private static final String STAGES = "stages";
    private static final String STAGE = "stage ";
    private static final String RULE = "rule ";
    private static final String ITEM = "item ";
    private static final String SHAPES = "shapes.json";
    private static final String ITEMS = "items.json";

    private final Workspace workspace;
    private final Pack pack;
    private final Choice choice;
    private final Texts files;
    private final PackLock lock;
    private final SortedMap<String, String> came;
    private final SortedMap<String, String> base;
    private final SortedMap<String, String> ours;
    private final SortedMap<String, String> part;
    private final Merged merged;
    private final Shelves shelves;
    private final List<LibraryChange> changes;
    private final List<Problem> problems;
    private final List<Problem> failedExamples;
    private final Library library;
    private final Set<String> offered;
    private final Set<String> offeredItems;
    private final List<String> leftOut;
    private final Map<String, List<StageChange>> atStake;

    private Taking(
            Workspace workspace,
            Pack pack,
            Choice choice,
            ScriptCache cache,
            UnaryOperator<SortedMap<String, String>> common) {
        this.workspace = workspace;
        this.pack = pack;
        this.choice = choice;
        this.files = new Texts(workspace.root());
        this.lock = lock(files);
        refuseNeeds();
        String id = pack.manifest().id();
        came = files.below(folder(id) + "/" + STAGES);
        base = common.apply(came);
        ours = files.below(STAGES);
        SortedMap<String, String> theirs = theirs();
        SharedItems before = items(files, id);
        offeredItems = pack.items().items().stream()
                .filter(i -> !before.items().contains(i))
                .map(i -> ITEM + i.likeness().id())
                .collect(Collectors.toSet());
        refuseUnknownNames(theirs);
        Predicate<String> wanted = choice::wants;
        Set<String> elsewhere = elsewhere(id);
        Set<String> declared = DeclarationMerge.declared(theirs);
        part = DeclarationMerge.part(
                base, theirs, wanted.and(name -> declared.contains(name) || !elsewhere.contains(name)));
        leftOut = choice.only().isEmpty() ? List.of() : List.copyOf(DeclarationMerge.differences(part, theirs));
        offered = DeclarationMerge.differences(base, theirs);
        merged = DeclarationMerge.of(base, ours, part, choice::side);
        String all = String.join("\n", merged.texts().values());
        shelves = Shelves.merge(
                before,
                workspace.items(),
                pack.items(),
                isPriced(),
                item -> choice.wants(ITEM + item) || (!isOnShelf(item) && all.contains("'" + item + "'")));
        LibraryLoader.Loaded old = load(workspace, ours, workspace.items(), cache);
        LibraryLoader.Loaded now = load(workspace, merged.texts(), shelves.items(), cache);
        List<Problem> wrong = new ArrayList<>(LibraryChanges.fresh(old.problems(), now.problems()));
        wrong.addAll(spoiltFiles());
        library = now.library();
        changes = new LibraryChanges(ours, old.library(), merged.texts(), library).all();
        List<Shape> shapes = LibraryTexts.shapes(merged.texts().getOrDefault(SHAPES, ""));
        if (wrong.isEmpty()) {
            wrong.addAll(shapesInUse(shapes));
        }
        problems = List.copyOf(wrong);
        failedExamples = problems.isEmpty() ? failedExamples(old.library(), shapes) : List.of();
        atStake = atStake(cache);
    }

    /** What is wrong with files beside the scripts that neither side has. */
    private List<Problem> spoiltFiles() {
        List<Problem> wrong = new ArrayList<>();
        merged.texts().forEach((name, text) -> {
            if (name.endsWith(".json") && !text.equals(ours.get(name))) {
                LibraryTexts.problems(STAGES + "/" + name, text.getBytes(StandardCharsets.UTF_8)).stream()
                        .filter(FileProblem::isError)
                        .map(FileProblem::asProblem)
                        .map(Taking::below)
                        .forEach(wrong::add);
            }
        });
        return wrong;
    }

    private static Problem below(Problem problem) {
        Place place = problem.place();
        return new Problem(
                new Place(place.file().substring(STAGES.length() + 1), place.line(), place.column()),
                problem.severity(),
                problem.code(),
                problem.message(),
                problem.word());
    }

    /** Jobs whose vehicle would no longer have a shape. */
    private List<Problem> shapesInUse(List<Shape> after) {
        Set<String> left = after.stream().map(Shape::id).collect(Collectors.toSet());
        Set<String> had = workspace.shapes().stream().map(Shape::id).collect(Collectors.toSet());
        return workspace.jobs().stream()
                .flatMap(file -> file.job().stream())
                .filter(job -> had.contains(job.vehicle().shape())
                        && !left.contains(job.vehicle().shape()))
                .map(job -> new Problem(
                        new Place(SHAPES, 1, 1),
                        Problem.Severity.ERROR,
                        "shape-gone",
                        "the vehicle of job '" + job.id() + "' has the shape '"
                                + job.vehicle().shape() + "', which would be gone; leave 'shape "
                                + job.vehicle().shape() + "' out",
                        ""))
                .toList();
    }

    /** Examples that hold now and would not hold afterwards; only what has changed is run. */
    private List<Problem> failedExamples(Library before, List<Shape> shapes) {
        Set<String> changed = changes.stream().map(LibraryChange::name).collect(Collectors.toSet());
        boolean all = changed.stream()
                .anyMatch(name -> !name.startsWith(STAGE) && !name.startsWith(RULE) && !name.endsWith(".json"));
        ExampleCheck now = new ExampleCheck(library, shapes);
        ExampleCheck then = new ExampleCheck(before, workspace.shapes());
        List<Problem> failed = new ArrayList<>();
        for (Stage stage : library.stages()) {
            if (all || changed.contains(STAGE + stage.id())) {
                List<Problem> found = failures(now, stage);
                Stage old = before.stageById().get(stage.id());
                Set<String> known = found.isEmpty() || old == null
                        ? Set.of()
                        : failures(then, old).stream().map(Problem::message).collect(Collectors.toSet());
                found.stream().filter(p -> !known.contains(p.message())).forEach(failed::add);
            }
        }
        return failed;
    }

    private static List<Problem> failures(ExampleCheck check, Stage stage) {
        return check.of(stage).outcomes().stream()
                .flatMap(LibraryFolder::failures)
                .toList();
    }

    /** What each stage with a clash says if all is decided for theirs and not for ours. */
    private Map<String, List<StageChange>> atStake(ScriptCache cache) {
        Set<String> stages = new TreeSet<>();
        merged.clashes().stream()
                .map(Clash::declaration)
                .filter(name -> name.startsWith(STAGE))
                .forEach(stages::add);
        Map<String, List<StageChange>> stakes = new HashMap<>();
        if (stages.isEmpty()) {
            return stakes;
        }
        Library our = decided(Side.OURS, cache);
        Library their = decided(Side.THEIRS, cache);
        for (String name : stages) {
            String id = name.substring(STAGE.length());
            if (our.stageById().containsKey(id) && their.stageById().containsKey(id)) {
                stakes.put(
                        name,
                        StageComparison.of(
                                our.stageById().get(id), their.stageById().get(id), their.facts()));
            }
        }
        return stakes;
    }

    private Library decided(Side side, ScriptCache cache) {
        Merged whole = DeclarationMerge.of(base, ours, part, clash -> Optional.of(side));
        return load(workspace, whole.texts(), shelves.items(), cache).library();
    }

    /**
     * Works out what taking a pack comes to. Takes as long as reading a library twice: off the event thread.
     *
     * @param workspace as it was read; its price list has no errors
     * @param pack      as it was verified
     * @param choice    what of it is wanted
     * @throws baywright.pack.PackRefused when it goes back to an earlier version, or does not go together with the packs that are there
     * @throws WorkspaceException when a file of the workspace cannot be used, or when the pack brings nothing of a name that is wanted
     */
    public static Taking of(Workspace workspace, Pack pack, Choice choice, ScriptCache cache) {
        return of(workspace, pack, choice, cache, UnaryOperator.identity());
    }

    /**
     * The same where it is known that the other side has got something of this site's since.
     *
     * @param common makes of what came with the pack that was taken last what both sides have in common now, by names below {@code stages/}
     */
    public static Taking of(
            Workspace workspace,
            Pack pack,
            Choice choice,
            ScriptCache cache,
            UnaryOperator<SortedMap<String, String>> common) {
        return new Taking(workspace, pack, choice, cache, common);
    }

    /** Which packs a workspace has taken. */
    public static PackLock lockOf(Path workspace) {
        return lock(new Texts(workspace));
    }

    /**
     * What a site has made of a pack that it took: names of declarations that it has otherwise than they came, or no longer.
     *
     * @throws WorkspaceException when a file cannot be read
     */
    public static List<String> changedHere(Path workspace, String pack) {
        Texts files = new Texts(workspace);
        SortedMap<String, String> came = files.below(folder(pack) + "/" + STAGES);
        Set<String> declared = DeclarationMerge.declared(came);
        return DeclarationMerge.differences(came, files.below(STAGES)).stream()
                .filter(name -> declared.contains(name) || came.containsKey(name))
                .toList();
    }

    static PackLock lock(Texts files) {
        return files.text(PackLock.FILE).map(PackLock::read).orElse(PackLock.NONE);
    }

    private static String folder(String id) {
        return "packs/" + id;
    }

    private void refuseNeeds() {
        List<Manifest> held = new ArrayList<>();
        for (TakenPack taken : lock.packs()) {
            String name = folder(taken.id()) + "/" + Pack.MANIFEST;
            String text = files.text(name)
                    .orElseThrow(() -> new WorkspaceException(name + ": the file is gone; restore it from a copy"));
            held.add(Manifest.read(name, text.getBytes(StandardCharsets.UTF_8)));
        }
        new PackNeeds(List.of(pack.manifest()), held, choice.downgrade()).inOrder();
    }

    private SortedMap<String, String> theirs() {
        SortedMap<String, String> theirs = new TreeMap<>();
        for (String path : pack.paths()) {
            if (path.startsWith(Pack.STAGES)) {
                theirs.put(
                        path.substring(Pack.STAGES.length()),
                        new String(pack.file(path).orElseThrow(), StandardCharsets.UTF_8));
            }
        }
        return theirs;
    }

    private static SharedItems items(Texts files, String id) {
        String name = folder(id) + "/" + ITEMS;
        Optional<String> text = files.text(name);
        if (text.isEmpty()) {
            return SharedItems.NONE;
        }
        JsonText<SharedItems> read = SharedItems.read(name, text.get().getBytes(StandardCharsets.UTF_8));
        return read.value()
                .orElseThrow(
                        () -> new WorkspaceException(read.error().orElseThrow().toString()));
    }

    /** What other packs declare: one pack that no longer has it does not take it from them. */
    private Set<String> elsewhere(String id) {
        Set<String> names = new HashSet<>();
        lock.packs().stream()
                .filter(p -> !p.id().equals(id))
                .forEach(p -> names.addAll(DeclarationMerge.declared(files.below(folder(p.id()) + "/" + STAGES))));
        return names;
    }

    private void refuseUnknownNames(Map<String, String> theirs) {
        Set<String> known = new TreeSet<>(DeclarationMerge.differences(base, theirs));
        if (known.stream().anyMatch(name -> name.startsWith("shape "))) {
            known.add(SHAPES);
        }
        known.addAll(offeredItems);
        for (String name : new TreeSet<>(choice.only())) {
            if (!known.contains(name) && !known.contains(STAGE + name)) {
                throw new WorkspaceException(pack.manifest().name() + ": the pack changes nothing that is called "
                        + Shown.quoted(name) + Nearest.hint(name, known));
            }
        }
    }

    private boolean isPriced() {
        return pack.items().currency().isPresent()
                && pack.items().currency().equals(workspace.shop().map(Shop::currency));
    }

    private boolean isOnShelf(String item) {
        return workspace.items().stream().anyMatch(i -> i.id().equals(item));
    }

    static LibraryLoader.Loaded load(
            Workspace workspace, Map<String, String> texts, List<Item> items, ScriptCache cache) {
        Map<String, String> scripts = new HashMap<>(texts);
        scripts.keySet().removeIf(name -> !name.endsWith(".groovy"));
        return LibraryLoader.load(workspace.stages(), new LibraryFiles(scripts, List.of()), items, cache);
    }

    // what it comes to

    /** What the site's library says otherwise afterwards. */
    public List<LibraryChange> changes() {
        return changes;
    }

    /** What both the site and the pack have changed, each in its own way. */
    public List<Clash> clashes() {
        return merged.clashes();
    }

    /**
     * What a stage with clashes says otherwise when theirs is taken in all of them and not ours: the clashes in meaning. Empty for anything
     * else, and where one of the two cannot be read.
     *
     * @param declaration as of {@link Clash#declaration()}
     */
    public List<StageChange> atStake(String declaration) {
        return atStake.getOrDefault(declaration, List.of());
    }

    /** What would be wrong with the library afterwards and is not wrong now, named below {@code stages/}. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * Examples of stages that hold now, or come with the pack, and would not hold in the library afterwards, named below {@code stages/}.
     * They do not keep it from being taken: an example may only say what the other site's own minutes come to. Not run while there are
     * {@link #problems problems}.
     */
    public List<Problem> failedExamples() {
        return failedExamples;
    }

    /** Names of what the pack says otherwise than the version of it that was taken last, whether the site has it already or not. */
    public Set<String> offered() {
        return Set.copyOf(offered);
    }

    /** The library afterwards, for asking what it makes of jobs; of use while there are no {@link #problems problems}. */
    public Library library() {
        return library;
    }

    /** Texts of the scripts afterwards, by their names below {@code stages/}. */
    public SortedMap<String, String> texts() {
        return merged.texts();
    }

    /** Names of items, such as {@code item clay}, that the pack brings otherwise than its version that was taken last. */
    public Set<String> offeredItems() {
        return Set.copyOf(offeredItems);
    }

    /** Items that are new on the price list afterwards or that it describes otherwise, in its order. */
    public List<LibraryChange> itemChanges() {
        Map<String, Item> had = workspace.items().stream().collect(Collectors.toMap(Item::id, Function.identity()));
        return shelves.items().stream()
                .filter(item -> !item.equals(had.get(item.id())))
                .map(item -> new LibraryChange(
                        ITEM + item.id(),
                        had.containsKey(item.id()) ? LibraryChange.Kind.CHANGED : LibraryChange.Kind.ADDED,
                        List.of()))
                .toList();
    }

    /** The price list afterwards. */
    public List<Item> items() {
        return shelves.items();
    }

    /** New items that came without a price. */
    public List<String> unpriced() {
        return shelves.unpriced();
    }

    /** Items whose hazard data stay the site's own though the pack says otherwise. */
    public List<String> ownHazards() {
        return shelves.own();
    }

    /** Names of what the pack brings and the choice leaves out. */
    public List<String> leftOut() {
        return leftOut;
    }

    /** Where the pack comes from, as far as the site's list of trusted keys knows. */
    public Standing standing() {
        return TrustList.of(workspace.root()).standing(pack);
    }

    /** Whether nothing stands against it but, perhaps, that nobody known has signed it. */
    public boolean isReady() {
        return merged.open().isEmpty() && problems.isEmpty() && merged.reads();
    }

    /**
     * Takes the pack: scripts, price list, what is kept of the pack and the record of it, all in one step.
     *
     * @param consent somebody's word, where nobody known has signed it
     * @param clock   tells the time for the record
     * @throws IllegalStateException when it is not {@link #isReady ready}
     * @throws baywright.pack.PackRefused when nobody known has signed it and nobody gives their word
     * @throws WorkspaceException when somebody else writes the workspace or has changed a file, or when the disk refuses; everything is
     *                            then as it was
     */
    public TakenPack take(Optional<Consent> consent, Clock clock) {
        if (!isReady()) {
            throw new IllegalStateException("nothing is taken while clashes are open or the result has errors");
        }
        Standing standing = standing();
        if (consent.isEmpty()) {
            standing.refuseUnknown(pack.manifest().name());
        }
        TakenPack taken = new TakenPack(
                pack.manifest().id(),
                pack.manifest().version(),
                pack.hash(),
                pack.signature().map(PackSignature::signer),
                standing.isKnown() ? Optional.empty() : consent,
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                leftOut);
        FilesChange change = change(taken);
        SortedMap<String, Replaced> all = new TreeMap<>(change.files());
        all.put(UNDO, new Replaced(files.text(UNDO), Optional.of(change.text())));
        try (WorkspaceWriter writer = WorkspaceWriter.open(workspace)) {
            writer.change(new FilesChange(all));
        }
        return taken;
    }

    private FilesChange change(TakenPack taken) {
        SortedMap<String, Replaced> change = new TreeMap<>();
        replace(change, STAGES + "/", ours, merged.texts());
        replace(change, folder(taken.id()) + "/" + STAGES + "/", came, part);
        put(change, folder(taken.id()) + "/" + Pack.MANIFEST, Optional.of(utf8(pack.manifestBytes())));
        put(change, folder(taken.id()) + "/" + ITEMS, pack.file(Pack.ITEMS).map(Taking::utf8));
        put(change, PackLock.FILE, Optional.of(lock.with(taken).text()));
        if (!shelves.items().equals(workspace.items())) {
            String before = files.text(ITEMS).orElseThrow();
            String mark = before.startsWith("\uFEFF") ? "\uFEFF" : "";
            put(change, ITEMS, Optional.of(mark + WorkspaceWriter.priceList(workspace, shelves.items())));
        }
        return new FilesChange(change);
    }

    private void put(SortedMap<String, Replaced> change, String name, Optional<String> after) {
        change.put(name, new Replaced(files.text(name), after));
    }

    private static void replace(
            SortedMap<String, Replaced> change, String below, Map<String, String> before, Map<String, String> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        names.forEach(name -> change.put(
                below + name,
                new Replaced(Optional.ofNullable(before.get(name)), Optional.ofNullable(after.get(name)))));
    }

    private static String utf8(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
