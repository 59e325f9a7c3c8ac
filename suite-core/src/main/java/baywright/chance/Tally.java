package baywright.chance;

import java.util.Arrays;

/** Counts and sums of all blocks. Each block writes its own places only and is added up in order, whoever did it. */
final class Tally {

    /** A source by itself, with the finish, with the cost. */
    static final int ALONE = 0;

    static final int FINISH = 1;
    static final int COST = 2;
    private static final int SUMS = 3;

    final double[] finish;
    final double[] cost;
    final double[][] rankedTimes;
    final double[][] sums;
    final int[][] critical;
    final int[][] missed;

    Tally(Draws draws, int runs, int ranked) {
        int blocks = Blocks.count(runs);
        finish = new double[runs];
        cost = new double[runs];
        rankedTimes = new double[draws.activities.size()][ranked];
        sums = new double[blocks][SUMS * draws.sources()];
        critical = new int[blocks][draws.activities.size()];
        missed = new int[blocks][draws.windows.length];
    }

    int blocks() {
        return sums.length;
    }

    double[] rankedFinish() {
        return Arrays.copyOf(finish, rankedTimes[0].length);
    }

    /** Adds what a standard score did in a block. */
    void add(int block, int source, double alone, double withFinish, double withCost) {
        double[] all = sums[block];
        all[SUMS * source + ALONE] += alone;
        all[SUMS * source + FINISH] += withFinish;
        all[SUMS * source + COST] += withCost;
    }

    double criticality(int activity) {
        return share(critical, activity);
    }

    double missed(int window) {
        return share(missed, window);
    }

    private double share(int[][] counts, int column) {
        return (double) Arrays.stream(counts).mapToLong(block -> block[column]).sum() / finish.length;
    }

    /** Squared correlation of a source, which has mean 0 and variance 1, with finish or cost. */
    double share(int source, int with, Sample sample, double about) {
        if (!(sample.deviation() > 0)) {
            return 0;
        }
        double n = finish.length;
        double covariance = sum(source, with) / n - sum(source, ALONE) / n * (sample.mean() - about);
        double correlation = covariance / sample.deviation();
        return Math.min(1, correlation * correlation);
    }

    private double sum(int source, int which) {
        double sum = 0;
        for (double[] block : sums) {
            sum += block[SUMS * source + which];
        }
        return sum;
    }
}
