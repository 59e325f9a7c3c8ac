package baywright.swing.timetable;

import baywright.chance.Simulation;
import baywright.library.Library;
import baywright.money.Outlook;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.site.OpenShop;
import baywright.site.Site;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import baywright.swing.timetable.ChartRow.By;
import baywright.swing.timetable.Timed.Phase;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The timetable workbench put together: the chart, the chosen step below it, when jobs are ready beside it. */
final class TimetableView implements WorkbenchView {

    private static final int PAUSE_MS = 150;
    private static final int SECONDS = 3;
    private static final int MORE_SECONDS = 20;
    private static final int SIDE = 320;
    private static final double P80 = 0.8;

    /**
     * How much time is taken.
     *
     * @param seconds   for a better timetable
     * @param simulated how often it is simulated
     */
    record Patience(int seconds, Simulation.Options simulated) {}

    /** Which jobs are timed. */
    enum Scope {
        ALL,
        ONE
    }

    /** What was timed; the library is the same one or another. */
    private record Key(List<Job> jobs, Shop shop, Library library) {
        @SuppressWarnings("ReferenceEquality") // comparing whole libraries would take long
        boolean isSame(Key other) {
            return library == other.library && jobs.equals(other.jobs) && shop.equals(other.shop);
        }
    }

    /** A value to choose by its title. */
    private record Choice<T>(T value, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    private final Desk desk;
    private final Patience patience;
    private final Starts starts;
    private final Timing timing;
    private final StartChecks checks;
    private final TimeChart chart;
    private final StepFoot foot;
    private final ReadyPanel ready;
    private final Timer pause;
    private final JComboBox<Choice<Scope>> scope = new JComboBox<>();
    private final JComboBox<Choice<By>> by = new JComboBox<>();
    private final JComboBox<Choice<LocalDate>> days = new JComboBox<>();
    private final CardLayout cards = new CardLayout();
    private final JPanel content = new JPanel(cards);
    private final EmptyState none;
    private final JPanel whole =
            new JPanel(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow, fill]", "[][grow, fill]"));
    private Optional<Key> key = Optional.empty();
    private Optional<Timed> timed = Optional.empty();
    private Optional<String> wantedStep = Optional.empty();
    private String shown = "";
    private int seconds;
    private boolean choosing;
    private boolean waits;

    /**
     * Takes its time as a person does.
     *
     * @see #TimetableView(Desk, Patience)
     */
    TimetableView(Desk desk) {
        this(desk, new Patience(SECONDS, Outlook.usual()));
    }

    TimetableView(Desk desk, Patience patience) {
        this.desk = desk;
        this.patience = patience;
        starts = new Starts(desk);
        timing = new Timing(desk, this::told);
        chart = new TimeChart(TimetableWorkbench.TEXTS.of("chart"), new Hands());
        foot = new StepFoot(desk, (entry, at) -> fix(entry, at), this::go);
        checks = new StartChecks(desk, foot::show);
        ready = new ReadyPanel(desk, timing::enough, this::longer, this::chooseBar);
        none = new EmptyState(
                "",
                "",
                List.of(
                        action("none.go", () -> desk.go(new Destination("plan", Map.of()))),
                        action("again", this::again)));
        pause = new Timer(PAUSE_MS, e -> time());
        pause.setRepeats(false);
        fill();
        layOut();
        turnTo("nothing");
    }

    private void fill() {
        for (Scope value : Scope.values()) {
            scope.addItem(choice(value));
        }
        for (By value : By.values()) {
            by.addItem(choice(value));
        }
        scope.addActionListener(e -> show(desk.state()));
        by.addActionListener(e -> draw());
        days.addActionListener(e -> {
            if (!choosing && days.getSelectedItem() != null) {
                chart.jumpTo(chosen(days));
            }
        });
    }

    private static Choice<Scope> choice(Scope value) {
        return new Choice<>(value, TimetableWorkbench.TEXTS.of("scope." + value));
    }

    private static Choice<By> choice(By value) {
        return new Choice<>(value, TimetableWorkbench.TEXTS.of("by." + value));
    }

    private static <T> T chosen(JComboBox<Choice<T>> box) {
        return box.getItemAt(box.getSelectedIndex()).value();
    }

    private void layOut() {
        JScrollPane scroll = new JScrollPane(chart);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setColumnHeaderView(new TimeHeader(chart, desk.readout().locale()));
        scroll.setRowHeaderView(new RowNames(chart));
        JScrollPane side = new JScrollPane(
                ready, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        side.setBorder(BorderFactory.createEmptyBorder());
        JPanel left = new JPanel(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow, fill]", "[grow, fill][]"));
        left.add(scroll, "wmin 0, hmin 0");
        left.add(foot, "wmin 0");
        side.setMinimumSize(new Dimension(UIScale.scale(SIDE) / 2, 0));
        side.setPreferredSize(new Dimension(UIScale.scale(SIDE), 0));
        left.setMinimumSize(new Dimension(UIScale.scale(SIDE) / 2, 0));
        left.setPreferredSize(new Dimension(UIScale.scale(SIDE), 0));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, side);
        split.setResizeWeight(1);
        split.setBorder(null);
        content.add(split, "chart");
        JPanel waiting = new JPanel(new MigLayout("fill", "[center]", "[center]"));
        waiting.add(new JLabel(TimetableWorkbench.TEXTS.of("timing")));
        content.add(waiting, "timing");
        content.add(new JPanel(), "nothing");
        content.add(none, "none");
        Destination survey = new Destination("survey", Map.of());
        empty("no-jobs", "no-jobs.go", () -> desk.go(survey));
        content.add(
                new EmptyState(
                        TimetableWorkbench.TEXTS.of("no-arrival.heading"),
                        TimetableWorkbench.TEXTS.of("no-arrival.text"),
                        List.of(
                                action("no-arrival.go", () -> desk.go(survey)),
                                action("no-arrival.one", () -> choose(Scope.ONE)))),
                "no-arrival");
        empty("no-job", "no-job.go", () -> choose(Scope.ALL));
        empty("no-steps", "no-steps.go", () -> desk.go(new Destination("plan", Map.of())));
        empty("no-people", "no-people.go", () -> choose(By.BAYS));
        whole.add(bar());
        whole.add(content, "wmin 0, hmin 0");
    }

    private void empty(String card, String button, Runnable does) {
        content.add(
                new EmptyState(
                        TimetableWorkbench.TEXTS.of(card + ".heading"),
                        TimetableWorkbench.TEXTS.of(card + ".text"),
                        List.of(action(button, does))),
                card);
    }

    private JComponent bar() {
        JPanel bar = new JPanel(new MigLayout("insets 8", "[]8[]24[]8[]24[]8[]push[]4[]4[]"));
        labelled(bar, "scope", scope);
        labelled(bar, "by", by);
        labelled(bar, "day", days);
        bar.add(button("zoom.out", () -> chart.zoom(false)));
        bar.add(button("zoom.in", () -> chart.zoom(true)));
        bar.add(button("zoom.whole", chart::zoomToWhole));
        return bar;
    }

    private static void labelled(JPanel bar, String key, JComboBox<?> box) {
        JLabel label = new JLabel(TimetableWorkbench.TEXTS.of(key));
        label.setLabelFor(box);
        bar.add(label);
        bar.add(box);
    }

    private static JButton button(String key, Runnable does) {
        JButton button = new JButton(TimetableWorkbench.TEXTS.of(key + ".short"));
        button.setToolTipText(TimetableWorkbench.TEXTS.of(key));
        button.getAccessibleContext().setAccessibleName(TimetableWorkbench.TEXTS.of(key));
        button.addActionListener(e -> does.run());
        return button;
    }

    private static Action action(String key, Runnable does) {
        return new DoAction(TimetableWorkbench.TEXTS.of(key), does);
    }

    @Override
    public JComponent component() {
        return whole;
    }

    @Override
    public JComponent focus() {
        return chart;
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                suite("scope.ALL", () -> choose(Scope.ALL)),
                suite("scope.ONE", () -> choose(Scope.ONE))
                        .when(state -> state.job().isPresent()),
                suite("by.PEOPLE", () -> choose(By.PEOPLE)),
                suite("by.BAYS", () -> choose(By.BAYS)),
                suite("zoom.in", () -> chart.zoom(true)),
                suite("zoom.out", () -> chart.zoom(false)),
                suite("zoom.whole", chart::zoomToWhole),
                suite("enough", timing::enough).when(state -> isImproving()),
                suite("longer", this::longer).when(state -> canSearchLonger()),
                suite("later", () -> nudge(true)).when(state -> work().isPresent()),
                suite("earlier", () -> nudge(false)).when(state -> work().isPresent()),
                suite("type", this::type).when(state -> work().isPresent()),
                suite("release", () -> work().ifPresent(entry -> fix(entry, Optional.empty())))
                        .when(state -> work().flatMap(this::fixed).isPresent()));
    }

