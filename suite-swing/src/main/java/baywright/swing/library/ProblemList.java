package baywright.swing.library;

import baywright.plan.Severity;
import baywright.script.Problem;
import baywright.swing.api.Texts;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.SeveritySign;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** What is wrong with the scripts; Enter goes there. */
final class ProblemList extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int ROWS = 4;

    private final transient Texts texts;
    private final DefaultListModel<Problem> model = new DefaultListModel<>();
    private final JList<Problem> list = new JList<>(model);
    private final SectionHeading heading = new SectionHeading("");
    private final JButton mend;
    private transient List<Problem> shown = List.of();

    ProblemList(Texts texts, Consumer<Problem> go, Consumer<Problem> mends) {
        super(new MigLayout("insets 4 8 8 8, wrap 2, fill", "[grow, fill][]", "[]4[grow, fill]"));
        this.texts = texts;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(ROWS);
        list.setCellRenderer(new Row());
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        list.getActionMap().put("go", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                chosen().ifPresent(go);
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                chosen().ifPresent(go);
            }
        });
        heading.setLabelFor(list);
        list.getAccessibleContext().setAccessibleName(texts.of("problems.name"));
        mend = new JButton(texts.of("problems.mend"));
        mend.addActionListener(e -> chosen().ifPresent(mends));
        mend.setEnabled(false);
        list.addListSelectionListener(e -> mend.setEnabled(chosen().isPresent()));
        add(heading, "wmin 0");
        add(mend);
        add(new JScrollPane(list), "span 2, wmin 0, hmin 0");
        show(List.of());
    }

    Optional<Problem> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    JList<Problem> rows() {
        return list;
    }

    void show(List<Problem> problems) {
        long errors = problems.stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .count();
        heading.setText(
                problems.isEmpty()
                        ? texts.of("problems.none")
                        : texts.of("problems.count", errors, problems.size() - errors));
        if (problems.equals(shown)) {
            return;
        }
        shown = List.copyOf(problems);
        Optional<Problem> before = chosen();
        model.clear();
        model.addAll(problems);
        before.ifPresent(p -> list.setSelectedValue(p, false));
    }

    private static final class Row extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> of, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(of, "", index, selected, focused);
            putClientProperty("html.disable", true);
            Problem problem = (Problem) value;
            String place = problem.place().toString();
            setText(place.substring(place.lastIndexOf('/') + 1) + "  " + problem.message());
            setToolTipText(place);
            setIcon(new SeveritySign(problem.severity() == Problem.Severity.ERROR ? Severity.STOP : Severity.WARN));
            return this;
        }
    }
}
