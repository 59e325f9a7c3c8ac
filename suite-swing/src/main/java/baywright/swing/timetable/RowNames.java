package baywright.swing.timetable;

import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** What the rows of a chart are called, beside them. */
final class RowNames extends JComponent {

    private static final long serialVersionUID = 1L;

    private static final float WIDE = 132;
    private static final float INSET = 8;

    private final transient TimeChart chart;

    RowNames(TimeChart chart) {
        this.chart = chart;
        updateUI();
        chart.onLayout(() -> {
            revalidate();
            repaint();
        });
    }

    /** Takes font and ink from the look; called again when the look or its size changes. */
    @Override
    public void updateUI() {
        setFont(UIManager.getFont("Label.font"));
        setForeground(UIManager.getColor("Label.foreground"));
        setBackground(UIManager.getColor("Panel.background"));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Math.round(UIScale.scale(WIDE)), chart.getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Rectangle seen = g.getClipBounds();
        g.setColor(getBackground());
        g.fill(seen);
        List<ChartRow> rows = chart.picture().map(ChartPicture::rows).orElse(List.of());
        int inset = Math.round(UIScale.scale(INSET));
        g.setFont(getFont());
        for (int r = 0; r < rows.size(); r++) {
            double top = chart.rowTop(r);
            double high = TimeChart.rowHeight(rows.get(r));
            String title = SwingUtilities.layoutCompoundLabel(
                    g.getFontMetrics(),
                    rows.get(r).title(),
                    null,
                    0,
                    0,
                    0,
                    0,
                    new Rectangle(0, 0, getWidth() - 2 * inset, (int) high),
                    new Rectangle(),
                    new Rectangle(),
                    0);
            g.setColor(getForeground());
            g.drawString(title, inset, (float) (top + UIScale.scale(22f)));
            g.setColor(Colours.of("line"));
            g.draw(new Line2D.Double(0, top + high, getWidth(), top + high));
        }
        g.dispose();
    }
}
