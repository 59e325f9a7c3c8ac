package baywright.cli;

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
        String given = System.getProperty("baywright.settings");
        if (given != null) {
            return new Settings(Path.of(given));
        }
        String system = System.getProperty("os.name", "");
        if (system.startsWith("Windows") && System.getenv("APPDATA") != null) {
            return new Settings(Path.of(System.getenv("APPDATA"), "Baywright"));
        }
        Path user = userHome();
        if (system.startsWith("Mac")) {
            return new Settings(user.resolve("Library/Application Support/Baywright"));
        }
        String config = System.getenv("XDG_CONFIG_HOME");
        boolean usable = config != null && Path.of(config).isAbsolute();
        return new Settings((usable ? Path.of(config) : user.resolve(".config")).resolve("baywright"));
    }

    /** The user's own folder, as the shell knows it. */
    static Path userHome() {
        String shell = System.getenv("HOME");
        boolean usable = shell != null && Path.of(shell).isAbsolute();
        return Path.of(usable ? shell : System.getProperty("user.home"));
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
