package baywright.swing.shell;

import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;

/** The window: strip at the side, bar on top, the workbench in the middle, notices and tasks below. */
final class ShellWindow extends JFrame implements Front {

    private static final long serialVersionUID = 1L;
    private static final String START = "start";
    private static final String NO_JOB = "no job";
    private static final String FIRST_JOB = "first job";
    private static final String NEW_JOB = "new-job";

    private final transient Texts texts = Texts.beside(ShellWindow.class, "texts");
    private final transient ShopDesk desk;
    private final transient PluginHost host;
    private final transient Consumer<Throwable> faults;
    private final transient List<SuiteAction> own;
    private final transient BroughtFiles brought;
    private final transient ShellActions actions;
    private final CardLayout cards = new CardLayout();
    private final JPanel content = new JPanel(cards);
    private final Strip strip;
    private final TopBar bar;
    private final NoticeLine notices;
    private final TaskLine tasks = new TaskLine();
    private final EmptyState noJob;
    private final WishField wishes;
    private final transient WindowMemory memory;
    private final transient Map<String, WorkbenchView> views = new HashMap<>();
    private transient List<Workbench> workbenches = List.of();
    private final transient Action undo;
    private final transient Action redo;
    private final transient Action save;
    private String current = "";

    /**
     * Makes the window without showing it.
     *
     * @param own    what can be done from anywhere, also undo, redo and save
     * @param start  what is shown while no shop is open
     * @param faults hears of faults in workbenches
     */
    ShellWindow(ShopDesk desk, PluginHost host, List<SuiteAction> own, JComponent start, Consumer<Throwable> faults) {
        super(Texts.beside(ShellWindow.class, "texts").of("window.title"));
        this.desk = desk;
        this.host = host;
        this.faults = faults;
        this.own = own;
        this.brought =
                new BroughtFiles(host, (title, endings, toSave) -> BroughtFiles.ask(this, title, endings, toSave));
        this.memory = new WindowMemory(desk.settings());
        this.notices = new NoticeLine(desk);
        this.actions = new ShellActions(getRootPane(), desk, this::allActions);
        this.noJob = new EmptyState(texts.of("nojob.heading"), texts.of("nojob.text"), List.of());
        this.strip = new Strip(this::show, texts.of("strip.name"));
        this.undo = ShellActions.swing(action("undo"), desk);
        this.redo = ShellActions.swing(action("redo"), desk);
        this.save = ShellActions.swing(action("save"), desk);
        this.wishes = new WishField(desk, this::allActions);
        this.bar = new TopBar(desk::choose, wishes, undo, redo, save);
        content.add(start, START);
        content.add(noJob, NO_JOB);
        content.add(
                new EmptyState(texts.of("firstjob.heading"), texts.of("firstjob.text"), List.of(firstJob())),
                FIRST_JOB);
        JPanel side = Panels.toned(new BorderLayout(), "strip");
        side.add(strip.scrolled());
        JPanel below = new JPanel(new BorderLayout());
        below.add(notices, BorderLayout.NORTH);
        below.add(tasks, BorderLayout.SOUTH);
        JPanel middle = new JPanel(new BorderLayout());
        middle.add(bar, BorderLayout.NORTH);
        middle.add(content);
        middle.add(below, BorderLayout.SOUTH);
        add(side, BorderLayout.WEST);
        add(middle);
        setSize(UIScale.scale(new Dimension(1280, 800)));
        setMinimumSize(UIScale.scale(new Dimension(760, 480)));
        setLocationByPlatform(true);
        memory.place(this);
        desk.show(this);
        desk.listen(this::changed);
        pluginsChanged();
        changed(DeskState.EMPTY, desk.state());
    }

    /** Begins the first job of a shop by the action of that id, whichever plug-in brings it. */
    private Action firstJob() {
        return new DoAction(
                texts.of("firstjob.do"),
                () -> allActions().stream()
                        .filter(action -> action.id().equals(NEW_JOB))
                        .findFirst()
                        .ifPresent(action -> ShellActions.run(action, desk)));
    }

    private SuiteAction action(String id) {
        return own.stream().filter(action -> action.id().equals(id)).findFirst().orElseThrow();
    }

