package baywright.workspace;

import java.nio.file.Path;

/** Where the system wants a program to keep what belongs to its user. */
public final class UserFolders {

    private UserFolders() {}

    /**
     * The folder of the user's settings, which need not be there: below {@code XDG_CONFIG_HOME} or {@code .config} (XDG Base Directory
     * Specification 0.8, a relative path there counts as none), {@code Library/Application Support} on macOS, {@code APPDATA} on Windows;
     * the system property {@code baywright.settings} goes before all of these.
     */
    public static Path settings() {
        String given = System.getProperty("baywright.settings");
        if (given != null) {
            return Path.of(given);
        }
        String system = System.getProperty("os.name", "");
        if (system.startsWith("Windows") && System.getenv("APPDATA") != null) {
            return Path.of(System.getenv("APPDATA"), "Baywright");
        }
        Path user = home();
        if (system.startsWith("Mac")) {
            return user.resolve("Library/Application Support/Baywright");
        }
        String config = System.getenv("XDG_CONFIG_HOME");
        boolean usable = config != null && Path.of(config).isAbsolute();
        return (usable ? Path.of(config) : user.resolve(".config")).resolve("baywright");
    }

    /**
     * The folder for what lives only while the program runs, such as a socket; it need not be there: below {@code XDG_RUNTIME_DIR}, where the
     * system has one (XDG Base Directory Specification 0.8), otherwise beside the settings. Where the system property
     * {@code baywright.settings} is given, it is there.
     */
    public static Path running() {
        String runtime = System.getenv("XDG_RUNTIME_DIR");
        boolean usable = System.getProperty("baywright.settings") == null
                && runtime != null
                && Path.of(runtime).isAbsolute();
        return usable ? Path.of(runtime, "baywright") : settings().resolve("running");
    }

    /** The user's own folder, as the shell knows it. */
    public static Path home() {
        String shell = System.getenv("HOME");
        boolean usable = shell != null && Path.of(shell).isAbsolute();
        return Path.of(usable ? shell : System.getProperty("user.home"));
    }
}
