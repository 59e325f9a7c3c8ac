package baywright.swing.shell;

import baywright.swing.api.DeskState;
import baywright.swing.api.Texts;
import baywright.swing.parts.TonedLabel;
import baywright.workspace.Job;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The bar on top: whose shop, which job, what can be taken back, and whether everything is saved. */
final class TopBar extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts = Texts.beside(TopBar.class, "texts");
    private final JLabel shop = new JLabel();
    private final JLabel jobLabel = new JLabel();
    private final JComboBox<Row> jobs = new JComboBox<>();
    private final TonedLabel saved = new TonedLabel("", "faint");
    private transient List<Job> shown = List.of();
    private boolean filling;

    /** A job in the list. */
    private record Row(String id, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    /**
     * An empty bar.
     *
     * @param choose gets the id of the job that the user wants
     * @param field  what the user types wishes into
     */
    TopBar(Consumer<String> choose, JComponent field, Action undo, Action redo, Action save) {
        super(new MigLayout(
                "insets 6 16 6 12, hidemode 2", "[]unrel[]rel[120:240:300]unrel[grow, fill]unrel[]0[]unrel[]rel[]"));
        shop.putClientProperty("html.disable", true);
        shop.putClientProperty("FlatLaf.styleClass", "h3");
        jobLabel.setText(texts.of("bar.job"));
        jobLabel.setDisplayedMnemonic(texts.of("bar.job.key").charAt(0));
        jobLabel.setLabelFor(jobs);
        jobs.setRenderer(new Renderer());
        jobs.addActionListener(e -> {
            if (!filling && jobs.getSelectedItem() instanceof Row row) {
                choose.accept(row.id());
            }
        });
        add(shop, "wmin 0, wmax 260");
        add(jobLabel);
        add(jobs, "growx, wmin 0");
        add(field, "wmin 80, wmax 420");
        add(button(undo));
        add(button(redo));
        add(saved);
        add(button(save));
        show(DeskState.EMPTY);
    }

    private static JButton button(Action action) {
        JButton button = new JButton(action);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.putClientProperty("html.disable", true);
        button.setFocusable(true);
        return button;
    }

    void show(DeskState state) {
        shop.setText(state.shop().map(open -> open.shop().name()).orElse(texts.of("bar.none")));
        List<Job> now = state.shop().map(open -> open.jobs()).orElse(List.of());
        boolean any = !now.isEmpty();
        jobLabel.setVisible(any);
        jobs.setVisible(any);
        filling = true;
        try {
            if (!sameTitles(now)) {
                jobs.setModel(new DefaultComboBoxModel<>(
                        now.stream().map(job -> new Row(job.id(), job.title())).toArray(Row[]::new)));
            }
            shown = now;
            select(state.jobId());
        } finally {
            filling = false;
        }
        saved.setVisible(state.shop().isPresent());
        saved.setText(texts.of(state.unsaved() ? "bar.unsaved" : "bar.saved"));
    }

    private boolean sameTitles(List<Job> now) {
        boolean same = now.size() == shown.size();
        for (int i = 0; same && i < now.size(); i++) {
            same = now.get(i).id().equals(shown.get(i).id())
                    && now.get(i).title().equals(shown.get(i).title());
        }
        return same;
    }

    private void select(Optional<String> id) {
        for (int i = 0; i < jobs.getItemCount(); i++) {
            if (id.equals(Optional.of(jobs.getItemAt(i).id()))) {
                if (jobs.getSelectedIndex() != i) {
                    jobs.setSelectedIndex(i);
                }
                return;
            }
        }
        jobs.setSelectedIndex(-1);
    }

    private static final class Renderer extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            return super.getListCellRendererComponent(list, value, index, chosen, focus);
        }
    }
}
