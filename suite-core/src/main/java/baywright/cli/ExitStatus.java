package baywright.cli;

/** What the process says to its caller. */
final class ExitStatus {

    /** Done, and nothing stands against the work. */
    static final int FINE = 0;

    /** Done, but a finding stops the plan or a check failed. */
    static final int STOPPED = 1;

    /** The caller gave something that cannot be used. */
    static final int BAD_INPUT = 2;

    /** The program itself is at fault. */
    static final int OWN_FAULT = 3;

    private ExitStatus() {}
}
