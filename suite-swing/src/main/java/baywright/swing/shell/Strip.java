package baywright.swing.shell;

import baywright.swing.api.Colours;
import baywright.swing.api.Workbench;
import baywright.swing.parts.WidePanel;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** The workbenches one below the other. */
final class Strip extends WidePanel {

    private static final long serialVersionUID = 1L;

    private final List<Place> places = new ArrayList<>();
    private final transient Consumer<String> chosen;

    /** @param chosen gets the id of the workbench that the user wants */
    Strip(Consumer<String> chosen, String name) {
        super(new MigLayout("insets 8 6 8 6, wrap 1, gapy 2", "[80!, fill]"));
        this.chosen = chosen;
        getAccessibleContext().setAccessibleName(name);
    }

    /** This strip with a way to reach what does not fit on a low screen. */
    JScrollPane scrolled() {
        JScrollPane pane = new JScrollPane(
                this, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(null);
        pane.getViewport().setOpaque(false);
        pane.setOpaque(false);
        pane.getVerticalScrollBar().putClientProperty("JComponent.sizeVariant", "mini");
        return pane;
    }

    void show(List<Workbench> workbenches, String selected) {
        removeAll();
        places.clear();
        ButtonGroup group = new ButtonGroup();
        for (Workbench workbench : workbenches) {
            Place place = new Place(workbench);
            place.addActionListener(e -> chosen.accept(workbench.id()));
            group.add(place);
            places.add(place);
            add(place, "h 58!");
        }
        select(selected);
        revalidate();
        repaint();
    }

    /** Whether there is a shop to work at. */
    void usable(boolean can) {
        places.forEach(place -> place.setVisible(can));
    }

    void select(String id) {
        places.forEach(place -> place.setSelected(place.id.equals(id)));
    }

    @Override
    public Color getBackground() {
        return Colours.of("strip");
    }

    /** One workbench: picture above, word below, a bar at the side when it is the one shown. */
    private static final class Place extends JToggleButton {

        private static final long serialVersionUID = 1L;

        private final String id;

        Place(Workbench workbench) {
            this.id = workbench.id();
            putClientProperty("html.disable", true);
            putClientProperty("FlatLaf.styleClass", "medium");
            setText(workbench.title());
            setIcon(workbench.icon());
            setVerticalTextPosition(SwingConstants.BOTTOM);
            setHorizontalTextPosition(SwingConstants.CENTER);
            setIconTextGap(UIScale.scale(4));
            setContentAreaFilled(false);
            setMargin(new java.awt.Insets(2, 2, 2, 2));
        }

        @Override
        public Color getForeground() {
            return Colours.of("strip.ink");
        }

        @Override
        protected void paintComponent(Graphics g) {
            if (isSelected() || getModel().isRollover()) {
                Color ink = Colours.of("strip.ink");
                g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), isSelected() ? 44 : 22));
                int arc = UIScale.scale(8);
                g.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
            }
            if (isSelected()) {
                g.setColor(Colours.of("strip.ink"));
                g.fillRect(0, getHeight() / 4, UIScale.scale(3), getHeight() / 2);
            }
            super.paintComponent(g);
        }
    }
}
