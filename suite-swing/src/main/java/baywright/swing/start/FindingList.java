package baywright.swing.start;

import baywright.plan.Severity;
import baywright.swing.api.Colours;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import baywright.swing.start.JobView.FindingView;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.text.View;
import net.miginfocom.swing.MigLayout;

/** What a proof found, worst first. */
final class FindingList extends JList<FindingView> {

    private static final long serialVersionUID = 1L;

    private final DefaultListModel<FindingView> model = new DefaultListModel<>();

    FindingList() {
        setModel(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Row());
        addComponentListener(new ComponentAdapter() {
            /** Sentences wrap anew: a list forgets the heights of its rows when it is given a fixed one. */
            @Override
            public void componentResized(ComponentEvent e) {
                setFixedCellHeight(1);
                setFixedCellHeight(-1);
            }
        });
    }

    /** Long texts are cut, never scrolled to. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
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

    static String word(Severity severity) {
        return Words.of("finding." + severity.name().toLowerCase(Locale.ROOT));
    }

    /** An empty list says what that means. */
    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (model.isEmpty()) {
            g.setColor(Colours.of("faint"));
            g.drawString(
                    Words.of("findings.none"),
                    getInsets().left + 12,
                    g.getFontMetrics().getHeight() + 6);
        }
    }

    /** A sentence that wraps beside the mark of its grade. */
    private static final class Row extends JPanel implements ListCellRenderer<FindingView> {

        private static final long serialVersionUID = 1L;

        private final JLabel mark = new JLabel();
        private final Prose text = new Prose("");
        private int width;

        Row() {
            super(new MigLayout("insets 5 12 5 12", "[]unrel[grow, fill]", "[top]"));
            add(mark);
            add(text, "wmin 0");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends FindingView> list, FindingView finding, int index, boolean chosen, boolean focus) {
            setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
            text.setForeground(chosen ? list.getSelectionForeground() : list.getForeground());
            mark.setIcon(new SeveritySign(finding.severity()));
            text.setText(finding.text());
            width = list.getWidth();
            getAccessibleContext().setAccessibleName(word(finding.severity()) + ": " + finding.text());
            return this;
        }

        /** As high as this sentence wrapped at the list's width, whatever the row before was. */
        @Override
        public Dimension getPreferredSize() {
            View lines = text.getUI().getRootView(text);
            lines.setSize(Math.max(UIScale.scale(200), width - UIScale.scale(56)), Short.MAX_VALUE);
            int sentence = (int) Math.ceil(lines.getPreferredSpan(View.Y_AXIS));
            return new Dimension(width, Math.max(sentence, mark.getPreferredSize().height) + 2 * UIScale.scale(5));
        }

        /** A renderer lives outside the window and hears of a new look only here. */
        @Override
        public void updateUI() {
            super.updateUI();
            if (text != null) {
                text.updateUI();
                mark.updateUI();
            }
        }
    }
}
