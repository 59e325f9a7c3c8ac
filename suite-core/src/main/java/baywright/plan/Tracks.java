package baywright.plan;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What holds on every row while a plan is walked, and who made it so. Rows are those of {@link VehicleIndex}; states of
 * the vehicle and conditions live on the vehicle's row, a state of zones that is set or cleared there goes to every
 * zone. Time runs in ticks from the setting's start; what arrives by itself or runs out is brought up to date row by row
 * when it is looked at.
 */
final class Tracks {

    /** Nobody did it. */
    static final int NOBODY = -1;

    /** The survey found it so. */
    static final int SURVEY = -2;

    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final int width;
    private final int count;
    private final long[] holds;
    private final long[] concerns;
    private final long[] pending;
    private final long[] perished;
    private final int[] setBy;
    private final int[] clearedBy;
    private final int[] broughtBy;
    private final long[] setAt;
    private final long[] dueAt;
    private final long[] nothing;
    private boolean promises;

    Tracks(StateIndex states, VehicleIndex vehicle) {
        this.states = states;
        this.vehicle = vehicle;
        width = states.width();
        count = states.count();
        int words = vehicle.rows() * width;
        int cells = vehicle.rows() * count;
        holds = new long[words];
        concerns = new long[words];
        pending = new long[words];
        perished = new long[words];
        setBy = new int[cells];
        clearedBy = new int[cells];
        broughtBy = new int[cells];
        setAt = new long[cells];
        dueAt = new long[cells];
        nothing = new long[width];
        Arrays.fill(setBy, NOBODY);
        Arrays.fill(clearedBy, NOBODY);
        Arrays.fill(broughtBy, NOBODY);
    }

    /** Starts again from what another one holds; both are of the same index. */
    void copyFrom(Tracks other) {
        System.arraycopy(other.holds, 0, holds, 0, holds.length);
        System.arraycopy(other.concerns, 0, concerns, 0, concerns.length);
        System.arraycopy(other.pending, 0, pending, 0, pending.length);
        System.arraycopy(other.perished, 0, perished, 0, perished.length);
        System.arraycopy(other.setBy, 0, setBy, 0, setBy.length);
        System.arraycopy(other.clearedBy, 0, clearedBy, 0, clearedBy.length);
        System.arraycopy(other.broughtBy, 0, broughtBy, 0, broughtBy.length);
        System.arraycopy(other.setAt, 0, setAt, 0, setAt.length);
        System.arraycopy(other.dueAt, 0, dueAt, 0, dueAt.length);
    }

    /** The row that carries a state, seen from a row. */
    int home(int row, int state) {
        return states.isZoneScope(state) ? row : vehicle.vehicle();
    }

    void set(int row, int state, int by, long at) {
        long[] on = states.brings(state);
        long[] off = states.ends(state);
        spread(row, on, off, by, at);
    }

    void clear(int row, int state, int by, long at) {
        spread(row, nothing, states.clears(state), by, at);
    }

    private void spread(int row, long[] on, long[] off, int by, long at) {
        boolean zones = Bits.meet(on, states.zoneScope()) || Bits.meet(off, states.zoneScope());
        boolean whole = Bits.meet(on, states.vehicleScope()) || Bits.meet(off, states.vehicleScope());
        if (zones && row == vehicle.vehicle()) {
            for (int real : vehicle.real()) {
                change(real, on, off, states.zoneScope(), by, at);
            }
        } else if (zones) {
            change(row, on, off, states.zoneScope(), by, at);
        }
        if (whole) {
            change(vehicle.vehicle(), on, off, states.vehicleScope(), by, at);
        }
    }

    private void change(int row, long[] on, long[] off, long[] scope, int by, long at) {
        if (!changesNothing(row, on, off, scope)) {
            settle(row, at);
            apply(row, on, off, scope, by, at);
        }
    }

    /** Whether nothing is made, nothing that holds is ended, and nothing is promised that could come before. */
    private boolean changesNothing(int row, long[] on, long[] off, long[] scope) {
        for (int w = 0; w < width; w++) {
            int word = row * width + w;
            if (on[w] != 0 || pending[word] != 0 || (holds[word] & off[w] & scope[w]) != 0) {
                return false;
            }
        }
        return true;
    }

