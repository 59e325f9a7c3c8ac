package baywright.plan;

/** Sets of states as words of 64 bits. */
final class Bits {

    private Bits() {}

    static boolean contains(long[] all, long[] part) {
        for (int w = 0; w < part.length; w++) {
            if ((part[w] & ~all[w]) != 0) {
                return false;
            }
        }
        return true;
    }

    static boolean meet(long[] a, long[] b) {
        for (int w = 0; w < a.length; w++) {
            if ((a[w] & b[w]) != 0) {
                return true;
            }
        }
        return false;
    }

    static boolean has(long[] set, int bit) {
        return (set[bit >> 6] & 1L << bit) != 0;
    }

    static boolean isEmpty(long[] set) {
        for (long word : set) {
            if (word != 0) {
                return false;
            }
        }
        return true;
    }

    /** The states of a set, in ascending order. */
    static int[] members(long[] set) {
        int count = 0;
        for (long word : set) {
            count += Long.bitCount(word);
        }
        int[] members = new int[count];
        int next = 0;
        for (int w = 0; w < set.length; w++) {
            for (long bits = set[w]; bits != 0; bits &= bits - 1) {
                members[next++] = (w << 6) + Long.numberOfTrailingZeros(bits);
            }
        }
        return members;
    }
}
