package baywright.swing.safety;

import baywright.safety.DayDose;
import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Locale;
import java.util.function.DoubleFunction;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * A dose as a bar against the values that it is judged by: a triangle stands at a value from which something must be done, a post
 * with a cap at one that is never to be passed, each with its figure. What is past a value is hatched.
 */
final class DoseBar extends JComponent {

    private static final long serialVersionUID = 1L;

    private static final int WIDTH = 180;
    private static final int BAR = 12;
    private static final int MARK = 7;
    private static final int HATCH = 5;

    /** Below it noise is hardly a matter of work, so that a bar begins there, dB(A). */
    private static final double QUIET = 60;

    private final transient DayDose dose;
    private final transient DoubleFunction<String> figures;

    /** @param figures writes the value of a border for the user */
    DoseBar(DayDose dose, DoubleFunction<String> figures) {
        this.dose = dose;
        this.figures = figures;
    }

    private double least() {
        boolean noise = dose.kind() == DayDose.Kind.NOISE || dose.kind() == DayDose.Kind.NOISE_WORN;
        return noise ? QUIET : 0;
    }

    private double most() {
        double last = dose.borders().get(dose.borders().size() - 1).value();
        double beyond = least() + (last - least()) * 1.3;
        return Math.max(beyond, dose.value() + (dose.value() - least()) * 0.05);
    }

    /** Where a value lies on a bar of so much width. */
    double at(double value, double width) {
        return width * Math.max(0, Math.min(1, (value - least()) / (most() - least())));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(WIDTH), height());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(WIDTH / 2), height());
    }

    private int height() {
        return UIScale.scale(MARK + BAR + 3) + getFontMetrics(font()).getHeight();
    }

    private Font font() {
        Font small = UIManager.getFont("small.font");
        return small == null ? getFont() : small;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setFont(font());
        double width = getWidth() - 1.0;
        double top = UIScale.scale(MARK) + 1.0;
        double high = UIScale.scale(BAR);
        Shape track = new RoundRectangle2D.Double(0, top, width, high, high / 2, high / 2);
        g.setColor(Colours.of("line"));
        g.fill(track);
        Shape old = g.getClip();
        g.clip(track);
        g.setColor(colour());
        double end = Math.max(at(dose.value(), width), UIScale.scale(2));
        g.fill(new Rectangle2D.Double(0, top, end, high));
        dose.reached().ifPresent(border -> hatch(g, at(border.value(), width), end, top, high));
        g.setClip(old);
        double free = 0;
        for (DayDose.Border border : dose.borders()) {
            free = mark(g, border, at(border.value(), width), top, high, free);
        }
        g.dispose();
    }

    private Color colour() {
        return Colours.of(dose.reached()
                .map(b -> b.severity().name().toLowerCase(Locale.ROOT))
                .orElse("fine"));
    }

    private static void hatch(Graphics2D g, double from, double to, double top, double high) {
        Shape old = g.getClip();
        g.clip(new Rectangle2D.Double(from, top, Math.max(0, to - from), high));
        g.setColor(Colours.of("tile"));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        double step = UIScale.scale(HATCH);
        for (double x = from - high; x < to; x += step) {
            g.draw(new Line2D.Double(x, top + high, x + high, top));
        }
        g.setClip(old);
    }

    /** Draws a border and its figure; gives where the next figure may begin. */
    private double mark(Graphics2D g, DayDose.Border border, double x, double top, double high, double free) {
        g.setColor(getForeground());
        double size = UIScale.scale(MARK);
        if (border.isLimit()) {
            g.setStroke(new BasicStroke(UIScale.scale(2f)));
            g.draw(new Line2D.Double(x, top - size + 1, x, top + high));
            g.draw(new Line2D.Double(x - size / 2, top - size + 1, x + size / 2, top - size + 1));
        } else {
            Path2D triangle = new Path2D.Double();
            triangle.moveTo(x - size / 2, top - size);
            triangle.lineTo(x + size / 2, top - size);
            triangle.lineTo(x, top);
            triangle.closePath();
            g.fill(triangle);
            g.setStroke(new BasicStroke(UIScale.scale(1f)));
            g.draw(new Line2D.Double(x, top, x, top + high));
        }
        g.setColor(Colours.of("faint"));
        FontMetrics metrics = g.getFontMetrics();
        String text = figures.apply(border.value());
        double wide = metrics.stringWidth(text);
        double left = Math.max(free, Math.min(x - wide / 2, getWidth() - wide));
        g.drawString(text, (float) left, (float) (top + high + metrics.getAscent() + UIScale.scale(2)));
        return left + wide + UIScale.scale(6);
    }
}
