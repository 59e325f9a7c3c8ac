package baywright.swing.sites;

import baywright.swing.api.Colours;
import baywright.swing.parts.ChartLook;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;

/**
 * By how much the prices of the jobs on top of the table move, each bar with the number of its row; up is dearer. For the eye only: the
 * table says the same.
 */
final class ImpactChart extends JComponent {

    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 130;
    private static final int MOST = 24;
    private static final double FILL = 0.72;

    private transient List<BigDecimal> moves = List.of();

    /** @param all by how much each job's price moves, in the order of the table */
    void show(List<BigDecimal> all) {
        moves = all.stream().limit(MOST).toList();
        setVisible(moves.stream().anyMatch(m -> m.signum() != 0));
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, UIScale.scale(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (moves.isEmpty() || getWidth() < UIScale.scale(80)) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        chart().paint(g, getWidth(), getHeight());
        g.dispose();
    }

    private CategoryChart chart() {
        CategoryChart chart =
                new CategoryChartBuilder().width(getWidth()).height(getHeight()).build();
        ChartLook.apply(chart.getStyler(), UIScale.scale(4));
        chart.getStyler().setStacked(true).setAvailableSpaceFill(FILL);
        chart.getStyler().setXAxisTickMarkSpacingHint(1);
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= moves.size(); i++) {
            names.add(Integer.toString(i));
        }
        series(
                chart,
                "dearer",
                names,
                moves.stream().map(m -> m.max(BigDecimal.ZERO)).toList(),
                Colours.of("accent"));
        series(
                chart,
                "cheaper",
                names,
                moves.stream().map(m -> m.min(BigDecimal.ZERO)).toList(),
                Colours.of("warn"));
        return chart;
    }

    private static void series(
            CategoryChart chart, String name, List<String> names, List<BigDecimal> heights, Color colour) {
        CategorySeries series = chart.addSeries(name, names, heights);
        series.setFillColor(colour);
        series.setLineColor(colour);
    }
}
