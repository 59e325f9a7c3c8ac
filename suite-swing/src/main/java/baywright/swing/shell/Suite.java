package baywright.swing.shell;

import baywright.library.ScriptCache;
import baywright.site.OpenShop;
import baywright.site.Saving;
import baywright.site.SiteTrouble;
import baywright.site.UnsavedEdits;
import baywright.swing.api.Change;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.Subscription;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.plugins.JarPlugins;
import baywright.swing.plugins.PluginFolders;
import baywright.workspace.UserFolders;
import baywright.workspace.Workspace;
import baywright.workspace.WorkspaceException;
import java.awt.Dialog;
import java.awt.Frame;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** Puts desk, plug-ins and window together: opens, saves, keeps unsaved edits, and ends. */
public final class Suite {

    /**
     * Where the suite runs.
     *
     * @param clock    tells the time
     * @param cache    where scripts are kept between loads
     * @param settings what the user has set
     * @param folder   where reports of faults go; empty: the folder for temporary files
     * @param home     the program's folder with the demo; empty: there is none
     * @param locale   how amounts are written
     */
    public record Surroundings(
            Clock clock,
            ScriptCache cache,
            UserSettings settings,
            Optional<Path> folder,
            Optional<Path> home,
            Locale locale) {}

    private static final int QUESTION_MILLIS = 250;

    private final Texts texts = Texts.beside(Suite.class, "texts");
    private final Surroundings around;
    private final PluginHost host = new PluginHost();
    private final ShopDesk desk;
    private final Appearance appearance;
    private final Recent recent;
    private final FaultReports reports;
    private final HeldNotes notes = new HeldNotes();
    private final Autosave autosave;
    private final GuestPlugins guests;
    private Questions questions = this::ask;
    private Runnable exit = () -> System.exit(0);
    private StartPage start;
    private ShellWindow window;
    private Optional<Handover> handover = Optional.empty();
    private boolean saving;

    /** Without a window yet. */
    public Suite(Surroundings around) {
        this.around = around;
        this.desk = new ShopDesk(
                around.cache(),
                around.settings(),
                new UserReadout(around.settings(), around.locale()),
                host::rules,
                this::fault);
        this.appearance = new Appearance(around.settings());
        this.recent = new Recent(around.settings());
        this.reports = new FaultReports(around.folder());
        this.autosave = new Autosave(
                notes,
                fault -> desk.say(new Notice(
                        Notice.Weight.WARN,
                        texts.of("autosave.failed", String.valueOf(fault.getMessage())),
                        Optional.empty())));
        desk.saveBy(this::save);
        desk.rereadBy(this::reread);
        host.give(desk);
        this.guests = new GuestPlugins(
                desk, host, around.folder().map(own -> own.resolve(PluginFolders.NAME)), JarPlugins.USUAL_PATIENCE);
        desk.tellOfRules(guests::note);
        host.start(guests.page()).ifPresent(refused -> {
            throw new IllegalStateException(refused.why());
        });
    }

    /** Starts plug-ins, tells of those that do not start, and leaves those out. Off the event thread. */
    public void start(List<SuitePlugin> plugins) {
        for (SuitePlugin plugin : plugins) {
            host.start(plugin)
                    .ifPresent(refused -> SwingUtilities.invokeLater(
                            () -> desk.say(new Notice(Notice.Weight.WARN, refused.why(), Optional.empty()))));
        }
    }

    /** Where plug-ins are started and dropped. */
    public PluginHost host() {
        return host;
    }

    /** Lets another ask, as tests do. */
    void askBy(Questions other) {
        questions = other;
    }

    /** Ends in another way than with the program, as tests do. */
    void endBy(Runnable other) {
        exit = other;
    }

    /** Puts on the look that the user has set. On the event thread, before the window is made. */
    public void applyLook() {
        appearance.apply();
    }

