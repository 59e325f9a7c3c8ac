package baywright.swing.shell;

import baywright.library.ScriptCache;
import baywright.site.OpenShop;
import baywright.swing.api.Notice;
import baywright.swing.api.Settings;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.SuitePlugin;
import baywright.swing.api.Task;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** Puts desk, plug-ins and window together. */
public final class Suite {

    private final Texts texts = Texts.beside(Suite.class, "texts");
    private final Clock clock;
    private final ScriptCache cache;
    private final PluginHost host = new PluginHost();
    private final ShopDesk desk;
    private StartPage start;
    private ShellWindow window;

    /**
     * Without a window yet.
     *
     * @param locale how amounts are written
     */
    public Suite(Clock clock, ScriptCache cache, Settings settings, Locale locale) {
        this.clock = clock;
        this.cache = cache;
        this.desk = new ShopDesk(cache, settings, new UserReadout(settings, locale), host::rules, this::fault);
        host.give(desk);
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

    /** Makes the window without showing it. On the event thread, after {@link Look#apply}. */
    public JFrame makeWindow() {
        SuiteAction open = SuiteAction.of("open", texts.of("action.open"), d -> chooseWorkspace())
                .withKey("menu O");
        List<SuiteAction> own = List.of(
                open,
                SuiteAction.of("undo", texts.of("action.undo"), d -> desk.undo())
                        .withKey("menu Z")
                        .when(state -> desk.undoes().isPresent()),
                SuiteAction.of("redo", texts.of("action.redo"), d -> desk.redo())
                        .withKey("menu shift Z")
                        .when(state -> desk.redoes().isPresent()),
                SuiteAction.of(
                                "look",
                                texts.of("action.look"),
                                d -> Look.current().other().apply())
                        .withKey("menu L"));
        start = new StartPage(List.of(ShellActions.swing(open, desk)));
        window = new ShellWindow(desk, host, own, start, this::fault);
        window.setDefaultCloseOperation(ShellWindow.EXIT_ON_CLOSE);
        host.listen(() -> SwingUtilities.invokeLater(window::pluginsChanged));
        return window;
    }

    /** Reads a workspace in the background and lays it on the desk, or says why not. On the event thread. */
    public void open(Path workspace) {
        open(workspace, Optional.empty());
    }

    /**
     * Reads a workspace and chooses a job.
     *
     * @param job its id; an unknown one means the first
     */
    public void open(Path workspace, Optional<String> job) {
        desk.run(new Task<>(
                texts.of("opening", workspace),
                progress -> OpenShop.open(workspace, clock, cache),
                shop -> {
                    start.welcome();
                    desk.open(shop, job);
                },
                fault -> {
                    start.trouble(workspace.toString(), String.valueOf(fault.getMessage()));
                    desk.close();
                }));
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

    private void chooseWorkspace() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(texts.of("chooser.title"));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showOpenDialog(window) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    private void fault(Throwable fault) {
        System.getLogger(Suite.class.getName()).log(System.Logger.Level.ERROR, "fault in the window", fault);
        desk.say(Notice.failed(texts.of("fault", fault.toString())));
    }
}
