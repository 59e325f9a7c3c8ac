package baywright.swing.api;

import baywright.site.OpenShop;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import java.util.List;
import java.util.Optional;

/**
 * How everything on the desk stands at one moment.
 *
 * @param shop    the open shop, with edits not yet saved
 * @param jobId   id of the chosen job
 * @param worked  the chosen job proved and priced; empty while there is none or it cannot be read. It may be one edit behind while
 *                {@code working}
 * @param remarks what plug-ins' finding rules say of {@code worked}
 * @param working whether a newer result is being worked out
 * @param unsaved whether something is not yet written to the workspace
 */
public record DeskState(
        Optional<OpenShop> shop,
        Optional<String> jobId,
        Optional<WorkedJob> worked,
        List<Remark> remarks,
        boolean working,
        boolean unsaved) {

    public static final DeskState EMPTY =
            new DeskState(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), false, false);

    public DeskState {
        remarks = List.copyOf(remarks);
    }

    /** The chosen job as last edited; empty when none is chosen or it cannot be read. */
    public Optional<Job> job() {
        return shop.flatMap(open -> jobId.flatMap(open::job));
    }
}
