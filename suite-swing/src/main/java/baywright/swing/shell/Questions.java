package baywright.swing.shell;

import java.util.List;

/** Asks the user to choose. On the event thread. */
@FunctionalInterface
interface Questions {

    /**
     * Asks and waits.
     *
     * @param choices words of the buttons, the harmless one first
     * @return index of the chosen one; less than 0 when none was
     */
    int choose(String title, String text, List<String> choices);
}
