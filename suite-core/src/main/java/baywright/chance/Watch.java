package baywright.chance;

/** Who waits for a simulation. Called from the threads that simulate. */
public interface Watch {

    /** Waits to the end and wants to hear nothing. */
    Watch NOBODY = new Watch() {
        @Override
        public boolean cancelled() {
            return false;
        }

        @Override
        public void done(int runs, int all) {}
    };

    /** Whether to stop; asked often. */
    boolean cancelled();

    /** So many runs of all are done. */
    void done(int runs, int all);
}
