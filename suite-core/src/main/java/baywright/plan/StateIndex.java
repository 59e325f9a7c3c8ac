package baywright.plan;

import baywright.library.State;
import baywright.script.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The library's states as bits, with what each brings and ends worked out once. */
final class StateIndex {

    private final List<State> states;
    private final Map<String, Integer> indexById = new HashMap<>();
    private final int width;
    private final int[][] parts;
    private final boolean[] ofVehicle;
    private final long[][] brings;
    private final long[][] ends;
    private final long[][] clears;
    private final long[] lasts;
    private final long[] perishing;
    private final long[] zoneScope;
    private final long[] vehicleScope;
    private final long[] conditions;

    StateIndex(List<State> declared) {
        states = new ArrayList<>();
        for (State state : declared) {
            if (indexById.putIfAbsent(state.id(), states.size()) == null) {
                states.add(state);
            }
        }
        int count = states.size();
        width = Math.max(1, (count + 63) / 64);
        lasts = new long[count];
        perishing = new long[width];
        zoneScope = new long[width];
        vehicleScope = new long[width];
        conditions = new long[width];
        BitSet[] opposites = related(State::opposites);
        BitSet[] implied = related(State::implies);
        BitSet[] madeOf = related(State::madeOf);
        closeSymmetric(opposites);
        parts = new int[count][];
        brings = new long[count][];
        ends = new long[count][];
        clears = new long[count][];
        for (int s = 0; s < count; s++) {
            parts[s] = plain(reach(s, madeOf), madeOf).stream().toArray();
            noteScope(s);
        }
        ofVehicle = new boolean[count];
        for (int s = 0; s < count; s++) {
            ofVehicle[s] = Arrays.stream(parts[s]).noneMatch(this::isZoneScope);
        }
        BitSet[] implying = inverse(implied);
        BitSet[] bringing = union(implied, madeOf);
        for (int s = 0; s < count; s++) {
            BitSet brought = plain(reach(s, bringing), madeOf);
            BitSet ended = new BitSet();
            brought.stream().forEach(b -> ended.or(opposites[b]));
            BitSet endedAll = withAll(ended, implying);
            endedAll.andNot(brought);
            brings[s] = words(brought);
            ends[s] = words(plain(endedAll, madeOf));
            BitSet own = new BitSet();
            for (int part : parts[s]) {
                own.set(part);
            }
            clears[s] = words(plain(withAll(own, implying), madeOf));
        }
    }

    private void noteScope(int s) {
        State state = states.get(s);
        long bit = 1L << s;
        lasts[s] = state.lasts().map(q -> Ticks.of(q.inBase())).orElse(Ticks.NEVER);
        if (state.lasts().isPresent()) {
            perishing[s >> 6] |= bit;
        }
        (state.scope() == State.Scope.ZONE ? zoneScope : vehicleScope)[s >> 6] |= bit;
        if (state.scope() == State.Scope.CONDITION) {
            conditions[s >> 6] |= bit;
        }
    }

    private BitSet[] related(Function<State, List<String>> relation) {
        BitSet[] all = new BitSet[states.size()];
        for (int s = 0; s < all.length; s++) {
            all[s] = new BitSet();
            for (String id : relation.apply(states.get(s))) {
                Integer other = indexById.get(id);
                if (other != null && other != s) {
                    all[s].set(other);
                }
            }
        }
        return all;
    }

    private static void closeSymmetric(BitSet[] relation) {
        for (int s = 0; s < relation.length; s++) {
            int from = s;
            relation[s].stream().forEach(other -> relation[other].set(from));
        }
    }

    private static BitSet[] inverse(BitSet[] relation) {
        BitSet[] back = new BitSet[relation.length];
        for (int s = 0; s < back.length; s++) {
            back[s] = new BitSet();
        }
        for (int s = 0; s < back.length; s++) {
            int from = s;
            relation[s].stream().forEach(other -> back[other].set(from));
        }
        return back;
    }

    private static BitSet reach(int start, BitSet[] relation) {
        BitSet one = new BitSet();
        one.set(start);
        return withAll(one, relation);
    }

    private static BitSet withAll(BitSet start, BitSet[] relation) {
        BitSet all = (BitSet) start.clone();
        BitSet fresh = (BitSet) start.clone();
        while (!fresh.isEmpty()) {
            BitSet next = new BitSet();
            fresh.stream().forEach(s -> next.or(relation[s]));
            next.andNot(all);
            all.or(next);
            fresh = next;
        }
        return all;
    }

    private static BitSet[] union(BitSet[] one, BitSet[] other) {
        BitSet[] both = new BitSet[one.length];
        for (int i = 0; i < both.length; i++) {
            both[i] = (BitSet) one[i].clone();
            both[i].or(other[i]);
        }
        return both;
    }

    /** Without the worked-out states: those are never kept, only read off. */
    private static BitSet plain(BitSet all, BitSet[] madeOf) {
        BitSet kept = new BitSet();
        all.stream().filter(s -> madeOf[s].isEmpty()).forEach(kept::set);
        return kept;
    }

    private long[] words(BitSet bits) {
        long[] words = new long[width];
        long[] given = bits.toLongArray();
        System.arraycopy(given, 0, words, 0, given.length);
        return words;
    }

    int count() {
        return states.size();
    }

    /** Words of 64 bits that a set of states takes. */
    int width() {
        return width;
    }

    /** The number of a declared state, or -1. */
    int of(String id) {
        return indexById.getOrDefault(id, -1);
    }

    String id(int s) {
        return states.get(s).id();
    }

    /** Where it was declared. */
    Place place(int s) {
        return states.get(s).place();
    }

    Set<String> ids() {
        return indexById.keySet();
    }

    /** The plain states that a state comes down to: itself, or the parts of a worked-out one. */
    int[] parts(int s) {
        return parts[s];
    }

    /** Plain states that hold once it is set. */
    long[] brings(int s) {
        return brings[s];
    }

    /** Plain states that end when it is set. */
    long[] ends(int s) {
        return ends[s];
    }

    /** Plain states that end when it is cleared. */
    long[] clears(int s) {
        return clears[s];
    }

    /** How long it holds, in ticks, or {@link Ticks#NEVER}. */
    long lasts(int s) {
        return lasts[s];
    }

    long[] perishing() {
        return perishing;
    }

    long[] zoneScope() {
        return zoneScope;
    }

    /** States that the vehicle carries, and conditions. */
    long[] vehicleScope() {
        return vehicleScope;
    }

    long[] conditions() {
        return conditions;
    }

    /** Whether no part of a state is one of zones, so that only the vehicle as a whole carries it. */
    boolean isOfVehicle(int s) {
        return ofVehicle[s];
    }

    boolean isZoneScope(int s) {
        return (zoneScope[s >> 6] & 1L << s) != 0;
    }

    boolean isCondition(int s) {
        return (conditions[s >> 6] & 1L << s) != 0;
    }

    /** A set with these plain states. */
    long[] setOf(int... plain) {
        long[] bits = new long[width];
        for (int s : plain) {
            bits[s >> 6] |= 1L << s;
        }
        return bits;
    }
}
