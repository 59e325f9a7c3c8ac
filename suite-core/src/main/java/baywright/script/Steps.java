package baywright.script;

/**
 * Steps that all evaluations of one file's checking share: a stage is worked out several times, and a file holds several
 * stages. Not for several threads at a time.
 */
public final class Steps {

    private int used;

    /** How many were used so far. */
    public int used() {
        return used;
    }

    /** Whether none is left; then what has not been checked by now is not checked at all. */
    public boolean areSpent() {
        return used > Limits.FILE_STEPS;
    }

    /** What to write at a stage that was not checked since none were left. */
    public static String advice() {
        return "the checking of a file takes at most " + Limits.FILE_STEPS
                + " steps; shorten its loops and lists, or put some of its stages into another file";
    }

    void take(long steps, Place place) {
        used = (int) Math.min(Integer.MAX_VALUE, used + steps);
        if (areSpent()) {
            throw new Exhausted(place, advice());
        }
    }
}
