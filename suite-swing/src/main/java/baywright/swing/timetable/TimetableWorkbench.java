package baywright.swing.timetable;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import baywright.swing.parts.LineIcon;
import javax.swing.Icon;

/** Where one sees when the work is done, by whom and in which bay. */
final class TimetableWorkbench implements Workbench {

    static final Texts TEXTS = Texts.beside(TimetableWorkbench.class, "texts");

    private static final int PLACE = 320;

    @Override
    public String id() {
        return "timetable";
    }

    @Override
    public String title() {
        return TEXTS.of("title");
    }

    @Override
    public Icon icon() {
        return LineIcon.ofStrip("M 3 3 L 3 17 L 18 17 M 5 5 L 11 5 L 11 8 L 5 8 Z M 8 11 L 16 11 L 16 14 L 8 14 Z");
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
        return new TimetableView(desk);
    }
}
