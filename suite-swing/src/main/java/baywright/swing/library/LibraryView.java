package baywright.swing.library;

import baywright.editor.Format;
import baywright.editor.Known;
import baywright.editor.Outline;
import baywright.editor.QuickFix;
import baywright.editor.Rename;
import baywright.editor.StageText;
import baywright.editor.TextEdit;
import baywright.editor.TextPlaces;
import baywright.library.Library;
import baywright.library.ScriptCache;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.site.FirstStage;
import baywright.site.OpenShop;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.api.WorkbenchView;
import baywright.swing.library.LibraryContents.Entry;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;

/** The library workbench: what there is on the left, the script in the middle, the bench on the right. */
final class LibraryView implements WorkbenchView, ScriptPane.Listener {

    private static final String STAGES = "stages/";
    private static final String EMPTY = "empty";
    private static final String SCRIPT = "script";
    private static final int TREE_WIDTH = 240;
    private static final int PROBLEMS_HEIGHT = 120;
    private static final int BENCH_WIDTH = 410;

    private final Desk desk;
    private final Texts texts;
    private final LibraryTree tree;
    private final ScriptPane script;
    private final ProblemList problems;
    private final TrialPane trial;
    private final ExamplesPane examples;
    private final ChangesPane changes;
    private final OutlinePane outline;
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JTabbedPane bench = new JTabbedPane();
    private final JSplitPane whole;
    private final LibraryDialogs dialogs;
    private final LibraryContents.Reader reader = new LibraryContents.Reader();
    private LibraryContents contents = new LibraryContents(List.of(), 0);
    private Known known = Known.nothing();
    private String knownOf = "";
    private Optional<TaskHandle> reading = Optional.empty();
    private Map<String, String> readTexts = Map.of();
    private List<Problem> readProblems = List.of();
    private Optional<Destination> pending = Optional.empty();

    /** What is worked out of a shop's scripts away from the event thread. */
    private record Read(LibraryContents contents, Known known, String of) {}

    LibraryView(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        dialogs = new LibraryDialogs(texts);
        tree = new LibraryTree(texts, this::open);
        script = new ScriptPane(texts, this);
        problems = new ProblemList(texts, p -> goTo(p.place()), this::mend);
        trial = new TrialPane(desk, texts, this::goToStagePlace);
        examples = new ExamplesPane(desk, texts, this::goToStagePlace);
        changes = new ChangesPane(desk, texts, this::goToStagePlace);
        outline = new OutlinePane(texts, entry -> goTo(entry.place()));
        bench.addTab(texts.of("bench.trial"), trial);
        bench.addTab(texts.of("bench.examples"), examples);
        bench.addTab(texts.of("bench.changes"), changes);
        bench.addTab(texts.of("bench.outline"), outline);
        bench.getAccessibleContext().setAccessibleName(texts.of("bench.name"));
        bench.addChangeListener(e -> showBench());
        JSplitPane writing = split(JSplitPane.VERTICAL_SPLIT, script, problems, 1);
        problems.setMinimumSize(new Dimension(0, UIScale.scale(PROBLEMS_HEIGHT)));
        middle.add(
                new EmptyState(
                        texts.of("empty.heading"),
                        texts.of("empty.text"),
                        List.of(doing("guide", this::guide), doing("new", this::askNew))),
                EMPTY);
        middle.add(writing, SCRIPT);
        bench.setPreferredSize(new Dimension(UIScale.scale(BENCH_WIDTH), 0));
        JSplitPane right = split(JSplitPane.HORIZONTAL_SPLIT, middle, bench, 1);
        whole = split(JSplitPane.HORIZONTAL_SPLIT, tree, right, 0);
        whole.setDividerLocation(UIScale.scale(TREE_WIDTH));
        cards.show(middle, EMPTY);
    }

    private static JSplitPane split(int way, JComponent first, JComponent second, double weight) {
        JSplitPane split = new JSplitPane(way, true, first, second);
        split.setResizeWeight(weight);
        split.setBorder(null);
        first.setMinimumSize(new Dimension(0, 0));
        second.setMinimumSize(new Dimension(0, 0));
        return split;
    }