    /** Makes the window without showing it. On the event thread, in the look that is to be shown. */
    public JFrame makeWindow() {
        SuiteAction open = SuiteAction.of("open", texts.of("action.open"), d -> chooseWorkspace())
                .withKey("menu O");
        List<SuiteAction> ways = new ArrayList<>();
        if (around.home().isPresent()) {
            ways.add(SuiteAction.of("demo", texts.of("action.demo"), d -> openDemo()));
            ways.add(SuiteAction.of("first-stage", texts.of("action.first-stage"), d -> firstStage()));
            ways.add(SuiteAction.of("new-shop", texts.of("action.new-shop"), d -> newShop()));
        }
        ways.add(open);
        List<SuiteAction> own = new ArrayList<>(ways);
        own.addAll(actions());
        start = new StartPage(
                ways.stream().map(action -> ShellActions.swing(action, desk)).toList(), this::open);
        start.welcome(recent.workspaces());
        window = new ShellWindow(desk, host, own, start, this::fault);
        window.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                close();
            }
        });
        recent.workbench().ifPresent(window::show);
        host.listen(() -> SwingUtilities.invokeLater(window::pluginsChanged));
        desk.listen(autosave::changed);
        guests.look(Optional.empty());
        return window;
    }

    /**
     * Shows a workspace on every workbench without a window or a display, and returns when all is painted. Off the event
     * thread.
     *
     * @throws WorkspaceException when there is no such folder or it cannot be read
     */
    public void rehearse(Path workspace) throws InterruptedException, InvocationTargetException {
        OpenShop shop = OpenShop.open(workspace, around.clock(), around.cache());
        SwingUtilities.invokeAndWait(this::applyLook);
        new Rehearsal(desk, host.workbenches()).play(shop);
        desk.stop();
    }

    private List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of("save", texts.of("action.save"), d -> save())
                        .withKey("menu S")
                        .when(state -> state.unsaved()),
                SuiteAction.of("undo", texts.of("action.undo"), d -> desk.undo())
                        .withKey("menu Z")
                        .when(state -> desk.undoes().isPresent()),
                SuiteAction.of("redo", texts.of("action.redo"), d -> desk.redo())
                        .withKey("menu shift Z")
                        .when(state -> desk.redoes().isPresent()),
                SuiteAction.of("wish", texts.of("action.wish"), d -> window.wish())
                        .withKey("menu K"),
                SuiteAction.of("look", texts.of("action.look"), d -> appearance.other())
                        .withKey("menu L"),
                SuiteAction.of("larger", texts.of("action.larger"), d -> appearance.larger())
                        .withKey("menu EQUALS"),
                SuiteAction.of("larger-plus", texts.of("action.larger"), d -> appearance.larger())
                        .withKey("menu PLUS"),
                SuiteAction.of("smaller", texts.of("action.smaller"), d -> appearance.smaller())
                        .withKey("menu MINUS"),
                SuiteAction.of("usual-size", texts.of("action.usual-size"), d -> appearance.zoom(100))
                        .withKey("menu 0"),
                SuiteAction.of("settings", texts.of("action.settings"), d -> showSettings())
                        .withKey("menu COMMA"),
                SuiteAction.of(
                        "keys",
                        texts.of("action.keys"),
                        d -> new KeysDialog(window, window.allActions()).setVisible(true)),
                SuiteAction.of("quit", texts.of("action.quit"), d -> close()).withKey("menu Q"));
    }

    // opening

    /** Reads a workspace in the background and lays it on the desk, or says why not. On the event thread. */
    public void open(Path workspace) {
        open(workspace, recent.job(workspace));
    }

    /**
     * Reads a workspace and chooses a job.
     *
     * @param job its id; an unknown one means the first
     */
    public void open(Path workspace, Optional<String> job) {
        desk.run(new Task<>(
                texts.of("opening", workspace),
                progress -> read(workspace),
                read -> opened(workspace, read, job),
                fault -> notOpened(workspace, fault)));
    }

    /** A workspace with what is left of an earlier run, which may have ended badly. */
    private record Read(OpenShop shop, Optional<OpenShop> unsaved, Optional<String> trouble) {}

    private Read read(Path workspace) {
        OpenShop shop = OpenShop.open(workspace, around.clock(), around.cache());
        try {
            Optional<OpenShop> unsaved = notes.of(shop.folder())
                    .read()
                    .map(edits -> UnsavedEdits.restore(shop, edits))
                    .filter(restored -> !restored.unsaved().isEmpty());
            return new Read(shop, unsaved, Optional.empty());
        } catch (WorkspaceException | SiteTrouble e) {
            return new Read(shop, Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    private void opened(Path workspace, Read read, Optional<String> job) {
        leave();
        notes.keepOnly(read.shop().folder());
        recent.opened(workspace);
        start.welcome(recent.workspaces());
        read.trouble().ifPresent(why -> {
            putAside(read.shop());
            desk.say(new Notice(Notice.Weight.WARN, why, Optional.empty()));
        });
        boolean take = read.unsaved()
                .filter(edited -> questions.choose(
                                texts.of("unsaved.title"),
                                texts.of("unsaved.text", String.join(", ", edited.unsaved())),
                                List.of(texts.of("unsaved.take"), texts.of("unsaved.leave")))
                        == 0)
                .isPresent();
        if (read.unsaved().isPresent() && !take) {
            putAside(read.shop());
        }
        desk.open(read.shop(), job);
        if (take) {
            OpenShop edited = read.unsaved().orElseThrow();
            desk.change(new Change(texts.of("unsaved.change"), "", shop -> shop.patched(read.shop(), edited)));
        }
        if (!read.shop().isSound()) {
            desk.say(new Notice(Notice.Weight.WARN, texts.of("scripts.wrong"), Optional.empty()));
        }
        guests.look(Optional.of(workspace));
    }

    /** An edit made while the files are read is not lost: it is then laid over them by a save. */
    private void reread() {
        desk.state().shop().ifPresent(shop -> {
            if (desk.state().unsaved()) {
                save();
                return;
            }
            Path workspace = shop.folder();
            desk.run(new Task<>(
                    texts.of("opening", workspace),
                    progress -> read(workspace),
                    read -> {
                        if (desk.state().unsaved()) {
                            save();
                        } else {
                            opened(workspace, read, desk.state().jobId());
                        }
                    },
                    fault -> notOpened(workspace, fault)));
        });
    }

    private void putAside(OpenShop shop) {
        try {
            notes.of(shop.folder())
                    .putAside()
                    .ifPresent(file -> desk.say(new Notice(
                            Notice.Weight.NOTE,
                            texts.of("unsaved.aside", shop.folder().relativize(file)),
                            Optional.empty())));
        } catch (WorkspaceException e) {
            desk.say(Notice.failed(e.getMessage()));
        }
    }

    private void notOpened(Path workspace, Exception fault) {
        boolean isSaid = fault instanceof WorkspaceException || fault instanceof SiteTrouble;
        if (!isSaid) {
            fault(fault);
        }
        if (desk.state().shop().isPresent()) {
            desk.say(Notice.failed(texts.of("start.failed", workspace) + "\n" + fault.getMessage()));
        } else {
            start.trouble(workspace.toString(), String.valueOf(fault.getMessage()));
        }
    }

    /** Takes from now on what other starts of the program hand over, until it ends. On the event thread. */
    public void serve(Handover door) {
        handover = Optional.of(door);
        door.serve(this::comeForward);
    }

    /**
     * Comes to the front, as another start of the program has asked, and opens a workspace unless it lies on the desk already. While a
     * question is open, opening waits until it is answered. Safe to call from any thread.
     */
    public void comeForward(Optional<Path> workspace) {
        SwingUtilities.invokeLater(() -> {
            window.setExtendedState(window.getExtendedState() & ~Frame.ICONIFIED);
            window.toFront();
            window.requestFocus();
            workspace.ifPresent(this::openWhenNothingIsAsked);
        });
    }

    private void openWhenNothingIsAsked(Path workspace) {
        if (isQuestionOpen()) {
            Timer later = new Timer(QUESTION_MILLIS, e -> openWhenNothingIsAsked(workspace));
            later.setRepeats(false);
            later.start();
        } else if (desk.state()
                .shop()
                .filter(shop -> shop.folder().equals(workspace))
                .isEmpty()) {
            open(workspace);
        }
    }

    private static boolean isQuestionOpen() {
        return Stream.of(Window.getWindows())
                .anyMatch(one -> one instanceof Dialog dialog && dialog.isModal() && dialog.isShowing());
    }

    private void chooseWorkspace() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(texts.of("chooser.title"));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showOpenDialog(window) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    /** Asks for what a new shop needs, makes it and opens it. */
    private void newShop() {
        new NewShopDialog(
                        window,
                        desk,
                        around.home().orElseThrow().resolve("stage-scripts"),
                        UserFolders.home(),
                        around.locale(),
                        this::open)
                .setVisible(true);
    }

    /** Leads to a first stage of one's own, in the shop on the desk or, without one, in the demo. */
    private void firstStage() {
        Destination guide = new Destination("library", Map.of("guide", "first-stage"));
        if (desk.state().shop().isPresent()) {
            desk.go(guide);
            return;
        }
        Subscription[] once = new Subscription[1];
        once[0] = desk.listen((before, now) -> {
            if (now.shop().isPresent() && !now.working()) {
                once[0].close();
                desk.go(guide);
            }
        });
        openDemo();
    }

    /** Copies the demo below the user's own folder, unless it is there, and opens its first shop. */
    void openDemo() {
        Path home = around.home().orElseThrow();
        Path target = UserFolders.home().resolve("baywright-demo");
        desk.run(new Task<>(
                texts.of("demo.copying"),
                progress -> copyDemo(home, target),
                this::open,
                fault -> notOpened(target, fault)));
    }

    static Path copyDemo(Path home, Path target) throws IOException {
        List<Path> shops;
        try (Stream<Path> all = Files.list(home.resolve("demo"))) {
            shops = all.filter(shop -> Files.isRegularFile(shop.resolve("shop.json")))
                    .sorted()
                    .toList();
        }
        Path first = null;
        for (Path shop : shops) {
            Path copy = target.resolve(shop.getFileName().toString());
            if (Files.notExists(copy)) {
                Workspace.create(copy, shop, home.resolve("stage-scripts"));
            }
            first = first == null ? copy : first;
        }
        if (first == null) {
            throw new WorkspaceException(home + ": the demo is not there; install the program again");
        }
        return first;
    }

    // saving

    /** Saves everything in the background. */
    void save() {
        desk.state().shop().filter(shop -> !saving).ifPresent(shop -> save(shop, Saving.Clashes.LEAVE, () -> {}));
    }

    private void save(OpenShop shop, Saving.Clashes clashes, Runnable then) {
        saving = true;
        desk.run(new Task<>(
                texts.of("saving"),
                progress -> Saving.save(shop, clashes),
                outcome -> {
                    saving = false;
                    saved(shop, outcome, then);
                },
                fault -> {
                    saving = false;
                    if (fault instanceof WorkspaceException || fault instanceof SiteTrouble) {
                        desk.say(Notice.failed(fault.getMessage()));
                    } else {
                        fault(fault);
                    }
                }));
    }

    private void saved(OpenShop began, Saving.Outcome outcome, Runnable then) {
        desk.saved(began, outcome.shop());
        outcome.refused().forEach(why -> desk.say(Notice.failed(why)));
        if (!outcome.taken().isEmpty()) {
            desk.say(new Notice(
                    Notice.Weight.NOTE, texts.of("saved.taken", String.join(", ", outcome.taken())), Optional.empty()));
        }
        if (!outcome.clashes().isEmpty()) {
            decide(outcome, then);
        } else if (outcome.refused().isEmpty()) {
            desk.say(Notice.done(texts.of("saved", outcome.written().size())));
            then.run();
        }
    }

    private void decide(Saving.Outcome outcome, Runnable then) {
        int choice = questions.choose(
                texts.of("clash.title"),
                texts.of("clash.text", String.join(", ", outcome.clashes())),
                List.of(texts.of("clash.later"), texts.of("clash.mine"), texts.of("clash.theirs")));
        if (choice > 0) {
            desk.state()
                    .shop()
                    .ifPresent(shop -> save(shop, choice == 1 ? Saving.Clashes.MINE : Saving.Clashes.THEIRS, then));
        }
    }

    // ending

    /** Asks about unsaved edits and ends. */
    void close() {
        if (desk.state().unsaved()) {
            int choice = questions.choose(
                    texts.of("close.title"),
                    texts.of("close.text"),
                    List.of(texts.of("close.save"), texts.of("close.keep"), texts.of("close.stay")));
            if (choice == 0) {
                desk.state().shop().ifPresent(shop -> save(shop, Saving.Clashes.LEAVE, this::end));
                return;
            }
            if (choice != 1) {
                return;
            }
        }
        end();
    }

    private void end() {
        window.remember();
        release();
        host.stop();
        exit.run();
    }

    /** Lets go of window, threads and files; what is to be noted is noted first. */
    void release() {
        leave();
        handover.ifPresent(Handover::close);
        around.settings().flush();
        desk.stop();
        notes.release();
        window.dispose();
    }

    /** Notes what there is to note of the shop that lies on the desk. */
    private void leave() {
        autosave.flush();
        desk.state()
                .shop()
                .ifPresent(shop -> recent.left(shop.folder(), desk.state().jobId(), window.current()));
    }

    // the rest

    private void showSettings() {
        new SettingsDialog(window, desk, appearance, host.pages(), desk::again).setVisible(true);
    }

    private int ask(String title, String text, List<String> choices) {
        return JOptionPane.showOptionDialog(
                window,
                text,
                title,
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                choices.toArray(),
                choices.get(0));
    }

    /** A fault of the program: written down, told once, and work goes on. Safe to call from any thread. */
    public void fault(Throwable fault) {
        reports.write(fault)
                .ifPresent(file -> SwingUtilities.invokeLater(() -> desk.say(Notice.failed(texts.of("fault", file)))));
    }

    /** Ids of the workbenches in the order of the strip. */
    public List<String> workbenches() {
        return host.workbenches().stream().map(Workbench::id).toList();
    }

    /** Shows a workbench. */
    public void show(String workbench) {
        window.show(workbench);
    }

    /** Whether something is being worked out. On the event thread. */
    public boolean isBusy() {
        return desk.isBusy();
    }

    ShellWindow window() {
        return window;
    }

    ShopDesk desk() {
        return desk;
    }
}
