package baywright.swing.start;

import baywright.swing.start.JobView.FindingView;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;

/** One job: figures above, steps and what was found below. Choosing a finding shows its step. */
final class JobPage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JLabel title = new JLabel();
    private final JLabel about = new JLabel();
    private final FiguresPanel figures = new FiguresPanel();
    private final StepTable steps = new StepTable();
    private final FindingList findings = new FindingList();

    JobPage() {
        super(new MigLayout("insets 14 16 12 16, wrap 1", "[grow, fill]", "[]2[]unrel[]unrel[grow, fill]"));
        title.putClientProperty("FlatLaf.styleClass", "h1");
        add(title, "wmin 0");
        add(about, "wmin 0");
        add(figures, "wmin 0");
        JSplitPane split = new JSplitPane(
                JSplitPane.VERTICAL_SPLIT, titled("steps.name", steps), titled("findings.name", findings));
        split.setResizeWeight(0.62);
        split.setBorder(null);
        add(split, "hmin 0, wmin 0");
        findings.onChoice(finding -> steps.reveal(finding.step()));
    }

    void show(JobView job) {
        title.setText(job.title());
        about.setText(job.about());
        figures.show(job.figures());
        figures.setVisible(!job.figures().isEmpty());
        steps.show(job);
        findings.show(job);
    }

    /** Chooses a finding as a click on it would. */
    void choose(FindingView finding) {
        findings.setSelectedValue(finding, true);
    }

    String chosenStep() {
        return steps.chosen();
    }

    private static JComponent titled(String key, JComponent content) {
        content.getAccessibleContext().setAccessibleName(Words.of(key));
        JLabel label = new JLabel(Words.of(key));
        label.putClientProperty("FlatLaf.styleClass", "h3");
        label.setLabelFor(content);
        JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1", "[grow, fill]", "[]rel[grow, fill]"));
        JScrollPane scroll = new JScrollPane(content);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        panel.add(label);
        panel.add(scroll, "hmin 0, wmin 0");
        return panel;
    }
}
