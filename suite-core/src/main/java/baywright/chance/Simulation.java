package baywright.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;

/**
 * Simulates a network many times. Every activity, charge and shared driver has a stream of random numbers of its own, which
 * grows from the seed, its name and the number of the block of runs. So a seed gives the same answer, bit by bit, on any
 * number of threads; the order of the table does not matter; and two networks that differ in one activity meet the same
 * luck in all others.
 *
 * @param network what is done
 * @param charges what costs without taking time
 * @param fixed   cost that is certain
 */
public record Simulation(Network network, List<Charge> charges, double fixed) {

    private static final int LEAST_RUNS = 100;
    private static final int MOST_RUNS = 10_000_000;

    /** Runs whose times are kept for the rank correlation: a standard error of about 0.016. */
    private static final int RANKED = 8 * Blocks.RUNS;

    /**
     * How to simulate.
     *
     * @param seed    any number
     * @param runs    100 to 10 000 000
     * @param threads from 1; has no influence on the result
     */
    public record Options(long seed, int runs, int threads) {
        public Options {
            if (runs < LEAST_RUNS || runs > MOST_RUNS) {
                throw new IllegalArgumentException(
                        "a simulation has " + LEAST_RUNS + " to " + MOST_RUNS + " runs, got " + runs);
            }
            if (threads < 1) {
                throw new IllegalArgumentException("a simulation needs a thread or more, got " + threads);
            }
        }

        /** On all processors. */
        public static Options of(long seed, int runs) {
            return new Options(seed, runs, Runtime.getRuntime().availableProcessors());
        }
    }

    public Simulation {
        charges = List.copyOf(charges);
        if (charges.stream().map(Charge::id).distinct().count() < charges.size()) {
            throw new IllegalArgumentException("two charges have the same id");
        }
        if (!(fixed >= 0) || Double.isInfinite(fixed)) {
            throw new IllegalArgumentException("the certain cost must not be negative, got " + fixed);
        }
    }

    /** A network without charges. */
    public static Simulation of(Network network) {
        return new Simulation(network, List.of(), 0);
    }

    /** Runs to the end. */
    public Outcome run(Options options) {
        return run(options, Watch.NOBODY);
    }

    /**
     * Runs while it is watched.
     *
     * @throws CancellationException when the watch says so, or the thread is interrupted
     */
    public Outcome run(Options options, Watch watch) {
        Draws draws = new Draws(this, options.seed());
        Tally tally = new Tally(draws, options.runs(), Math.min(options.runs(), RANKED));
        Blocks.run(options, watch, () -> new Block(draws, tally)::simulate);
        return outcome(options, tally, draws);
    }

    private Outcome outcome(Options options, Tally tally, Draws draws) {
        Sample finish = Sample.of(tally.finish);
        Sample cost = Sample.of(tally.cost);
        double[] ranks = Ranks.of(tally.rankedFinish());
        List<Outcome.Role> roles = new ArrayList<>();
        for (int i = 0; i < network.activities().size(); i++) {
            roles.add(new Outcome.Role(
                    network.activities().get(i).id(),
                    tally.criticality(i),
                    Ranks.correlation(Ranks.of(tally.rankedTimes[i]), ranks)));
        }
        List<Outcome.Driver> drivers = new ArrayList<>(draws.drivers(tally, finish, cost));
        drivers.sort(Comparator.comparingDouble(Outcome.Driver::ofFinish).reversed());
        List<Outcome.Missed> missed = new ArrayList<>();
        for (int w = 0; w < network.windows().size(); w++) {
            missed.add(new Outcome.Missed(network.windows().get(w), tally.missed(w)));
        }
        return new Outcome(options.seed(), finish, cost, roles, drivers, missed);
    }
}
