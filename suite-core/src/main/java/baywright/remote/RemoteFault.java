package baywright.remote;

import baywright.workspace.WorkspaceException;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Something between a site and the shared library did not go; the message is one line that says where, what and how to mend it. */
public final class RemoteFault extends WorkspaceException {

    private static final long serialVersionUID = 1L;

    /** Why. The names are stable; the sentences stand in the bundle beside. */
    public enum Kind {
        // what was asked for
        ADDRESS_UNKNOWN,
        ADDRESS_PASSWORD,
        ADDRESS_BRANCH,
        NO_SITE,
        NOT_FOLLOWED,
        UNSENT_ELSEWHERE,
        NOTHING_FETCHED,
        NOT_TAKEN,
        NO_PROPOSAL,
        UNKNOWN_NAME,
        RIVAL,
        NOT_EMPTY,
        PRICES,
        VERSION,
        NOTHING_TO_PROPOSE,
        OPEN,
        // on the way
        UNREACHABLE,
        NOT_FOUND,
        NOT_LET_IN,
        NOT_ALLOWED,
        NO_GIT,
        TOO_LARGE,
        DAMAGED,
        BRANCH_GONE,
        EMPTY,
        OVERTAKEN,
        CANCELLED,
        FAILED,
        // at home
        BUSY,
        CLONE_DAMAGED;

        String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final Kind kind;

    RemoteFault(String where, Kind kind, Throwable cause, Object... values) {
        super(where + ": " + sentence(kind, values), cause);
        this.kind = kind;
    }

    RemoteFault(String where, Kind kind, Object... values) {
        super(where + ": " + sentence(kind, values));
        this.kind = kind;
    }

    /** Why. */
    public Kind kind() {
        return kind;
    }

    /** Whether it may well go later, without anything being changed here. */
    public boolean mayPass() {
        return kind == Kind.UNREACHABLE || kind == Kind.NOT_FOUND || kind == Kind.FAILED;
    }

    private static String sentence(Kind kind, Object... values) {
        String pattern =
                ResourceBundle.getBundle("baywright.remote.faults", Locale.ROOT).getString(kind.key());
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }
}
