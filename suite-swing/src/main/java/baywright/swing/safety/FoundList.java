package baywright.swing.safety;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.swing.api.Desk;
import baywright.swing.api.Destination;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Findings below each other, the gravest first, each with its sentence and a button to its step. */
final class FoundList extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final String none;
    private transient List<String> shown;

    /** @param none what an empty list means */
    FoundList(Desk desk, String none) {
        super(new MigLayout("insets 0, gap 8 4", "[][grow, fill]", "[top]"));
        this.desk = desk;
        this.none = none;
        setOpaque(false);
    }

    /**
     * Shows findings; the same ones again do nothing.
     *
     * @param asides lines of lesser weight below them
     */
    void show(List<Finding> findings, SafetyWords words, List<String> asides) {
        List<Finding> sorted = findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        List<String> said = new ArrayList<>(asides);
        sorted.forEach(f -> said.add(f.severity() + words.of(f)));
        if (said.equals(shown)) {
            return;
        }
        shown = said;
        removeAll();
        if (sorted.isEmpty()) {
            add(new JLabel(new FineSign()), "gaptop 3");
            add(new Prose(none), "wmin 0, span, wrap");
        }
        for (Finding finding : sorted) {
            String word = Words.of("severity." + finding.severity());
            String title = FindingText.title(finding.code(), desk.readout().locale());
            JLabel sign = new JLabel(new SeveritySign(finding.severity()));
            sign.setToolTipText(word);
            sign.getAccessibleContext().setAccessibleName(word);
            add(sign, "gaptop 3");
            JPanel told = new JPanel(new MigLayout("insets 0, wrap 1, gap 0 1", "[grow, fill]"));
            told.setOpaque(false);
            JLabel heading = new JLabel(Words.of("found.heading", word, title));
            heading.putClientProperty("FlatLaf.styleClass", "h4");
            told.add(heading, "wmin 0");
            told.add(new Prose(words.of(finding)), "wmin 0");
            finding.step().ifPresent(step -> {
                JButton go = new JButton(Words.of("found.step"));
                go.putClientProperty("JButton.buttonType", "borderless");
                go.getAccessibleContext().setAccessibleName(Words.of("found.step.name", words.step(step)));
                go.addActionListener(e -> desk.go(Destination.step(step)));
                told.add(go, "growx 0, left");
            });
            add(told, "wmin 0, wrap");
        }
        asides.forEach(aside -> add(new Prose(aside), "wmin 0, skip 1, span, wrap"));
        revalidate();
        repaint();
    }

    /** What is shown. */
    List<String> shown() {
        return shown == null ? List.of() : shown;
    }
}
