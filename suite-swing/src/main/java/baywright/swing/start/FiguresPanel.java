package baywright.swing.start;

import baywright.swing.api.Colours;
import baywright.swing.start.JobView.Figure;
import java.awt.Color;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The main figures of a quote side by side. */
final class FiguresPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    /** More do not fit beside each other on a small screen. */
    private static final int ONE_ROW = 5;

    FiguresPanel() {
        super(new MigLayout("insets 0, gap 8"));
        getAccessibleContext().setAccessibleName(Words.of("figures.name"));
    }

    void show(List<Figure> figures) {
        removeAll();
        boolean many = figures.size() > ONE_ROW;
        setLayout(new MigLayout(many ? "insets 0, gap 8, wrap 3" : "insets 0, gap 8"));
        figures.forEach(figure -> add(tile(figure), "grow, push, sg tile, wmin 40"));
        revalidate();
        repaint();
    }

    private static JPanel tile(Figure figure) {
        JPanel tile = new JPanel(new MigLayout("insets 8 12 8 12, wrap 1", "[grow]", "[]2[]")) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getBackground() {
                return Colours.of("tile");
            }

            @Override
            public void updateUI() {
                super.updateUI();
                setBorder(BorderFactory.createLineBorder(Colours.of("line")));
            }
        };
        JLabel name = new JLabel(figure.name()) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getForeground() {
                return Colours.of("faint");
            }
        };
        JLabel amount = new JLabel(figure.amount());
        amount.putClientProperty("FlatLaf.styleClass", "figure");
        name.setLabelFor(amount);
        tile.add(name, "wmin 0");
        tile.add(amount, "wmin 0");
        return tile;
    }
}
