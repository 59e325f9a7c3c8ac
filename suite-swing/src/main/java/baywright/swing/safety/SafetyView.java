package baywright.swing.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.safety.JobSafety;
import baywright.safety.SafetyCodes;
import baywright.safety.Statements;
import baywright.site.OpenShop;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DoAction;
import baywright.swing.parts.EmptyState;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.WidePanel;
import baywright.workspace.Job;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** The safety workbench put together: exposures, ways out and findings at the left; cautions, air and light, and products at the right. */
final class SafetyView implements WorkbenchView {

    private static final int LEFT = 600;
    private static final int RIGHT = 420;

    /** Findings that stand elsewhere: beside their fields, or as bars. */
    private static final Set<String> ELSEWHERE = Set.of(
            SafetyCodes.ACKNOWLEDGE,
            SafetyCodes.ACKNOWLEDGED,
            SafetyCodes.CLIMATE,
            SafetyCodes.DEW_POINT,
            SafetyCodes.LIGHT,
            SafetyCodes.KEEP_APART,
            SafetyCodes.VIBRATION,
            SafetyCodes.NOISE);

    private final Desk desk;
    private final SafetyEdits edits;
    private final JLabel verdict = new JLabel();
    private final DosePanel doses;
    private final WaysPanel ways;
    private final FoundList apart;
    private final FoundList others;
    private final CautionsPanel cautions;
    private final ClimatePanel climate;
    private final LightPanel light;
    private final ProductsPanel products;
    private final JComboBox<String> language;
    private final JTabbedPane tabs = new JTabbedPane();
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow, fill]", "[grow, fill][]"));
    private Optional<SafetyFigures> figures = Optional.empty();
    private Optional<WorkedJob> wanted = Optional.empty();
    private Optional<TaskHandle> reading = Optional.empty();
    private String job = "";
    private String card = "";
    private boolean choosing;

    SafetyView(Desk desk) {
        this.desk = desk;
        edits = new SafetyEdits(desk);
        doses = new DosePanel(desk);
        ways = new WaysPanel(desk, edits);
        apart = new FoundList(desk, Words.of("apart.none"));
        others = new FoundList(desk, Words.of("others.none"));
        cautions = new CautionsPanel(desk, edits);
        climate = new ClimatePanel(desk, edits);
        light = new LightPanel(desk);
        products = new ProductsPanel(desk);
        language = new JComboBox<>(Statements.LANGUAGES.toArray(String[]::new));
        language.setRenderer(new LanguageName());
        language.addActionListener(e -> {
            if (!choosing) {
                read();
            }
        });
        layOut();
    }

    private void layOut() {
        verdict.putClientProperty("FlatLaf.styleClass", "h2");
        JPanel top = new JPanel(new MigLayout("insets 12 16 8 16", "[grow, fill][]"));
        top.add(verdict, "wmin 0");
        JButton sheet = new JButton(action("sheet", this::showSheet));
        top.add(sheet);
        WidePanel left = new WidePanel(new MigLayout("insets 4 16 16 12, wrap 1, gap 0 6", "[grow, fill]"));
        part(left, "doses", doses);
        part(left, "ways", ways);
        part(left, "apart", apart);
        part(left, "others", others);
        JScrollPane leftScroll = scroll(left);
        leftScroll.setPreferredSize(new Dimension(UIScale.scale(LEFT), 0));
        leftScroll.setMinimumSize(new Dimension(UIScale.scale(LEFT) / 2, 0));
        tabs.addTab(Words.of("cautions"), scroll(page(cautions)));
        WidePanel weather = new WidePanel(new MigLayout("insets 12, wrap 1, gap 0 6", "[grow, fill]"));
        part(weather, "climate", climate);
        part(weather, "light", light);
        tabs.addTab(Words.of("climate.tab"), scroll(weather));
        WidePanel goods = new WidePanel(new MigLayout("insets 12, gap 8 8", "[][grow, fill]"));
        JLabel in = new JLabel(Words.of("language"));
        in.setLabelFor(language);
        goods.add(in);
        goods.add(language, "growx 0, wrap");
        goods.add(products, "span, growx, wmin 0");
        tabs.addTab(Words.of("products"), scroll(goods));
        tabs.getAccessibleContext().setAccessibleName(Words.of("tabs"));
        tabs.setPreferredSize(new Dimension(UIScale.scale(RIGHT), 0));
        tabs.setMinimumSize(new Dimension(UIScale.scale(RIGHT) / 2, 0));
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, leftScroll, tabs);
        split.setResizeWeight(0.6);
        split.setBorder(null);
        JPanel work = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow, fill]", "[][grow, fill]"));
        work.add(top, "wmin 0");
        work.add(split, "wmin 0, hmin 0");
        middle.add(work, "work");
        middle.add(
                new EmptyState(
                        Words.of("empty.heading"),
                        Words.of("empty.text"),
                        List.of(action("empty.go", () -> desk.go(new Destination("plan", Map.of()))))),
                "empty");
        middle.add(
                new EmptyState(
                        Words.of("unread.heading"),
                        Words.of("unread.text"),
                        List.of(action("unread.go", () -> desk.go(new Destination("library", Map.of()))))),
                "unread");
        middle.add(new JPanel(), "wait");
        JPanel foot = new JPanel(new MigLayout("insets 8 16 8 16", "[][grow, fill]"));
        foot.add(new JLabel(new SeveritySign(Severity.NOTE)));
        foot.add(new Prose(Words.of("advice")), "wmin 0");
        whole.add(middle, "wmin 0, hmin 0");
        whole.add(foot, "wmin 0");
        turnTo("wait");
    }

    private static void part(JPanel column, String key, JComponent content) {
        column.add(new SectionHeading(Words.of(key), content), "wmin 0, gaptop 10");
        column.add(content, "wmin 0");
    }

    private static WidePanel page(JComponent content) {
        WidePanel page = new WidePanel(new MigLayout("insets 12, wrap 1", "[grow, fill]"));
        page.add(content, "wmin 0");
        return page;
    }

    private static JScrollPane scroll(JComponent content) {
        JScrollPane scroll = new JScrollPane(
                content, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    private static Action action(String key, Runnable does) {
        return new DoAction(Words.of(key), does);
    }

    private void showSheet() {
        desk.go(new Destination("papers", Map.of("paper", "hazards", "language", language())));
    }

    @Override
    public JComponent component() {
        return whole;
    }

    @Override
    public JComponent focus() {
        return tabs;
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of("safety-sheet", Words.of("sheet"), d -> showSheet())
                        .when(state -> state.worked().isPresent()),
                tab("cautions", 0),
                tab("climate.tab", 1),
                tab("products", 2));
    }

    private SuiteAction tab(String key, int index) {
        String id = "safety-" + key.replace(".tab", "");
        return SuiteAction.of(id, Words.of("show", Words.of(key)), d -> {
                    tabs.setSelectedIndex(index);
                    tabs.requestFocusInWindow();
                })
                .when(state -> state.worked().isPresent());
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    public void show(DeskState state) {
        Optional<Job> now = state.job();
        if (now.isEmpty() || now.get().plan().steps().isEmpty()) {
            wanted = Optional.empty();
            turnTo(now.isEmpty() ? "wait" : "empty");
            return;
        }
        if (state.worked().isEmpty()) {
            wanted = Optional.empty();
            turnTo(state.working() ? "wait" : "unread");
            return;
        }
        chooseLanguage(state, now.get());
        boolean same = wanted.isPresent() && wanted.get() == state.worked().get();
        wanted = state.worked();
        if (same) {
            // units and answers of the job may have changed
            figures.filter(f -> f.worked() == wanted.get()).ifPresent(this::show);
        } else {
            read();
        }
    }

    private void chooseLanguage(DeskState state, Job now) {
        if (now.id().equals(job)) {
            return;
        }
        job = now.id();
        figures = Optional.empty();
        String spoken = Locale.forLanguageTag(
                        now.language().orElse(state.shop().orElseThrow().shop().language()))
                .getLanguage();
        choosing = true;
        language.setSelectedItem(Statements.LANGUAGES.contains(spoken) ? spoken : "en");
        choosing = false;
    }

    private String language() {
        return (String) language.getSelectedItem();
    }

    /** Reads the figures off the newest worked job in the background; one that is under way for an older one is left. */
    private void read() {
        reading.ifPresent(TaskHandle::cancel);
        reading = Optional.empty();
        if (wanted.isEmpty()) {
            return;
        }
        WorkedJob worked = wanted.get();
        String shop = desk.state().shop().map(OpenShop::shop).orElseThrow().name();
        Locale locale = Locale.forLanguageTag(language());
        reading = Optional.of(desk.run(new Task<>(
                Words.of("reading"),
                progress -> SafetyFigures.of(worked, shop, locale, progress),
                this::show,
                fault -> desk.say(Notice.failed(Words.of("failed", String.valueOf(fault.getMessage())))))));
    }

    private void show(SafetyFigures now) {
        figures = Optional.of(now);
        WorkedJob worked = now.worked();
        JobSafety safety = desk.state()
                .job()
                .filter(j -> j.id().equals(worked.job().id()))
                .map(Job::safety)
                .orElse(worked.job().safety());
        SafetyWords words = new SafetyWords(worked, desk.readout());
        List<Finding> findings = worked.safety().findings();
        doses.show(worked);
        ways.show(now);
        apart.show(
                findings.stream()
                        .filter(f -> f.code().equals(SafetyCodes.KEEP_APART))
                        .toList(),
                words,
                now.sheet().apart().stream()
                        .map(a -> Words.of(
                                a.why().isEmpty() ? "apart.line" : "apart.line.why", a.stage(), a.what(), a.why()))
                        .toList());
        others.show(findings.stream().filter(f -> !ELSEWHERE.contains(f.code())).toList(), words, List.of());
        cautions.show(now, safety);
        climate.show(now, safety);
        light.show(worked, words);
        products.show(now.sheet(), words);
        tabs.setTitleAt(0, Words.of("cautions.count", cautions.open()));
        tabs.setTitleAt(2, Words.of("products.count", now.sheet().products().size()));
        long stops =
                findings.stream().filter(f -> f.severity() == Severity.STOP).count();
        long warns =
                findings.stream().filter(f -> f.severity() == Severity.WARN).count();
        verdict.setText(Words.of(stops > 0 ? "verdict.stopped" : "verdict.holds", stops, warns));
        verdict.setIcon(stops > 0 ? new SeveritySign(Severity.STOP) : new FineSign());
        turnTo("work");
    }

    private void turnTo(String which) {
        card = which;
        cards.show(middle, which);
    }

    /** Which of {@code work}, {@code empty}, {@code unread} and {@code wait} is in sight. */
    String shown() {
        return card;
    }

    String verdict() {
        return verdict.getText();
    }

    DosePanel doses() {
        return doses;
    }

    WaysPanel ways() {
        return ways;
    }

    FoundList apart() {
        return apart;
    }

    CautionsPanel cautions() {
        return cautions;
    }

    ClimatePanel climate() {
        return climate;
    }

    LightPanel light() {
        return light;
    }

    ProductsPanel products() {
        return products;
    }

    JComboBox<String> languages() {
        return language;
    }

    /** Languages by their names. */
    private static final class LanguageName extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            String name = value == null
                    ? ""
                    : Locale.forLanguageTag((String) value)
                            .getDisplayLanguage(Locale.getDefault(Locale.Category.DISPLAY));
            return super.getListCellRendererComponent(list, name, index, chosen, focus);
        }
    }
}
