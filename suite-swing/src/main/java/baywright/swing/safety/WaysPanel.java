package baywright.swing.safety;

import baywright.plan.Severity;
import baywright.safety.SafetyReason;
import baywright.swing.api.Desk;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Ways to bring an exposure below its limit: share it, spread it over days, change the tool. Each button is one change. */
final class WaysPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient SafetyEdits edits;
    private final transient List<JButton> buttons = new ArrayList<>();
    private transient List<String> shown;
    private transient Job of;

    WaysPanel(Desk desk, SafetyEdits edits) {
        super(new MigLayout("insets 0, gap 8 6", "[sg, fill][grow, fill]", "[top]"));
        this.desk = desk;
        this.edits = edits;
        setOpaque(false);
    }

    /** Shows the ways that were found; the same ones again do nothing. */
    void show(SafetyFigures figures) {
        SafetyWords words = new SafetyWords(figures.worked(), desk.readout());
        List<String> said = new ArrayList<>();
        figures.ways().forEach(way -> said.add(words.of(way.remedy()) + words.gives(way.after())));
        boolean over = figures.worked().safety().findings().stream()
                .anyMatch(f -> f.severity() == Severity.STOP && f.reason() instanceof SafetyReason.Dose);
        said.add(over ? "ways.none" : "ways.needless");
        Job job = figures.worked().job();
        if (said.equals(shown) && job.plan().equals(of.plan()) && job.safety().equals(of.safety())) {
            return;
        }
        shown = said;
        of = job;
        removeAll();
        buttons.clear();
        for (SafetyFigures.Way way : figures.ways()) {
            String text = words.of(way.remedy());
            JButton button = new JButton(words.verb(way.remedy()));
            button.getAccessibleContext().setAccessibleName(button.getText() + ": " + text);
            button.addActionListener(e -> edits.apply(text, way.remedy(), job));
            buttons.add(button);
            add(button);
            JPanel told = new JPanel(new MigLayout("insets 3 0 0 0, wrap 1, gap 0 1", "[grow, fill]"));
            told.setOpaque(false);
            told.add(new Prose(text), "wmin 0");
            told.add(new Prose(words.gives(way.after())), "wmin 0");
            add(told, "wmin 0, wrap");
        }
        if (figures.ways().isEmpty()) {
            add(new JLabel(over ? new SeveritySign(Severity.STOP) : new FineSign()), "growx 0, split 2, span");
            add(new Prose(Words.of(over ? "ways.none" : "ways.needless")), "wmin 0, growx, wrap");
        }
        revalidate();
        repaint();
    }

    List<JButton> buttons() {
        return buttons;
    }

    /** What is shown, way by way. */
    List<String> shown() {
        return shown == null ? List.of() : shown;
    }
}
