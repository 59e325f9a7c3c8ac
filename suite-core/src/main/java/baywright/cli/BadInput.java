package baywright.cli;

/** The caller gave something that cannot be used; the message says where, what and how to mend it. */
final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BadInput(String message) {
        super(message);
    }
}
