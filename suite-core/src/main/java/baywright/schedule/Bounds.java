package baywright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Whole numbers with a lower and an upper bound, what follows from their bounds, and what is learnt when a guess turns
 * out wrong: search with conflict analysis on bounds (lazy clause generation without a variable for each bound).
 *
 * <p>A <em>key</em> is {@code 2x} for the lower bound of variable {@code x} and {@code 2x + 1} for the negated upper
 * bound, so that every bound only grows. A <em>literal</em> is a key and a value: it holds when the key's bound has
 * reached the value. The negation of {@code (key, v)} is {@code (key ^ 1, 1 - v)}.
 *
 * <p>Method: A. Schutt, T. Feydy, P. Stuckey, M. Wallace, "Explaining the cumulative propagator", Constraints 16 (2011)
 * 250-282; R. Nieuwenhuis, "The IntSat method for integer linear programming", CP 2014, for analysis on bounds.
 */
final class Bounds {

    private static final int DECISION = -1;
    private static final int GIVEN = -2;
    private static final int CLAUSE = -3;
    private static final int NONE = Integer.MIN_VALUE;
    private static final double RESCALE = 1e100;

    /** At least one of the literals holds. The first two are watched. */
    private static final class Clause {
        final int[] keys;
        final int[] values;
        int levels;
        double activity;

        Clause(int[] keys, int[] values) {
            this.keys = keys;
            this.values = values;
        }
    }

    /** A growing list of whole numbers. */
    static final class Ints {
        int[] at = new int[8];
        int size;

        void add(int value) {
            if (size == at.length) {
                at = Arrays.copyOf(at, 2 * size);
            }
            at[size++] = value;
        }

        /** The values in the order in which they came. */
        int[] toArray() {
            return Arrays.copyOf(at, size);
        }
    }

    private int variables;
    private int[] bound = new int[64];
    private int[] root;
    private int[] last;
    private int[] arcFrom = new int[64];
    private int[] arcTo = new int[64];
    private int[] arcBy = new int[64];
    private int arcs;
    private final List<Ints> arcsOf = new ArrayList<>();
    private final List<Ints> heardBy = new ArrayList<>();
    private final List<Propagator> propagators = new ArrayList<>();
    private boolean[] dirty;
    private final Ints waiting = new Ints();

    private int[] trailKey = new int[1024];
    private int[] trailOld = new int[1024];
    private int[] trailNew = new int[1024];
    private int[] trailPrevious = new int[1024];
    private int[] trailWhy = new int[1024];
    private Object[] trailReason = new Object[1024];
    private int trail;
    private int head;
    private final Ints levels = new Ints();

    private final List<Clause> learnt = new ArrayList<>();
    private List<List<Clause>> watchers;
    private int[] conflict;

    private int[] needed;
    private int[] neededAt;
    private final Ints neededKeys = new Ints();
    private double[] activity;
    private double bump = 1;
    private double clauseBump = 1;
    private long conflicts;
    private boolean contradiction;

    /** A new variable; returns its number. */
    int variable(int least, int most) {
        if (2 * variables + 2 > bound.length) {
            bound = Arrays.copyOf(bound, 2 * bound.length);
        }
        bound[2 * variables] = least;
        bound[2 * variables + 1] = -most;
        contradiction |= least > most;
        for (int side = 0; side < 2; side++) {
            arcsOf.add(new Ints());
            heardBy.add(new Ints());
        }
        return variables++;
    }

    int least(int variable) {
        return bound[2 * variable];
    }

    int most(int variable) {
        return -bound[2 * variable + 1];
    }

    boolean fixed(int variable) {
        return bound[2 * variable] == -bound[2 * variable + 1];
    }

    /** Bounds before any guess. */
    int rootLeast(int variable) {
        return root[2 * variable];
    }

    double activityOf(int variable) {
        return activity[2 * variable] + activity[2 * variable + 1];
    }

    /** Lets a variable be guessed sooner, by a little at the outset. */
    void favour(int variable, double by) {
        activity[2 * variable] += by;
    }

    long conflicts() {
        return conflicts;
    }

    int level() {
        return levels.size;
    }

    /** States that {@code later >= earlier + by}. */
    void difference(int earlier, int later, int by) {
        arc(2 * earlier, 2 * later, by);
        arc(2 * later + 1, 2 * earlier + 1, by);
    }

    private void arc(int from, int to, int by) {
        if (arcs == arcFrom.length) {
            arcFrom = Arrays.copyOf(arcFrom, 2 * arcs);
            arcTo = Arrays.copyOf(arcTo, 2 * arcs);
            arcBy = Arrays.copyOf(arcBy, 2 * arcs);
        }
        arcFrom[arcs] = from;
        arcTo[arcs] = to;
        arcBy[arcs] = by;
        arcsOf.get(from).add(arcs++);
    }

