package baywright.swing.timetable;

import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/**
 * What tells the bars of a job from those of others: a colour, a pattern and its number.
 *
 * @param place of the job among those shown, from 0; colours and patterns come again after six
 */
record JobMark(int place) implements Icon {

    private static final int KINDS = 6;
    private static final int SIZE = 16;
    private static final double FILL = 0.2;

    /** Its number for people. */
    String number() {
        return Integer.toString(place + 1);
    }

    /** The colour of its lines. */
    Color ink() {
        return Colours.of("job." + (place % KINDS + 1));
    }

    /** What its bars are filled with: pale, so that words on it read well. */
    Color fill() {
        Color ink = ink();
        Color tile = Colours.of("tile");
        return new Color(
                mixed(ink.getRed(), tile.getRed()),
                mixed(ink.getGreen(), tile.getGreen()),
                mixed(ink.getBlue(), tile.getBlue()));
    }

    private static int mixed(int ink, int tile) {
        return (int) Math.round(FILL * ink + (1 - FILL) * tile);
    }

    /** Fills an area with its colour and pattern. */
    void paint(Graphics2D graphics, Rectangle2D area) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.clip(area);
        g.setColor(ink());
        g.fill(area);
        g.setColor(Colours.of("tile"));
        double step = UIScale.scale(5f);
        g.setStroke(new BasicStroke(UIScale.scale(1.4f)));
        double from = area.getMinX() - area.getHeight();
        switch (place % KINDS) {
            case 0 -> lines(g, area, from, step, area.getHeight());
            case 1 -> dots(g, area, step);
            case 2 -> lines(g, area, from, step, -area.getHeight());
            case 3 -> {
                for (double y = area.getMinY() + step / 2; y < area.getMaxY(); y += step) {
                    g.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
                }
            }
            case 4 -> {
                lines(g, area, from, step * 1.4, area.getHeight());
                lines(g, area, from, step * 1.4, -area.getHeight());
            }
            default -> {
                // plain
            }
        }
        g.dispose();
    }

    private static void lines(Graphics2D g, Rectangle2D area, double from, double step, double rise) {
        for (double x = from; x < area.getMaxX() + area.getHeight(); x += step) {
            g.draw(new Line2D.Double(x, area.getMaxY(), x + rise, area.getMinY()));
        }
    }

    private static void dots(Graphics2D g, Rectangle2D area, double step) {
        double radius = step / 4;
        for (double y = area.getMinY() + step / 2; y < area.getMaxY(); y += step) {
            for (double x = area.getMinX() + step / 2; x < area.getMaxX(); x += step) {
                g.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
            }
        }
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Rectangle2D whole = new Rectangle2D.Double(x, y, getIconWidth(), getIconHeight());
        g.setColor(fill());
        g.fill(whole);
        paint(g, new Rectangle2D.Double(x, y, getIconWidth() / 3.0, getIconHeight()));
        g.setColor(ink());
        g.draw(new Rectangle2D.Double(x, y, getIconWidth() - 1.0, getIconHeight() - 1.0));
        g.setColor(on.getForeground());
        g.setFont(on.getFont());
        int wide = g.getFontMetrics().stringWidth(number());
        float middle = x + getIconWidth() * 2 / 3f - wide / 2f;
        g.drawString(
                number(), middle, y + getIconHeight() / 2f + g.getFontMetrics().getAscent() / 2.6f);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIZE * 2);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIZE + 2);
    }
}
