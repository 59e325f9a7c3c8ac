package baywright.swing.quote;

import baywright.money.BuildUp.Bar;
import baywright.money.BuildUp.What;
import baywright.money.CapFit;
import baywright.money.Quote;
import baywright.plan.Severity;
import baywright.site.OpenShop;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Remark;
import baywright.swing.api.SuiteAction;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.EmptyState;
import baywright.swing.parts.FigureTile;
import baywright.swing.parts.WidePanel;
import baywright.workspace.Job;
import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;

/** The quote workbench put together: what may be chosen, how the price comes about, what it may come to and what was kept. */
final class QuoteView implements WorkbenchView {

    private static final int CHOICES = 392;
    private static final int CHANCES = 376;
    private static final int LEAST = 150;

    private final Desk desk;
    private final OptionsPart options;
    private final FitPart fit;
    private final BuildUpPart buildUp;
    private final StopsPart stops;
    private final OutlookPart outlook;
    private final KeptPart kept;
    private final FigureTile price = tile("price", () -> trace(What.PRICE));
    private final FigureTile most = tile("most", () -> trace(What.MOST));
    private final FigureTile cap = tile("cap", this::goToCap);
    private final FigureTile left = tile("left", () -> trace(What.LEFT));
    private final FigureTile loss = tile("loss", () -> choose(OutlookPart.Of.COST));
    private final FigureTile ready = tile("ready", () -> choose(OutlookPart.Of.READY));
    private final CardLayout middleCards = new CardLayout();
    private final JPanel middle = new JPanel(middleCards);
    private final CardLayout cards = new CardLayout();
    private final JPanel component = new JPanel(cards);
    private Optional<WorkedJob> worked = Optional.empty();
    private Optional<Site> site = Optional.empty();
    private List<Remark> remarks = List.of();
    private String card = "";

