package baywright.swing.shell;

import baywright.swing.api.Destination;
import baywright.swing.api.Notice;
import java.util.List;

/** What of the window the desk speaks to, on the event thread. */
interface Front {

    void go(Destination place);

    void say(Notice notice);

    /** The work under way, oldest first. */
    void show(List<RunningTask> tasks);

    /** Shows everything once more, as amounts are written another way now. */
    void again();
}
