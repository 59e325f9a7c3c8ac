package baywright.swing.quote;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.DeskState;
import baywright.swing.api.Destination;
import baywright.swing.api.Remark;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import baywright.swing.parts.WidePanel;
import com.formdev.flatlaf.util.UIScale;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** What stands in the way of a quote, each with a way to the step concerned. */
final class StopsPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int LINE = 16;

    private final transient Desk desk;
    private final WidePanel stops =
            new WidePanel(new MigLayout("insets 0, gap 8, wrap 3", "[][grow, fill][]", "[top]"));

    StopsPart(Desk desk) {
        super(new MigLayout("insets 8, gap 8, wrap 1", "[grow, fill]", "[][][][grow, fill]"));
        this.desk = desk;
        JButton plan = new JButton(Words.action("stops.go", () -> desk.go(new Destination("plan", Map.of()))));
        plan.putClientProperty("FlatLaf.styleClass", "primary");
        JScrollPane scroll = new JScrollPane(stops);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(LINE));
        add(new SectionHeading(Words.of("stops.heading")));
        add(new Prose(Words.of("stops.text")), "wmin 0");
        add(plan, "growx 0, left");
        add(scroll, "wmin 0, hmin 0, push");
    }

    void show(WorkedJob worked, DeskState state) {
        stops.removeAll();
        FindingText texts = new FindingText(
                worked.setting(), worked.job().plan(), desk.readout().locale());
        for (Finding finding : worked.findings()) {
            if (finding.severity() == Severity.STOP) {
                add(Words.capital(texts.of(finding)), finding.step());
            }
        }
        for (Remark remark : state.remarks()) {
            if (remark.severity() == Severity.STOP) {
                add(remark.text(), remark.step());
            }
        }
        stops.revalidate();
        stops.repaint();
    }

    private void add(String text, Optional<String> step) {
        JLabel sign = new JLabel(new SeveritySign(Severity.STOP));
        sign.getAccessibleContext().setAccessibleName(Words.of("stops.sign"));
        stops.add(sign);
        stops.add(new Prose(text), "wmin 0");
        if (step.isEmpty()) {
            stops.add(new JLabel());
            return;
        }
        JButton button = new JButton(Words.of("stops.step"));
        button.putClientProperty("JButton.buttonType", "borderless");
        button.getAccessibleContext().setAccessibleName(Words.of("stops.step-of", text));
        button.addActionListener(e -> desk.go(Destination.step(step.get())));
        stops.add(button);
    }

    int count() {
        return stops.getComponentCount() / 3;
    }
}
