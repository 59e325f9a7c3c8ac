package baywright.remote;

import baywright.workspace.Shown;
import java.io.EOFException;
import java.io.IOException;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.jgit.errors.CorruptObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.NoRemoteRepositoryException;
import org.eclipse.jgit.errors.PackProtocolException;
import org.eclipse.jgit.errors.TooLargeObjectInPackException;
import org.eclipse.jgit.errors.TooLargePackException;

/** Tells from what JGit throws what happened, in one line. */
final class Faults {

    private static final Set<Class<?>> TOO_LARGE =
            Set.of(BoundedRepository.TooLarge.class, TooLargeObjectInPackException.class, TooLargePackException.class);
    private static final Set<Class<?>> UNREACHABLE = Set.of(
            UnknownHostException.class,
            ConnectException.class,
            NoRouteToHostException.class,
            SocketTimeoutException.class,
            SocketException.class);
    private static final Set<Class<?>> DAMAGED = Set.of(
            CorruptObjectException.class,
            MissingObjectException.class,
            PackProtocolException.class,
            EOFException.class);
    private static final List<String> NOT_LET_IN =
            List.of("not authorized", "auth fail", "authentication", "cannot log in", "no more auth", "not permitted");
    private static final List<String> AWAY = List.of(
            "timed out",
            "timeout",
            "connection refused",
            "connection reset",
            "unknown host",
            "unreachable",
            "unresolved");
    private static final List<String> BROKEN = List.of(
            "missing",
            "corrupt",
            "invalid",
            "unpack",
            "end of file",
            "short read",
            "hung up",
            "bad object",
            "checksum");

    private Faults() {}

    static RemoteFault of(String where, Throwable fault) {
        List<Throwable> chain = chain(fault);
        for (Throwable one : chain) {
            if (one instanceof RemoteFault known) {
                return known;
            }
        }
        return new RemoteFault(where, kind(chain), fault, reason(fault));
    }

    private static RemoteFault.Kind kind(List<Throwable> chain) {
        if (isAny(chain, TOO_LARGE)) {
            return RemoteFault.Kind.TOO_LARGE;
        }
        if (isAny(chain, Set.of(NoRemoteRepositoryException.class))) {
            return RemoteFault.Kind.NOT_FOUND;
        }
        if (says(chain, NOT_LET_IN)) {
            return RemoteFault.Kind.NOT_LET_IN;
        }
        if (isAny(chain, UNREACHABLE) || says(chain, AWAY)) {
            return RemoteFault.Kind.UNREACHABLE;
        }
        if (isAny(chain, DAMAGED) || says(chain, BROKEN)) {
            return RemoteFault.Kind.DAMAGED;
        }
        return RemoteFault.Kind.FAILED;
    }

    private static boolean isAny(List<Throwable> chain, Set<Class<?>> kinds) {
        return chain.stream().anyMatch(one -> kinds.stream().anyMatch(kind -> kind.isInstance(one)));
    }

    private static boolean says(List<Throwable> chain, List<String> words) {
        return chain.stream()
                .map(one -> String.valueOf(one.getMessage()).toLowerCase(Locale.ROOT))
                .anyMatch(text -> words.stream().anyMatch(text::contains));
    }

    private static List<Throwable> chain(Throwable fault) {
        List<Throwable> chain = new ArrayList<>();
        Stream.iterate(fault, one -> one != null && chain.size() < 20, Throwable::getCause)
                .forEach(chain::add);
        return chain;
    }

    /** The innermost thing that is said, on one line and without passwords. */
    static String reason(Throwable fault) {
        String said = chain(fault).stream()
                .filter(one -> one instanceof IOException || one.getCause() == null)
                .map(Throwable::getMessage)
                .filter(text -> text != null && !text.isBlank())
                .reduce((outer, inner) -> inner)
                .orElse(fault.getClass().getSimpleName());
        String line = said.lines().findFirst().orElse("").replaceAll("//[^/@ ]*@", "//…@");
        return Shown.plain(line, 200);
    }
}