    private void apply(int row, long[] on, long[] off, long[] scope, int by, long at) {
        boolean makes = false;
        for (int w = 0; w < width; w++) {
            int word = row * width + w;
            long ending = off[w] & scope[w];
            for (long bits = ending & (holds[word] | pending[word]); bits != 0; bits &= bits - 1) {
                clearedBy[cell(row, w, bits)] = by;
            }
            holds[word] &= ~ending;
            pending[word] &= ~ending;
            long making = on[w] & scope[w];
            for (long bits = making; bits != 0; bits &= bits - 1) {
                int cell = cell(row, w, bits);
                setBy[cell] = by;
                setAt[cell] = at;
                clearedBy[cell] = NOBODY;
            }
            holds[word] |= making;
            pending[word] &= ~making;
            perished[word] &= ~making;
            concerns[word] |= making;
            makes |= on[w] != 0;
        }
        if (makes) {
            for (int w = 0; w < width; w++) {
                concerns[row * width + w] |= off[w] & scope[w];
            }
        }
    }

    private int cell(int row, int word, long bits) {
        return row * count + (word << 6) + Long.numberOfTrailingZeros(bits);
    }

    /** Lets a state come by itself at a time; a later promise of the same state takes the place of an earlier one. */
    void promise(int row, int state, int by, long due) {
        for (int part : states.parts(state)) {
            if (!states.isZoneScope(part)) {
                promiseOn(vehicle.vehicle(), part, by, due);
            } else if (row == vehicle.vehicle()) {
                for (int real : vehicle.real()) {
                    promiseOn(real, part, by, due);
                }
            } else {
                promiseOn(row, part, by, due);
            }
        }
    }

    /** Whether anything was ever promised to come by itself. */
    boolean hasPromises() {
        return promises;
    }

    /** Collects the states that are promised on any row, and those that such a state ends when it comes. */
    void awaited(long[] coming, long[] going) {
        Arrays.fill(coming, 0);
        Arrays.fill(going, 0);
        for (int word = 0; word < pending.length; word++) {
            coming[word % width] |= pending[word];
        }
        for (int state : Bits.members(coming)) {
            for (int w = 0; w < width; w++) {
                going[w] |= states.ends(state)[w];
            }
        }
    }

    private void promiseOn(int row, int part, int by, long due) {
        promises = true;
        int word = row * width + (part >> 6);
        pending[word] |= 1L << part;
        concerns[word] |= 1L << part;
        dueAt[row * count + part] = due;
        broughtBy[row * count + part] = by;
    }

    /** Brings a row up to a time: what was due has come, what has run out is gone. */
    void settle(int row, long now) {
        int due = nextDue(row, now);
        while (due >= 0) {
            int cell = row * count + due;
            long[] on = states.brings(due);
            long[] off = states.ends(due);
            pending[row * width + (due >> 6)] &= ~(1L << due);
            boolean otherRow = Bits.meet(off, row == vehicle.vehicle() ? states.zoneScope() : states.vehicleScope())
                    || Bits.meet(on, row == vehicle.vehicle() ? states.zoneScope() : states.vehicleScope());
            if (otherRow) {
                spread(row, on, off, broughtBy[cell], dueAt[cell]);
            } else {
                apply(
                        row,
                        on,
                        off,
                        row == vehicle.vehicle() ? states.vehicleScope() : states.zoneScope(),
                        broughtBy[cell],
                        dueAt[cell]);
            }
            due = nextDue(row, now);
        }
        perish(row, now);
    }

    private int nextDue(int row, long now) {
        int next = -1;
        long least = now;
        for (int w = 0; w < width; w++) {
            for (long bits = pending[row * width + w]; bits != 0; bits &= bits - 1) {
                long due = dueAt[cell(row, w, bits)];
                if (due <= least && (next < 0 || due < least)) {
                    least = due;
                    next = (w << 6) + Long.numberOfTrailingZeros(bits);
                }
            }
        }
        return next;
    }

    private void perish(int row, long now) {
        long[] perishing = states.perishing();
        for (int w = 0; w < width; w++) {
            for (long bits = holds[row * width + w] & perishing[w]; bits != 0; bits &= bits - 1) {
                int state = (w << 6) + Long.numberOfTrailingZeros(bits);
                if (now - setAt[row * count + state] > states.lasts(state)) {
                    runOut(row, states.clears(state));
                }
            }
        }
    }

    private void runOut(int row, long[] ending) {
        for (int w = 0; w < width; w++) {
            int word = row * width + w;
            perished[word] |= ending[w] & holds[word];
            holds[word] &= ~ending[w];
        }
    }

