package baywright.swing.api;

import javax.swing.Icon;

/** A place to work at. Made once, its view when it is first shown. */
public interface Workbench {

    /** Stable kebab-case id, by which a {@link Destination} names it. */
    String id();

    /** Name for people, one or two words in the user's language. */
    String title();

    /** 20 units square; coloured by the component's foreground so that it reads in light and dark. */
    Icon icon();

    /** Place in the strip, the least on top; the suite's own use 100, 200 … */
    int order();

    /** Whether it needs a chosen job; without one the suite shows how to choose one. */
    default boolean needsJob() {
        return true;
    }

    /** Makes its view; called on the event thread. */
    WorkbenchView open(Desk desk);
}
