package baywright.swing.plan;

import baywright.plan.Plan;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.SeveritySign;
import baywright.workspace.Job;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The plan workbench put together: library, steps, what stands against them, figures. */
final class PlanView implements WorkbenchView {

    private static final int LIBRARY = 200;
    private static final int DETAIL = 330;
    private static final int STATES = 220;

    /** How long somebody waits who has asked for repairs. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Desk desk;
    private final PlanEdits edits;
    private final PlanTasks tasks;
    private final Variants variants = new Variants();
    private final StageList stages;
    private final StepTable table;
    private final StepPanel step;
    private final JScrollPane stepScroll;
    private final PlanOverview overview;
    private final StatesPart states;
    private final FiguresFoot foot;
    private final RepairWatch repairs;
    private final JLabel verdict = new JLabel();
    private final JToggleButton statesButton = new JToggleButton(Words.of("states.toggle"));
    private final CardLayout middleCards = new CardLayout();
    private final JPanel middle = new JPanel(middleCards);
    private final CardLayout detailCards = new CardLayout();
    private final JPanel detail = new JPanel(detailCards);
    private final CardLayout cards = new CardLayout();
    private final JPanel work = new JPanel(cards);
    private final JPanel component =
            new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow, fill]", "[grow, fill][]"));
    private Optional<RepairWatch.Found> found = Optional.empty();
    private Optional<WorkedJob> figuresOf = Optional.empty();
    private Optional<ComparePanel> comparing = Optional.empty();
    private Optional<String> job = Optional.empty();
    private Optional<String> detailed = Optional.empty();

    PlanView(Desk desk) {
        this.desk = desk;
        edits = new PlanEdits(desk);
        tasks = new PlanTasks(desk, edits);
        stages = new StageList(this::add);
        table = new StepTable(desk.readout());
        step = new StepPanel(desk, edits, this::choose);
        stepScroll = scroll(step);
        overview = new PlanOverview(this::choose);
        states = new StatesPart(desk, this::choose);
        foot = new FiguresFoot(desk);
        repairs = new RepairWatch(desk, now -> {
            found = now;
            showDetail();
        });
        table.setTransferHandler(new StepDrop(
                table,
                (ids, before) -> {
                    edits.move(ids, before);
                    table.choose(ids, true);
                },
                (stage, place) -> tasks.addAt(stage, place, this::choose)));
        table.getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                showDetail();
            }
        });
        keys();
        layOut();
    }

    private void layOut() {
        middle.add(steps(), "steps");
        middle.add(
                new EmptyState(
                        Words.of("empty.heading"),
                        Words.of("empty.text"),
                        List.of(
                                action("empty.compose", this::compose),
                                action("empty.add", () -> stages.search().requestFocusInWindow()))),
                "empty");
        detail.add(stepScroll, "step");
        detail.add(scroll(overview), "overview");
        detail.setMinimumSize(new Dimension(UIScale.scale(DETAIL) / 2, 0));
        detail.setPreferredSize(new Dimension(UIScale.scale(DETAIL), 0));
        stages.setPreferredSize(new Dimension(UIScale.scale(LIBRARY), 0));
        stages.setMinimumSize(new Dimension(UIScale.scale(LIBRARY) / 2, 0));
        middle.setMinimumSize(new Dimension(UIScale.scale(DETAIL) / 2, 0));
        middle.setPreferredSize(new Dimension(UIScale.scale(DETAIL), 0));
        JSplitPane right = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, middle, detail);
        right.setResizeWeight(1);
        JSplitPane all = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, stages, right);
        all.setBorder(null);
        right.setBorder(null);
        work.add(all, "work");
        component.add(work, "hmin 0, wmin 0");
        component.add(foot, "wmin 0");
    }

    private static JScrollPane scroll(JComponent content) {
        JScrollPane scroll = new JScrollPane(
                content, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    private JComponent steps() {
        JPanel top = new JPanel(new MigLayout("insets 8, gap 8", "[][][][]unrel[][][]push", "[]4[]"));
        verdict.putClientProperty("FlatLaf.styleClass", "h3");
        top.add(verdict, "span, wmin 0, wrap");
        top.add(button("move-up", () -> moveBy(true)));
        top.add(button("move-down", () -> moveBy(false)));
        top.add(button("copy", this::copy));
        top.add(button("drop", this::drop));
        top.add(button("compose", this::compose));
        top.add(button("mend", this::mend));
        statesButton.setToolTipText(Words.of("states.toggle.tip"));
        top.add(statesButton);
        states.setVisible(false);
        states.setMinimumSize(new Dimension(0, UIScale.scale(STATES) / 2));
        states.setPreferredSize(new Dimension(0, UIScale.scale(STATES)));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(0, 0));
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, scroll, states);
        split.setResizeWeight(1);
        split.setBorder(null);
        statesButton.addActionListener(e -> {
            states.setVisible(statesButton.isSelected());
            split.resetToPreferredSizes();
        });
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow, fill]", "[][grow, fill]"));
        panel.add(top, "wmin 0");
        panel.add(split, "hmin 0, wmin 0");
        return panel;
    }

    private static JButton button(String key, Runnable does) {
        JButton button = new JButton(Words.of("action." + key + ".short"));
        button.setToolTipText(Words.of("action." + key));
        button.getAccessibleContext().setAccessibleName(Words.of("action." + key));
        button.addActionListener(e -> does.run());
        return button;
    }

    private static Action action(String key, Runnable does) {
        return new DoAction(Words.of(key), does);
    }

    private void keys() {
        key("alt UP", () -> moveBy(true));
        key("alt DOWN", () -> moveBy(false));
        key("DELETE", this::drop);
        key("INSERT", () -> stages.search().requestFocusInWindow());
        key("F2", this::editInputs);
        key("ENTER", this::editInputs);
        key("ctrl D", this::copy);
        key("ESCAPE", table::clearSelection);
    }

    private void key(String keys, Runnable does) {
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(keys), keys);
        table.getActionMap().put(keys, action("title", does));
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public JComponent focus() {
        return table;
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                suite("compose", this::compose).when(PlanView::hasGoals),
                suite("mend", this::mend).when(state -> state.worked().isPresent()),
                suite("add", () -> stages.search().requestFocusInWindow()),
                suite("move-up", () -> moveBy(true))
                        .when(state -> !table.chosen().isEmpty()),
                suite("move-down", () -> moveBy(false))
                        .when(state -> !table.chosen().isEmpty()),
                suite("copy", this::copy).when(state -> !table.chosen().isEmpty()),
                suite("drop", this::drop).when(state -> !table.chosen().isEmpty()),
                suite("edit", this::editInputs).when(state -> table.chosen().size() == 1),
                suite("states", statesButton::doClick),
                suite("keep", this::keep).when(state -> state.job().isPresent()),
                suite("compare", this::compare)
                        .when(state -> state.jobId().flatMap(variants::of).isPresent()));
    }

    private static SuiteAction suite(String id, Runnable does) {
        return SuiteAction.of("plan-" + id, Words.of("action." + id), desk -> does.run());
    }

    private static boolean hasGoals(DeskState state) {
        return state.job().filter(j -> !j.goals().isEmpty()).isPresent();
    }

    @Override
    public void show(Destination place) {
        Optional.ofNullable(place.where().get("step")).ifPresent(this::choose);
        Optional.ofNullable(place.where().get("zone")).ifPresent(zone -> {
            if (!statesButton.isSelected()) {
                statesButton.doClick();
            }
            states.choose(zone);
        });
    }

    @Override
    public void show(DeskState state) {
        if (!state.jobId().equals(job)) {
            job = state.jobId();
            found = Optional.empty();
            stopComparing();
            table.clearSelection();
        }
        stages.show(state.shop().map(shop -> shop.site().library()));
        table.show(state);
        Optional<WorkedJob> worked = table.rows().worked();
        showVerdict(worked);
        middleCards.show(middle, table.getRowCount() == 0 ? "empty" : "steps");
        repairs.show(state);
        showDetail();
        states.show(worked);
        showFoot(worked);
    }

    private void showVerdict(Optional<WorkedJob> worked) {
        long stops = worked.map(w -> count(w, Severity.STOP)).orElse(0L);
        long warns = worked.map(w -> count(w, Severity.WARN)).orElse(0L);
        verdict.setText(worked.isEmpty() ? "" : Words.of("verdict", stops, warns));
        verdict.setIcon(
                worked.isEmpty()
                        ? null
                        : stops > 0
                                ? new SeveritySign(Severity.STOP)
                                : warns > 0 ? new SeveritySign(Severity.WARN) : new FineSign());
    }

    private static long count(WorkedJob worked, Severity severity) {
        return worked.findings().stream().filter(f -> f.severity() == severity).count();
    }

    private void showDetail() {
        DeskState state = desk.state();
        Optional<WorkedJob> worked = table.rows().worked();
        Optional<ToldTexts> texts = worked.map(w -> new ToldTexts(w, state, desk.readout(), edits, found));
        Optional<Step> only = table.only();
        if (only.isPresent()) {
            step.show(only.get(), table.rows(), texts);
            if (!only.map(Step::id).equals(detailed)) {
                // Only when it has been laid out does it know how high it is.
                SwingUtilities.invokeLater(
                        () -> stepScroll.getVerticalScrollBar().setValue(0));
            }
        } else {
            overview.show(texts);
        }
        detailed = only.map(Step::id);
        detailCards.show(detail, only.isPresent() ? "step" : "overview");
    }

    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    private void showFoot(Optional<WorkedJob> worked) {
        if (worked.isEmpty()) {
            figuresOf = worked;
            foot.show(Optional.empty());
        } else if (figuresOf.isEmpty() || figuresOf.get() != worked.get()) {
            figuresOf = worked;
            tasks.figures(worked.get(), figures -> {
                if (figuresOf.isPresent() && figuresOf.get() == figures.worked()) {
                    foot.show(Optional.of(figures));
                }
            });
        }
    }

    private void choose(String id) {
        stopComparing();
        table.choose(List.of(id), true);
        table.requestFocusInWindow();
    }

    private void add(String stage) {
        List<String> chosen = table.chosen();
        int wished = chosen.isEmpty()
                ? table.getRowCount()
                : table.rows().steps().stream().map(Step::id).toList().indexOf(chosen.get(chosen.size() - 1)) + 1;
        tasks.add(stage, wished, this::choose);
    }

    private void moveBy(boolean up) {
        List<String> chosen = table.chosen();
        if (chosen.isEmpty()) {
            return;
        }
        if (up) {
            edits.moveUp(chosen);
        } else {
            edits.moveDown(chosen);
        }
        table.choose(chosen, true);
    }

    private void copy() {
        List<String> chosen = table.chosen();
        if (!chosen.isEmpty()) {
            edits.copy(chosen);
        }
    }

    /** What stood below the dropped steps is chosen next, so that Delete can be pressed again. */
    private void drop() {
        List<String> chosen = table.chosen();
        if (chosen.isEmpty()) {
            return;
        }
        int place = table.getSelectionModel().getMinSelectionIndex();
        edits.drop(chosen);
        int next = Math.min(place, table.getRowCount() - 1);
        if (next >= 0) {
            table.choose(List.of(table.rows().step(next).id()), true);
        }
    }