    QuoteView(Desk desk) {
        this.desk = desk;
        options = new OptionsPart(desk);
        fit = new FitPart(desk);
        buildUp = new BuildUpPart(desk);
        stops = new StopsPart(desk);
        outlook = new OutlookPart(desk, this::tellChances);
        kept = new KeptPart(desk);
        middle.add(buildUp, "price");
        middle.add(stops, "stops");
        JSplitPane right = new JSplitPane(
                JSplitPane.HORIZONTAL_SPLIT, true, sized(middle, LEAST), sized(column(outlook, kept), CHANCES));
        right.setResizeWeight(1);
        right.setBorder(null);
        JSplitPane all = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, sized(column(options, fit), CHOICES), right);
        all.setBorder(null);
        JPanel work = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow, fill]", "[][grow, fill]"));
        work.add(top(), "wmin 0");
        work.add(all, "wmin 0, hmin 0");
        component.add(work, "work");
        component.add(
                new EmptyState(
                        Words.of("empty.heading"),
                        Words.of("empty.text"),
                        List.of(Words.action("empty.go", () -> desk.go(new Destination("plan", Map.of()))))),
                "empty");
        component.add(new JPanel(), "nothing");
        List.of(price, most, cap, left, loss, ready).forEach(tile -> tile.say(Words.of("none")));
        turnTo("nothing");
    }

    private FigureTile tile(String key, Runnable trace) {
        return new FigureTile(Words.of("tile." + key)).onTrace(Words.of("tile.trace"), trace);
    }

    private JComponent top() {
        JPanel top = new JPanel(new MigLayout("insets 8, gap 8, fillx", "", "[fill]"));
        for (FigureTile tile : List.of(price, most, cap, left, loss, ready)) {
            top.add(tile, "wmin 0, growx, pushx, sg tiles");
        }
        JButton pages = new JButton(Words.action("pages", this::showPages));
        pages.putClientProperty("FlatLaf.styleClass", "primary");
        top.add(pages, "growy 0, aligny center");
        return top;
    }

    private static JComponent column(JComponent upper, JComponent lower) {
        WidePanel column =
                new WidePanel(new MigLayout("insets 0, gap 0, wrap 1, hidemode 3", "[grow, fill]", "[]8[]push"));
        column.add(upper, "wmin 0");
        column.add(lower, "wmin 0");
        JScrollPane scroll = new JScrollPane(
                column, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    private static JComponent sized(JComponent part, int width) {
        part.setPreferredSize(new Dimension(UIScale.scale(width), 0));
        part.setMinimumSize(new Dimension(UIScale.scale(LEAST), 0));
        return part;
    }

    /** Whether a plug-in's remark holds a quote back. */
    static boolean isHeldBack(DeskState state) {
        return state.remarks().stream().anyMatch(remark -> remark.severity() == Severity.STOP);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public JComponent focus() {
        return buildUp.isShowing() ? buildUp.table() : options.table();
    }

    @Override
    public List<SuiteAction> actions() {
        return List.of(
                SuiteAction.of(
                                "quote-keep",
                                Words.of("kept.keep"),
                                d -> kept.keeping().doClick())
                        .when(state -> kept.keeping().isEnabled()),
                SuiteAction.of("quote-fit", Words.of("action.fit"), d -> goToCap())
                        .when(state -> state.worked().isPresent()),
                SuiteAction.of(
                                "quote-take-way",
                                Words.of("fit.take"),
                                d -> fit.taking().doClick())
                        .when(state -> fit.taking().isEnabled()),
                SuiteAction.of(
                                "quote-take-option",
                                Words.of("options.take"),
                                d -> options.taking().doClick())
                        .when(state -> options.taking().isEnabled()),
                SuiteAction.of("quote-pages", Words.of("pages"), d -> showPages())
                        .when(state -> state.worked().isPresent()));
    }

    private void showPages() {
        desk.go(new Destination("papers", Map.of("paper", "quote")));
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // each working out is another one, and comparing whole ones would take long
    public void show(DeskState state) {
        if (state.job().filter(job -> job.plan().steps().isEmpty()).isPresent()) {
            clear();
            turnTo("empty");
            return;
        }
        if (state.worked().isEmpty() || state.shop().isEmpty()) {
            clear();
            turnTo("nothing");
            return;
        }
        WorkedJob now = state.worked().get();
        Site at = state.shop().map(OpenShop::site).get();
        if (worked.isPresent() && worked.get() == now && remarks.equals(state.remarks())) {
            site = Optional.of(at);
            return;
        }
        worked = Optional.of(now);
        site = Optional.of(at);
        remarks = state.remarks();
        show(now, at, state);
        turnTo("work");
    }

    private void show(WorkedJob now, Site at, DeskState state) {
        Figures figures = new Figures(now, at.shop().currency(), desk.readout());
        options.show(at, now, figures);
        fit.show(at, now, figures);
        kept.show(at, now, figures, folder(state, now.job()));
        if (now.offer() instanceof Quote quote && !isHeldBack(state)) {
            tell(quote, figures);
            buildUp.show(quote, figures);
            middleCards.show(middle, "price");
            outlook.setVisible(true);
            outlook.show(at, now, quote, figures);
        } else {
            List.of(price, most, cap, left).forEach(tile -> tile.say(Words.of("none")));
            stops.show(now, state);
            middleCards.show(middle, "stops");
            outlook.setVisible(false);
            outlook.clear();
        }
    }

    private static Optional<String> folder(DeskState state, Job job) {
        return state.shop().flatMap(shop -> shop.file(job.id())).map(file -> file.folder());
    }

    private void tell(Quote quote, Figures figures) {
        price.say(figures.money(quote.price().gross()));
        most.say(figures.money(quote.range().high().gross()));
        cap.say(quote.cap().map(c -> capped(c, figures)).orElse(Words.of("tile.no-cap")));
        left.say(quote.margin().afterAll().map(figures::percent).orElse(Words.of("none")));
    }

    private static String capped(CapFit cap, Figures figures) {
        return cap.fits()
                ? Words.of("tile.spare", figures.bare(cap.spare()))
                : Words.of("tile.over", figures.bare(cap.over()));
    }

    private void tellChances(Optional<OutlookPart.Seen> seen) {
        loss.say(seen.map(s -> percent(s.outlook().lossAt(s.quote().price().net())))
                .orElse(Words.of("none")));
        ready.say(seen.flatMap(OutlookPart.Seen::finish)
                .filter(f -> f.inTime().isPresent())
                .map(f -> percent(f.inTime().getAsDouble()))
                .orElse(Words.of("none")));
    }

    private String percent(double share) {
        return new Figures(worked.orElseThrow(), site.orElseThrow().shop().currency(), desk.readout()).percent(share);
    }

    private void clear() {
        worked = Optional.empty();
        site = Optional.empty();
        remarks = List.of();
        options.clear();
        fit.clear();
        outlook.clear();
        kept.clear();
        buildUp.rows().clear();
    }

    private void turnTo(String name) {
        card = name;
        cards.show(component, name);
    }

    /** Chooses the bar that a figure stands for. */
    private void trace(What what) {
        List<Bar> bars = buildUp.rows().bars();
        for (int row = 0; row < bars.size(); row++) {
            if (bars.get(row).what() == what && isShownPrice()) {
                buildUp.choose(row);
                return;
            }
        }
    }

    private boolean isShownPrice() {
        return worked.filter(w -> w.offer() instanceof Quote).isPresent();
    }

    private void goToCap() {
        fit.field().requestFocusInWindow();
        fit.field().selectAll();
    }

    private void choose(OutlookPart.Of of) {
        if (outlook.seen().isPresent()) {
            outlook.choose(of);
        }
    }

    OptionsPart options() {
        return options;
    }

    FitPart fit() {
        return fit;
    }

    BuildUpPart buildUp() {
        return buildUp;
    }

    StopsPart stops() {
        return stops;
    }

    OutlookPart outlook() {
        return outlook;
    }

    KeptPart kept() {
        return kept;
    }

    /** Which of {@code work}, {@code empty} and {@code nothing} is in sight. */
    String shown() {
        return card;
    }
}