    /** Adds a propagator that listens to keys, among which one may stand more than once. */
    void add(Propagator propagator, Ints keys) {
        add(propagator, Arrays.stream(keys.toArray()).distinct().toArray());
    }

    /** Whether what a variable tells the presence of is there: it is 1, or there is no variable as it is -1. */
    boolean isPresent(int variable) {
        return variable < 0 || least(variable) == 1;
    }

    /** Adds a propagator that listens to keys. */
    void add(Propagator propagator, int... keys) {
        int number = propagators.size();
        propagators.add(propagator);
        for (int key : keys) {
            heardBy.get(key).add(number);
        }
    }

    /** Ends building: no variable or statement comes after. Returns false when there is no solution at all. */
    boolean begin() {
        int keys = 2 * variables;
        bound = Arrays.copyOf(bound, keys);
        last = new int[keys];
        Arrays.fill(last, -1);
        needed = new int[keys];
        Arrays.fill(needed, NONE);
        neededAt = new int[keys];
        activity = new double[keys];
        dirty = new boolean[propagators.size()];
        watchers = new ArrayList<>();
        for (int key = 0; key < keys; key++) {
            watchers.add(new ArrayList<>());
        }
        root = bound.clone();
        if (contradiction) {
            return false;
        }
        for (int arc = 0; arc < arcs; arc++) {
            if (!follow(arc)) {
                return stop();
            }
        }
        for (int i = 0; i < propagators.size(); i++) {
            wake(i);
        }
        return settleRoot();
    }

    private boolean stop() {
        contradiction = true;
        return false;
    }

    /** Propagates without a guess; false when there is no solution. */
    boolean settleRoot() {
        if (contradiction || !propagate()) {
            return stop();
        }
        root = bound.clone();
        trail = 0;
        head = 0;
        Arrays.fill(last, -1);
        return true;
    }

    /** Makes a literal true for a reason: literals that hold and together bring it about. */
    boolean raise(int key, int value, int... reason) {
        return raise(key, value, GIVEN, reason);
    }

    private boolean raise(int key, int value, int why, Object reason) {
        if (value <= bound[key]) {
            return true;
        }
        if (trail == trailKey.length) {
            grow();
        }
        trailKey[trail] = key;
        trailOld[trail] = bound[key];
        trailNew[trail] = value;
        trailPrevious[trail] = last[key];
        trailWhy[trail] = why;
        trailReason[trail] = reason;
        if (value > -bound[key ^ 1]) {
            int[] because = reasonOf(trail, value);
            conflict = Arrays.copyOf(because, because.length + 2);
            conflict[because.length] = key ^ 1;
            conflict[because.length + 1] = 1 - value;
            return false;
        }
        last[key] = trail++;
        bound[key] = value;
        return true;
    }

    private void grow() {
        int size = 2 * trail;
        trailKey = Arrays.copyOf(trailKey, size);
        trailOld = Arrays.copyOf(trailOld, size);
        trailNew = Arrays.copyOf(trailNew, size);
        trailPrevious = Arrays.copyOf(trailPrevious, size);
        trailWhy = Arrays.copyOf(trailWhy, size);
        trailReason = Arrays.copyOf(trailReason, size);
    }

    /** Notes that literals that all hold contradict each other. */
    boolean refuse(int... literals) {
        conflict = literals;
        return false;
    }

    private int[] reasonOf(int at, int value) {
        int why = trailWhy[at];
        if (why >= 0) {
            return new int[] {arcFrom[why], value - arcBy[why]};
        }
        if (why == CLAUSE) {
            Clause clause = (Clause) trailReason[at];
            int[] reason = new int[2 * clause.keys.length - 2];
            int n = 0;
            for (int i = 0; i < clause.keys.length; i++) {
                if (clause.keys[i] != trailKey[at]) {
                    reason[n++] = clause.keys[i] ^ 1;
                    reason[n++] = 1 - clause.values[i];
                }
            }
            clause.activity += clauseBump;
            return reason;
        }
        return why == GIVEN ? (int[]) trailReason[at] : new int[0];
    }

    // ---- propagation

    private boolean follow(int arc) {
        return raise(arcTo[arc], bound[arcFrom[arc]] + arcBy[arc], arc, null);
    }

    private void wake(int propagator) {
        if (!dirty[propagator]) {
            dirty[propagator] = true;
            waiting.add(propagator);
        }
    }

    private boolean propagate() {
        boolean sound = drain();
        int next = 0;
        while (sound && next < waiting.size) {
            int propagator = waiting.at[next++];
            dirty[propagator] = false;
            sound = propagators.get(propagator).propagate() && drain();
        }
        for (int i = next; i < waiting.size; i++) {
            dirty[waiting.at[i]] = false;
        }
        waiting.size = 0;
        head = sound ? head : trail;
        return sound;
    }

