package baywright.cli;

import baywright.library.Library;
import baywright.site.LibraryFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the folder of stage scripts that a word of the command line means. */
final class LibraryPath {

    private LibraryPath() {}

    /**
     * The library around a path: a workspace, a folder of scripts, or one script in such a folder.
     *
     * @throws BadInput when there is nothing of the kind
     */
    static LibraryFolder around(Session session, Path given) {
        Path path = given.toAbsolutePath().normalize();
        if (!Files.exists(path)) {
            throw session.badInput("path.none", given);
        }
        Path folder = Files.isRegularFile(path) ? rootOf(path.getParent()) : path;
        if (Files.isRegularFile(folder.resolve("shop.json"))) {
            return LibraryFolder.ofWorkspace(folder);
        }
        if (!holdsScripts(folder)) {
            throw session.badInput("path.no-scripts", given);
        }
        return LibraryFolder.of(folder);
    }

    /**
     * The library that a command works with: the one asked for, else the standard one.
     *
     * @throws BadInput when there is nothing of the kind
     * @throws baywright.site.SiteTrouble when it has an error
     */
    static Library usable(Session session, Optional<Path> asked) {
        LibraryFolder folder =
                around(session, asked.orElseGet(() -> session.home().stageScripts()));
        LibraryFolder.Loaded loaded = folder.load(session.cache());
        loaded.refuseErrors(folder.folder());
        return loaded.library();
    }

    /** Scripts may lie in folders of families; the library's own folder has the shapes, and no parent of it has them. */
    private static Path rootOf(Path folder) {
        for (Path at = folder; at != null; at = at.getParent()) {
            if (Files.isRegularFile(at.resolve("shapes.json"))) {
                return at;
            }
        }
        return folder;
    }

    private static boolean holdsScripts(Path folder) {
        try (Stream<Path> all = Files.walk(folder, 4)) {
            return all.anyMatch(p -> p.toString().endsWith(".groovy"));
        } catch (IOException e) {
            return false;
        }
    }
}
