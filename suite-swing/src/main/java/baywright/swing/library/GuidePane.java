package baywright.swing.library;

import baywright.library.Family;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.ScriptCache;
import baywright.quantity.ThreePoint;
import baywright.script.Problem;
import baywright.site.FirstStage;
import baywright.site.OpenShop;
import baywright.site.Trial;
import baywright.swing.api.Desk;
import baywright.swing.api.Task;
import baywright.swing.api.TaskHandle;
import baywright.swing.api.Texts;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TonedLabel;
import baywright.swing.parts.WidePanel;
import baywright.vehicle.Shape;
import java.awt.CardLayout;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** Makes a stage from questions, a small page each; beside them its script grows. Nothing is changed on the desk before the last page. */
final class GuidePane extends JPanel {

    private static final long serialVersionUID = 1L;

    /** The pages in order. */
    enum Page {
        NAME,
        WHERE,
        TIME,
        ITEM,
        DANGER,
        STATES,
        TRIAL;

        /** What must be mended before the next page. */
        Set<FirstStage.Fault> faults() {
            return switch (this) {
                case NAME -> Set.of(FirstStage.Fault.NO_TITLE, FirstStage.Fault.BAD_ID, FirstStage.Fault.TAKEN);
                case WHERE -> Set.of(FirstStage.Fault.NO_SURFACE);
                case TIME -> Set.of(FirstStage.Fault.TIME);
                case ITEM -> Set.of(FirstStage.Fault.AMOUNT);
                case DANGER, STATES, TRIAL -> Set.of();
            };
        }
    }

    private static final List<Page> PAGES = List.of(Page.values());
    private static final int REST_MILLIS = 300;

    /** What amounts are counted by, on any vehicle. */
    private static final List<String> PER = List.of("panel", "m2", "vehicle");

    private static final List<String> RISKS =
            List.of("slip", "dust", "harmful-air", "ignition", "heat", "electricity", "noise", "blades", "lifting");

    private final transient Desk desk;
    private final transient Texts texts;
    private final transient OpenShop shop;
    private final transient ScriptCache cache;
    private final transient BiConsumer<FirstStage, String> done;
    private final transient List<Shape> shapes;

    private final CardLayout cards = new CardLayout();
    private final JPanel pages = new JPanel(cards);
    private final JLabel step = new JLabel();
    private final TonedLabel wrong = new TonedLabel(" ", "stop");
    private final JTextArea script = new JTextArea();
    private final JButton back = new JButton();
    private final JButton next = new JButton();

    private final JTextField title = new JTextField(24);
    private final JComboBox<Named> family = new JComboBox<>();
    private final transient Map<String, JCheckBox> surfaces = new LinkedHashMap<>();
    private final JTextField least = new JTextField("5", 6);
    private final JTextField likely = new JTextField("10", 6);
    private final JTextField most = new JTextField("20", 6);
    private final JComboBox<Named> timePer = new JComboBox<>();
    private final JComboBox<Named> item = new JComboBox<>();
    private final JTextField amount = new JTextField("10", 6);
    private final JLabel amountLabel = new JLabel();
    private final JComboBox<Named> usePer = new JComboBox<>();
    private final Prose danger = new Prose("");
    private final transient Map<String, JCheckBox> risks = new LinkedHashMap<>();
    private final transient Map<String, JCheckBox> needs = new LinkedHashMap<>();
    private final transient Map<String, JCheckBox> sets = new LinkedHashMap<>();
    private final JTextField confirm = new JTextField(24);
    private final JComboBox<Named> shape = new JComboBox<>();
    private final Prose outcome = new Prose("");

    /** It is tried when typing rests, as the whole library is read for it. */
    private final Timer rest = new Timer(REST_MILLIS, e -> tryIt());

    private transient Page page = Page.NAME;
    private transient Optional<FirstStage.Tried> tried = Optional.empty();
    private transient Optional<TaskHandle> trying = Optional.empty();

