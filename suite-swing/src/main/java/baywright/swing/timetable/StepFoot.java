package baywright.swing.timetable;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.swing.api.Desk;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.StartField;
import baywright.swing.parts.WidePanel;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** The chosen bar in words, the start of its step, and what another start does to the plan. */
final class StepFoot extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int MOST = 6;

    private final transient Desk desk;
    private final Prose says = new Prose("");
    private final StartField start;
    private final JButton go = new JButton(TimetableWorkbench.TEXTS.of("go"));
    private final JPanel checks = new WidePanel(new MigLayout("insets 0, gap 6 2, wrap 2", "[][grow, fill]"));
    private transient Optional<Entry> shown = Optional.empty();
    private String checked = "";

    /** {@code fix} gets another start of the shown step, {@code goes} its place is asked for. */
    StepFoot(Desk desk, BiConsumer<Entry, Optional<LocalDateTime>> fix, Consumer<Entry> goes) {
        super(new MigLayout("insets 8, gap 12 4, hidemode 3", "[grow, fill][][]", "[]4[56:56:56]"));
        this.desk = desk;
        start = new StartField(
                desk.readout().locale(),
                TimetableWorkbench.TEXTS.of("start.fix"),
                TimetableWorkbench.TEXTS.of("start.at"),
                at -> shown.ifPresent(entry -> fix.accept(entry, at)));
        go.addActionListener(e -> shown.ifPresent(goes));
        JScrollPane scroll = new JScrollPane(checks);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        checks.getAccessibleContext().setAccessibleName(TimetableWorkbench.TEXTS.of("checks"));
        add(says, "wmin 0");
        add(start);
        add(go, "wrap");
        add(scroll, "span, grow, wmin 0");
        show(Optional.empty(), Optional.empty(), "");
    }

    /**
     * Shows a bar, or how to choose one.
     *
     * @param at    the start that the plan fixes
     * @param words of the bar in full
     */
    void show(Optional<Entry> entry, Optional<LocalDateTime> at, String words) {
        boolean other = !entry.map(StepFoot::step).equals(shown.map(StepFoot::step));
        shown = entry;
        says.setText(entry.isPresent() ? words : TimetableWorkbench.TEXTS.of("choose"));
        boolean work = entry.filter(e -> e.doing() == Doing.WORK).isPresent();
        start.setVisible(work);
        go.setVisible(entry.isPresent());
        entry.ifPresent(e -> start.show(at, e.from()));
        if (other) {
            clear();
        }
        revalidate();
    }

    private static String step(Entry entry) {
        return entry.job() + " " + entry.step();
    }

    /** Takes away what was said of a start. */
    void clear() {
        checks.removeAll();
        checked = "";
        checks.revalidate();
        checks.repaint();
    }

    /** Says what another start does to the plan. */
    void show(StartChecks.Answer answer) {
        checks.removeAll();
        StringBuilder all = new StringBuilder();
        Optional<LocalDateTime> at = answer.wish().at();
        String head = at.isPresent()
                ? TimetableWorkbench.TEXTS.of(
                        answer.trial().gained().isEmpty() ? "check.fine" : "check.breaks",
                        desk.readout().moment(at.get()),
                        answer.trial().gained().size())
                : TimetableWorkbench.TEXTS.of(
                        answer.trial().gained().isEmpty() ? "check.free" : "check.free.breaks",
                        answer.trial().gained().size());
        line(all, answer.trial().gained().isEmpty() ? Optional.of(new FineSign()) : Optional.empty(), head);
        FindingText texts = new FindingText(
                answer.trial().judged().setting(),
                answer.trial().judged().job().plan(),
                desk.readout().locale());
        for (Finding finding : answer.trial().gained().stream().limit(MOST).toList()) {
            line(all, Optional.of(new SeveritySign(finding.severity())), severity(finding) + texts.of(finding));
        }
        if (!answer.trial().gone().isEmpty()) {
            line(
                    all,
                    Optional.empty(),
                    TimetableWorkbench.TEXTS.of(
                            "check.gone", answer.trial().gone().size()));
        }
        checked = all.toString();
        checks.revalidate();
        checks.repaint();
    }

    private static String severity(Finding finding) {
        return TimetableWorkbench.TEXTS.of("severity." + finding.severity().name()) + ": ";
    }

    private void line(StringBuilder all, Optional<? extends Icon> sign, String text) {
        JLabel label = new JLabel();
        sign.ifPresent(label::setIcon);
        checks.add(label, "top");
        checks.add(new Prose(text), "wmin 0");
        all.append(text).append('\n');
    }

    /** What is said of a start. */
    String checked() {
        return checked;
    }

    String says() {
        return says.getText();
    }

    StartField start() {
        return start;
    }
}
