package baywright.chance;

import java.util.Arrays;

/**
 * Some runs side by side: a row for each figure, a column for each run, so that the loops run over plain rows. Belongs to
 * one thread.
 */
final class Block {

    private final Draws draws;
    private final CompiledNetwork network;
    private final Tally tally;
    private final Times drawn;
    private final double[][] times;
    private final double[][] starts;
    private final double[][] late;
    private final double[][] charges;
    private final double[] scores = new double[Blocks.RUNS];
    private final double[] finish = new double[Blocks.RUNS];
    private final double[] cost = new double[Blocks.RUNS];

    Block(Draws draws, Tally tally) {
        this.draws = draws;
        this.tally = tally;
        network = draws.network;
        drawn = new Times(draws);
        times = drawn.times;
        starts = new double[network.size][Blocks.RUNS];
        late = new double[network.size][Blocks.RUNS];
        charges = new double[draws.charges.size()][Blocks.RUNS];
    }

    /** Does the runs of a block. */
    void simulate(int block) {
        int first = block * Blocks.RUNS;
        int runs = Blocks.runsOf(block, tally.finish.length);
        drawn.draw(block, runs);
        Arrays.fill(cost, draws.fixed);
        for (int i = 0; i < network.size; i++) {
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
            drawn.draw(draws.charges.get(c), block, charges[c], scores, runs);
            add(scores, 1, runs);
        }
        System.arraycopy(cost, 0, tally.cost, first, runs);
        account(block, runs);
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
        for (int d = 0; d < drawn.shared.length; d++) {
            account(block, d, drawn.shared[d], runs);
        }
        for (int i = 0; i < network.size; i++) {
            Draws.Figure figure = draws.activities.get(i);
            if (!figure.constant() && figure.own > 0) {
                account(block, draws.ownSource(i), drawn.own[i], runs);
            }
            if (draws.reworks(i)) {
                account(block, draws.reworkSource(i), drawn.again[i], runs);
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
