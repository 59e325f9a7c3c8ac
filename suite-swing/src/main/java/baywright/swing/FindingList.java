package baywright.swing;

import baywright.swing.ShopView.FindingView;
import baywright.swing.ShopView.Grade;
import baywright.swing.ShopView.JobView;
import java.awt.Component;
import java.awt.Graphics;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;

/** What a proof found, worst first. */
final class FindingList extends JList<FindingView> {

    private static final long serialVersionUID = 1L;

    private final DefaultListModel<FindingView> model = new DefaultListModel<>();

    FindingList() {
        setModel(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Row());
    }

    void show(JobView job) {
        model.clear();
        model.addAll(job.findings());
    }

    void onChoice(Consumer<FindingView> listener) {
        addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && getSelectedValue() != null) {
                listener.accept(getSelectedValue());
            }
        });
    }

    static String word(Grade grade) {
        return Words.of("finding." + grade.name().toLowerCase(Locale.ROOT));
    }

    /** An empty list says what that means. */
    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (model.isEmpty()) {
            g.setColor(Look.colour("faint"));
            g.drawString(
                    Words.of("findings.none"),
                    getInsets().left + 12,
                    g.getFontMetrics().getHeight() + 6);
        }
    }

    private static final class Row extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            FindingView finding = (FindingView) value;
            JLabel label = (JLabel) super.getListCellRendererComponent(list, finding.text(), index, chosen, focus);
            label.setIcon(new GradeIcon(finding.grade()));
            label.setIconTextGap(10);
            label.setToolTipText(finding.text());
            label.getAccessibleContext().setAccessibleName(word(finding.grade()) + ": " + finding.text());
            return label;
        }
    }
}