    private static SuiteAction suite(String key, Runnable does) {
        String id = "timetable-" + key.replace('.', '-').toLowerCase(Locale.ROOT);
        return SuiteAction.of(id, TimetableWorkbench.TEXTS.of("action." + key), d -> does.run());
    }

    private boolean isImproving() {
        return timing.isRunning()
                && timed.filter(t -> t.phase() == Phase.IMPROVING).isPresent();
    }

    private boolean canSearchLonger() {
        return timed.filter(t -> t.phase() != Phase.IMPROVING)
                .flatMap(Timed::timetable)
                .filter(t -> !t.proved())
                .isPresent();
    }

    // ---- what is to be timed

    @Override
    public void show(Destination place) {
        wantedStep = Optional.ofNullable(place.where().get("step"));
        chooseWanted();
    }

    @Override
    public void show(DeskState state) {
        if (state.shop().isEmpty()) {
            leave("nothing");
            return;
        }
        OpenShop shop = state.shop().get();
        if (shop.isStale() && state.working()) {
            return;
        }
        Optional<String> empty = empty(state, shop);
        if (empty.isPresent()) {
            leave(empty.get());
            return;
        }
        Site site = shop.site();
        Key now = new Key(jobs(state, shop), site.shop(), site.library());
        if (key.filter(now::isSame).isEmpty()) {
            key = Optional.of(now);
            seconds = patience.seconds();
            if (timed.isEmpty() || !shown.equals("chart")) {
                turnTo("timing");
            }
            waits = true;
            pause.restart();
        }
    }

