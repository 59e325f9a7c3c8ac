package baywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/** A word that names a workspace. */
final class WorkspacePath {

    private WorkspacePath() {}

    /**
     * The workspace's folder.
     *
     * @throws BadInput when there is none
     */
    static Path root(Session session, Path given) {
        if (!Files.isRegularFile(given.resolve("shop.json"))) {
            throw session.badInput("open.no-workspace", session.shown(given));
        }
        return given.toAbsolutePath().normalize();
    }
}
