package baywright.swing.survey;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.DrawnIcon;
import java.awt.Graphics2D;
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
    private static final class Gauge extends DrawnIcon {

        Gauge() {
            super(20);
        }

        @Override
        protected void draw(Graphics2D g) {
            g.draw(new RoundRectangle2D.Double(6, 1.5, 8, 11, 3, 3));
            g.draw(new Line2D.Double(8, 5, 12, 5));
            g.draw(new Line2D.Double(10, 12.5, 10, 15.5));
            Path2D panel = new Path2D.Double();
            panel.moveTo(1.5, 18.5);
            panel.quadTo(10, 14.5, 18.5, 18.5);
            g.draw(panel);
        }
    }
}
