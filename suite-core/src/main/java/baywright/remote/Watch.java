package baywright.remote;

/** Who waits for long work. Called from the thread that works, often. */
public interface Watch {

    /** Waits to the end and wants to hear nothing. */
    Watch NOBODY = new Watch() {
        @Override
        public boolean cancelled() {
            return false;
        }

        @Override
        public void at(Step step, int done, int all) {}
    };

    /** What is being done. */
    enum Step {
        CONNECTING,
        RECEIVING,
        READING,
        COMPARING,
        SENDING
    }

    /** Whether to stop; what was begun is then as it was before. */
    boolean cancelled();

    /** So much of a step is done; {@code all} is 0 while nobody knows how much there is. */
    void at(Step step, int done, int all);
}
