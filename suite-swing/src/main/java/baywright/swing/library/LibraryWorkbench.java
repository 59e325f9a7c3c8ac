package baywright.swing.library;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import javax.swing.Icon;

/** The place to read and write stage scripts. */
final class LibraryWorkbench implements Workbench {

    private static final int ORDER = 500;

    private final Texts texts = Texts.beside(LibraryWorkbench.class, "texts");

    @Override
    public String id() {
        return "library";
    }

    @Override
    public String title() {
        return texts.of("title");
    }

    @Override
    public Icon icon() {
        return new ShelfIcon();
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public boolean needsJob() {
        return false;
    }

    @Override
    public WorkbenchView open(Desk desk) {
        return new LibraryView(desk, texts);
    }
}
