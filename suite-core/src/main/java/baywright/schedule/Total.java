package baywright.schedule;

/** A variable that is not less than a weighted sum of others with weights above 0. */
final class Total implements Propagator {

    private final Bounds bounds;
    private final int[] parts;
    private final int[] weights;
    private final int total;

    Total(Bounds bounds, int[] parts, int[] weights, int total) {
        this.bounds = bounds;
        this.parts = parts;
        this.weights = weights;
        this.total = total;
    }

    void state() {
        int[] keys = new int[parts.length + 1];
        for (int i = 0; i < parts.length; i++) {
            keys[i] = 2 * parts[i];
        }
        keys[parts.length] = 2 * total + 1;
        bounds.add(this, keys);
    }

    @Override
    public boolean propagate() {
        long sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += (long) weights[i] * bounds.least(parts[i]);
        }
        if (sum > bounds.least(total)
                && !bounds.raise(2 * total, (int) Math.min(sum, Integer.MAX_VALUE / 2), reason(-1))) {
            return false;
        }
        for (int i = 0; i < parts.length; i++) {
            long spare = bounds.most(total) - sum;
            long most = bounds.least(parts[i]) + Math.floorDiv(spare, weights[i]);
            if (most < bounds.most(parts[i]) && !bounds.raise(2 * parts[i] + 1, (int) -most, reason(i))) {
                return false;
            }
        }
        return true;
    }

    private int[] reason(int save) {
        int[] all = new int[2 * parts.length];
        int n = 0;
        for (int i = 0; i < parts.length; i++) {
            if (i != save) {
                all[n++] = 2 * parts[i];
                all[n++] = bounds.least(parts[i]);
            }
        }
        if (save >= 0) {
            all[n++] = 2 * total + 1;
            all[n] = -bounds.most(total);
        }
        return all;
    }
}