    private void editInputs() {
        if (table.only().isPresent() && !step.inputs().focusFirst()) {
            step.zones().choices().requestFocusInWindow();
        }
    }

    private void compose() {
        tasks.compose(this::compare);
    }

    /** Shows the plan as a whole with its repairs, looked for at once. */
    private void mend() {
        table.clearSelection();
        repairs.look(PATIENCE);
    }

    private void keep() {
        desk.state().job().ifPresent(now -> {
            variants.keep(now.id(), now.plan());
            desk.say(Notice.done(Words.of("variant.kept-now")));
        });
    }

    private void compare() {
        desk.state()
                .job()
                .ifPresent(now -> variants.of(now.id())
                        .ifPresent(kept -> tasks.beside(
                                kept,
                                () -> {
                                    Optional<Plan> today = desk.state().job().map(Job::plan);
                                    edits.take(Words.of("change.variant"), kept);
                                    today.ifPresent(plan -> variants.keep(now.id(), plan));
                                },
                                this::compare)));
    }

    private void compare(ComparePanel.Pair pair) {
        stopComparing();
        ComparePanel panel = new ComparePanel(pair, desk.readout(), this::stopComparing);
        comparing = Optional.of(panel);
        work.add(panel, "compare");
        cards.show(work, "compare");
        panel.take().requestFocusInWindow();
    }

    private void stopComparing() {
        comparing.ifPresent(panel -> {
            cards.show(work, "work");
            work.remove(panel);
        });
        comparing = Optional.empty();
    }

    StepTable table() {
        return table;
    }

    StageList stages() {
        return stages;
    }

    StepPanel step() {
        return step;
    }

    PlanOverview overview() {
        return overview;
    }

    FiguresFoot foot() {
        return foot;
    }

    StatesPart states() {
        return states;
    }

    RepairWatch repairs() {
        return repairs;
    }

    Optional<ComparePanel> comparing() {
        return comparing;
    }
}
