package baywright.swing.plan;

import baywright.library.Stage;
import baywright.plan.Step;
import baywright.plan.ZoneChoice;
import baywright.plan.ZoneNames;
import baywright.site.WorkedJob;
import baywright.swing.api.Colours;
import baywright.swing.api.DeskState;
import baywright.swing.api.Readout;
import baywright.swing.parts.SeveritySign;
import baywright.swing.plan.StepRows.Column;
import baywright.swing.plan.StepRows.Found;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.DropMode;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.joda.money.Money;

/** The steps of a plan in order, several to be chosen at once. What is chosen stays chosen by its id, whatever is edited. */
final class StepTable extends JTable {

    private static final long serialVersionUID = 1L;

    private static final List<Column> COLUMNS = List.of(Column.values());

    private static final Map<Column, Integer> WIDTHS = Map.of(
            Column.NUMBER, 42,
            Column.STEP, 250,
            Column.START, 118,
            Column.HANDS_ON, 98,
            Column.PRICE, 104,
            Column.FOUND, 60);
    private static final int NAMED_ZONES = 2;
    private static final int ROW = 42;

    private final StepRows rows = new StepRows();
    private final transient Readout readout;
    private final transient DateTimeFormatter starts;
    private final transient Map<List<String>, String> zoneTexts = new HashMap<>();
    private transient Optional<WorkedJob> zonesOf = Optional.empty();

    StepTable(Readout readout) {
        this.readout = readout;
        starts = DateTimeFormatter.ofPattern("EEE d HH:mm", readout.locale());
        setModel(rows);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setFillsViewportHeight(true);
        setDragEnabled(!GraphicsEnvironment.isHeadless());
        setDropMode(DropMode.INSERT_ROWS);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setDefaultRenderer(new HeaderCell(getTableHeader().getDefaultRenderer()));
        getAccessibleContext().setAccessibleName(Words.of("steps.name"));
        setRowHeight(UIScale.scale(ROW));

        // Tab leaves the table, the arrows move in it.
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("TAB"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("shift TAB"), "none");
        for (int i = 0; i < COLUMNS.size(); i++) {
            Column column = COLUMNS.get(i);
            var shown = getColumnModel().getColumn(i);
            shown.setPreferredWidth(UIScale.scale(WIDTHS.get(column)));
            if (column != Column.STEP) {
                shown.setMinWidth(UIScale.scale(WIDTHS.get(column)));
                shown.setMaxWidth(UIScale.scale(WIDTHS.get(column)) * 2);
            }
            shown.setCellRenderer(column == Column.STEP ? new StepCell() : new FigureCell(column));
        }
    }

    StepRows rows() {
        return rows;
    }

    /** Shows a new state; the chosen steps stay chosen, and nothing scrolls. */
    void show(DeskState state) {
        List<String> chosen = chosen();
        boolean moved = rows.show(state);
        if (moved) {
            choose(chosen, false);
        }
    }

    /** Ids of the chosen steps, in the plan's order. */
    List<String> chosen() {
        List<String> ids = new ArrayList<>();
        for (int row : getSelectedRows()) {
            if (row < rows.getRowCount()) {
                ids.add(rows.step(row).id());
            }
        }
        return ids;
    }

    /** Chooses steps by their ids; those that are not there are passed over. */
    void choose(List<String> ids, boolean reveal) {
        ListSelectionModel selection = getSelectionModel();
        selection.setValueIsAdjusting(true);
        selection.clearSelection();
        int[] places = IntStream.range(0, rows.getRowCount())
                .filter(i -> ids.contains(rows.step(i).id()))
                .toArray();
        for (int place : places) {
            selection.addSelectionInterval(place, place);
        }
        selection.setValueIsAdjusting(false);
        if (reveal && places.length > 0) {
            scrollRectToVisible(getCellRect(places[places.length - 1], 0, true).union(getCellRect(places[0], 0, true)));
        }
    }

    /** The chosen step when it is the only one. */
    Optional<Step> only() {
        return getSelectedRowCount() == 1 && getSelectedRow() < rows.getRowCount()
                ? Optional.of(rows.step(getSelectedRow()))
                : Optional.empty();
    }

    /** Rows keep their height at every zoom. */
    @Override
    public void updateUI() {
        super.updateUI();
        setRowHeight(UIScale.scale(ROW));
    }

