package baywright.swing.sites;

import baywright.swing.api.Desk;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** Where stage scripts come in from other sites and go out to them. */
final class SitesWorkbench implements Workbench {

    private static final int PLACE = 700;

    private final Around around;

    SitesWorkbench(Around around) {
        this.around = around;
    }

    @Override
    public String id() {
        return "sites";
    }

    @Override
    public String title() {
        return Words.of("title");
    }

    @Override
    public Icon icon() {
        return LineIcon.ofStrip(
                "M 2.5 9 L 2.5 17 L 8.5 17 L 8.5 9 L 5.5 6 Z M 11.5 9 L 11.5 17 L 17.5 17 L 17.5 9 L 14.5 6 Z"
                        + " M 5.5 3 L 14.5 3 M 12.5 1.2 L 14.5 3 L 12.5 4.8");
    }

    @Override
    public int order() {
        return PLACE;
    }

    @Override
    public boolean needsJob() {
        return false;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new SitesView(desk, around);
    }
}
