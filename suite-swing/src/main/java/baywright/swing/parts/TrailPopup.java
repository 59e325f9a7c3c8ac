package baywright.swing.parts;

import baywright.swing.api.Destination;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.HierarchyEvent;
import java.awt.event.HierarchyListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** What a figure comes from, line by line, floating over the figure. Enter or a click goes to where a line is written; Escape closes it. */
public final class TrailPopup {

    private static final int WIDTH = 620;
    private static final int ROWS = 14;

    private TrailPopup() {}

    /** Shows it above what was asked about. */
    public static void show(JComponent about, String title, List<TrailLine> lines, Consumer<Destination> go) {
        show(about, new Rectangle(), title, lines, go);
    }

    /**
     * Shows it above a part of a component, such as a row of a table; the screen's edge pushes it aside.
     *
     * @param part of the component, in its coordinates
     */
    public static void show(
            JComponent about, Rectangle part, String title, List<TrailLine> lines, Consumer<Destination> go) {
        JPopupMenu popup = new JPopupMenu();
        JList<TrailLine> list = list(popup, lines, go);
        JPanel content = new JPanel(new MigLayout("insets 8, wrap 1", "[grow, fill]"));
        content.setOpaque(false);
        content.add(new SectionHeading(title, list));
        JScrollPane scroll = new JScrollPane(list);
        content.add(scroll, "w " + WIDTH + "!");
        popup.add(content);
        Dimension size = popup.getPreferredSize();
        popup.show(about, part.x, part.y - size.height - UIScale.scale(4));
        closeWithSightOf(about, popup);
        list.requestFocusInWindow();
    }

    /** By key another workbench can be shown while a popup is open. */
    private static void closeWithSightOf(JComponent about, JPopupMenu popup) {
        about.addHierarchyListener(new HierarchyListener() {
            @Override
            public void hierarchyChanged(HierarchyEvent e) {
                if (!about.isShowing() || !popup.isVisible()) {
                    about.removeHierarchyListener(this);
                    popup.setVisible(false);
                }
            }
        });
    }

    /** The list inside, for a popup of one's own. */
    public static JList<TrailLine> list(JPopupMenu popup, List<TrailLine> lines, Consumer<Destination> go) {
        JList<TrailLine> list = new JList<>(lines.toArray(new TrailLine[0]));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(Math.max(1, Math.min(lines.size(), ROWS)));
        list.setCellRenderer(new Cell());
        if (!lines.isEmpty()) {
            list.setSelectedIndex(0);
        }
        Runnable follow = () -> {
            TrailLine line = list.getSelectedValue();
            if (line != null && line.to().isPresent()) {
                popup.setVisible(false);
                go.accept(line.to().get());
            }
        };
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "follow");
        list.getActionMap().put("follow", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                follow.run();
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                follow.run();
            }
        });
        return list;
    }

    /** What can be gone to has an arrow. */
    private static final class Cell extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean chosen, boolean focus) {
            putClientProperty("html.disable", true);
            TrailLine line = (TrailLine) value;
            JLabel label = (JLabel) super.getListCellRendererComponent(
                    list,
                    line.to().isPresent() ? TrailLine.TEXTS.of("trail.goes", line.text()) : line.text(),
                    index,
                    chosen,
                    focus);
            label.setToolTipText(line.text());
            return label;
        }
    }
}
