package baywright.remote;

import baywright.workspace.Shown;
import java.net.URISyntaxException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.jgit.transport.URIish;

/** Where a repository lies: a folder, or a server by ssh or https. Nothing that would run a program, and nothing in clear. */
final class RemoteAddress {

    private static final Set<String> BY_NET = Set.of("ssh", "https");
    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:[\\\\/].*");
    private static final Pattern SCHEME = Pattern.compile("[A-Za-z0-9+.-]+::?.*", Pattern.DOTALL);
    private static final Pattern SHORT_SSH = Pattern.compile("[A-Za-z0-9._-]+@[A-Za-z0-9._-]+:[^:].*", Pattern.DOTALL);
    private static final Pattern PASSWORD = Pattern.compile("//[^/@]*@");
    private static final int LONGEST = 1000;

    private RemoteAddress() {}

    /**
     * The place that a text means.
     *
     * @throws RemoteFault when it means none, or holds a password
     */
    static URIish of(String text) {
        try {
            if (text.isBlank() || text.length() > LONGEST || !text.codePoints().allMatch(Shown::isPrintable)) {
                throw unknown(text, null);
            }
            if (isFolder(text)) {
                return new URIish()
                        .setPath(Path.of(text).toAbsolutePath().normalize().toString());
            }
            URIish uri = new URIish(text);
            if (uri.getPass() != null) {
                throw new RemoteFault(shown(uri), RemoteFault.Kind.ADDRESS_PASSWORD);
            }
            boolean isFile = "file".equals(uri.getScheme())
                    && (uri.getHost() == null || uri.getHost().isEmpty());
            boolean isNet =
                    (uri.getScheme() == null ? SHORT_SSH.matcher(text).matches() : BY_NET.contains(uri.getScheme()))
                            && isHost(uri.getHost());
            if (!isFile && !isNet) {
                throw unknown(text, null);
            }
            return isFile ? new URIish().setPath(uri.getPath()) : uri;
        } catch (URISyntaxException | InvalidPathException e) {
            throw unknown(text, e);
        }
    }

    private static boolean isFolder(String text) {
        return DRIVE.matcher(text).matches()
                || (!SCHEME.matcher(text).matches() && !SHORT_SSH.matcher(text).matches());
    }

    /** A name that begins with a hyphen could be taken for an option. */
    private static boolean isHost(String host) {
        return host != null && !host.isEmpty() && !host.startsWith("-");
    }

    private static RemoteFault unknown(String text, Exception cause) {
        String shown = PASSWORD.matcher(Shown.plain(text, 100)).replaceAll("//…@");
        return new RemoteFault(shown, RemoteFault.Kind.ADDRESS_UNKNOWN, cause);
    }

    static boolean isOne(String text) {
        try {
            return of(text) != null;
        } catch (RemoteFault e) {
            return false;
        }
    }

    /** Whether it is a folder that this machine sees, and no server. */
    static boolean isLocal(URIish uri) {
        return uri.getHost() == null;
    }

    /** As it is kept: a folder with its whole path. */
    static String kept(String text) {
        of(text);
        return isFolder(text) ? Path.of(text).toAbsolutePath().normalize().toString() : text;
    }

    /** As it is shown: without a password. */
    static String shown(URIish uri) {
        return uri.setPass(null).toString();
    }
}
