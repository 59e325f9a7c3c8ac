package baywright.swing.start;

import baywright.plan.Severity;
import baywright.swing.api.Colours;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.SeveritySign;
import java.awt.Color;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The jobs of a shop, each with how its proof ended. */
final class JobList extends JList<JobView> {

    private static final long serialVersionUID = 1L;

    private final DefaultListModel<JobView> model = new DefaultListModel<>();

    JobList() {
        setModel(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Row());
        getAccessibleContext().setAccessibleName(Words.of("jobs.name"));
    }

    /** Long texts are cut, never scrolled to. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    void show(List<JobView> jobs) {
        model.clear();
        model.addAll(jobs);
    }

    /** How the proof of a job ended, in words. */
    static String verdict(JobView job) {
        if (job.waiting()) {
            return job.trouble();
        }
        if (!job.trouble().isEmpty()) {
            return Words.of("job.unreadable");
        }
        List<String> parts = new ArrayList<>();
        if (job.count(Severity.STOP) > 0) {
            parts.add(Words.of("job.stops", job.count(Severity.STOP)));
        } else {
            parts.add(Words.of("job.holds"));
        }
        if (job.count(Severity.WARN) > 0) {
            parts.add(Words.of("job.warns", job.count(Severity.WARN)));
        }
        return String.join(" · ", parts);
    }

    private static Icon mark(JobView job) {
        if (job.waiting()) {
            return null;
        }
        if (!job.trouble().isEmpty() || job.count(Severity.STOP) > 0) {
            return new SeveritySign(Severity.STOP);
        }
        return job.count(Severity.WARN) > 0 ? new SeveritySign(Severity.WARN) : new FineSign();
    }

    private static final class Row extends JPanel implements ListCellRenderer<JobView> {

        private static final long serialVersionUID = 1L;

        private final JLabel title = plain();
        private final JLabel about = plain();
        private final JLabel verdict = new JLabel();

        Row() {
            super(new MigLayout("insets 9 14 9 14, wrap 1", "[grow, fill]", "[]1[]3[]"));
            title.putClientProperty("FlatLaf.styleClass", "h4");
            add(title, "wmin 0");
            add(about, "wmin 0");
            add(verdict, "wmin 0");
        }

        private static JLabel plain() {
            JLabel label = new JLabel();
            label.putClientProperty("html.disable", true);
            return label;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends JobView> list, JobView job, int index, boolean chosen, boolean focus) {
            Color ink = chosen ? list.getSelectionForeground() : list.getForeground();
            setBackground(chosen ? list.getSelectionBackground() : list.getBackground());
            title.setText(job.title());
            title.setForeground(ink);
            about.setText(job.about());
            about.setForeground(chosen ? ink : Colours.of("faint"));
            verdict.setText(verdict(job));
            verdict.setIcon(mark(job));
            verdict.setForeground(ink);
            setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, Colours.of("line")));
            getAccessibleContext().setAccessibleName(job.title() + ", " + job.about() + ", " + verdict(job));
            return this;
        }

        /** A renderer lives outside the window and hears of a new look only here. */
        @Override
        public void updateUI() {
            super.updateUI();
            for (Component part : getComponents()) {
                ((JLabel) part).updateUI();
            }
        }
    }
}
