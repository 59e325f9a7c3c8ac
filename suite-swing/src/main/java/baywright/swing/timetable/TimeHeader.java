package baywright.swing.timetable;

import baywright.plan.Severity;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.site.TimetableText;
import baywright.swing.api.Colours;
import baywright.swing.parts.FineSign;
import baywright.swing.parts.SeveritySign;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** Days, hours, and when each job is ready and wanted, above a chart. */
final class TimeHeader extends JComponent {

    private static final long serialVersionUID = 1L;

    private static final float LINE = 20;
    private static final int[] STEPS = {15, 30, 60, 120, 240, 360, 720};
    private static final float LEAST_STEP = 42;
    private static final float INSET = 10;

    private final transient TimeChart chart;
    private final transient DateTimeFormatter full;
    private final transient DateTimeFormatter shorter;

    TimeHeader(TimeChart chart, Locale locale) {
        this.chart = chart;
        full = DateTimeFormatter.ofPattern("EEEE d MMM", locale);
        shorter = DateTimeFormatter.ofPattern("EE d", locale);
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
        return new Dimension(chart.getPreferredSize().width, Math.round(UIScale.scale(3 * LINE + 4)));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Rectangle seen = g.getClipBounds();
        g.setColor(getBackground());
        g.fill(seen);
        if (chart.picture().isPresent()) {
            TimeScale scale = chart.scale().orElseThrow();
            days(g, scale, seen);
            hours(g, scale, seen);
            chart.picture().get().timetable().ends().forEach(end -> end(g, scale, end));
        }
        g.setColor(Colours.of("outline"));
        g.draw(new Line2D.Double(seen.getMinX(), getHeight() - 1.0, seen.getMaxX(), getHeight() - 1.0));
        g.dispose();
    }

    private void days(Graphics2D g, TimeScale scale, Rectangle seen) {
        for (LocalDate day : scale.days()) {
            TimeScale.Part part = scale.day(day);
            if (part.right() >= seen.getMinX() && part.left() <= seen.getMaxX()) {
                double wide = part.right() - part.left();
                g.setColor(Colours.of("outline"));
                g.draw(new Line2D.Double(part.left(), 0, part.left(), UIScale.scale(2 * LINE)));
                // the name stays in sight while a part of the day is
                g.setFont(getFont().deriveFont(Font.BOLD));
                String whole = full.format(day);
                double room = g.getFontMetrics().stringWidth(whole) + UIScale.scale(INSET);
                double left = Math.max(part.left(), Math.min(getVisibleRect().getMinX(), part.right() - room));
                Shape clip = g.getClip();
                g.clip(new Rectangle2D.Double(part.left(), 0, wide - UIScale.scale(2f), UIScale.scale(LINE)));
                g.setColor(getForeground());
                g.drawString(
                        wide > room ? whole : shorter.format(day),
                        (float) left + UIScale.scale(5f),
                        UIScale.scale(LINE - 5));
                g.setClip(clip);
            }
        }
    }

    private void hours(Graphics2D g, TimeScale scale, Rectangle seen) {
        g.setFont(getFont());
        FontMetrics metrics = g.getFontMetrics();
        double after = Double.NEGATIVE_INFINITY;
        for (LocalDateTime tick : scale.ticks(step(scale))) {
            double x = scale.x(tick);
            if (x >= seen.getMinX() - UIScale.scale(LEAST_STEP) && x <= seen.getMaxX()) {
                g.setColor(Colours.of("line"));
                g.draw(new Line2D.Double(x, UIScale.scale(LINE * 1.5f), x, UIScale.scale(2 * LINE)));
                String text = TimetableText.clock(tick.toLocalTime());
                if (x >= after) {
                    g.setColor(Colours.of("faint"));
                    g.drawString(text, (float) x + UIScale.scale(3f), UIScale.scale(2 * LINE - 5));
                    after = x + metrics.stringWidth(text) + UIScale.scale(8f);
                }
            }
        }
    }

    private static int step(TimeScale scale) {
        double perMinute = scale.perHour() / 60;
        for (int step : STEPS) {
            if (step * perMinute >= UIScale.scale(LEAST_STEP)) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    /** The job's mark with a sign where it is ready, a flag where it is wanted. */
    private void end(Graphics2D g, TimeScale scale, JobEnd end) {
        JobMark mark = chart.picture().orElseThrow().mark(end.job());
        int top = Math.round(UIScale.scale(2 * LINE + 2));
        end.wanted().ifPresent(at -> {
            float x = (float) scale.x(at);
            float high = UIScale.scale(LINE);
            Path2D flag = new Path2D.Double();
            flag.moveTo(x, top);
            flag.lineTo(x + UIScale.scale(15f), top + high * 0.3);
            flag.lineTo(x, top + high * 0.6);
            flag.closePath();
            g.setColor(mark.ink());
            g.fill(flag);
            g.draw(new Line2D.Double(x, top, x, top + high));
            g.setColor(getForeground());
            g.setFont(getFont());
            g.drawString(mark.number(), x + UIScale.scale(17f), top + high * 0.62f);
        });
        Icon sign = end.lateMinutes() > 0 ? new SeveritySign(Severity.STOP) : new FineSign();
        int right = (int) scale.x(end.end());
        int left = Math.max(0, right - mark.getIconWidth() - (end.wanted().isPresent() ? sign.getIconWidth() : 0));
        g.setFont(getFont());
        mark.paintIcon(this, g, left, top);
        if (end.wanted().isPresent()) {
            sign.paintIcon(this, g, left + mark.getIconWidth(), top + UIScale.scale(2));
        }
    }
}