    private String zones(Step step) {
        if (!rows.worked().equals(zonesOf)) {
            zonesOf = rows.worked();
            zoneTexts.clear();
        }
        return zonesOf.map(worked -> zoneTexts.computeIfAbsent(step.zones(), written -> {
                    var shape = worked.setting().shape();
                    return Words.capital(
                            new ZoneNames(shape, readout.locale()).of(ZoneChoice.resolve(written, shape), NAMED_ZONES));
                }))
                .orElseGet(() -> String.join(", ", step.zones()));
    }

    private String title(Step step) {
        return rows.worked()
                .map(worked -> worked.setting().library().stageById().get(step.stage()))
                .map(Stage::title)
                .orElse(step.stage());
    }

    /** The look's own header with each title over its column's figures. */
    private record HeaderCell(TableCellRenderer look) implements TableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            Component cell = look.getTableCellRendererComponent(table, value, chosen, focus, row, column);
            if (cell instanceof JLabel label) {
                label.setHorizontalAlignment(alignment(COLUMNS.get(column)));
            }
            return cell;
        }
    }

    private static int alignment(Column column) {
        return switch (column) {
            case NUMBER, HANDS_ON, PRICE -> SwingConstants.RIGHT;
            default -> SwingConstants.LEADING;
        };
    }

    /** The stage's title above the zones; what need not be says so. */
    private final class StepCell extends JPanel implements TableCellRenderer {

        private static final long serialVersionUID = 1L;

        private final JLabel title = new JLabel();
        private final JLabel zones = new JLabel();

        StepCell() {
            super(new MigLayout("insets 3 8 3 8, gap 0, wrap 1, novisualpadding", "[grow, fill]", "push[]0[]push"));
            title.putClientProperty("html.disable", true);
            zones.putClientProperty("html.disable", true);
            zones.putClientProperty("FlatLaf.styleClass", "small");
            add(title, "wmin 0");
            add(zones, "wmin 0");
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            Step step = (Step) value;
            setBackground(chosen ? table.getSelectionBackground() : table.getBackground());
            title.setForeground(chosen ? table.getSelectionForeground() : table.getForeground());
            zones.setForeground(chosen ? table.getSelectionForeground() : Colours.of("faint"));
            title.setText(StepTable.this.title(step));
            String where = StepTable.this.zones(step);
            zones.setText(
                    step.priority() == Step.Priority.MUST
                            ? where
                            : Words.of("step.wanted", Words.of("priority", step.priority()), where));
            getAccessibleContext().setAccessibleName(title.getText() + ", " + zones.getText());
            return this;
        }

        /** A renderer lives outside the window and hears of a new look only here. */
        @Override
        public void updateUI() {
            super.updateUI();
            if (title != null) {
                title.updateUI();
                zones.updateUI();
            }
        }
    }

    /** Numbers, times, money and the sign of what was found. */
    private final class FigureCell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        private final Column of;

        FigureCell(Column of) {
            this.of = of;
            putClientProperty("html.disable", true);
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, chosen, focus, row, column);
            setHorizontalAlignment(alignment(of));
            setIcon(null);
            setText(text(value, rows.step(row)));
            if (value instanceof Found found) {
                setIcon(new SeveritySign(found.worst()));
                getAccessibleContext()
                        .setAccessibleName(Words.of("found." + found.worst().name(), found.count()));
            } else {
                getAccessibleContext().setAccessibleName(null);
            }
            return this;
        }

        private String text(Object value, Step step) {
            if (value instanceof LocalDateTime start) {
                String at = starts.format(start);
                return step.at().isPresent() ? Words.of("start.fixed", at) : at;
            }
            if (value instanceof BigDecimal minutes) {
                return readout.minutes(minutes);
            }
            if (value instanceof Money money) {
                return readout.money(money);
            }
            if (value instanceof Found found) {
                return Integer.toString(found.count());
            }
            return value == null ? "" : value.toString();
        }
    }

    /** Nothing to say where there is nothing. */
    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (rows.getRowCount() == 0) {
            g.setColor(Colours.of("faint"));
            g.drawString(Words.of("steps.none"), UIScale.scale(12), UIScale.scale(24));
        }
    }
}
