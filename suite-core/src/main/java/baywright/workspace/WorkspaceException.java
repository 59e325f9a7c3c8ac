package baywright.workspace;

/** A workspace cannot be opened, locked, written or created; the message is one sentence for the user. */
public class WorkspaceException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public WorkspaceException(String message) {
        super(message);
    }

    public WorkspaceException(String message, Throwable cause) {
        super(message, cause);
    }
}
