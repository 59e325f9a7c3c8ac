package baywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A job as a command names it: its folder in a workspace.
 *
 * @param workspace the workspace's folder
 * @param folder    name of the job's folder below {@code jobs}
 */
record JobPath(Path workspace, String folder) {

    /**
     * Finds the workspace around a job's folder; the job's file itself may be given too.
     *
     * @throws BadInput when there is no such folder, or it does not lie in a workspace
     */
    static JobPath of(Session session, Path given) {
        Path path = given.toAbsolutePath().normalize();
        Path folder = Files.isRegularFile(path) && path.endsWith("job.json") ? path.getParent() : path;
        if (!Files.isDirectory(folder)) {
            throw session.badInput("job.none", given);
        }
        Path jobs = folder.getParent();
        if (jobs == null || !jobs.endsWith("jobs") || !Files.isRegularFile(jobs.resolveSibling("shop.json"))) {
            throw session.badInput("job.outside", given);
        }
        return new JobPath(jobs.getParent(), folder.getFileName().toString());
    }
}