    /** Lets everything that is promised come, and nothing run out. */
    void arriveAll() {
        for (int row = 0; row < vehicle.rows(); row++) {
            for (int w = 0; w < width; w++) {
                for (long bits = pending[row * width + w]; bits != 0; bits &= bits - 1) {
                    int cell = cell(row, w, bits);
                    int state = (w << 6) + Long.numberOfTrailingZeros(bits);
                    apply(
                            row,
                            states.brings(state),
                            states.ends(state),
                            row == vehicle.vehicle() ? states.vehicleScope() : states.zoneScope(),
                            broughtBy[cell],
                            dueAt[cell]);
                }
            }
        }
    }

    /** What a step on a row finds, the vehicle's states included, into {@code found}. */
    void findOn(int row, long[] found) {
        int whole = vehicle.vehicle() * width;
        for (int w = 0; w < width; w++) {
            found[w] = holds[row * width + w] | (holds[whole + w] & states.vehicleScope()[w]);
        }
    }

    /**
     * What a step on the vehicle as a whole finds. A zone's state counts as found when some zone holds it and every zone
     * that it ever concerned (it or an opposite was set there) holds it; it counts as met with when any zone holds it.
     */
    void findOnVehicle(long[] everywhere, long[] anywhere) {
        int whole = vehicle.vehicle() * width;
        for (int w = 0; w < width; w++) {
            long any = 0;
            long lacking = 0;
            for (int row : vehicle.real()) {
                any |= holds[row * width + w];
                lacking |= concerns[row * width + w] & ~holds[row * width + w];
            }
            everywhere[w] = (any & ~lacking) | holds[whole + w];
            anywhere[w] = any | holds[whole + w];
        }
    }

    boolean holds(int row, int state) {
        return (holds[row * width + (state >> 6)] & 1L << state) != 0;
    }

    boolean concerns(int row, int state) {
        return (concerns[row * width + (state >> 6)] & 1L << state) != 0;
    }

    boolean isPending(int row, int state) {
        return (pending[row * width + (state >> 6)] & 1L << state) != 0;
    }

    boolean hasPerished(int row, int state) {
        return (perished[row * width + (state >> 6)] & 1L << state) != 0;
    }

    int setBy(int row, int state) {
        return setBy[row * count + state];
    }

    int clearedBy(int row, int state) {
        return clearedBy[row * count + state];
    }

    int broughtBy(int row, int state) {
        return broughtBy[row * count + state];
    }

    long setAt(int row, int state) {
        return setAt[row * count + state];
    }

    long dueAt(int row, int state) {
        return dueAt[row * count + state];
    }

    /** Whether the same has happened to a state on two rows. */
    boolean isAlike(int row, int other, int state) {
        int one = row * count + state;
        int two = other * count + state;
        return setBy[one] == setBy[two]
                && clearedBy[one] == clearedBy[two]
                && broughtBy[one] == broughtBy[two]
                && setAt[one] == setAt[two]
                && dueAt[one] == dueAt[two]
                && isPending(row, state) == isPending(other, state)
                && hasPerished(row, state) == hasPerished(other, state);
    }

    /** When a state comes to a row by itself, or {@link Ticks#NEVER}. */
    long comes(int row, int state) {
        int home = home(row, state);
        return isPending(home, state) ? dueAt(home, state) : Ticks.NEVER;
    }

    /** When the first promised state that ends this one comes to a row, or {@link Ticks#NEVER}. */
    long goes(int row, int state) {
        int home = home(row, state);
        long first = Ticks.NEVER;
        for (int w = 0; w < width; w++) {
            for (long bits = pending[home * width + w]; bits != 0; bits &= bits - 1) {
                int promised = (w << 6) + Long.numberOfTrailingZeros(bits);
                if (Bits.has(states.ends(promised), state)) {
                    first = Math.min(first, dueAt(home, promised));
                }
            }
        }
        return first;
    }

    /** Ids of the states that hold on a row, worked-out ones included; on the vehicle's row those of the vehicle. */
    Set<String> namesOn(int row) {
        boolean whole = row == vehicle.vehicle();
        long[] found = new long[width];
        findOn(row, found);
        Set<String> names = new LinkedHashSet<>();
        for (int s = 0; s < count; s++) {
            if (states.isZoneScope(s) != whole && Bits.contains(found, states.setOf(states.parts(s)))) {
                names.add(states.id(s));
            }
        }
        return names;
    }
}
