package baywright.swing.plan;

import baywright.plan.Explanation;
import baywright.plan.Plan;
import baywright.plan.StateCourse;
import baywright.plan.StateCourse.Cell;
import baywright.plan.StateCourse.Mark;
import baywright.plan.StateCourse.Row;
import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.KeyboardFocusManager;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;

/** The states of a zone along the plan: a row for each state, a narrow column for each step. Shapes say what comes, is held and goes. */
final class StateTable extends JTable {

    private static final long serialVersionUID = 1L;

    private static final int CELL = 26;
    private static final int NAME = 150;
    private static final int ROW = 22;

    private final Model model = new Model();
    private final JTable names = new JTable(new Names());

    StateTable() {
        super();
        setModel(model);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellSelectionEnabled(true);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        setDefaultRenderer(Object.class, new MarkCell());
        getTableHeader().setDefaultRenderer(new NumberCell());
        getAccessibleContext().setAccessibleName(Words.of("states.name"));
        names.setFocusable(false);
        names.setRowSelectionAllowed(false);
        names.getAccessibleContext().setAccessibleName(Words.of("states.names"));
        names.setDefaultRenderer(Object.class, new NameCell());
        names.setPreferredScrollableViewportSize(new java.awt.Dimension(UIScale.scale(NAME), 0));
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("TAB"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("shift TAB"), "none");
        heights();
    }

    /** The states' names, to stand still at the left. */
    JComponent names() {
        return names;
    }

    /** Shows a zone's strip of the explanation of a plan; empty: nothing. */
    void show(Optional<Explanation.Strip> strip, Plan plan) {
        Optional<StateCourse> now = strip.map(s -> StateCourse.of(s, plan));
        if (now.equals(model.course)) {
            return;
        }
        boolean sameSteps = now.map(StateCourse::steps).equals(model.course.map(StateCourse::steps));
        model.course = now;
        if (sameSteps) {
            model.fireTableDataChanged();
        } else {
            model.fireTableStructureChanged();
        }
        ((Names) names.getModel()).fireTableDataChanged();
        widths();
    }

    private void widths() {
        for (int i = 0; i < getColumnCount(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(CELL));
            getColumnModel().getColumn(i).setMinWidth(UIScale.scale(CELL));
        }
    }

    private void heights() {
        setRowHeight(UIScale.scale(ROW));
        names.setRowHeight(UIScale.scale(ROW));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (names != null) {
            names.updateUI();
            heights();
            widths();
        }
    }

    /** Id of the step of the chosen column. */
    Optional<String> chosenStep() {
        int column = getSelectedColumn();
        return column < 0 ? Optional.empty() : model.course.map(c -> c.steps().get(column));
    }

    /** What is shown. */
    Optional<StateCourse> course() {
        return model.course;
    }

    private List<Row> rows() {
        return model.course.map(StateCourse::rows).orElse(List.of());
    }

    private static final class Model extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        private transient Optional<StateCourse> course = Optional.empty();

        @Override
        public int getRowCount() {
            return course.map(c -> c.rows().size()).orElse(0);
        }

        @Override
        public int getColumnCount() {
            return course.map(c -> c.steps().size()).orElse(0);
        }

        @Override
        public String getColumnName(int column) {
            return Integer.toString(column + 1);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return course.orElseThrow().rows().get(row).cells().get(column);
        }
    }

    private final class Names extends AbstractTableModel {

        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return model.getRowCount();
        }

        @Override
        public int getColumnCount() {
            return 1;
        }

        @Override
        public String getColumnName(int column) {
            return Words.of("states.column");
        }

        @Override
        public Object getValueAt(int row, int column) {
            return rows().get(row);
        }
    }

    private static final class NameCell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            putClientProperty("html.disable", true);
            Row state = (Row) value;
            String text = state.found() ? Words.of("states.found", state.state()) : state.state();
            super.getTableCellRendererComponent(table, text, false, false, row, column);
            setToolTipText(text);
            return this;
        }
    }

    /** A step's number, small enough for a narrow column. */
    private static final class NumberCell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, false, false, row, column);
            putClientProperty("FlatLaf.styleClass", "small");
            setHorizontalAlignment(CENTER);
            setBorder(BorderFactory.createEmptyBorder());
            return this;
        }
    }

    /** A disc where a state comes, a bar while it holds, a ring where it goes, a diamond where it comes and goes in one step. */
    private final class MarkCell extends JComponent implements TableCellRenderer {

        private static final long serialVersionUID = 1L;

        private transient Cell cell;
        private boolean chosen;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            cell = (Cell) value;
            chosen = selected;
            String words = Words.of(
                    "states.cell",
                    rows().get(row).state(),
                    Words.of("mark", cell.mark()),
                    cell.itself() ? Words.of("mark.itself") : "",
                    column + 1);
            setToolTipText(words);
            getAccessibleContext().setAccessibleName(words);
            return this;
        }

        @Override
        public javax.accessibility.AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJComponent() {
                    private static final long serialVersionUID = 1L;
                };
            }
            return accessibleContext;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            double w = getWidth();
            double h = getHeight();
            if (chosen) {
                g.setColor(StateTable.this.getSelectionBackground());
                g.fill(new Rectangle2D.Double(0, 0, w, h));
            }
            g.setColor(chosen ? StateTable.this.getSelectionForeground() : Colours.of("accent"));
            double unit = UIScale.scale(1f);
            double bar = 5 * unit;
            double disc = 11 * unit;
            double top = (h - bar) / 2;
            g.setStroke(new BasicStroke((float) (1.8 * unit)));
            switch (cell.mark()) {
                case HELD -> g.fill(new Rectangle2D.Double(0, top, w, bar));
                case SET -> {
                    g.fill(new Rectangle2D.Double(w / 2, top, w / 2 + 1, bar));
                    g.fill(new Ellipse2D.Double((w - disc) / 2, (h - disc) / 2, disc, disc));
                }
                case CLEARED -> {
                    g.fill(new Rectangle2D.Double(0, top, (w - disc) / 2, bar));
                    g.draw(new Ellipse2D.Double((w - disc) / 2, (h - disc) / 2, disc, disc));
                }
                case BRIEF -> {
                    g.draw(new Line2D.Double(w / 2 - disc / 2, h / 2, w / 2, h / 2 - disc / 2));
                    g.draw(new Line2D.Double(w / 2, h / 2 - disc / 2, w / 2 + disc / 2, h / 2));
                    g.draw(new Line2D.Double(w / 2 + disc / 2, h / 2, w / 2, h / 2 + disc / 2));
                    g.draw(new Line2D.Double(w / 2, h / 2 + disc / 2, w / 2 - disc / 2, h / 2));
                }
                case ABSENT -> {}
            }
            if (cell.itself() && cell.mark() != Mark.HELD) {
                g.draw(new Line2D.Double(w / 2 - unit, h - 2 * unit, w / 2 + unit, h - 2 * unit));
            }
            g.dispose();
        }
    }
}
