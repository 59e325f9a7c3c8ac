package baywright.swing.plugins;

import java.nio.file.Path;

/**
 * A jar in a folder for plug-ins.
 *
 * @param file   where it is
 * @param origin whose folder it lies in
 * @param sha256 its content, 64 hexadecimal digits in lower case
 */
public record PluginJar(Path file, Origin origin, String sha256) {

    /** Whose folder a jar lies in. */
    public enum Origin {
        /** The user's own folder: whoever put it there wanted it. */
        USER,
        /** A workspace's folder: it may have come along with the workspace and runs only after a yes. */
        WORKSPACE
    }

    /** Name of the file. */
    public String name() {
        return file.getFileName().toString();
    }
}