    private Action doing(String key, Runnable does) {
        return new DoAction(texts.of("do." + key), does);
    }

    @Override
    public JComponent component() {
        return whole;
    }

    @Override
    public JComponent focus() {
        return script.file().isEmpty() ? tree.search() : script.area();
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                action("new", d -> askNew())
                        .withKey("menu alt N")
                        .when(s -> s.shop().isPresent()),
                action("guide", d -> guide()).when(s -> s.shop().isPresent()),
                action("copy", d -> askCopy()).when(s -> stage().isPresent()),
                action("delete", d -> stage().ifPresent(this::delete)).when(s -> stage().isPresent()),
                action("rename", d -> askRename())
                        .withKey("menu shift R")
                        .when(s -> !script.file().isEmpty()),
                action("format", d -> format())
                        .withKey("menu shift F")
                        .when(s -> !script.file().isEmpty()),
                action("mend", d -> mendAtCaret())
                        .withKey("alt ENTER")
                        .when(s -> !script.file().isEmpty()),
                action("next-problem", d -> nextProblem())
                        .withKey("menu PERIOD")
                        .when(s -> !script.file().isEmpty()),
                action("complete", d -> script.complete())
                        .when(s -> !script.file().isEmpty()),
                action("search", d -> tree.search().requestFocusInWindow()).withKey("menu shift L"));
    }

    private SuiteAction action(String key, Consumer<Desk> does) {
        return SuiteAction.of("library-" + key, texts.of("do." + key), does);
    }

    // what is shown

    @Override
    public void show(DeskState state) {
        if (state.shop().isEmpty()) {
            cards.show(middle, EMPTY);
            return;
        }
        OpenShop shop = state.shop().get();
        read(shop);
        String file = script.file();
        if (!file.isEmpty()) {
            Optional<String> text = Optional.ofNullable(shop.texts().get(file));
            if (text.isEmpty()) {
                script.open("", "");
                cards.show(middle, EMPTY);
            } else {
                script.sync(text.get());
            }
        }
        if (!shop.isStale()) {
            List<Problem> all = ofScripts(shop.problems());
            problems.show(all);
            script.mark(
                    all.stream()
                            .filter(p -> p.place().file().equals(script.file()))
                            .toList(),
                    script.text());
            showBench();
        }
    }

    private static List<Problem> ofScripts(List<Problem> all) {
        return all.stream().filter(p -> p.place().file().startsWith(STAGES)).toList();
    }

    private void read(OpenShop shop) {
        List<Problem> wrong = shop.isStale() ? readProblems : shop.problems();
        if (shop.isStale() && contents.count() > 0) {
            return;
        }
        if (shop.texts() == readTexts
                && wrong.equals(readProblems)
                && shop.site().library().hash().equals(knownOf)) {
            return;
        }
        readTexts = shop.texts();
        readProblems = wrong;
        reading.ifPresent(TaskHandle::cancel);
        String library = shop.site().library().hash();
        Known now = known;
        boolean same = library.equals(knownOf);
        reading = Optional.of(desk.run(new Task<>(
                texts.of("reading"),
                progress -> new Read(reader.read(shop, wrong), same ? now : knownOf(shop), library),
                this::take,
                fault -> desk.say(Notice.failed(texts.of("trial.failed", String.valueOf(fault.getMessage())))))));
    }

    private static Known knownOf(OpenShop shop) {
        Map<String, String> shapes = new LinkedHashMap<>();
        Map<String, String> zones = new LinkedHashMap<>();
        shop.site().workspace().shapes().forEach(s -> {
            shapes.put(s.id(), s.title());
            s.zones().forEach(z -> zones.putIfAbsent(z.id(), z.title()));
        });
        return Known.of(shop.site().library()).with("shape", shapes).with("zone", zones);
    }

    private void take(Read read) {
        contents = read.contents();
        known = read.known();
        knownOf = read.of();
        script.know(known);
        tree.show(contents);
        pending.ifPresent(place -> {
            pending = Optional.empty();
            show(place);
        });
        showBench();
    }

    private void showBench() {
        desk.state().shop().ifPresent(shop -> {
            JComponent shown = (JComponent) bench.getSelectedComponent();
            Optional<String> stage = stage();
            if (shown == trial) {
                trial.show(shop, stage, !script.file().isEmpty());
            } else if (shown == examples) {
                examples.show(shop, stage);
            } else if (shown == changes) {
                changes.show(shop, stage);
            } else {
                outline.show(Outline.of(script.file(), script.text()));
            }
        });
    }

    /** Id of the stage around the caret, else the first of the script. */
    private Optional<String> stage() {
        if (script.file().isEmpty()) {
            return Optional.empty();
        }
        int caret = script.area().getCaretPosition();
        List<Outline.Entry> stages = Outline.of(script.file(), script.text()).stream()
                .filter(e -> e.word().equals("stage") && !e.label().isEmpty())
                .toList();
        return stages.stream()
                .filter(e -> e.from() <= caret && caret <= e.to())
                .findFirst()
                .or(() -> stages.stream().findFirst())
                .map(Outline.Entry::label);
    }

    @Override
    public void show(Destination place) {
        Map<String, String> where = place.where();
        if (where.containsKey("file")) {
            goToStagePlace(new Place(where.get("file"), number(where.get("line")), number(where.get("column"))));
        } else if (where.containsKey("stage") || where.containsKey("item")) {
            Optional<Entry> entry = where.containsKey("stage")
                    ? contents.find("stage", where.get("stage"))
                    : contents.find("item", where.get("item"));
            entry.ifPresent(this::open);
            if (entry.isEmpty() && contents.count() == 0) {
                pending = Optional.of(place);
            }
        } else if (where.containsKey("guide")) {
            SwingUtilities.invokeLater(this::guide);
        }
    }

    private static int number(String text) {
        return text != null && text.matches("[0-9]{1,7}") ? Integer.parseInt(text) : 1;
    }

    private void open(Entry entry) {
        Entry newest = contents.find(entry.kind(), entry.id()).orElse(entry);
        if (!newest.file().isEmpty()) {
            goTo(new Place(newest.file(), newest.line(), 1));
        } else {
            tree.select(newest.kind(), newest.id());
        }
    }

    /** Places out of a library's terms are named from the folder of its scripts. */
    private void goToStagePlace(Place place) {
        String file = place.file().startsWith(STAGES) ? place.file() : STAGES + place.file();
        goTo(new Place(file, place.line(), place.column()));
    }

    void goTo(Place place) {
        desk.state().shop().map(s -> s.texts().get(place.file())).ifPresent(text -> {
            if (!script.file().equals(place.file())) {
                script.open(place.file(), text);
                cards.show(middle, SCRIPT);
            }
            script.goTo(place.line(), place.column());
            contents.at(place.file(), place.line()).ifPresent(e -> tree.select(e.kind(), e.id()));
            show(desk.state());
        });
    }

    // what is typed

    @Override
    public void edited(String file, String text, String burst) {
        String title = texts.of("did.type", name(file));
        desk.change(new Change(title, "script:" + burst, shop -> shop.withText(file, text)));
    }

    @Override
    public void rested(String file, int offset) {
        if (!file.isEmpty()) {
            showBench();
        }
    }

    private static String name(String file) {
        return file.substring(file.lastIndexOf('/') + 1).replace(".groovy", "");
    }

    private void rewrite(String title, String file, String text) {
        desk.change(title, shop -> shop.withText(file, text));
    }

    /** Lays the script out as the shipped ones are. */
    void format() {
        rewrite(texts.of("did.format", name(script.file())), script.file(), Format.of(script.text()));
    }

    // problems

    private void nextProblem() {
        int caret = script.area().getCaretPosition();
        TextPlaces places = new TextPlaces(script.file(), script.text());
        List<Place> all = ofScripts(readProblems).stream()
                .map(Problem::place)
                .filter(p -> p.file().equals(script.file()))
                .sorted(Comparator.naturalOrder())
                .toList();
        Optional<Place> next =
                all.stream().filter(p -> places.offset(p) > caret).findFirst();
        next.or(() -> all.stream().findFirst())
                .ifPresentOrElse(this::goTo, () -> desk.say(Notice.done(texts.of("problems.none"))));
    }

    private void mendAtCaret() {
        int line = new TextPlaces(script.file(), script.text())
                .place(script.area().getCaretPosition())
                .line();
        Optional<Problem> here = ofScripts(readProblems).stream()
                .filter(p -> p.place().file().equals(script.file()) && p.place().line() == line)
                .findFirst();
        here.ifPresentOrElse(this::mend, () -> desk.say(Notice.done(texts.of("mend.none"))));
    }

    /** Makes the best mend of a problem, if one can be told from it. */
    void mend(Problem problem) {
        String file = problem.place().file();
        String text = desk.state().shop().map(s -> s.texts().get(file)).orElse(null);
        List<QuickFix> fixes = text == null ? List.of() : QuickFix.of(text, problem);
        if (fixes.isEmpty()) {
            goTo(problem.place());
            desk.say(Notice.done(texts.of("mend.unknown")));
            return;
        }
        QuickFix fix = fixes.get(0);
        rewrite(fix.title(), file, TextEdit.apply(text, List.of(fix.edit())));
        goTo(problem.place());
    }

    // rename

    private void askRename() {
        Optional<Rename.Subject> subject =
                Rename.at(script.text(), script.area().getCaretPosition());
        if (subject.isEmpty()) {
            desk.say(Notice.done(texts.of("rename.nothing")));
            return;
        }
        Rename.Subject what = subject.get();
        dialogs.rename(whole, what, id -> preview(what, id)).ifPresent(id -> rename(what, id));
    }

    private Map<String, String> stageTexts(OpenShop shop) {
        return new TreeMap<>(shop.texts());
    }

    private Rename.Change renaming(Rename.Subject what, String id) throws Rename.RefusedException {
        OpenShop shop = desk.state().shop().orElseThrow();
        return what.kind() == Rename.Kind.INPUT
                ? Rename.input(stageTexts(shop), what.stage(), what.id(), id)
                : Rename.of(
                        stageTexts(shop),
                        what.kind(),
                        what.id(),
                        id,
                        shop.site().library());
    }

    /** The places that a rename changes, or why it cannot be done. */
    String preview(Rename.Subject what, String id) {
        try {
            Rename.Change change = renaming(what, id);
            OpenShop shop = desk.state().shop().orElseThrow();
            List<String> lines = new ArrayList<>();
            new TreeMap<>(change.edits()).forEach((file, edits) -> {
                TextPlaces places = new TextPlaces(file, shop.texts().get(file));
                lines.add(texts.of(
                        "rename.file",
                        file,
                        edits.stream()
                                .map(e ->
                                        Integer.toString(places.place(e.from()).line()))
                                .distinct()
                                .collect(Collectors.joining(", "))));
            });
            change.doubts().forEach(d -> lines.add(texts.of("rename.doubt", d)));
            if (!change.fields().isEmpty()) {
                lines.add(texts.of(
                        "rename.fields",
                        change.fields().stream()
                                .map(Rename.Field::file)
                                .distinct()
                                .collect(Collectors.joining(", "))));
            }
            return String.join("\n", lines);
        } catch (Rename.RefusedException e) {
            return texts.of("rename.refused", e.getMessage());
        }
    }

    /** Renames in all scripts as one step of undo. */
    void rename(Rename.Subject what, String id) {
        try {
            Rename.Change change = renaming(what, id);
            Map<String, String> made =
                    change.applyTo(stageTexts(desk.state().shop().orElseThrow()));
            desk.change(texts.of("did.rename", what.id(), id), shop -> {
                OpenShop now = shop;
                for (String file : change.edits().keySet()) {
                    now = now.withText(file, made.get(file));
                }
                return now;
            });
            if (!change.fields().isEmpty()) {
                desk.say(Notice.done(texts.of(
                        "rename.fields",
                        change.fields().stream()
                                .map(Rename.Field::file)
                                .distinct()
                                .collect(Collectors.joining(", ")))));
            }
        } catch (Rename.RefusedException e) {
            desk.say(Notice.failed(texts.of("rename.refused", e.getMessage())));
        }
    }

    // stages as a whole

    private void askNew() {
        desk.state()
                .shop()
                .ifPresent(shop -> dialogs.newStage(whole, shop.site().library(), id -> taken(shop, id))
                        .ifPresent(wish -> create(wish)));
    }

    /** Leads to a first stage by questions. */
    private void guide() {
        desk.state().shop().filter(shop -> !shop.isStale()).ifPresent(shop -> {
            GuideDialog[] dialog = new GuideDialog[1];
            GuidePane pane = new GuidePane(desk, texts, shop, ScriptCache.ofUser(), (stage, text) -> {
                dialog[0].dispose();
                take(stage, text);
            });
            dialog[0] = new GuideDialog(whole, texts, pane);
            dialog[0].setVisible(true);
        });
    }

    /** Takes a stage in that was made by questions, opens it and saves. */
    void take(FirstStage stage, String text) {
        add(texts.of("did.new", stage.title()), stage.family(), stage.id(), text);
        desk.save();
    }

    private void askCopy() {
        desk.state()
                .shop()
                .ifPresent(shop -> stage().ifPresent(id -> dialogs.copy(whole, id, other -> taken(shop, other))
                        .ifPresent(wish -> copy(id, wish.id(), wish.title()))));
    }

    private boolean taken(OpenShop shop, String id) {
        return contents.find("stage", id).isPresent() || shop.texts().containsKey(STAGES + id + ".groovy");
    }

    /** Adds a stage in a script of its own and opens it. */
    void create(LibraryDialogs.Wish wish) {
        Library library = desk.state().shop().orElseThrow().site().library();
        String surface = library.surfaces().isEmpty()
                ? "paint"
                : library.surfaces().get(0).id();
        String text = wish.like().isEmpty()
                ? StageText.blank(wish.id(), wish.title(), wish.family(), surface)
                : StageText.like(wish.id(), wish.title(), wish.like());
        add(texts.of("did.new", wish.title()), wish.family(), wish.id(), text);
    }

    private void add(String title, String folder, String id, String text) {
        String file = STAGES + (folder.isEmpty() ? "" : folder + "/") + id + ".groovy";
        desk.change(title, shop -> shop.texts().containsKey(file) ? shop : shop.withText(file, text));
        goTo(new Place(file, 1, 1));
    }

    /** Adds a copy of a stage beside it and opens it. */
    void copy(String stage, String id, String title) {
        String file = script.file();
        StageText.copy(script.text(), stage, id, title).ifPresent(text -> {
            int from = STAGES.length();
            int to = file.lastIndexOf('/');
            add(texts.of("did.copy", stage, id), to > from ? file.substring(from, to) : "", id, text);
        });
    }

    /** Takes a stage out; a script that holds nothing else goes with it. */
    void delete(String stage) {
        String file = script.file();
        Optional<String> rest = StageText.without(script.text(), stage);
        desk.change(
                texts.of("did.delete", stage),
                shop -> rest.map(text -> shop.withText(file, text)).orElseGet(() -> shop.withoutText(file)));
        desk.say(Notice.done(texts.of("delete.done", stage)));
    }

    // parts

    ScriptPane script() {
        return script;
    }

    LibraryTree tree() {
        return tree;
    }

    TrialPane trial() {
        return trial;
    }

    ExamplesPane examples() {
        return examples;
    }

    ChangesPane changes() {
        return changes;
    }

    ProblemList problems() {
        return problems;
    }

    JTabbedPane bench() {
        return bench;
    }

    LibraryContents contents() {
        return contents;
    }
}
