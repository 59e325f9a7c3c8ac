package baywright.swing.plan;

import baywright.swing.api.Desk;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import javax.swing.Icon;

/** Where the plan of the chosen job is made. */
final class PlanWorkbench implements Workbench {

    private static final int PLACE = 300;

    @Override
    public String id() {
        return "plan";
    }

    @Override
    public String title() {
        return Words.of("title");
    }

    @Override
    public Icon icon() {
        return new PlanIcon();
    }

    @Override
    public int order() {
        return PLACE;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new PlanView(desk);
    }
}
