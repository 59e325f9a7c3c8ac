package baywright.remote;

import baywright.script.Problem;
import baywright.share.Clash;
import baywright.share.LibraryChange;
import java.util.List;
import org.eclipse.jgit.lib.ObjectId;

/** What a site would propose: worked out, shown, and then published or not. */
public final class Draft {

    private final Content content;
    private final Outcome outcome;
    private final List<String> items;
    private final List<ObjectId> parents;

    Draft(Content content, Outcome outcome, List<String> items, List<ObjectId> parents) {
        this.content = content;
        this.outcome = outcome;
        this.items = List.copyOf(items);
        this.parents = List.copyOf(parents);
    }

    Content content() {
        return content;
    }

    List<ObjectId> parents() {
        return parents;
    }

    /** What the shared library would say otherwise, in meaning, as against the version that the site has taken. */
    public List<LibraryChange> changes() {
        return outcome.changes();
    }

    /** Items that go along, by id: new ones that the scripts name, and others that were asked for. */
    public List<String> items() {
        return items;
    }

    /** What another copy of this workspace has proposed differently. */
    public List<Clash> clashes() {
        return outcome.clashes();
    }

    /** What would be wrong with the shared library and is not now, named below {@code stages/}. */
    public List<Problem> problems() {
        return outcome.problems();
    }

    /** Whether there is nothing that the shared library does not say already. */
    public boolean isEmpty() {
        return outcome.changes().isEmpty() && items.isEmpty();
    }

    /** Whether it can be published. */
    public boolean isReady() {
        return outcome.isReady() && !isEmpty();
    }
}
