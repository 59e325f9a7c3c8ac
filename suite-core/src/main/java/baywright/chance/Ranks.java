package baywright.chance;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Rank correlation. */
public final class Ranks {

    private Ranks() {}

    /** Ranks from 1; equal values share the mean of theirs. */
    public static double[] of(double... values) {
        int n = values.length;
        long[] byValue = new long[n];
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] ranks = new double[n];
        for (int i = 0; i < n; i++) {
            byValue[i] = first(sorted, values[i]);
        }
        int[] counts = new int[n];
        for (long place : byValue) {
            counts[(int) place]++;
        }
        for (int i = 0; i < n; i++) {
            int place = (int) byValue[i];
            ranks[i] = place + 1 + (counts[place] - 1) / 2.0;
        }
        return ranks;
    }

    private static int first(double[] sorted, double value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Correlation of ranks (Spearman, American Journal of Psychology 15 (1904) 72); zero when one side does not vary.
     *
     * @param ranksOfA as {@link #of} gives them
     * @param ranksOfB as many
     */
    public static double correlation(double[] ranksOfA, double[] ranksOfB) {
        double middle = (ranksOfA.length + 1) / 2.0;
        double products = IntStream.range(0, ranksOfA.length)
                .mapToDouble(i -> (ranksOfA[i] - middle) * (ranksOfB[i] - middle))
                .sum();
        double squares = squares(ranksOfA, middle) * squares(ranksOfB, middle);
        return squares == 0 ? 0 : products / Math.sqrt(squares);
    }

    private static double squares(double[] ranks, double middle) {
        return Arrays.stream(ranks).map(r -> (r - middle) * (r - middle)).sum();
    }
}
