package baywright.plan;

import baywright.plan.ComposeDomain.Action;
import baywright.plan.RepairChoice.Use;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/** Joins the rows of actions of several kinds of zones into one, doing together what is the same. */
final class ComposeMerge {

    /** A use of a stage on the zones of all that share it; on one zone only where one is enough for all. */
    record Joint(Use use, BitSet rows, boolean glued, boolean once, long whole) {}

    /** Parting a product from what must follow it in time costs more than anything. */
    private static final long PARTED = 1L << 40;

    private final List<Joint> all = new ArrayList<>();

    /** Joins one more; what it shares in the same order is done at once. */
    void add(List<Action> more) {
        List<Joint> others = more.stream()
                .map(a -> new Joint(a.use, a.rows, a.glued, a.once, a.whole + 1))
                .toList();
        int n = all.size();
        int m = others.size();
        long[][] cost = new long[n + 1][m + 1];
        for (int i = n; i >= 0; i--) {
            for (int j = m; j >= 0; j--) {
                if (i < n || j < m) {
                    cost[i][j] = Math.min(
                            both(cost, i, j, others), Math.min(mine(cost, i, j, others), theirs(cost, i, j, others)));
                }
            }
        }
        follow(cost, others);
    }

    private long both(long[][] cost, int i, int j, List<Joint> others) {
        boolean same = i < all.size()
                && j < others.size()
                && all.get(i).use().equals(others.get(j).use());
        return same ? cost[i + 1][j + 1] : Long.MAX_VALUE;
    }

    private long mine(long[][] cost, int i, int j, List<Joint> others) {
        if (i == all.size()) {
            return Long.MAX_VALUE;
        }
        boolean parts = j > 0 && j < others.size() && others.get(j - 1).glued();
        return cost[i + 1][j] + (parts ? PARTED : 0);
    }

    private long theirs(long[][] cost, int i, int j, List<Joint> others) {
        if (j == others.size()) {
            return Long.MAX_VALUE;
        }
        boolean parts = i > 0 && i < all.size() && all.get(i - 1).glued();
        return cost[i][j + 1] + others.get(j).whole() + (parts ? PARTED : 0);
    }

    private void follow(long[][] cost, List<Joint> others) {
        List<Joint> joined = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < all.size() || j < others.size()) {
            if (both(cost, i, j, others) == cost[i][j]) {
                Joint mine = all.get(i);
                BitSet rows = (BitSet) mine.rows().clone();
                if (!mine.once()) {
                    rows.or(others.get(j).rows());
                }
                joined.add(new Joint(
                        mine.use(), rows, mine.glued() || others.get(j).glued(), mine.once(), mine.whole()));
                i++;
                j++;
            } else if (theirs(cost, i, j, others) == cost[i][j]) {
                joined.add(others.get(j));
                j++;
            } else {
                joined.add(all.get(i));
                i++;
            }
        }
        all.clear();
        all.addAll(joined);
    }

    List<Joint> joints() {
        return Collections.unmodifiableList(all);
    }
}