    private void leave(String card) {
        pause.stop();
        waits = false;
        timing.leave();
        key = Optional.empty();
        timed = Optional.empty();
        turnTo(card);
    }

    private Optional<String> empty(DeskState state, OpenShop shop) {
        if (shop.jobs().isEmpty()) {
            return Optional.of("no-jobs");
        }
        if (chosen(scope) == Scope.ONE) {
            if (state.job().isEmpty()) {
                return Optional.of("no-job");
            }
            return state.job().get().plan().steps().isEmpty() ? Optional.of("no-steps") : Optional.empty();
        }
        return jobs(state, shop).isEmpty() ? Optional.of("no-arrival") : Optional.empty();
    }

    private List<Job> jobs(DeskState state, OpenShop shop) {
        if (chosen(scope) == Scope.ONE) {
            return state.job().stream().toList();
        }
        return shop.jobs().stream()
                .filter(job -> job.arrives().isPresent() && !job.plan().steps().isEmpty())
                .sorted(Comparator.comparing((Job job) -> job.arrives().orElseThrow())
                        .thenComparing(Job::id))
                .toList();
    }

    private void time() {
        waits = false;
        desk.state()
                .shop()
                .ifPresent(shop -> key.ifPresent(
                        now -> timing.time(new Timing.Wish(shop.site(), now.jobs(), seconds, patience.simulated()))));
    }

    private void longer() {
        seconds = MORE_SECONDS;
        time();
    }

    private void again() {
        if (key.isPresent()) {
            turnTo("timing");
            time();
        }
    }

    // ---- what came out

    private void told(Timed now) {
        if (key.isEmpty()) {
            return;
        }
        timed = Optional.of(now);
        if (now.timetable().isEmpty()) {
            EntryWords words = new EntryWords(now, desk.readout());
            String why = now.why().stream()
                    .flatMap(n -> {
                        List<String> lines = new ArrayList<>(words.texts().none(n));
                        if (!n.planHolds()) {
                            lines.add(TimetableWorkbench.TEXTS.of("none.plan"));
                        } else if (n.overLimits()) {
                            lines.add(TimetableWorkbench.TEXTS.of("none.limits"));
                        }
                        return lines.stream();
                    })
                    .collect(Collectors.joining("\n"));
            none.say(
                    TimetableWorkbench.TEXTS.of(now.why().isEmpty() ? "none.stopped" : "none.heading"),
                    now.why().isEmpty() ? TimetableWorkbench.TEXTS.of("none.stopped.text") : why);
            turnTo("none");
            return;
        }
        draw();
    }

    private void draw() {
        if (timed.flatMap(Timed::timetable).isEmpty()) {
            return;
        }
        Timed now = timed.get();
        if (chosen(by) == By.PEOPLE && now.site().shop().people().isEmpty()) {
            turnTo("no-people");
            return;
        }
        ShopTimetable timetable = now.timetable().orElseThrow();
        EntryWords words = new EntryWords(now, desk.readout());
        Map<String, LocalDateTime> p80 = new HashMap<>();
        now.chance().map(ShopChance::jobs).orElse(List.of()).forEach(c -> p80.put(c.job(), c.readyBy(P80)));
        chart.show(new ChartPicture(
                now.site().shop(),
                timetable,
                ChartRow.of(
                        timetable,
                        now.site().shop(),
                        chosen(by),
                        TimetableWorkbench.TEXTS.of("row.none." + chosen(by)),
                        TimetableWorkbench.TEXTS.of("row.waits")),
                words.places(),
                timetable.entries().stream()
                        .filter(e -> words.fixed(e).isPresent())
                        .collect(Collectors.toSet()),
                p80,
                words::label,
                words::says));
        ready.show(now, words);
        showDays();
        showFoot();
        turnTo("chart");
        chooseWanted();
    }

