package baywright.bench;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Runs of one contender in the order of the rounds. */
record Runs(List<Run> runs) {

    /**
     * One run of a whole process.
     *
     * @param wall seconds that passed
     * @param cpu  seconds that processors were busy with it, on all cores together
     */
    record Run(double wall, double cpu) {}

    Runs {
        runs = List.copyOf(runs);
    }

    /** Median of the seconds that passed. */
    double wall() {
        return median(runs.stream().mapToDouble(Run::wall).toArray());
    }

    /** Median of the busy seconds. */
    double cpu() {
        return median(runs.stream().mapToDouble(Run::cpu).toArray());
    }

    /** Both medians, for people. */
    String both() {
        return Figure.seconds(wall()) + " (" + Figure.seconds(cpu()) + " of processor)";
    }

    /** Median over the rounds of this contender's figure against another's of the same round. */
    double ratio(Runs to, ToDoubleFunction<Run> figure) {
        return median(IntStream.range(0, runs.size())
                .mapToDouble(i -> figure.applyAsDouble(runs.get(i)) / figure.applyAsDouble(to.runs.get(i)))
                .toArray());
    }

    /** Median over the rounds of what this contender took more than another in the same round, seconds. */
    double beyond(Runs other) {
        return median(IntStream.range(0, runs.size())
                .mapToDouble(i -> runs.get(i).wall() - other.runs.get(i).wall())
                .toArray());
    }

    private static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
