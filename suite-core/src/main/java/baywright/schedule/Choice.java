package baywright.schedule;

/** Exactly so many of some variables are 1, the others 0. */
final class Choice implements Propagator {

    private final Bounds bounds;
    private final int[] among;
    private final int count;

    Choice(Bounds bounds, int[] among, int count) {
        this.bounds = bounds;
        this.among = among;
        this.count = count;
    }

    void state() {
        int[] keys = new int[2 * among.length];
        for (int i = 0; i < among.length; i++) {
            keys[2 * i] = 2 * among[i];
            keys[2 * i + 1] = 2 * among[i] + 1;
        }
        bounds.add(this, keys);
    }

    @Override
    public boolean propagate() {
        int taken = 0;
        int open = 0;
        for (int variable : among) {
            taken += bounds.least(variable);
            open += bounds.fixed(variable) ? 0 : 1;
        }
        if (taken > count) {
            return bounds.refuse(literals(true));
        }
        if (taken + open < count) {
            return bounds.refuse(literals(false));
        }
        if (open == 0 || (taken < count && taken + open > count)) {
            return true;
        }
        boolean full = taken == count;
        int[] reason = literals(full);
        for (int variable : among) {
            if (!bounds.fixed(variable) && !bounds.raise(2 * variable + (full ? 1 : 0), full ? 0 : 1, reason)) {
                return false;
            }
        }
        return true;
    }

    /** Those that are 1, or those that are 0. */
    private int[] literals(boolean taken) {
        Bounds.Ints all = new Bounds.Ints();
        for (int variable : among) {
            if (bounds.fixed(variable) && (bounds.least(variable) == 1) == taken) {
                all.add(2 * variable + (taken ? 0 : 1));
                all.add(taken ? 1 : 0);
            }
        }
        return all.toArray();
    }
}