    private boolean drain() {
        while (head < trail) {
            int key = trailKey[head++];
            Ints out = arcsOf.get(key);
            for (int i = 0; i < out.size; i++) {
                if (!follow(out.at[i])) {
                    return false;
                }
            }
            if (!visit(key)) {
                return false;
            }
            Ints ears = heardBy.get(key);
            for (int i = 0; i < ears.size; i++) {
                wake(ears.at[i]);
            }
        }
        return true;
    }

    private boolean isFalse(Clause clause, int i) {
        return bound[clause.keys[i] ^ 1] >= 1 - clause.values[i];
    }

    private boolean isTrue(Clause clause, int i) {
        return bound[clause.keys[i]] >= clause.values[i];
    }

    private boolean visit(int key) {
        List<Clause> list = watchers.get(key);
        int kept = 0;
        int size = list.size();
        boolean sound = true;
        for (int n = 0; n < size; n++) {
            Clause clause = list.get(n);
            int mine = (clause.keys[0] ^ 1) == key ? 0 : 1;
            boolean stays = !sound || !isFalse(clause, mine) || isTrue(clause, 1 - mine) || !move(clause, mine);
            if (stays) {
                list.set(kept++, clause);
                if (sound && isFalse(clause, mine) && !isTrue(clause, 1 - mine)) {
                    sound = raise(clause.keys[1 - mine], clause.values[1 - mine], CLAUSE, clause);
                }
            }
        }
        list.subList(kept, size).clear();
        return sound;
    }

    /** Watches another literal that is not false in place of one that is. */
    private boolean move(Clause clause, int mine) {
        for (int i = 2; i < clause.keys.length; i++) {
            if (!isFalse(clause, i)) {
                int key = clause.keys[i];
                int value = clause.values[i];
                clause.keys[i] = clause.keys[mine];
                clause.values[i] = clause.values[mine];
                clause.keys[mine] = key;
                clause.values[mine] = value;
                watchers.get(key ^ 1).add(clause);
                return true;
            }
        }
        return false;
    }

    // ---- guessing and learning

    /** Guesses a literal that is open. */
    boolean guess(int key, int value) {
        levels.add(trail);
        return raise(key, value, DECISION, null) && propagate();
    }

    void backTo(int level) {
        if (level >= levels.size) {
            return;
        }
        int keep = levels.at[level];
        while (trail > keep) {
            trail--;
            bound[trailKey[trail]] = trailOld[trail];
            last[trailKey[trail]] = trailPrevious[trail];
            trailReason[trail] = null;
        }
        head = trail;
        levels.size = level;
    }

    /**
     * Learns from the contradiction that was met, goes back and draws the conclusion, again and again while it leads to
     * another. False when there is no solution whatever is guessed.
     */
    boolean learn() {
        do {
            conflicts++;
            backTo(levelOfConflict());
            if (levels.size == 0) {
                return stop();
            }
            analyse();
        } while (!afterLearning());
        return !contradiction;
    }

    /** The level below which nothing of the contradiction lies; a late conclusion may be older than the last guess. */
    private int levelOfConflict() {
        int level = 0;
        for (int i = 0; i < conflict.length; i += 2) {
            if (conflict[i + 1] > root[conflict[i]]) {
                level = Math.max(level, levelOf(placeOf(conflict[i], conflict[i + 1], trail)));
            }
        }
        return level;
    }

    private boolean afterLearning() {
        int size = neededKeys.size;
        int uip = -1;
        int second = -1;
        int start = levels.at[levels.size - 1];
        for (int i = 0; i < size; i++) {
            int at = neededAt[neededKeys.at[i]];
            if (at >= start) {
                uip = i;
            } else if (second < 0 || at > neededAt[neededKeys.at[second]]) {
                second = i;
            }
        }
        int[] keys = new int[size];
        int[] values = new int[size];
        order(uip, second);
        for (int i = 0; i < size; i++) {
            int key = neededKeys.at[i];
            keys[i] = key ^ 1;
            values[i] = 1 - needed[key];
        }
        int back = size == 1 ? 0 : levelOf(neededAt[neededKeys.at[1]]);
        Clause clause = new Clause(keys, values);
        clause.levels = spread();
        clear();
        backTo(back);
        bump /= 0.95;
        clauseBump /= 0.999;
        rescale();
        if (size == 1) {
            if (!raise(keys[0], values[0], GIVEN, new int[0])) {
                contradiction = true;
                return true;
            }
            if (!settleRoot()) {
                contradiction = true;
            }
            return true;
        }
        clause.activity = clauseBump;
        learnt.add(clause);
        watchers.get(keys[0] ^ 1).add(clause);
        watchers.get(keys[1] ^ 1).add(clause);
        return raise(keys[0], values[0], CLAUSE, clause) && propagate();
    }

