package baywright.swing.quote;

import baywright.money.BuildUp.Bar;
import baywright.swing.api.Colours;
import baywright.swing.parts.ChartLook;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;

/**
 * The bars of a quote, each numbered like its row in the table below: sums stand on the ground, the others on what was before, and what
 * is let off hangs from it. For the eye only; the table says the same to the keyboard and to a screen reader.
 */
final class BuildUpChart extends JComponent {

    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 210;
    private static final double FILL = 0.72;
    private static final double ROOM = 1.05;
    private static final Color NOTHING = new Color(0, true);

    private final transient BuildUpRows rows;
    private final transient IntConsumer chosen;
    private int row = -1;
    private transient CategoryChart drawn;

    /** @param chosen gets the row of a bar that was clicked */
    BuildUpChart(BuildUpRows rows, IntConsumer chosen) {
        this.rows = rows;
        this.chosen = chosen;
        setPreferredSize(new Dimension(0, UIScale.scale(HEIGHT)));
        ToolTipManager.sharedInstance().registerComponent(this);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int at = rowAt(e.getX());
                if (at >= 0) {
                    BuildUpChart.this.chosen.accept(at);
                }
            }
        });
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, UIScale.scale(HEIGHT));
    }

    /** Marks the bar of a row; −1: none. */
    void mark(int other) {
        row = other;
        repaint();
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        int at = rowAt(e.getX());
        return at < 0 ? null : rows.getValueAt(at, BuildUpRows.NAME) + ", " + rows.getValueAt(at, BuildUpRows.AMOUNT);
    }

    /** The row of the bar at a place, −1 where there is none. */
    int rowAt(int x) {
        int all = places();
        if (drawn == null || rows.getRowCount() == 0) {
            return -1;
        }
        Rectangle2D plot = plot();
        int place = (int) Math.floor((x - plot.getX()) / plot.getWidth() * all);
        if (x < plot.getX() || place >= all || place == rows.ofPrice()) {
            return -1;
        }
        return place < rows.ofPrice() ? place : place - 1;
    }

    /** Between price and cost one place is left free. */
    private int places() {
        return rows.getRowCount() + 1;
    }

    private Rectangle2D plot() {
        double left = drawn.getScreenXFromChart(0);
        return new Rectangle2D.Double(left, 0, Math.max(1, getWidth() - left), getHeight());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (rows.getRowCount() == 0 || getWidth() < UIScale.scale(80)) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        drawn = chart();
        drawn.paint(g, getWidth(), getHeight());
        g.dispose();
    }

    private CategoryChart chart() {
        CategoryChart chart =
                new CategoryChartBuilder().width(getWidth()).height(getHeight()).build();
        ChartLook.apply(chart.getStyler(), UIScale.scale(4));
        chart.getStyler().setStacked(true).setAvailableSpaceFill(FILL);
        chart.getStyler().setXAxisTickMarkSpacingHint(1);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(top() * ROOM);
        List<String> names = new ArrayList<>();
        List<BigDecimal> ground = new ArrayList<>();
        Heights heights = new Heights();
        for (int i = 0; i < rows.getRowCount(); i++) {
            if (i == rows.ofPrice()) {
                names.add(" ");
                ground.add(BigDecimal.ZERO);
                heights.add(BigDecimal.ZERO, -1);
            }
            Bar bar = rows.bar(i);
            names.add(Integer.toString(i + 1));
            ground.add(bar.from().min(bar.to()));
            heights.add(bar.amount().abs(), i == row ? Heights.CHOSEN : Heights.of(bar));
        }
        series(chart, "ground", names, ground, NOTHING);
        series(chart, "sum", names, heights.of(Heights.SUM), Colours.of("accent"));
        series(chart, "more", names, heights.of(Heights.MORE), mixed(Colours.of("accent"), 0.5));
        series(chart, "less", names, heights.of(Heights.LESS), Colours.of("warn"));
        series(chart, "chosen", names, heights.of(Heights.CHOSEN), UIManager.getColor("Label.foreground"));
        return chart;
    }

    private double top() {
        return rows.bars().stream()
                .mapToDouble(bar -> bar.from().max(bar.to()).doubleValue())
                .max()
                .orElse(1);
    }

    private static void series(
            CategoryChart chart, String name, List<String> names, List<BigDecimal> heights, Color colour) {
        CategorySeries series = chart.addSeries(name, names, heights);
        series.setFillColor(colour);
        series.setLineColor(colour);
    }

    private static Color mixed(Color colour, double share) {
        Color ground = UIManager.getColor("Panel.background");
        return new Color(
                (int) (colour.getRed() * share + ground.getRed() * (1 - share)),
                (int) (colour.getGreen() * share + ground.getGreen() * (1 - share)),
                (int) (colour.getBlue() * share + ground.getBlue() * (1 - share)));
    }

    /** How high the bars of each colour are; a bar has one colour. */
    private static final class Heights {

        static final int SUM = 0;
        static final int MORE = 1;
        static final int LESS = 2;
        static final int CHOSEN = 3;

        private final List<List<BigDecimal>> all =
                List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());

        static int of(Bar bar) {
            if (bar.what().isSum()) {
                return SUM;
            }
            return bar.amount().signum() < 0 ? LESS : MORE;
        }

        void add(BigDecimal height, int kind) {
            for (int i = 0; i < all.size(); i++) {
                all.get(i).add(i == kind ? height : BigDecimal.ZERO);
            }
        }

        List<BigDecimal> of(int kind) {
            return all.get(kind);
        }
    }
}
