package baywright.swing.plan;

import baywright.plan.ZoneChoice;
import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The zones that a step's stage can work on, each with a tick. Space or a click turns one. */
final class ZoneList extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int ROWS = 7;

    private final DefaultListModel<Zone> model = new DefaultListModel<>();
    private final JList<Zone> list = new JList<>(model);
    private final transient Consumer<List<String>> change;
    private transient Shape shape;
    private transient Set<String> chosen = Set.of();

    /** {@code change} gets the zones as a step writes them. */
    ZoneList(Consumer<List<String>> change) {
        super(new MigLayout("insets 0, gap 8 4", "[grow, fill]", "[][]"));
        setOpaque(false);
        this.change = change;
        list.setVisibleRowCount(ROWS);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.getAccessibleContext().setAccessibleName(Words.of("zones.name"));
        list.getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "turn");
        list.getActionMap().put("turn", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                turn(list.getSelectedIndex());
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int row = list.locationToIndex(e.getPoint());
                if (row >= 0 && list.getCellBounds(row, row).contains(e.getPoint())) {
                    turn(row);
                }
            }
        });
        JScrollPane scroll = new JScrollPane(list);
        add(scroll, "wmin 0, span 2, wrap");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        buttons.setOpaque(false);
        buttons.add(button("zones.all", true));
        buttons.add(button("zones.none", false));
        add(buttons);
    }

    private JButton button(String key, boolean all) {
        JButton button = new JButton(Words.of(key));
        button.addActionListener(e -> {
            Set<String> now = new LinkedHashSet<>();
            if (all) {
                model.elements().asIterator().forEachRemaining(z -> now.add(z.id()));
            }
            tell(now);
        });
        return button;
    }

    /** Shows the zones of some surfaces, and those chosen already. */
    void show(Shape vehicle, List<String> surfaces, List<String> written) {
        Set<String> now = new LinkedHashSet<>(ZoneChoice.resolve(written, vehicle));
        List<Zone> offered = vehicle.zones().stream()
                .filter(z -> surfaces.contains(z.surface()) || now.contains(z.id()))
                .toList();
        shape = vehicle;
        chosen = now;
        if (!offered.equals(java.util.Collections.list(model.elements()))) {
            model.clear();
            model.addAll(offered);
        }
        list.repaint();
    }

    private void turn(int row) {
        if (row >= 0) {
            Set<String> now = new LinkedHashSet<>(chosen);
            String id = model.get(row).id();
            if (!now.remove(id)) {
                now.add(id);
            }
            tell(now);
        }
    }

    private void tell(Set<String> now) {
        change.accept(ZoneChoice.written(now, shape));
    }

    JList<Zone> choices() {
        return list;
    }

    private final class Cell extends JCheckBox implements ListCellRenderer<Zone> {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Zone> in, Zone zone, int index, boolean selected, boolean focus) {
            putClientProperty("html.disable", true);
            setText(zone.title());
            setSelected(chosen.contains(zone.id()));
            setOpaque(true);
            setBackground(selected ? in.getSelectionBackground() : in.getBackground());
            setForeground(selected ? in.getSelectionForeground() : in.getForeground());
            return this;
        }
    }
}
