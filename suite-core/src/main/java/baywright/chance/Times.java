package baywright.chance;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/** Times of activities for a block of runs: a row for each activity, a column for each run. Belongs to one thread. */
final class Times {

    final double[][] shared;
    final double[][] own;
    final double[][] again;
    final double[][] times;
    private final Draws draws;

    Times(Draws draws) {
        this.draws = draws;
        int size = draws.activities.size();
        shared = new double[draws.sharedDrivers()][Blocks.RUNS];
        own = new double[size][Blocks.RUNS];
        again = new double[size][Blocks.RUNS];
        times = new double[size][Blocks.RUNS];
    }

    void draw(int block, int runs) {
        for (int d = 0; d < shared.length; d++) {
            draws.driverScores(d, block, shared[d], runs);
        }
        for (int i = 0; i < times.length; i++) {
            draw(draws.activities.get(i), block, own[i], times[i], runs);
            doAgain(i, block, runs);
        }
    }

    /** Draws a figure, and keeps the scores of its own. */
    void draw(Draws.Figure figure, int block, double[] alone, double[] values, int runs) {
        if (figure.constant()) {
            Arrays.fill(values, figure.least);
            return;
        }
        if (figure.own > 0) {
            draws.scores(figure.stream, block, alone, runs);
        }
        for (int r = 0; r < runs; r++) {
            values[r] = figure.own * alone[r];
        }
        for (int k = 0; k < figure.drivers.length; k++) {
            double[] driver = shared[figure.drivers[k]];
            double loading = figure.loadings[k];
            for (int r = 0; r < runs; r++) {
                values[r] += loading * driver[r];
            }
        }
        QuantileCurve curve = figure.curve;
        for (int r = 0; r < runs; r++) {
            values[r] = figure.least + figure.range * curve.at(values[r]);
        }
    }

    /** Lengthens the time where work is done again, and keeps a standard score of that. */
    private void doAgain(int i, int block, int runs) {
        double chance = draws.reworkChance[i];
        if (!draws.reworks(i)) {
            return;
        }
        double yes = chance == 1 ? 0 : Math.sqrt((1 - chance) / chance);
        double no = chance == 1 ? 0 : -Math.sqrt(chance / (1 - chance));
        UniformRandomProvider source = draws.source(draws.reworkStreams[i], block);
        for (int r = 0; r < runs; r++) {
            boolean twice = source.nextDouble() < chance;
            again[i][r] = twice ? yes : no;
            if (twice) {
                times[i][r] *= 1 + draws.reworkShare[i];
            }
        }
    }
}
