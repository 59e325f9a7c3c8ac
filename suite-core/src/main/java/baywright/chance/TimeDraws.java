package baywright.chance;

import java.util.List;
import java.util.Optional;

/**
 * Drawn times of activities, for whoever has a clock of their own to put them on. The streams are those of
 * {@link Simulation}: a seed and the activities' names give the same times, whatever the order and the number of threads.
 */
public final class TimeDraws {

    private final Draws draws;

    /**
     * What is drawn.
     *
     * @param activities at least one; ids are unique
     * @param seed       any number
     */
    public TimeDraws(List<Activity> activities, long seed) {
        draws = new Draws(Simulation.of(new Network(activities, List.of())), seed);
    }

    /** Names of the shared causes, in the order of {@link Rows#shared}. */
    public List<String> shared() {
        return draws.driverNames();
    }

    /** Rows for one thread. */
    public Rows rows() {
        return new Rows(draws);
    }

    /** The times of one block of runs. Belongs to one thread. */
    public static final class Rows {
        private final Draws draws;
        private final Times times;

        private Rows(Draws draws) {
            this.draws = draws;
            times = new Times(draws);
        }

        /** Draws a block, from 0, of so many runs, up to {@link Blocks#RUNS}. */
        public void draw(int block, int runs) {
            times.draw(block, runs);
        }

        /** Minutes of an activity by run; not to be changed. */
        public double[] minutes(int activity) {
            return times.times[activity];
        }

        /** Standard normal scores of a shared cause by run; not to be changed. */
        public double[] shared(int cause) {
            return times.shared[cause];
        }

        /** Standard normal scores that an activity has for itself; empty for one that is certain but for its causes. */
        public Optional<double[]> own(int activity) {
            Draws.Figure figure = draws.activities.get(activity);
            return figure.constant() || figure.own == 0 ? Optional.empty() : Optional.of(times.own[activity]);
        }

        /** Whether an activity was done again, as a score with mean 0 and variance 1; empty when it never is. */
        public Optional<double[]> again(int activity) {
            return draws.reworks(activity) ? Optional.of(times.again[activity]) : Optional.empty();
        }
    }
}
