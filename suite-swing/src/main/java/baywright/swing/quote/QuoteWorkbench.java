package baywright.swing.quote;

import baywright.swing.api.Desk;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** Where the price of the chosen job is looked into. */
final class QuoteWorkbench implements Workbench {

    private static final int PLACE = 340;

    @Override
    public String id() {
        return "quote";
    }

    @Override
    public String title() {
        return Words.of("title");
    }

    /** Bars that pile up, as the price does. */
    @Override
    public Icon icon() {
        return LineIcon.ofStrip("M 2 18 L 18 18 M 3 18 L 3 13 L 6 13 L 6 18 M 7 13 L 7 9 L 10 9 L 10 13 Z"
                + " M 11 9 L 11 5 L 14 5 L 14 9 Z M 15 18 L 15 5 L 18 5 L 18 18");
    }

    @Override
    public int order() {
        return PLACE;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new QuoteView(desk);
    }
}
