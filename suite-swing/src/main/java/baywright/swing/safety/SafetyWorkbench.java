package baywright.swing.safety;

import baywright.swing.api.Desk;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** Where it is seen who takes in how much, and answered for what is dangerous. */
final class SafetyWorkbench implements Workbench {

    private static final int PLACE = 330;

    @Override
    public String id() {
        return "safety";
    }

    @Override
    public String title() {
        return Words.of("title");
    }

    @Override
    public Icon icon() {
        return LineIcon.ofStrip(
                "M 10 2 L 17 4.5 L 17 10 Q 16.5 15 10 18 Q 3.5 15 3 10 L 3 4.5 Z M 10 6 L 10 11 M 10 13.6 L 10 14");
    }

    @Override
    public int order() {
        return PLACE;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new SafetyView(desk);
    }
}
