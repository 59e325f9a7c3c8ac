package baywright.swing.quote;

import baywright.money.Quote;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.site.FittedJob;
import baywright.site.FittedJob.Fate;
import baywright.site.FittedJob.Fit;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.TonedLabel;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.Action;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** What of the plan fits under a cap that is typed or slid: looked for anew with each change, ways to choose from, reasons step by step. */
final class FitPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int PAUSE_MILLIS = 200;
    private static final int WAYS = 4;
    private static final int FATES = 7;
    private static final int UNKNOWN = 1000;

    private final transient Desk desk;
    private final transient Latest latest;
    private final JTextField field = new JTextField(8);
    private final JLabel currency = new JLabel();
    private final JSlider slider = new JSlider();
    private final JCheckBox firm = new JCheckBox(Words.of("fit.firm"));
    private final Prose verdict = new Prose("");
    private final JLabel sign = new JLabel();
    private final JList<Fit> ways = new JList<>();
    private final Prose way = new Prose("");
    private final JButton take;
    private final JList<Fate> fates = new JList<>();
    private final JScrollPane wayScroll = new JScrollPane(ways);
    private final JScrollPane fateScroll = new JScrollPane(fates);
    private final TonedLabel fateHeading = new TonedLabel(Words.of("fit.fates"), "faint");
    private final Prose fate = new Prose("");
    private final Timer pause = new Timer(PAUSE_MILLIS, e -> fit());
    private transient Site site;
    private transient WorkedJob worked;
    private transient Figures figures;
    private transient Optional<FittedJob> fitted = Optional.empty();
    private boolean setting;

    FitPart(Desk desk) {
        super(new MigLayout("insets 8, gap 4, wrap 2, hidemode 3", "[][grow, fill]", ""));
        this.desk = desk;
        latest = new Latest(desk);
        pause.setRepeats(false);
        Action taking = Words.action("fit.take", this::take);
        take = new JButton(taking);
        JLabel name = new JLabel(Words.of("fit.cap"));
        name.setLabelFor(field);
        slider.getAccessibleContext().setAccessibleName(Words.of("fit.slider"));
        field.getDocument().addDocumentListener(new Typing());
        field.addActionListener(e -> fit());
        slider.addChangeListener(e -> slid());
        firm.addActionListener(e -> fit());
        ways.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        ways.setCellRenderer(new WayCell());
        ways.getAccessibleContext().setAccessibleName(Words.of("fit.ways"));
        ways.addListSelectionListener(e -> tellWay());
        ways.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "take");
        ways.getActionMap().put("take", taking);
        fates.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        fates.setCellRenderer(new FateCell());
        fates.addListSelectionListener(e -> tellFate());
        fates.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        fates.getActionMap().put("go", Words.action("fit.fates", this::goToStep));
        fateHeading.setLabelFor(fates);
        fates.getAccessibleContext().setAccessibleName(Words.of("fit.fates"));
        add(new SectionHeading(Words.of("fit.heading")), "span");
        add(name);
        add(field, "split 2, growx 0");
        add(currency);
        add(slider, "span, growx, wmin 40");
        add(firm, "span, wmin 0");
        add(sign, "top");
        add(verdict, "wmin 0");
        wayScroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        fateScroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(wayScroll, "span, growx, wmin 0");
        add(way, "span, growx, wmin 0");
        add(take, "span, growx 0, left");
        add(fateHeading, "span");
        add(fateScroll, "span, growx, wmin 0");
        add(fate, "span, growx, wmin 0");
        show(Optional.empty());
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            typed();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            typed();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {}
    }

    /** Shows a job; another one begins with its own cap, the same one keeps what was typed. */
    void show(Site at, WorkedJob now, Figures written) {
        boolean other = worked == null || !worked.job().id().equals(now.job().id());
        site = at;
        worked = now;
        figures = written;
        currency.setText(written.currency().getCode());
        setting = true;
        BigDecimal most = now.offer() instanceof Quote quote
                ? quote.range().high().gross().getAmount()
                : now.job().cap().orElse(BigDecimal.valueOf(UNKNOWN));
        BigDecimal begin = now.job().cap().orElse(most);
        slider.setMaximum(Math.max(
                1,
                most.max(begin)
                        .multiply(new BigDecimal("1.2"))
                        .setScale(0, RoundingMode.CEILING)
                        .intValue()));
        if (other || cap().isEmpty()) {
            field.setText(figures.bare(begin));
        }
        cap().ifPresent(cap ->
                slider.setValue(cap.setScale(0, RoundingMode.HALF_UP).intValue()));
        setting = false;
        fit();
    }

    void clear() {
        latest.cancel();
        pause.stop();
        worked = null;
        show(Optional.empty());
    }

    private Optional<BigDecimal> cap() {
        return CapEntry.read(
                field.getText(), desk.readout().locale(), figures.currency().getDecimalPlaces());
    }

    private void typed() {
        if (!setting && worked != null) {
            setting = true;
            cap().ifPresent(cap -> slider.setValue(
                    cap.min(BigDecimal.valueOf(slider.getMaximum())).intValue()));
            setting = false;
            pause.restart();
        }
    }

    private void slid() {
        if (!setting && worked != null) {
            setting = true;
            field.setText(figures.bare(BigDecimal.valueOf(slider.getValue())));
            setting = false;
            pause.restart();
        }
    }

    /** Looks for what fits; a search for an older cap or plan is called off. */
    private void fit() {
        pause.stop();
        if (worked == null) {
            return;
        }
        Optional<BigDecimal> cap = cap();
        if (cap.isEmpty()) {
            latest.cancel();
            show(Optional.empty());
            sign.setIcon(new SeveritySign(Severity.STOP));
            verdict.setText(Words.of(
                    "fit.bad", field.getText().strip(), figures.currency().getDecimalPlaces()));
            return;
        }
        Site at = site;
        WorkedJob of = worked;
        boolean firmOnly = firm.isSelected();
        verdict.setText(Words.of("fit.looking"));
        sign.setIcon(null);
        latest.run(
                Words.of("fit.task"),
                progress -> at.fit(of.job(), cap.get(), firmOnly, progress::cancelled),
                found -> show(Optional.of(found)),
                () -> verdict.setText(Words.of("fit.stopped")));
    }

    private void show(Optional<FittedJob> now) {
        fitted = now;
        List<Fit> fits = now.map(FittedJob::fits).orElse(List.of());
        List<Fate> all = now.map(FittedJob::fates).orElse(List.of());
        ways.setListData(fits.toArray(new Fit[0]));
        ways.setVisibleRowCount(Math.max(1, Math.min(WAYS, fits.size())));
        fates.setListData(all.toArray(new Fate[0]));
        fates.setVisibleRowCount(Math.max(1, Math.min(FATES, all.size())));
        wayScroll.setVisible(!fits.isEmpty());
        way.setVisible(!fits.isEmpty());
        take.setVisible(!fits.isEmpty());
        fateHeading.setVisible(!all.isEmpty());
        fateScroll.setVisible(!all.isEmpty());
        if (!fits.isEmpty()) {
            ways.setSelectedIndex(0);
        }
        now.ifPresent(this::tell);
        if (now.isEmpty()) {
            verdict.setText("");
            sign.setIcon(null);
        }
        tellWay();
        tellFate();
        revalidate();
    }

    private void tell(FittedJob found) {
        sign.setIcon(found.fits().isEmpty() ? new SeveritySign(Severity.STOP) : new FineSign());
        String proof = Words.of(found.proved() ? "fit.proved" : "fit.open");
        if (!found.fits().isEmpty()) {
            boolean all = found.fits().get(0).out().isEmpty();
            verdict.setText(Words.of(all ? "fit.all" : "fit.some", proof));
            return;
        }
        String least = found.smallest().map(figures::money).orElse("");
        String key = (found.proved() ? "fit.cannot" : "fit.none-found") + (least.isEmpty() ? "" : ".below");
        verdict.setText(Words.of(key, least));
    }

    private void tellWay() {
        Fit fit = ways.getSelectedValue();
        take.setEnabled(fit != null && !fit.out().isEmpty());
        way.setText(fit == null ? "" : described(fit));
    }

    private String described(Fit fit) {
        if (fit.out().isEmpty()) {
            return Words.of("fit.everything");
        }
        FittedJob found = fitted.orElseThrow();
        String out = figures.steps(fit.out());
        if (ways.getSelectedIndex() == 0) {
            return Words.of("fit.way.best", out);
        }
        List<Step> back = found.keptBesides(fit);
        List<Step> gone = found.goneBesides(fit);
        return Words.of(
                gone.isEmpty() ? "fit.way.with" : "fit.way.instead", figures.steps(back), figures.steps(gone), out);
    }

    private void tellFate() {
        Fate chosen = fates.getSelectedValue();
        fate.setText(chosen == null ? "" : why(chosen));
    }

    private String why(Fate chosen) {
        FindingText sentences = new FindingText(
                worked.setting(), worked.job().plan(), desk.readout().locale());
        if (chosen.stays()) {
            return chosen.stops().isEmpty()
                    ? Words.of("fate.stays.why", figures.step(chosen.step()), figures.money(chosen.worth()))
                    : Words.of("fate.needed", figures.step(chosen.step()), stopped(chosen, sentences));
        }
        String reason = chosen.asked()
                .map(asked -> Words.of("fate.dear", figures.step(chosen.step()), figures.money(asked)))
                .orElseGet(() -> Words.of(
                        "fate.lost",
                        figures.step(chosen.step()),
                        sentences.of(chosen.stops().get(0))));
        boolean proved = fitted.orElseThrow().proved();
        String having = chosen.having()
                .map(number -> Words.of("fate.having", number))
                .orElseGet(() -> Words.of(proved ? "fate.no-way" : "fate.no-way-found"));
        return Words.of("two-sentences", reason, having);
    }

    /** The steps that would be stopped; the sentence where no step is. */
    private String stopped(Fate chosen, FindingText sentences) {
        Set<String> ids = new TreeSet<>();
        chosen.stops().forEach(stop -> stop.step().ifPresent(ids::add));
        List<Step> steps = worked.job().plan().steps().stream()
                .filter(step -> ids.contains(step.id()))
                .toList();
        return steps.isEmpty() ? sentences.of(chosen.stops().get(0)) : figures.steps(steps);
    }

    private void take() {
        Fit fit = ways.getSelectedValue();
        if (fit != null && take.isEnabled()) {
            FittedJob found = fitted.orElseThrow();
            PlanTaking.take(
                    desk,
                    Words.of("change.fit", figures.money(found.cap())),
                    found.job(),
                    fit.worked().job().plan());
        }
    }

    private void goToStep() {
        Fate chosen = fates.getSelectedValue();
        if (chosen != null) {
            desk.go(Destination.step(chosen.step().id()));
        }
    }

    JTextField field() {
        return field;
    }

    JSlider slider() {
        return slider;
    }

    JCheckBox firm() {
        return firm;
    }

    JList<Fit> ways() {
        return ways;
    }

    JList<Fate> fates() {
        return fates;
    }

    JButton taking() {
        return take;
    }

    Optional<FittedJob> fitted() {
        return fitted;
    }

    /** The sentence about the search, and about the chosen way and step. */
    List<String> told() {
        return List.of(verdict.getText(), way.getText(), fate.getText());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(UNKNOWN / 8), super.getMinimumSize().height);
    }

    private final class WayCell extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            Fit fit = (Fit) value;
            String text = Words.of(
                    "fit.way",
                    index + 1,
                    figures.bare(fit.quote().price().gross()),
                    figures.bare(fit.quote().range().high().gross()),
                    figures.bare(fitted.orElseThrow().left(fit)));
            return super.getListCellRendererComponent(list, text, index, chosen, focus);
        }
    }

    private final class FateCell extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            Fate of = (Fate) value;
            String key = of.stays() ? "fate.stays" : of.having().isPresent() ? "fate.out.way" : "fate.out";
            return super.getListCellRendererComponent(
                    list, Words.of(key, figures.step(of.step()), of.having().orElse(0)), index, chosen, focus);
        }
    }
}