    /** All that can be done here and now: of the shell, of plug-ins, of the workbench shown. */
    List<SuiteAction> allActions() {
        List<SuiteAction> all = new ArrayList<>(own);
        for (int i = 0; i < workbenches.size(); i++) {
            Workbench workbench = workbenches.get(i);
            SuiteAction go = SuiteAction.of(
                    "show-" + workbench.id(), texts.of("action.show", workbench.title()), d -> show(workbench.id()));
            all.add((i < 9 ? go.withKey("alt " + (i + 1)) : go)
                    .when(state -> state.shop().isPresent()));
        }
        all.addAll(host.actions());
        all.addAll(brought.actions());
        view().ifPresent(view -> all.addAll(view.actions()));
        return all;
    }

    ShellActions actions() {
        return actions;
    }

    NoticeLine notices() {
        return notices;
    }

    /** Notes where it stands and how it is split. */
    void remember() {
        memory.remember(this);
    }

    /** Puts the keyboard where wishes are typed. */
    void wish() {
        wishes.requestFocusInWindow();
    }

    WishField wishes() {
        return wishes;
    }

    /** Id of the workbench shown; empty before there is one. */
    String current() {
        return current;
    }

    private Optional<WorkbenchView> view() {
        return Optional.ofNullable(views.get(current));
    }

    private Optional<Workbench> workbench(String id) {
        return workbenches.stream().filter(w -> w.id().equals(id)).findFirst();
    }

    /** The workbenches that there are now. */
    void pluginsChanged() {
        workbenches = host.workbenches();
        views.keySet().removeIf(id -> workbench(id).isEmpty());
        if (workbench(current).isEmpty()) {
            current = workbenches.isEmpty() ? "" : workbenches.get(0).id();
        }
        strip.show(workbenches, current);
        display();
    }

    /** Shows a workbench; an unknown one is ignored. */
    void show(String id) {
        if (workbench(id).isPresent()) {
            current = id;
            strip.select(id);
            display();
            view().ifPresent(view -> view.focus().requestFocusInWindow());
        }
    }

    private void display() {
        Optional<Workbench> workbench = workbench(current);
        DeskState state = desk.state();
        strip.usable(state.shop().isPresent());
        if (state.shop().isEmpty() || workbench.isEmpty()) {
            cards.show(content, START);
        } else if (workbench.get().needsJob() && state.job().isEmpty()) {
            cards.show(content, state.shop().get().jobs().isEmpty() ? FIRST_JOB : NO_JOB);
        } else {
            open(workbench.get());
        }
        actions.bind();
    }

    private void open(Workbench workbench) {
        WorkbenchView view = views.get(workbench.id());
        try {
            if (view == null) {
                view = workbench.open(desk);
                views.put(workbench.id(), view);
                memory.split(Panels.around(view.component()));
                content.add(view.component(), "workbench " + workbench.id());
            }
            view.show(desk.state());
        } catch (RuntimeException | LinkageError e) {
            faults.accept(e);
        }
        cards.show(content, "workbench " + workbench.id());
    }

    private void changed(DeskState before, DeskState now) {
        bar.show(now);
        setTitle(now.shop()
                .map(shop -> texts.of("window.title.open", shop.shop().name()))
                .orElse(texts.of("window.title")));
        undo.setEnabled(desk.undoes().isPresent());
        redo.setEnabled(desk.redoes().isPresent());
        save.setEnabled(now.unsaved());
        name(undo, desk.undoes(), "action.undo");
        name(redo, desk.redoes(), "action.redo");
        boolean other = before.shop().isPresent() != now.shop().isPresent()
                || before.job().isPresent() != now.job().isPresent();
        if (other) {
            display();
        } else {
            tellView(now);
        }
    }

    private void name(Action action, Optional<String> title, String key) {
        action.putValue(
                Action.SHORT_DESCRIPTION,
                title.map(t -> texts.of(key + ".what", t)).orElse(texts.of(key + ".none")));
    }

    private void tellView(DeskState now) {
        boolean shown = workbench(current)
                .filter(w ->
                        now.shop().isPresent() && (!w.needsJob() || now.job().isPresent()))
                .isPresent();
        if (shown) {
            try {
                view().ifPresent(view -> view.show(now));
            } catch (RuntimeException | LinkageError e) {
                faults.accept(e);
            }
        }
    }

    @Override
    public void go(Destination place) {
        show(place.workbench());
        if (current.equals(place.workbench())) {
            view().ifPresent(view -> view.show(place));
        }
    }

    @Override
    public void say(Notice notice) {
        notices.say(notice);
    }

    @Override
    public void show(List<RunningTask> running) {
        tasks.show(running);
    }

    @Override
    public void again() {
        tellView(desk.state());
    }
}
