package baywright.chance;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Some runs side by side: a row for each figure, a column for each run, so that the loops run over plain rows. Belongs to
 * one thread.
 */
final class Block {

    /** Runs of a block. */
    static final int RUNS = 512;

    private final Draws draws;
    private final CompiledNetwork network;
    private final Tally tally;
    private final double[][] shared;
    private final double[][] own;
    private final double[][] again;
    private final double[][] times;
    private final double[][] starts;
    private final double[][] late;
    private final double[][] charges;
    private final double[] scores = new double[RUNS];
    private final double[] finish = new double[RUNS];
    private final double[] cost = new double[RUNS];

    Block(Draws draws, Tally tally) {
        this.draws = draws;
        this.tally = tally;
        network = draws.network;
        shared = new double[draws.sharedDrivers()][RUNS];
        own = new double[network.size][RUNS];
        again = new double[network.size][RUNS];
        times = new double[network.size][RUNS];
        starts = new double[network.size][RUNS];
        late = new double[network.size][RUNS];
        charges = new double[draws.charges.size()][RUNS];
    }

    /** Does the runs of a block and says how many they were. */
    int simulate(int block) {
        int first = block * RUNS;
        int runs = Math.min(RUNS, tally.finish.length - first);
        for (int d = 0; d < shared.length; d++) {
            draws.driverScores(d, block, shared[d], runs);
        }
        Arrays.fill(cost, draws.fixed);
        for (int i = 0; i < network.size; i++) {
            draw(draws.activities.get(i), block, own[i], times[i], runs);
            doAgain(i, block, runs);
            add(times[i], draws.costPerMinute[i], runs);
        }
        forward(runs);
        backward(block, runs);
        miss(block, runs);
        System.arraycopy(finish, 0, tally.finish, first, runs);
        for (int i = 0; i < network.size; i++) {
            int ranked = Math.min(runs, tally.rankedTimes[i].length - first);
            if (ranked > 0) {
                System.arraycopy(times[i], 0, tally.rankedTimes[i], first, ranked);
            }
        }
        // the cost is complete only with the charges, so their scores are kept until then
        for (int c = 0; c < charges.length; c++) {
            draw(draws.charges.get(c), block, charges[c], scores, runs);
            add(scores, 1, runs);
        }
        System.arraycopy(cost, 0, tally.cost, first, runs);
        account(block, runs);
        return runs;
    }

    /** Draws a figure, and keeps the scores of its own. */
    private void draw(Draws.Figure figure, int block, double[] alone, double[] values, int runs) {
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
        if (chance == 0 || draws.reworkShare[i] == 0) {
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

    private void add(double[] amounts, double rate, int runs) {
        if (rate != 0) {
            for (int r = 0; r < runs; r++) {
                cost[r] += rate * amounts[r];
            }
        }
    }

    private void forward(int runs) {
        Arrays.fill(finish, 0);
        for (int j : network.order) {
            double[] start = starts[j];
            double[] time = times[j];
            Arrays.fill(start, network.earliest[j]);
            for (CompiledNetwork.Arc arc : network.into.get(j)) {
                double[] from = starts[arc.from()];
                double[] fromTime = times[arc.from()];
                double a = arc.fromFinish() ? 1 : 0;
                double b = arc.toFinish() ? 1 : 0;
                double lag = arc.lag();
                for (int r = 0; r < runs; r++) {
                    start[r] = Math.max(start[r], from[r] + a * fromTime[r] + lag - b * time[r]);
                }
            }
            for (int r = 0; r < runs; r++) {
                finish[r] = Math.max(finish[r], start[r] + time[r]);
            }
        }
    }

    private void backward(int block, int runs) {
        for (int k = network.size - 1; k >= 0; k--) {
            int i = network.order[k];
            double[] latest = late[i];
            double[] time = times[i];
            for (int r = 0; r < runs; r++) {
                latest[r] = finish[r] - time[r];
            }
            for (CompiledNetwork.Arc arc : network.outOf.get(i)) {
                double[] to = late[arc.to()];
                double[] toTime = times[arc.to()];
                double a = arc.fromFinish() ? 1 : 0;
                double b = arc.toFinish() ? 1 : 0;
                double lag = arc.lag();
                for (int r = 0; r < runs; r++) {
                    latest[r] = Math.min(latest[r], to[r] - lag + b * toTime[r] - a * time[r]);
                }
            }
            int count = 0;
            for (int r = 0; r < runs; r++) {
                count += latest[r] - starts[i][r] <= CriticalPath.NO_ROOM * Math.max(1, finish[r]) ? 1 : 0;
            }
            tally.critical[block][i] = count;
        }
    }

    private void miss(int block, int runs) {
        for (int w = 0; w < draws.windows.length; w++) {
            int from = draws.windows[w][0];
            int to = draws.windows[w][1];
            double most = draws.windowMost[w] + CriticalPath.NO_ROOM;
            for (int r = 0; r < runs; r++) {
                if (starts[to][r] - starts[from][r] - times[from][r] > most) {
                    tally.missed[block][w]++;
                }
            }
        }
    }

    private void account(int block, int runs) {
        for (int r = 0; r < runs; r++) {
            finish[r] -= draws.aboutFinish;
            cost[r] -= draws.aboutCost;
        }
        for (int d = 0; d < shared.length; d++) {
            account(block, d, shared[d], runs);
        }
        for (int i = 0; i < network.size; i++) {
            Draws.Figure figure = draws.activities.get(i);
            if (!figure.constant() && figure.own > 0) {
                account(block, draws.ownSource(i), own[i], runs);
            }
            if (draws.reworkChance[i] > 0 && draws.reworkShare[i] > 0) {
                account(block, draws.reworkSource(i), again[i], runs);
            }
        }
        for (int c = 0; c < charges.length; c++) {
            Draws.Figure figure = draws.charges.get(c);
            if (!figure.constant() && figure.own > 0) {
                account(block, draws.chargeSource(c), charges[c], runs);
            }
        }
    }

    private void account(int block, int source, double[] alone, int runs) {
        double sum = 0;
        double withFinish = 0;
        double withCost = 0;
        for (int r = 0; r < runs; r++) {
            sum += alone[r];
            withFinish += alone[r] * finish[r];
            withCost += alone[r] * cost[r];
        }
        tally.add(block, source, sum, withFinish, withCost);
    }
}
