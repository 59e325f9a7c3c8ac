package baywright.remote;

import baywright.pack.Manifest;
import baywright.pack.Standing;
import baywright.workspace.Fields;
import java.time.Instant;
import java.util.Optional;

/**
 * What a site proposes for the main line, and nobody has accepted or declined yet.
 *
 * @param site     whose branch it is on
 * @param commit   that it lies in
 * @param at       when it was made, by the clock of whoever made it
 * @param manifest what it says of itself: who and why; empty where it cannot be used
 * @param standing whether somebody known has signed it; empty where it cannot be used
 * @param refused  why it cannot be used, in one line; empty when it can
 */
public record Proposal(
        String site,
        String commit,
        Instant at,
        Optional<Manifest> manifest,
        Optional<Standing> standing,
        Optional<String> refused) {

    static boolean isBranch(String branch) {
        return branch.startsWith(Followed.PROPOSALS) && Fields.isId(branch.substring(Followed.PROPOSALS.length()));
    }
}
