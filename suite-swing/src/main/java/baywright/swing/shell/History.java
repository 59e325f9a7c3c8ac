package baywright.swing.shell;

import baywright.site.OpenShop;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The edits that can be taken back, and those taken back that can be made again. On the event thread. */
final class History {

    /** So many edits back; each keeps what it changed alone, the rest is shared. */
    private static final int LONGEST = 1000;

    /**
     * One edit, or several that joined.
     *
     * @param title  what the user did
     * @param joins  mark of edits that go together; empty: none
     * @param before the shop before it
     * @param after  the shop after it
     * @param job    id of the job that was chosen
     */
    record Edit(String title, String joins, OpenShop before, OpenShop after, Optional<String> job) {}

    private final Deque<Edit> done = new ArrayDeque<>();
    private final Deque<Edit> undone = new ArrayDeque<>();
    private boolean sealed;

    /** Notes an edit; one that joins the last becomes part of it. */
    void add(Edit edit) {
        undone.clear();
        Edit last = done.peek();
        if (last != null && !sealed && !edit.joins().isEmpty() && edit.joins().equals(last.joins())) {
            done.pop();
            done.push(new Edit(last.title(), last.joins(), last.before(), edit.after(), last.job()));
            return;
        }
        sealed = false;
        done.push(edit);
        if (done.size() > LONGEST) {
            done.removeLast();
        }
    }

    /** Lets no further edit join the last one. */
    void seal() {
        sealed = true;
    }

    Optional<Edit> undo() {
        sealed = true;
        return move(done, undone);
    }

    Optional<Edit> redo() {
        sealed = true;
        return move(undone, done);
    }

    private static Optional<Edit> move(Deque<Edit> from, Deque<Edit> to) {
        Optional<Edit> edit = Optional.ofNullable(from.poll());
        edit.ifPresent(to::push);
        return edit;
    }

    /** The edit that would be taken back. */
    Optional<Edit> last() {
        return Optional.ofNullable(done.peek());
    }

    /** The edit that would be made again. */
    Optional<Edit> next() {
        return Optional.ofNullable(undone.peek());
    }

    void clear() {
        done.clear();
        undone.clear();
        sealed = false;
    }
}
