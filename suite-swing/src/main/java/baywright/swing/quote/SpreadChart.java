package baywright.swing.quote;

import baywright.chance.Sample;
import baywright.swing.api.Colours;
import baywright.swing.parts.ChartLook;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.UIManager;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How often the runs came to how much, with lines at the shares that were asked for and at a limit. For the eye only; the same
 * figures stand beside it in words.
 */
final class SpreadChart extends JComponent {

    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 170;
    private static final int BARS = 40;
    private static final int LABELS = 4;
    private static final float DASH = 4;

    /** Free at both ends, so that the name of a line there is not cut. */
    private static final double EDGE = 0.1;

    /** Room above the highest bar for the names of the lines, which stand at two heights so that near ones do not meet. */
    private static final double ROOM = 1.36;

    private static final double UPPER = 1.27;
    private static final double LOWER = 1.12;

    /**
     * What is drawn.
     *
     * @param sample run by run
     * @param shares that get a line, from 0 to 1
     * @param names  of these lines, short
     * @param limit  value that gets a strong line, such as the net price
     * @param limitName its name
     * @param axis   writes a value at the axis
     */
    record Spread(
            Sample sample,
            List<Double> shares,
            List<String> names,
            Optional<Double> limit,
            String limitName,
            Function<Double, String> axis) {}

    private transient Optional<Spread> spread = Optional.empty();

    void show(Optional<Spread> now) {
        spread = now;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, UIScale.scale(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (spread.isEmpty() || getWidth() < UIScale.scale(80)) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        chart(spread.get()).paint(g, getWidth(), getHeight());
        g.dispose();
    }

    private XYChart chart(Spread now) {
        XYChart chart =
                new XYChartBuilder().width(getWidth()).height(getHeight()).build();
        ChartLook.apply(chart.getStyler(), UIScale.scale(4));
        chart.getStyler().setYAxisTicksVisible(false);
        chart.getStyler().setPlotGridLinesVisible(false);
        chart.getStyler().setXAxisMaxLabelCount(LABELS);
        chart.getStyler().setXAxisTickLabelsFormattingFunction(now.axis());
        chart.getStyler().setAnnotationTextFont(ChartLook.font());
        chart.getStyler().setAnnotationTextFontColor(UIManager.getColor("Label.foreground"));
        double[] sorted = now.sample().sorted();
        double low = Math.min(sorted[0], now.limit().orElse(sorted[0]));
        double high = Math.max(sorted[sorted.length - 1], now.limit().orElse(sorted[0]));
        double room = Math.max((high - low) * EDGE, 1e-6);
        chart.getStyler().setXAxisMin(low - room).setXAxisMax(high + room);
        double top = bars(chart, sorted);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(top * ROOM);
        Color ink = UIManager.getColor("Label.foreground");
        for (int i = 0; i < now.shares().size(); i++) {
            double at = now.sample().quantile(now.shares().get(i));
            line(chart, "share" + i, at, top, dashed(), ink);
            chart.addAnnotation(new AnnotationText(now.names().get(i), at, top * (i % 2 == 0 ? LOWER : UPPER), false));
        }
        now.limit().ifPresent(at -> {
            line(chart, "limit", at, top, new BasicStroke(UIScale.scale(2f)), Colours.of("stop"));
            chart.addAnnotation(new AnnotationText(now.limitName(), at, top * UPPER, false));
        });
        return chart;
    }

    /** The runs counted in as many bars as are easy to see; gives the highest. */
    private static double bars(XYChart chart, double[] sorted) {
        double least = sorted[0];
        double width = Math.max((sorted[sorted.length - 1] - least) / BARS, 1e-9);
        double[] counts = new double[BARS];
        for (double value : sorted) {
            counts[(int) Math.min(BARS - 1, (value - least) / width)]++;
        }
        double[] x = new double[2 * BARS + 2];
        double[] y = new double[2 * BARS + 2];
        double top = 0;
        for (int i = 0; i < BARS; i++) {
            x[2 * i + 1] = least + i * width;
            x[2 * i + 2] = least + (i + 1) * width;
            y[2 * i + 1] = counts[i];
            y[2 * i + 2] = counts[i];
            top = Math.max(top, counts[i]);
        }
        x[0] = least;
        x[2 * BARS + 1] = x[2 * BARS];
        XYSeries area = chart.addSeries("runs", x, y);
        area.setXYSeriesRenderStyle(XYSeriesRenderStyle.Area);
        area.setMarker(SeriesMarkers.NONE);
        Color accent = Colours.of("accent");
        area.setLineColor(accent);
        area.setFillColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 110));
        area.setLineStyle(new BasicStroke(1));
        return top;
    }

    private static BasicStroke dashed() {
        float dash = UIScale.scale(DASH);
        return new BasicStroke(
                UIScale.scale(1f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {dash, dash}, 0);
    }

    private static void line(XYChart chart, String name, double at, double top, BasicStroke stroke, Color colour) {
        XYSeries line = chart.addSeries(name, new double[] {at, at}, new double[] {0, top * 1.04});
        line.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
        line.setMarker(SeriesMarkers.NONE);
        line.setLineStyle(stroke);
        line.setLineColor(colour);
    }
}
