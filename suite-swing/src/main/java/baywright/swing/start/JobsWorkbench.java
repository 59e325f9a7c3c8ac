package baywright.swing.start;

import baywright.swing.api.Desk;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** All jobs of the shop with how they stand, and the chosen one at a glance. */
final class JobsWorkbench implements Workbench {

    @Override
    public String id() {
        return "jobs";
    }

    @Override
    public String title() {
        return Words.of("workbench.title");
    }

    @Override
    public Icon icon() {
        return LineIcon.ofStrip(
                "M 3 5 L 4 6 L 6 3.5 M 9 5 L 17 5 M 3 10.5 L 4 11.5 L 6 9 M 9 10.5 L 17 10.5 M 3 16 L 4 17 L 6 14.5 M 9 16 L 17 16");
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public boolean needsJob() {
        return false;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new JobsView(desk);
    }
}