    private void showDays() {
        List<Choice<LocalDate>> all = chart.scale().orElseThrow().days().stream()
                .map(day -> new Choice<>(day, desk.readout().day(day)))
                .toList();
        boolean same = all.size() == days.getItemCount();
        for (int i = 0; same && i < all.size(); i++) {
            same = all.get(i).equals(days.getItemAt(i));
        }
        if (!same) {
            choosing = true;
            days.removeAllItems();
            all.forEach(days::addItem);
            choosing = false;
        }
    }

    private void showFoot() {
        Optional<Entry> entry = chart.chosen();
        String words =
                entry.flatMap(e -> chart.picture().map(p -> p.says().apply(e))).orElse("");
        foot.show(entry, entry.flatMap(this::fixed), words);
    }

    private void turnTo(String card) {
        shown = card;
        cards.show(content, card);
    }

    // ---- the chosen step

    private void chooseBar(Entry entry) {
        chart.choose(entry);
        chart.requestFocusInWindow();
    }

    private void chooseWanted() {
        Optional<String> job = desk.state().jobId();
        wantedStep
                .flatMap(step -> timed.flatMap(Timed::timetable).stream()
                        .flatMap(t -> t.entries().stream())
                        .filter(e -> e.step().equals(step) && job.equals(Optional.of(e.job())))
                        .filter(e -> e.doing() == Doing.WORK)
                        .findFirst())
                .ifPresent(entry -> {
                    wantedStep = Optional.empty();
                    chooseBar(entry);
                });
    }

    private Optional<Entry> work() {
        return chart.chosen().filter(e -> e.doing() == Doing.WORK);
    }

    private Optional<LocalDateTime> fixed(Entry entry) {
        return entry.doing() == Doing.WORK
                ? starts.step(entry.job(), entry.step()).flatMap(s -> s.at())
                : Optional.empty();
    }

    private void go(Entry entry) {
        desk.choose(entry.job());
        desk.go(Destination.step(entry.step()));
    }

    /** The start stays fixed when it is nudged before the new timetable is there. */
    private void nudge(boolean later) {
        work().ifPresent(entry ->
                fix(entry, Optional.of(TimeScale.beside(fixed(entry).orElse(entry.from()), later))));
    }

    private void type() {
        if (!foot.start().fixed().isSelected()) {
            foot.start().fixed().doClick();
        }
        foot.start().focusTime();
    }

    /** Gives a step another start and says what that breaks. */
    private void fix(Entry entry, Optional<LocalDateTime> at) {
        check(entry, at);
        starts.fix(entry.job(), entry.step(), at);
        showFoot();
    }

    private void check(Entry entry, Optional<LocalDateTime> at) {
        desk.state()
                .shop()
                .ifPresent(shop -> shop.job(entry.job())
                        .ifPresent(job -> checks.ask(new StartChecks.Wish(shop.site(), job, entry.step(), at))));
    }

    private void choose(Scope value) {
        scope.setSelectedItem(choice(value));
    }

    private void choose(By value) {
        by.setSelectedItem(choice(value));
    }

    private final class Hands implements TimeChart.Hands {
        @Override
        public void chosen(Optional<Entry> entry) {
            checks.forget();
            showFoot();
        }

        @Override
        public void go(Entry entry) {
            TimetableView.this.go(entry);
        }

        @Override
        public void hovers(Entry entry, Optional<LocalDateTime> start) {
            if (start.isPresent()) {
                check(entry, start);
            } else {
                checks.forget();
                foot.clear();
            }
        }

        @Override
        public void moved(Entry entry, LocalDateTime start) {
            fix(entry, Optional.of(start));
        }

        @Override
        public void nudged(boolean later) {
            nudge(later);
        }

        @Override
        public void released(Entry entry) {
            if (fixed(entry).isPresent()) {
                fix(entry, Optional.empty());
            }
        }
    }

    // ---- for tests

    TimeChart chart() {
        return chart;
    }

    StepFoot foot() {
        return foot;
    }

    ReadyPanel ready() {
        return ready;
    }

    /** Which card is in sight. */
    String shown() {
        return shown;
    }

    Optional<Timed> timed() {
        return timed;
    }

    boolean isBusy() {
        return waits || timing.isRunning();
    }
}
