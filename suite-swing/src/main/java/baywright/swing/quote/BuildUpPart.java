package baywright.swing.quote;

import baywright.money.Quote;
import baywright.swing.api.Colours;
import baywright.swing.api.Desk;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import baywright.swing.parts.TrailLine;
import baywright.swing.parts.TrailPopup;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;

/** How price and cost come about, as bars and as a table; each row tells where it comes from. */
final class BuildUpPart extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int NUMBER = 44;
    private static final int AMOUNT = 104;
    private static final int TEXT_MARGIN = 8;

    private final transient Desk desk;
    private final BuildUpRows rows = new BuildUpRows();
    private final JTable table = new JTable(rows);
    private final BuildUpChart chart = new BuildUpChart(rows, this::choose);
    private final JButton source;
    private transient Quote quote;
    private transient Figures figures;

    BuildUpPart(Desk desk) {
        super(new MigLayout("insets 8, gap 4, wrap 1", "[grow, fill]", "[][][][grow, fill][]"));
        this.desk = desk;
        Action trace = Words.action("build-up.source", this::trace);
        source = new JButton(trace);
        source.setEnabled(false);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setDefaultRenderer(Object.class, new Cell());
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(false);
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "trace");
        table.getActionMap().put("trace", trace);
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    trace();
                }
            }
        });
        table.getSelectionModel().addListSelectionListener(e -> {
            chart.mark(table.getSelectedRow());
            source.setEnabled(table.getSelectedRow() >= 0);
        });
        add(new SectionHeading(Words.of("build-up.heading"), table));
        add(new Prose(Words.of("build-up.legend")), "wmin 0");
        add(chart, "wmin 0");
        add(new JScrollPane(table), "wmin 0, hmin 80, push");
        add(source, "growx 0, left");
    }

    void show(Quote now, Figures written) {
        int chosen = table.getSelectedRow();
        quote = now;
        figures = written;
        rows.show(now, written);
        columns();
        chart.repaint();
        if (chosen >= 0 && chosen < rows.getRowCount()) {
            choose(chosen);
        }
    }

    private void columns() {
        if (table.getColumnCount() < 3) {
            return;
        }
        table.getColumnModel().getColumn(BuildUpRows.NUMBER).setMaxWidth(UIScale.scale(NUMBER));
        table.getColumnModel().getColumn(BuildUpRows.NUMBER).setPreferredWidth(UIScale.scale(NUMBER));
        table.getColumnModel().getColumn(BuildUpRows.AMOUNT).setMaxWidth(UIScale.scale(2 * AMOUNT));
        table.getColumnModel().getColumn(BuildUpRows.AMOUNT).setPreferredWidth(UIScale.scale(AMOUNT));
    }

    /** Chooses a row, as a click on its bar does. */
    void choose(int row) {
        table.setRowSelectionInterval(row, row);
        table.scrollRectToVisible(table.getCellRect(row, 0, true));
        table.requestFocusInWindow();
    }

    /** What the chosen row comes from; none without a row. */
    List<TrailLine> lines() {
        int row = table.getSelectedRow();
        return row < 0 ? List.of() : new LineTrails(quote, figures).of(rows.bar(row));
    }

    private void trace() {
        List<TrailLine> lines = lines();
        if (!lines.isEmpty()) {
            Rectangle at = table.getCellRect(table.getSelectedRow(), 0, true);
            TrailPopup.show(
                    table,
                    at,
                    rows.getValueAt(table.getSelectedRow(), BuildUpRows.NAME).toString(),
                    lines,
                    desk::go);
        }
    }

    JTable table() {
        return table;
    }

    BuildUpRows rows() {
        return rows;
    }

    BuildUpChart chart() {
        return chart;
    }

    /** Sums are bold; amounts stand at the right. */
    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable in, Object value, boolean chosen, boolean focus, int row, int column) {
            putClientProperty("html.disable", true);
            super.getTableCellRendererComponent(in, value, chosen, focus, row, column);
            setHorizontalAlignment(column == BuildUpRows.NAME ? SwingConstants.LEADING : SwingConstants.TRAILING);
            if (rows.isSum(row)) {
                setFont(getFont().deriveFont(Font.BOLD));
            }
            if (!chosen) {
                setForeground(BuildUpRows.isLoss(rows.bar(row)) ? Colours.of("stop") : in.getForeground());
            }
            setIconTextGap(UIScale.scale(TEXT_MARGIN));
            return this;
        }
    }
}
