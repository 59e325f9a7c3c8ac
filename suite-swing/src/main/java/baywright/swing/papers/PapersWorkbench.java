package baywright.swing.papers;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** Where what is handed out is looked at and saved. */
final class PapersWorkbench implements Workbench {

    static final Texts TEXTS = Texts.beside(PapersWorkbench.class, "texts");
    private static final int PLACE = 350;

    @Override
    public String id() {
        return "papers";
    }

    @Override
    public String title() {
        return TEXTS.of("title");
    }

    @Override
    public Icon icon() {
        return LineIcon.ofStrip(
                "M 5 2 L 12 2 L 16 6 L 16 18 L 5 18 Z M 12 2 L 12 6 L 16 6 M 8 10 L 13 10 M 8 13 L 13 13");
    }

    @Override
    public int order() {
        return PLACE;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new PapersView(desk);
    }
}
