package baywright.swing.parts;

import baywright.swing.api.Colours;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.UIManager;
import org.knowm.xchart.style.AxesChartStyler;

/** Makes a chart look like the rest of the window, light or dark. */
public final class ChartLook {

    private ChartLook() {}

    /** The labels' font, a little smaller where the look says so. */
    public static Font font() {
        Font small = UIManager.getFont("small.font");
        return small == null ? new JLabel().getFont() : small;
    }

    /** @param unit the gap between a chart and its labels, in pixels */
    public static void apply(AxesChartStyler styler, int unit) {
        Color ink = new JLabel().getForeground();
        Color ground = UIManager.getColor("Panel.background");
        styler.setLegendVisible(false);
        styler.setChartTitleVisible(false);
        styler.setChartBackgroundColor(ground);
        styler.setPlotBackgroundColor(ground);
        styler.setPlotBorderVisible(false);
        styler.setChartFontColor(ink);
        styler.setAxisTickLabelsColor(ink);
        styler.setAxisTickLabelsFont(font());
        styler.setAxisTickMarksColor(Colours.of("line"));
        styler.setPlotGridLinesColor(Colours.of("line"));
        styler.setPlotGridLinesStroke(new BasicStroke(1));
        styler.setPlotGridVerticalLinesVisible(false);
        styler.setAxisTicksLineVisible(false);
        styler.setPlotTicksMarksVisible(false);
        styler.setChartPadding(unit);
        styler.setPlotMargin(0);
        styler.setAxisTickPadding(unit);
        styler.setAxisTickMarkLength(unit / 2);
        styler.setPlotContentSize(1);
        styler.setAntiAlias(true);
        styler.setTextAntiAlias(true);
        styler.setAxisTitlesVisible(false);
    }
}
