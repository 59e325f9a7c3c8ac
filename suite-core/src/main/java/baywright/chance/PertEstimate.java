package baywright.chance;

import baywright.quantity.Normal;

/**
 * The textbook's answer without simulation: the length of the critical path of the means, the variances of its activities
 * added up, and a normal distribution (Malcolm, Roseboom, Clark, Fazar, Operations Research 7 (1959) 646). It looks at one
 * path only and takes activities to be independent, so it promises more than it should where paths merge or activities
 * share a cause. It is shown beside a simulation, never instead of one.
 *
 * @param mean     minutes
 * @param variance of the critical path, in square minutes; the largest where several paths are as long
 */
public record PertEstimate(double mean, double variance) {

    /** The textbook's answer for a network. Rework is not looked at. */
    public static PertEstimate of(Network network) {
        CompiledNetwork compiled = new CompiledNetwork(network);
        double[] means = network.activities().stream()
                .mapToDouble(a -> a.minutes().mean().doubleValue())
                .toArray();
        double[] starts = compiled.starts(means);
        double[] variances = new double[compiled.size];
        double length = 0;
        for (int j : compiled.order) {
            for (CompiledNetwork.Arc arc : compiled.into.get(j)) {
                double slack = starts[j] - compiled.bound(arc, starts[arc.from()], means);
                if (slack <= CriticalPath.NO_ROOM * Math.max(1, starts[j])) {
                    variances[j] = Math.max(variances[j], variances[arc.from()]);
                }
            }
            variances[j] += network.activities().get(j).minutes().variance().doubleValue();
            length = Math.max(length, starts[j] + means[j]);
        }
        double most = 0;
        for (int j = 0; j < compiled.size; j++) {
            if (starts[j] + means[j] >= length - CriticalPath.NO_ROOM * Math.max(1, length)) {
                most = Math.max(most, variances[j]);
            }
        }
        return new PertEstimate(length, most);
    }

    public double deviation() {
        return Math.sqrt(variance);
    }

    /** Chance to end within so many minutes. */
    public double within(double minutes) {
        if (variance == 0) {
            return minutes < mean ? 0 : 1;
        }
        return Normal.below((minutes - mean) / deviation());
    }
}
