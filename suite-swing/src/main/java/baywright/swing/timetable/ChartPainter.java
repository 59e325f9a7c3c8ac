package baywright.swing.timetable;

import baywright.plan.Severity;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.schedule.ShopTimetable.Spell;
import baywright.site.TimetableText;
import baywright.swing.api.Colours;
import baywright.swing.parts.SeveritySign;
import baywright.swing.timetable.ChartRow.Bar;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;

/** Paints what can be seen of a chart. */
final class ChartPainter {

    private static final float HATCH = 9;

    private final TimeChart chart;
    private final ChartPicture picture;
    private final TimeScale scale;
    private final Graphics2D g;
    private final Rectangle seen;

    ChartPainter(TimeChart chart, ChartPicture picture, TimeScale scale, Graphics2D g) {
        this.chart = chart;
        this.picture = picture;
        this.scale = scale;
        this.g = g;
        seen = g.getClipBounds();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(chart.getFont());
    }

    void paint() {
        double bottom = chart.rowTop(picture.rows().size());
        g.setColor(Colours.of("tile"));
        g.fill(new Rectangle2D.Double(0, 0, scale.width(), bottom));
        closed(g, scale, new Rectangle2D.Double(seen.x, 0, seen.width, bottom));
        days(bottom);
        chart.eachRow(seen.getMinY(), seen.getMaxY(), this::row);
        chart.eachRow(seen.getMinY(), seen.getMaxY(), this::ends);
        picture.timetable().ends().forEach(end -> wanted(end, bottom));
        chart.drag().ifPresent(this::ghost);
    }

