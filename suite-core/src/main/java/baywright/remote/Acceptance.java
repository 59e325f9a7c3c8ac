package baywright.remote;

import baywright.library.ScriptCache;
import baywright.pack.Pack;
import baywright.pack.Standing;
import baywright.pack.Version;
import baywright.script.Problem;
import baywright.share.Choice;
import baywright.share.Clash;
import baywright.share.LibraryChange;
import java.util.List;
import org.eclipse.jgit.lib.ObjectId;

/** What accepting a proposal would make of the main line: worked out, shown, and then done or not. */
public final class Acceptance {

    private final Proposal proposal;
    private final Choice choice;
    private final ScriptCache cache;
    private final ObjectId main;
    private final Pack before;
    private final Content content;
    private final Outcome outcome;
    private final List<String> items;

    Acceptance(
            Proposal proposal,
            Choice choice,
            ScriptCache cache,
            ObjectId main,
            Pack before,
            Content content,
            Outcome outcome,
            List<String> items) {
        this.proposal = proposal;
        this.choice = choice;
        this.cache = cache;
        this.main = main;
        this.before = before;
        this.content = content;
        this.outcome = outcome;
        this.items = List.copyOf(items);
    }

    Choice choice() {
        return choice;
    }

    ScriptCache cache() {
        return cache;
    }

    ObjectId main() {
        return main;
    }

    Pack before() {
        return before;
    }

    Content content() {
        return content;
    }

    /** What is to be accepted. */
    public Proposal proposal() {
        return proposal;
    }

    /** What the main line would say otherwise, in meaning. */
    public List<LibraryChange> changes() {
        return outcome.changes();
    }

    /** Items that the main line would have otherwise, by id. */
    public List<String> items() {
        return items;
    }

    /** What both the main line (ours) and the proposal (theirs) have changed, each in its own way. */
    public List<Clash> clashes() {
        return outcome.clashes();
    }

    /** What would be wrong with the main line and is not now, named below {@code stages/}. */
    public List<Problem> problems() {
        return outcome.problems();
    }

    /** Whether somebody on the site's list of trust has signed the proposal. */
    public Standing standing() {
        return proposal.standing().orElseGet(Standing.Unsigned::new);
    }

    /** The version that the main line has now. */
    public Version now() {
        return before.manifest().version();
    }

    /** The version that it gets if no other is asked for. */
    public Version next() {
        return now().nextPatch();
    }

    /** Whether nothing stands against it but, perhaps, that nobody known has signed it. */
    public boolean isReady() {
        return outcome.isReady();
    }
}
