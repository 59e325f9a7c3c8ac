package baywright.library;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A folder in which libraries are kept as data once they are read, one file for each. It only saves time: what it holds
 * is checked against the texts, and a library comes out the same without it.
 */
public final class ScriptCache {

    private final Optional<Path> folder;

    private ScriptCache(Optional<Path> folder) {
        this.folder = folder;
    }

    /** Keeps nothing and finds nothing. */
    public static ScriptCache none() {
        return new ScriptCache(Optional.empty());
    }

    /** Keeps libraries in this folder, which is made when it is missing. */
    public static ScriptCache in(Path folder) {
        return new ScriptCache(Optional.of(folder));
    }

    /** The folder of this user, where the system wants such files; none when there is no such place. */
    public static ScriptCache ofUser() {
        return new ScriptCache(
                userFolder(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "")));
    }

    /**
     * The user's folder for libraries: below {@code XDG_CACHE_HOME} or {@code .cache} (XDG Base Directory Specification
     * 0.8, a relative path there counts as none), {@code Library/Caches} on macOS, {@code LOCALAPPDATA} on Windows.
     */
    static Optional<Path> userFolder(Map<String, String> environment, String system, String home) {
        String kind = system.toLowerCase(Locale.ROOT);
        if (kind.startsWith("windows")) {
            return absolute(environment.get("LOCALAPPDATA"))
                    .map(p -> p.resolve("Baywright").resolve("scripts"));
        }
        Optional<Path> own = absolute(home);
        if (kind.startsWith("mac")) {
            return own.map(p ->
                    p.resolve("Library").resolve("Caches").resolve("baywright").resolve("scripts"));
        }
        return absolute(environment.get("XDG_CACHE_HOME"))
                .or(() -> own.map(p -> p.resolve(".cache")))
                .map(p -> p.resolve("baywright").resolve("scripts"));
    }

    private static Optional<Path> absolute(String path) {
        return Optional.ofNullable(path).filter(p -> !p.isBlank()).map(Path::of).filter(Path::isAbsolute);
    }

    /** The file for the library in a folder. */
    Optional<CacheFile> fileOf(Path library) {
        String name = Hashes.of(library.toAbsolutePath().normalize().toString()).substring(0, 32) + CacheFile.ENDING;
        return folder.map(f -> new CacheFile(f, name));
    }
}
