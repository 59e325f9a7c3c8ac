package baywright.swing.shell;

import baywright.swing.api.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** What is being worked at and lasts: how far it is, and a button to end it. Work that is soon done is not shown. */
final class TaskLine extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int SHOWN_AFTER_MILLIS = 300;
    private static final int PARTS = 1000;

    private final transient Texts texts = Texts.beside(TaskLine.class, "texts");
    private final transient Map<RunningTask, Row> rows = new LinkedHashMap<>();
    private transient List<RunningTask> running = List.of();
    private final Timer later = new Timer(SHOWN_AFTER_MILLIS, e -> rebuild());

    TaskLine() {
        super(new MigLayout("insets 0, wrap 1, gap 0", "[grow, fill]"));
        getAccessibleContext().setAccessibleName(texts.of("tasks.name"));
        later.setRepeats(false);
        setVisible(false);
    }

    void show(List<RunningTask> tasks) {
        running = tasks;
        rebuild();
    }

    private void rebuild() {
        List<RunningTask> shown = new ArrayList<>();
        boolean waiting = false;
        for (RunningTask task : running) {
            boolean due = task.nanosSoFar() >= SHOWN_AFTER_MILLIS * 1_000_000L;
            waiting |= !due;
            if (due && !task.cancelled()) {
                shown.add(task);
            }
        }
        if (waiting) {
            later.restart();
        }
        if (!List.copyOf(rows.keySet()).equals(shown)) {
            rows.keySet().retainAll(shown);
            removeAll();
            for (RunningTask task : shown) {
                add(rows.computeIfAbsent(task, Row::new));
            }
            setVisible(!shown.isEmpty());
            revalidate();
        }
        rows.forEach((task, row) -> row.show(task));
        repaint();
    }

    private final class Row extends JPanel {

        private static final long serialVersionUID = 1L;

        private final JLabel title = new JLabel();
        private final JProgressBar bar = new JProgressBar(0, PARTS);

        Row(RunningTask task) {
            super(new MigLayout("insets 4 16 4 8", "[grow, fill]unrel[160!]rel[]"));
            title.putClientProperty("html.disable", true);
            title.setLabelFor(bar);
            JButton cancel = new JButton(texts.of("tasks.cancel"));
            cancel.getAccessibleContext().setAccessibleName(texts.of("tasks.cancel.name", task.title()));
            cancel.addActionListener(e -> task.cancel());
            add(title, "wmin 0");
            add(bar);
            add(cancel);
        }

        void show(RunningTask task) {
            title.setText(task.text().isEmpty() ? task.title() : task.title() + " – " + task.text());
            bar.setIndeterminate(task.share() < 0);
            bar.setValue((int) (task.share() * PARTS));
            bar.getAccessibleContext().setAccessibleName(title.getText());
        }
    }
}
