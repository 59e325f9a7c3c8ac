package baywright.swing.shell;

import baywright.workspace.EditsClaim;
import baywright.workspace.EditsJournal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The notes of unsaved edits that this window holds, by workspace. Safe to use from any thread. */
final class HeldNotes {

    private final Map<Path, EditsClaim> claims = new HashMap<>();

    /** The note in a workspace, which no other window writes from now on. */
    synchronized EditsJournal of(Path root) {
        return claims.computeIfAbsent(root, EditsClaim::in).journal();
    }

    /** Leaves those of all other workspaces to whoever opens them next. */
    synchronized void keepOnly(Path root) {
        for (Path other : List.copyOf(claims.keySet())) {
            if (!other.equals(root)) {
                claims.remove(other).close();
            }
        }
    }

    synchronized void release() {
        claims.values().forEach(EditsClaim::close);
        claims.clear();
    }
}