    /** Something to choose, shown by its words. */
    private record Named(String id, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * The first page.
     *
     * @param shop  as it is on the desk
     * @param done  gets the stage with its script, with an example, when all of it is accepted
     */
    GuidePane(Desk desk, Texts texts, OpenShop shop, ScriptCache cache, BiConsumer<FirstStage, String> done) {
        super(new MigLayout(
                "insets 16, fill, wrap 2", "[grow 55, fill, sg]16[grow 45, fill, sg]", "[][grow, fill][][]"));
        this.desk = desk;
        this.texts = texts;
        this.shop = shop;
        this.cache = cache;
        this.done = done;
        this.shapes = shop.site().workspace().shapes();
        step.putClientProperty("FlatLaf.styleClass", "h2");
        add(step, "wmin 0");
        add(new SectionHeading(texts.of("guide.script"), script), "wmin 0");
        fill();
        add(pages, "wmin 0, hmin 0");
        script.setEditable(false);
        script.putClientProperty("FlatLaf.styleClass", "monospaced");
        add(new JScrollPane(script), "wmin 0, hmin 0");
        add(wrong, "span 2, wmin 0");
        back.setText(texts.of("guide.back"));
        back.addActionListener(e -> back());
        next.addActionListener(e -> next());
        family.addActionListener(e -> changed());
        timePer.addActionListener(e -> changed());
        item.addActionListener(e -> changed());
        usePer.addActionListener(e -> changed());
        shape.addActionListener(e -> changed());
        for (JTextField field : List.of(title, least, likely, most, amount)) {
            field.getDocument().addDocumentListener(new Typed(this::changed));
        }
        confirm.getDocument().addDocumentListener(new Typed(this::changed));
        rest.setRepeats(false);
        go(Page.NAME);
    }

    // pages

    private void fill() {
        Library library = shop.site().library();
        library.families().stream()
                .sorted(Comparator.comparing(Family::title))
                .forEach(f -> family.addItem(new Named(f.id(), f.title())));
        JPanel name = page("guide.name.text", Page.NAME);
        field(name, "guide.name.title", title);
        field(name, "guide.name.family", family);
        JPanel where = page("guide.where.text", Page.WHERE);
        library.surfaces().forEach(s -> surfaces.put(s.id(), box(where, s.id() + ": " + s.means())));
        PER.forEach(per -> {
            timePer.addItem(new Named(per, texts.of("guide.per." + per)));
            usePer.addItem(new Named(per, texts.of("guide.per." + per)));
        });
        JPanel time = page("guide.time.text", Page.TIME);
        field(time, "guide.time.least", least);
        field(time, "guide.time.likely", likely);
        field(time, "guide.time.most", most);
        field(time, "guide.per", timePer);
        JPanel use = page("guide.item.text", Page.ITEM);
        item.addItem(new Named("", texts.of("guide.item.none")));
        shop.items().forEach(i -> item.addItem(new Named(i.id(), i.title())));
        field(use, "guide.item.item", item);
        amountLabel.setLabelFor(amount);
        use.add(amountLabel);
        use.add(amount, "wmin 0");
        field(use, "guide.per", usePer);
        JPanel dangers = page("guide.danger.text", Page.DANGER);
        dangers.add(danger, "span 2, growx, wmin 0");
        RISKS.forEach(risk -> risks.put(risk, box(dangers, texts.of("guide.risk." + risk))));
        JPanel states = page("guide.states.text", Page.STATES);
        states(states, "guide.states.needs", library, needs);
        states(states, "guide.states.sets", library, sets);
        JPanel trial = page("guide.trial.text", Page.TRIAL);
        field(trial, "guide.trial.confirm", confirm);
        shapes.forEach(s -> shape.addItem(new Named(s.id(), s.title())));
        field(trial, "guide.trial.shape", shape);
        trial.add(outcome, "span 2, growx, wmin 0, gaptop 8");
    }

    private JPanel page(String text, Page of) {
        WidePanel panel = new WidePanel(new MigLayout("insets 0 0 8 8, wrap 2, fillx", "[][grow, fill]", "[]8[]"));
        panel.add(new Prose(texts.of(text)), "span 2, growx, wmin 0");
        JScrollPane scroll = new JScrollPane(panel);
        scroll.setBorder(null);
        pages.add(scroll, of.name());
        return panel;
    }

    private void field(JPanel on, String key, JComponent control) {
        JLabel label = new JLabel(texts.of(key));
        label.setLabelFor(control);
        on.add(label);
        on.add(control, "wmin 0");
    }

    private JCheckBox box(JPanel on, String words) {
        JCheckBox box = new JCheckBox();
        box.putClientProperty("html.disable", true);
        box.setText(words);
        box.setToolTipText(words);
        box.addActionListener(e -> changed());
        on.add(box, "span 2, wmin 0");
        return box;
    }

    private void states(JPanel on, String key, Library library, Map<String, JCheckBox> into) {
        on.add(new SectionHeading(texts.of(key)), "span 2, gaptop 8");
        library.states().forEach(s -> into.put(s.id(), box(on, s.id() + ": " + s.means())));
    }

    // answers

    private static String chosen(JComboBox<Named> combo) {
        return combo.getSelectedItem() instanceof Named named ? named.id() : "";
    }

    private static List<String> ticked(Map<String, JCheckBox> boxes) {
        return boxes.entrySet().stream()
                .filter(box -> box.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
    }

    private Optional<Item> chosenItem() {
        return shop.items().stream().filter(i -> i.id().equals(chosen(item))).findFirst();
    }

    private boolean reached(Page other) {
        return page.compareTo(other) >= 0;
    }

    /** The stage as far as the pages have been reached. */
    FirstStage stage() {
        return new FirstStage(
                LibraryDialogs.idOf(title.getText()),
                title.getText(),
                chosen(family),
                ticked(surfaces),
                reached(Page.TIME)
                        ? Optional.of(
                                new FirstStage.Time(least.getText(), likely.getText(), most.getText(), chosen(timePer)))
                        : Optional.empty(),
                reached(Page.ITEM)
                        ? chosenItem().map(i -> new FirstStage.Use(i, amount.getText(), chosen(usePer)))
                        : Optional.empty(),
                ticked(risks),
                ticked(needs),
                ticked(sets),
                confirm.getText());
    }

    private void changed() {
        tried = Optional.empty();
        wrong.setText(" ");
        Optional<Item> used = chosenItem();
        amountLabel.setText(texts.of(
                "guide.item.amount", used.map(i -> i.pack().unit().symbol()).orElse("–")));
        amount.setEnabled(used.isPresent());
        usePer.setEnabled(used.isPresent());
        danger.setText(used.filter(i -> !i.hazards().isEmpty())
                .map(i -> texts.of("guide.danger.item", i.title(), String.join(", ", i.hazards())))
                .orElse(texts.of("guide.danger.none")));
        script.setText(stage().text());
        script.setCaretPosition(0);
        if (page == Page.TRIAL) {
            next.setEnabled(false);
            rest.restart();
        }
    }

    // moving

    private void go(Page to) {
        page = to;
        step.setText(texts.of(
                "guide.step",
                PAGES.indexOf(page) + 1,
                PAGES.size(),
                texts.of("guide.heading." + page.name().toLowerCase(Locale.ROOT))));
        back.setEnabled(page != Page.NAME);
        next.setText(texts.of(page == Page.TRIAL ? "guide.finish" : "guide.next"));
        next.setEnabled(page != Page.TRIAL);
        cards.show(pages, page.name());
        changed();
        first().requestFocusInWindow();
    }

    /** What gets the keyboard on the page. */
    JComponent first() {
        return switch (page) {
            case NAME -> title;
            case WHERE ->
                surfaces.values().stream()
                        .map(JComponent.class::cast)
                        .findFirst()
                        .orElse(next);
            case TIME -> least;
            case ITEM -> item;
            case DANGER -> risks.get(RISKS.get(0));
            case STATES ->
                needs.values().stream().map(JComponent.class::cast).findFirst().orElse(next);
            case TRIAL -> confirm;
        };
    }

    void back() {
        if (page != Page.NAME) {
            go(PAGES.get(PAGES.indexOf(page) - 1));
        }
    }

    /** To the next page, or the end, unless something on this one is wrong. */
    void next() {
        Set<FirstStage.Fault> faults = stage().faults(shop);
        Optional<FirstStage.Fault> here =
                faults.stream().filter(page.faults()::contains).findFirst();
        if (here.isPresent()) {
            wrong.setText(texts.of("guide.wrong." + here.get().name(), stage().id()));
            first().requestFocusInWindow();
        } else if (page != Page.TRIAL) {
            go(PAGES.get(PAGES.indexOf(page) + 1));
        } else {
            tried.filter(FirstStage.Tried::accepted).ifPresent(fine -> done.accept(stage(), fine.text()));
        }
    }

    // the trial

    private void tryIt() {
        Optional<Shape> on =
                shapes.stream().filter(s -> s.id().equals(chosen(shape))).findFirst();
        if (page != Page.TRIAL || on.isEmpty()) {
            return;
        }
        trying.ifPresent(TaskHandle::cancel);
        next.setEnabled(false);
        outcome.setText(texts.of("guide.trial.working"));
        FirstStage stage = stage();
        trying = Optional.of(desk.run(new Task<>(
                texts.of("guide.trial.task"),
                progress -> stage.tryOn(shop, on.get(), cache),
                this::show,
                fault -> outcome.setText(texts.of("trial.failed", String.valueOf(fault.getMessage()))))));
    }

    private void show(FirstStage.Tried result) {
        tried = Optional.of(result);
        script.setText(result.text());
        script.setCaretPosition(0);
        List<String> lines = new ArrayList<>();
        result.trial().ifPresent(trial -> lines.addAll(figures(trial)));
        for (Problem problem : result.problems()) {
            lines.add(texts.of("guide.trial.problem", problem.place().toString(), problem.message()));
        }
        lines.add(texts.of(result.accepted() ? "guide.trial.fine" : "guide.trial.not"));
        outcome.setText(String.join("\n", lines));
        next.setEnabled(result.accepted());
        revalidate();
    }

    private List<String> figures(Trial trial) {
        List<String> lines = new ArrayList<>();
        trial.step().ifPresent(work -> {
            ThreePoint minutes = work.attendedMinutes();
            lines.add(texts.of(
                    "guide.trial.time",
                    desk.readout().minutes(minutes.least()),
                    desk.readout().minutes(minutes.likely()),
                    desk.readout().minutes(minutes.most())));
            work.items()
                    .forEach((id, quantity) -> lines.add(texts.of(
                            "guide.trial.item",
                            id,
                            desk.readout().number(quantity.amount(), 1),
                            quantity.unit().symbol())));
        });
        Money cost = BigMoney.of(trial.ledger().currency(), trial.cost()).toMoney(RoundingMode.HALF_UP);
        lines.add(texts.of("guide.trial.cost", desk.readout().money(cost)));
        return lines;
    }

    // parts

    JButton backButton() {
        return back;
    }

    JButton nextButton() {
        return next;
    }

    Page page() {
        return page;
    }

    /** What is said to be wrong; blank when nothing is. */
    String wrong() {
        return wrong.getText();
    }

    String script() {
        return script.getText();
    }

    JTextField title() {
        return title;
    }

    Map<String, JCheckBox> surfaces() {
        return surfaces;
    }

    JTextField likely() {
        return likely;
    }

    Map<String, JCheckBox> sets() {
        return sets;
    }

    /** Chooses an item of the price list. */
    void choose(String id) {
        for (int i = 0; i < item.getItemCount(); i++) {
            if (item.getItemAt(i).id().equals(id)) {
                item.setSelectedIndex(i);
            }
        }
    }

    String outcome() {
        return outcome.getText();
    }
}
