package baywright.swing.start;

import baywright.plan.Severity;
import baywright.swing.parts.SeveritySign;
import baywright.swing.start.JobView.FindingView;
import baywright.swing.start.JobView.StepView;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;

/** The steps of a plan in order, each with the worst that was found on it. */
final class StepTable extends JTable {

    private static final long serialVersionUID = 1L;

    private static final List<String> COLUMNS = List.of("number", "stage", "zones", "start", "minutes", "findings");
    private static final int[] WIDTHS = {40, 220, 270, 84, 92, 92};
    private static final int MINUTES = COLUMNS.indexOf("minutes");
    private static final int FINDINGS = COLUMNS.indexOf("findings");

    private final transient Model model = new Model();

    StepTable() {
        setModel(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setDefaultRenderer(new HeaderCell(getTableHeader().getDefaultRenderer()));

        // Tab leaves the table, the arrows move in it.
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("TAB"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("shift TAB"), "none");
        for (int i = 0; i < WIDTHS.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(WIDTHS[i]));
        }
        DefaultTableCellRenderer right = new DefaultTableCellRenderer();
        right.setHorizontalAlignment(SwingConstants.RIGHT);
        getColumnModel().getColumn(MINUTES).setCellRenderer(right);
        getColumnModel().getColumn(FINDINGS).setCellRenderer(new GradeCell());
    }

    void show(JobView job) {
        model.rows = job.steps();
        model.worst = job.findings().stream()
                .collect(Collectors.toMap(
                        FindingView::step, FindingView::severity, BinaryOperator.minBy(Severity::compareTo)));
        model.fireTableDataChanged();
    }

    void reveal(String step) {
        for (int row = 0; row < model.rows.size(); row++) {
            if (model.rows.get(row).id().equals(step)) {
                setRowSelectionInterval(row, row);
                scrollRectToVisible(getCellRect(row, 0, true));
                return;
            }
        }
        clearSelection();
    }

    /** Id of the chosen step, or the empty text. */
    String chosen() {
        return getSelectedRow() < 0 ? "" : model.rows.get(getSelectedRow()).id();
    }

    private static final class Model extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        private transient List<StepView> rows = List.of();
        private transient Map<String, Severity> worst = Map.of();

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("steps." + COLUMNS.get(column));
        }

        @Override
        public Object getValueAt(int row, int column) {
            StepView step = rows.get(row);
            return switch (COLUMNS.get(column)) {
                case "number" -> row + 1;
                case "stage" -> step.stage();
                case "zones" -> step.zones();
                case "start" -> step.start();
                case "minutes" -> step.minutes();
                default -> worst.get(step.id());
            };
        }
    }

    /** The look's own header with each title over its column's text. */
    private record HeaderCell(TableCellRenderer look) implements TableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            Component cell = look.getTableCellRendererComponent(table, value, chosen, focus, row, column);
            if (cell instanceof JLabel label) {
                label.setHorizontalAlignment(column == MINUTES ? SwingConstants.RIGHT : SwingConstants.LEADING);
            }
            return cell;
        }
    }

    private static final class GradeCell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            JLabel label = (JLabel) super.getTableCellRendererComponent(table, "", chosen, focus, row, column);
            label.setIcon(value instanceof Severity severity ? new SeveritySign(severity) : null);
            label.setText(value instanceof Severity severity ? FindingList.word(severity) : "");
            return label;
        }
    }
}