    /** Hatches closed hours within a part of a component that is as wide as the scale. */
    static void closed(Graphics2D graphics, TimeScale scale, Rectangle2D part) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        double step = UIScale.scale(HATCH);
        for (TimeScale.Part closed : scale.closed()) {
            Rectangle2D box = new Rectangle2D.Double(
                            closed.left(), part.getY(), closed.right() - closed.left(), part.getHeight())
                    .createIntersection(part);
            if (box.getWidth() > 0 && box.getHeight() > 0) {
                Shape clip = g.getClip();
                g.clip(box);
                g.setColor(Colours.of("closed"));
                g.fill(box);
                g.setColor(Colours.of("line"));
                double from = Math.floor((box.getMinX() - box.getHeight()) / step) * step;
                for (double x = from; x < box.getMaxX(); x += step) {
                    g.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getMinY()));
                }
                g.setClip(clip);
            }
        }
        g.dispose();
    }

    private void days(double bottom) {
        g.setColor(Colours.of("outline"));
        for (LocalDate day : scale.days()) {
            double x = scale.day(day).left();
            if (x > 0 && x >= seen.getMinX() - 1 && x <= seen.getMaxX() + 1) {
                g.draw(new Line2D.Double(x, 0, x, bottom));
            }
        }
    }

    private void row(int r) {
        ChartRow row = picture.rows().get(r);
        double end = chart.rowTop(r) + TimeChart.rowHeight(row);
        g.setColor(Colours.of("line"));
        g.draw(new Line2D.Double(seen.getMinX(), end, seen.getMaxX(), end));
        for (Bar bar : row.bars()) {
            Rectangle2D box = chart.box(r, bar);
            double room = UIScale.scale(8f);
            if (box.getMaxX() + room >= seen.getMinX() && box.getMinX() - room <= seen.getMaxX()) {
                bar(r, bar, box);
            }
        }
    }

    private void ends(int r) {
        for (JobEnd end : picture.timetable().ends()) {
            picture.lastOf(end)
                    .ifPresent(last -> picture.rows().get(r).bars().stream()
                            .filter(bar -> bar.isSame(last))
                            .forEach(bar -> after(r, end, chart.box(r, bar))));
        }
    }

    // ---- bars

    private void bar(int row, Bar bar, Rectangle2D box) {
        Entry entry = bar.entry();
        JobMark mark = picture.mark(entry.job());
        if (bar.isWait()) {
            g.setColor(Colours.of("tile"));
            g.fill(box);
            g.setColor(mark.ink());
            g.setStroke(new BasicStroke(UIScale.scale(1f)));
            g.draw(box);
        } else {
            worked(row, bar, mark, box);
        }
        if (entry.critical()) {
            critical(box);
        }
        if (entry.doing() == Doing.WORK && picture.fixed().contains(entry)) {
            pin(box);
        }
        if (entry.movedFrom().isPresent()) {
            SeveritySign sign = new SeveritySign(Severity.WARN);
            sign.paintIcon(chart, g, (int) (box.getMaxX() - sign.getIconWidth()), (int) box.getMinY());
        }
        if (chart.isChosen(bar)) {
            chosen(box);
        }
    }

    private void worked(int row, Bar bar, JobMark mark, Rectangle2D box) {
        List<Spell> spells = ChartPicture.spells(bar.entry());
        g.setColor(mark.ink());
        g.setStroke(new BasicStroke(UIScale.scale(2f)));
        g.draw(new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        boolean first = true;
        for (Spell spell : spells) {
            Rectangle2D part = chart.box(row, bar, spell.from(), spell.to());
            g.setColor(mark.fill());
            g.fill(part);
            double band = first ? Math.min(UIScale.scale(9f), part.getWidth() / 2) : 0;
            if (band > 0) {
                mark.paint(g, new Rectangle2D.Double(part.getX(), part.getY(), band, part.getHeight()));
            }
            g.setColor(mark.ink());
            g.draw(part);
            label(bar.entry(), part, band, first);
            first = false;
        }
    }

    /** Words where they fit, at least in part. */
    private void label(Entry entry, Rectangle2D part, double band, boolean first) {
        double room = part.getWidth() - band - UIScale.scale(6f);
        if (!first || entry.doing() != Doing.WORK || room < UIScale.scale(14f)) {
            return;
        }
        Shape clip = g.getClip();
        g.clip(new Rectangle2D.Double(part.getX(), part.getY(), part.getWidth() - UIScale.scale(2f), part.getHeight()));
        g.setColor(chart.getForeground());
        double middle = part.getCenterY() + g.getFontMetrics().getAscent() / 2.0 - UIScale.scale(2f);
        g.drawString(picture.label().apply(entry), (float) (part.getX() + band + UIScale.scale(4f)), (float) middle);
        g.setClip(clip);
    }

    /** A thick lower edge with a lozenge at its beginning. */
    private void critical(Rectangle2D box) {
        double thick = UIScale.scale(3f);
        double half = UIScale.scale(4.5f);
        g.setColor(chart.getForeground());
        g.fill(new Rectangle2D.Double(box.getX(), box.getMaxY() - thick / 2, box.getWidth(), thick));
        Path2D lozenge = new Path2D.Double();
        lozenge.moveTo(box.getX() - half, box.getMaxY());
        lozenge.lineTo(box.getX(), box.getMaxY() - half);
        lozenge.lineTo(box.getX() + half, box.getMaxY());
        lozenge.lineTo(box.getX(), box.getMaxY() + half);
        lozenge.closePath();
        g.fill(lozenge);
    }

    /** A fixed start: a pin at the upper corner. */
    private void pin(Rectangle2D box) {
        double size = UIScale.scale(5f);
        g.setColor(chart.getForeground());
        Path2D pin = new Path2D.Double();
        pin.moveTo(box.getX() - size, box.getY() - size / 2);
        pin.lineTo(box.getX() + size, box.getY() - size / 2);
        pin.lineTo(box.getX(), box.getY() + size);
        pin.closePath();
        g.fill(pin);
        g.draw(new Line2D.Double(box.getX(), box.getY(), box.getX(), box.getMaxY()));
    }

    private void chosen(Rectangle2D box) {
        double out = UIScale.scale(2.5f);
        g.setColor(chart.isFocusOwner() ? Colours.of("accent") : Colours.of("outline"));
        g.setStroke(new BasicStroke(UIScale.scale(2.5f)));
        g.draw(new Rectangle2D.Double(
                box.getX() - out, box.getY() - out, box.getWidth() + 2 * out, box.getHeight() + 2 * out));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
    }

    // ---- ends

    /** From the end of a job to when it is ready four times in five. */
    private void after(int row, JobEnd end, Rectangle2D last) {
        if (picture.p80().containsKey(end.job())) {
            double right = scale.x(picture.p80().get(end.job()));
            double high = UIScale.scale(7f);
            Rectangle2D band = new Rectangle2D.Double(
                    last.getMaxX(), last.getCenterY() - high / 2, Math.max(0, right - last.getMaxX()), high);
            Color ink = picture.mark(end.job()).ink();
            g.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 70));
            g.fill(band);
            g.setColor(ink);
            g.draw(band);
            g.draw(new Line2D.Double(right, last.getMinY(), right, last.getMaxY()));
            String text = TimetableWorkbench.TEXTS.of("chart.p80");
            double left = Math.max(right, last.getMaxX()) + UIScale.scale(6f);
            Rectangle2D room = new Rectangle2D.Double(
                    left, last.getMinY(), g.getFontMetrics().stringWidth(text), last.getHeight());
            if (picture.rows().get(row).bars().stream()
                    .noneMatch(bar -> chart.box(row, bar).intersects(room))) {
                g.setColor(chart.getForeground());
                g.drawString(text, (float) left, (float) last.getMinY() + UIScale.scale(18f));
            }
        }
    }

    /** A dashed line where a job is wanted. */
    private void wanted(JobEnd end, double bottom) {
        end.wanted().ifPresent(at -> {
            double x = scale.x(at);
            g.setColor(picture.mark(end.job()).ink());
            float dash = UIScale.scale(5f);
            g.setStroke(new BasicStroke(
                    UIScale.scale(1.6f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {dash, dash}, 0));
            g.draw(new Line2D.Double(x, 0, x, bottom));
            g.setStroke(new BasicStroke(UIScale.scale(1f)));
        });
    }

    private void ghost(TimeChart.Drag drag) {
        Rectangle from = chart.boxOf(drag.bar());
        double x = scale.x(drag.start());
        float dash = UIScale.scale(4f);
        g.setColor(Colours.of("accent"));
        g.setStroke(new BasicStroke(
                UIScale.scale(2f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {dash, dash}, 0));
        g.draw(new Rectangle2D.Double(x, from.y, from.width, from.height));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        g.setColor(chart.getForeground());
        g.drawString(
                TimetableText.clock(drag.start().toLocalTime()),
                (float) x + UIScale.scale(4f),
                (float) from.getMaxY() - UIScale.scale(6f));
    }
}
