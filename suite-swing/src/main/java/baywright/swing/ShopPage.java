package baywright.swing;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** An open workspace: its jobs on the left, the chosen one on the right. */
final class ShopPage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JobList jobs = new JobList();
    private final JobPage job = new JobPage();
    private final JTextArea hint = StartPage.sentence("");
    private final CardLayout cards = new CardLayout();
    private final JPanel right = new JPanel(cards);

    ShopPage() {
        super(new BorderLayout());
        JPanel hinted = new JPanel(new MigLayout("fill"));
        hinted.add(hint, "center, wmin 0");
        right.add(hinted, "hint");
        right.add(job, "job");
        JScrollPane scroll = new JScrollPane(jobs);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, scroll, right);
        split.setDividerLocation(UIScale.scale(290));
        split.setBorder(null);
        add(split);
        jobs.addListSelectionListener(e -> showChosen());
    }

    void show(ShopView shop) {
        jobs.show(shop.jobs());
        hint.setText(Words.of(shop.jobs().isEmpty() ? "jobs.none" : "jobs.choose"));
        showChosen();
        if (!shop.jobs().isEmpty()) {
            jobs.setSelectedIndex(0);
            jobs.requestFocusInWindow();
        }
    }

    JobList jobs() {
        return jobs;
    }

    JobPage job() {
        return job;
    }

    private void showChosen() {
        ShopView.JobView chosen = jobs.getSelectedValue();
        if (chosen == null) {
            cards.show(right, "hint");
        } else if (!chosen.trouble().isEmpty()) {
            hint.setText(chosen.trouble());
            cards.show(right, "hint");
        } else {
            job.show(chosen);
            cards.show(right, "job");
        }
    }
}
