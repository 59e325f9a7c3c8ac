package baywright.swing.survey;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/** Where a vehicle is surveyed. */
final class SurveyWorkbench implements Workbench {

    private final Texts texts;

    SurveyWorkbench(Texts texts) {
        this.texts = texts;
    }

    @Override
    public String id() {
        return "survey";
    }

    @Override
    public String title() {
        return texts.of("title");
    }

    @Override
    public Icon icon() {
        return new Gauge();
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new SurveyView(desk, texts);
    }

    /** A hand gauge on a panel. */
    private record Gauge() implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.translate(x, y);
            double unit = UIScale.scale(1f);
            g.scale(unit, unit);
            g.setColor(c.getForeground());
            g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(new RoundRectangle2D.Double(6, 1.5, 8, 11, 3, 3));
            g.draw(new Line2D.Double(8, 5, 12, 5));
            g.draw(new Line2D.Double(10, 12.5, 10, 15.5));
            Path2D panel = new Path2D.Double();
            panel.moveTo(1.5, 18.5);
            panel.quadTo(10, 14.5, 18.5, 18.5);
            g.draw(panel);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(20);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(20);
        }
    }
}
