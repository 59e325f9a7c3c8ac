package baywright.remote;

import java.util.Optional;

/**
 * What became of a proposal.
 *
 * @param commit  that it lies in
 * @param unsent  why the remote has not got it; it is kept and sent later. Empty: it is sent
 */
public record Published(String commit, Optional<RemoteFault> unsent) {

    /** Whether the remote has it. */
    public boolean isSent() {
        return unsent.isEmpty();
    }
}
