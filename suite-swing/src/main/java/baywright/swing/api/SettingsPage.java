package baywright.swing.api;

import javax.swing.JComponent;

/** A page among the settings. What is set there takes effect at once. */
public interface SettingsPage {

    /** Stable kebab-case id. */
    String id();

    /** Name for people in the user's language. */
    String title();

    /** Makes the page; called on the event thread each time the settings open. */
    JComponent open(Desk desk);
}
