package baywright.swing.sites;

import baywright.swing.parts.DoAction;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableModel;

/** Components as this workbench wants them. */
final class Plain {

    private static final int ROW = 26;

    private Plain() {}

    static JButton button(String key, Runnable does) {
        JButton button = new JButton(Words.of(key));
        button.addActionListener(e -> does.run());
        return button;
    }

    /** A table by rows, whose Tab leaves it and whose texts are shown as they are, never as HTML. */
    static JTable table(TableModel rows, String name) {
        JTable table = new JTable(rows);
        table.getAccessibleContext().setAccessibleName(name);
        table.setRowHeight(UIScale.scale(ROW));
        table.setFillsViewportHeight(true);
        table.setShowHorizontalLines(true);
        table.getTableHeader().setReorderingAllowed(false);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        DefaultTableCellRenderer text = new DefaultTableCellRenderer();
        text.putClientProperty("html.disable", true);
        table.setDefaultRenderer(String.class, text);
        table.setDefaultRenderer(Object.class, text);
        leaveByTab(table);
        return table;
    }

    private static void leaveByTab(JTable table) {
        key(table, KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0), "leave", table::transferFocus);
        key(
                table,
                KeyStroke.getKeyStroke(KeyEvent.VK_TAB, KeyEvent.SHIFT_DOWN_MASK),
                "leave-back",
                table::transferFocusBackward);
    }

    static void key(JComponent on, KeyStroke key, String name, Runnable does) {
        on.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
        on.getActionMap().put(name, new DoAction(does));
    }

    /** Text to read, reached by Tab so that it can be copied. */
    static JTextArea reading(String name) {
        JTextArea area = new JTextArea();
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.getAccessibleContext().setAccessibleName(name);
        key(area, KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0), "leave", area::transferFocus);
        return area;
    }

    static JScrollPane scroll(JComponent content, int height) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setPreferredSize(new Dimension(0, UIScale.scale(height)));
        scroll.setMinimumSize(new Dimension(0, 0));
        return scroll;
    }

    /** The same without a border, for whole pages. */
    static JScrollPane page(JComponent content) {
        JScrollPane scroll = new JScrollPane(
                content, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    /** A label with its field in two columns. */
    static void field(JPanel form, String key, JComponent control) {
        JLabel label = new JLabel(Words.of(key));
        label.setLabelFor(control);
        form.add(label);
        form.add(control, "growx, wmin 0");
    }
}
