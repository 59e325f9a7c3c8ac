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
}
