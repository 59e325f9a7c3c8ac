package baywright.swing.plugins;

import baywright.swing.plugins.PluginJar.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folders in which plug-ins are looked for.
 *
 * @param user      the user's own, whether or not it exists; empty: there is none
 * @param workspace that of the open workspace
 */
public record PluginFolders(Optional<Path> user, Optional<Path> workspace) {

    /** Name of the folder in a workspace and beside the user's settings. */
    public static final String NAME = "plugins";

    /**
     * What lies there.
     *
     * @param jars     in order of origin and name; a jar in both folders with the same content only once
     * @param unusable a sentence for each file or folder that cannot be read
     */
    public record Found(List<PluginJar> jars, List<String> unusable) {
        public Found {
            jars = List.copyOf(jars);
            unusable = List.copyOf(unusable);
        }
    }

    /** Looks through the folders; a folder that does not exist has nothing in it. Reads every jar: not for the event thread. */
    public Found look() {
        List<PluginJar> jars = new ArrayList<>();
        List<String> unusable = new ArrayList<>();
        user.ifPresent(folder -> look(folder, Origin.USER, jars, unusable));
        workspace.ifPresent(folder -> look(folder, Origin.WORKSPACE, jars, unusable));
        return new Found(jars, unusable);
    }

    private static void look(Path folder, Origin origin, List<PluginJar> jars, List<String> unusable) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(PluginFolders::isJar).sorted().toList()) {
                try {
                    PluginJar jar = new PluginJar(file, origin, sha256(file));
                    if (jars.stream().noneMatch(j -> j.sha256().equals(jar.sha256()))) {
                        jars.add(jar);
                    }
                } catch (IOException e) {
                    unusable.add(PluginTexts.of("jar.unreadable", file));
                }
            }
        } catch (IOException e) {
            unusable.add(PluginTexts.of("folder.unreadable", folder));
        }
    }

    private static boolean isJar(Path file) {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".jar");
    }

    static String sha256(Path file) throws IOException {
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest())) {
            in.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of()
                    .formatHex(((DigestInputStream) in).getMessageDigest().digest());
        }
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
