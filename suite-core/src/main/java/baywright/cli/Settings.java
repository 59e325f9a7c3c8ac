package baywright.cli;

import baywright.workspace.UserFolders;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the program keeps for a user between runs.
 *
 * @param folder where it is kept; made when first needed
 */
record Settings(Path folder) {

    private static final String LAST_WORKSPACE = "last-workspace";

    /** The user's usual place for such things on this system. */
    static Settings ofUser() {
        return new Settings(UserFolders.settings());
    }

    /** The workspace that was opened last, if one was and it can be read. */
    Optional<Path> lastWorkspace() {
        try {
            String text = Files.readString(folder.resolve(LAST_WORKSPACE), StandardCharsets.UTF_8)
                    .strip();
            return text.isEmpty() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Remembers a workspace as the one opened last; silently forgets it where nothing can be written. */
    void rememberWorkspace(Path workspace) {
        try {
            Files.createDirectories(folder);
            Files.writeString(
                    folder.resolve(LAST_WORKSPACE), workspace.toAbsolutePath() + "\n", StandardCharsets.UTF_8);
        } catch (IOException e) {
            // Opening the workspace matters, remembering it is a courtesy.
            return;
        }
    }
}