    private void order(int uip, int second) {
        swap(0, uip);
        if (neededKeys.size > 1) {
            swap(1, second == 0 ? uip : second);
        }
    }

    private void swap(int a, int b) {
        int key = neededKeys.at[a];
        neededKeys.at[a] = neededKeys.at[b];
        neededKeys.at[b] = key;
    }

    private int levelOf(int at) {
        int low = 0;
        int high = levels.size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (levels.at[middle] <= at) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int spread() {
        int[] of = new int[neededKeys.size];
        for (int i = 0; i < of.length; i++) {
            of[i] = levelOf(neededAt[neededKeys.at[i]]);
        }
        return (int) Arrays.stream(of).distinct().count();
    }

    private void clear() {
        for (int i = 0; i < neededKeys.size; i++) {
            needed[neededKeys.at[i]] = NONE;
        }
        neededKeys.size = 0;
    }

    private void analyse() {
        int start = levels.at[levels.size - 1];
        clear();
        int open = demand(conflict, start, trail);
        int at = trail - 1;
        while (true) {
            int key = trailKey[at];
            if (needed[key] != NONE && neededAt[key] == at) {
                if (open == 1) {
                    break;
                }
                int value = needed[key];
                drop(key);
                open--;
                open += demand(reasonOf(at, value), start, at);
            }
            at--;
        }
        shorten(start);
        for (int i = 0; i < neededKeys.size; i++) {
            activity[neededKeys.at[i]] += bump;
        }
    }

    private void drop(int key) {
        needed[key] = NONE;
        for (int i = 0; i < neededKeys.size; i++) {
            if (neededKeys.at[i] == key) {
                neededKeys.at[i] = neededKeys.at[--neededKeys.size];
                return;
            }
        }
    }

    /** Asks for literals that hold before a place of the trail; returns how many more of the current level are asked. */
    private int demand(int[] literals, int start, int before) {
        int more = 0;
        for (int i = 0; i < literals.length; i += 2) {
            int key = literals[i];
            int value = literals[i + 1];
            if (value <= root[key] || value <= needed[key]) {
                continue;
            }
            int at = placeOf(key, value, before);
            activity[key] += bump;
            if (needed[key] == NONE) {
                neededKeys.add(key);
            } else if (neededAt[key] >= start) {
                more--;
            }
            needed[key] = value;
            neededAt[key] = at;
            if (at >= start) {
                more++;
            }
        }
        return more;
    }

    /** Where on the trail a literal became true. */
    private int placeOf(int key, int value, int before) {
        int at = last[key];
        while (at >= before || trailOld[at] >= value) {
            at = trailPrevious[at];
        }
        return at;
    }

    /** Leaves out literals that follow from the others. */
    private void shorten(int start) {
        int kept = 0;
        int size = neededKeys.size;
        int[] keys = Arrays.copyOf(neededKeys.at, size);
        boolean[] goes = new boolean[size];
        for (int i = 0; i < size; i++) {
            goes[i] = neededAt[keys[i]] < start && follows(keys[i]);
        }
        for (int i = 0; i < size; i++) {
            if (goes[i]) {
                needed[keys[i]] = NONE;
            } else {
                neededKeys.at[kept++] = keys[i];
            }
        }
        neededKeys.size = kept;
    }

    private boolean follows(int key) {
        int at = neededAt[key];
        if (trailWhy[at] == DECISION) {
            return false;
        }
        int[] reason = reasonOf(at, needed[key]);
        for (int i = 0; i < reason.length; i += 2) {
            int other = reason[i];
            boolean stated = reason[i + 1] <= root[other]
                    || (other != key && neededAt[other] < at && reason[i + 1] <= needed[other]);
            if (!stated) {
                return false;
            }
        }
        return true;
    }

    private void rescale() {
        if (bump > RESCALE) {
            for (int i = 0; i < activity.length; i++) {
                activity[i] /= RESCALE;
            }
            bump /= RESCALE;
        }
        if (clauseBump > RESCALE) {
            learnt.forEach(c -> c.activity /= RESCALE);
            clauseBump /= RESCALE;
        }
    }

    /** Forgets the less useful half of what was learnt when there is more than so much; only without a guess. */
    void forget(int limit) {
        if (learnt.size() <= limit) {
            return;
        }
        learnt.sort(Comparator.comparingInt((Clause c) -> Math.min(c.levels, 3))
                .thenComparing(
                        Comparator.comparingDouble((Clause c) -> c.activity).reversed()));
        learnt.subList(limit / 2, learnt.size()).clear();
        watchers.forEach(List::clear);
        for (Clause clause : learnt) {
            watchers.get(clause.keys[0] ^ 1).add(clause);
            watchers.get(clause.keys[1] ^ 1).add(clause);
        }
    }
}
