package baywright.bench;

import baywright.plan.Prover;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Proving and rolling up in a process that has warmed up. */
final class PlanSection {

    private static final int USUAL = 60;
    private static final double BUDGET = 5;

    /** Growth counts as linear up to this power of the number of steps. */
    private static final double LINEAR = 1.1;

    private PlanSection() {}

    /** @param only the one length of plan to prove; 0: all of them */
    static List<Figure> measure(Path workspace, int rounds, int only) throws IOException {
        Map<String, Map<Integer, Double>> times = times(workspace, rounds, only);
        Map<Integer, Double> whole = times.get("proveAndRollUp");
        Map<Integer, Double> edit = times.get("proveAndRollUpAfterAnEdit");
        Map<Integer, Double> sort = times.get("topologicalSort");
        SamplePlan sample = SamplePlan.of(workspace, USUAL);
        int findings = Prover.prove(sample.setting(), sample.plan()).findings().size();
        String size = USUAL + " steps × " + SamplePlan.ZONES + " zones";

        List<Figure> figures = new ArrayList<>();
        if (whole.containsKey(USUAL)) {
            figures.add(within("prove and roll up " + size + " from nothing (" + findings + " findings)", whole, sort));
            figures.add(within("the same after an edit", edit, sort));
        }
        for (int steps : whole.keySet()) {
            figures.add(Figure.told(
                    "prove and roll up " + steps + " steps",
                    Figure.milliseconds(whole.get(steps)),
                    "topological sort: " + Figure.milliseconds(sort.get(steps)),
                    whole.get(steps) / sort.get(steps)));
        }
        if (whole.size() > 1) {
            figures.add(growth("growth of proving and rolling up", whole));
            figures.add(growth("growth of the same after an edit", edit));
        }
        return figures;
    }

    private static Figure within(String what, Map<Integer, Double> ours, Map<Integer, Double> sort) {
        double measured = ours.get(USUAL);
        double against = sort.get(USUAL);
        return new Figure(
                what,
                Figure.milliseconds(measured),
                "topological sort: " + Figure.milliseconds(against),
                Optional.of(measured / against),
                "≤ " + Figure.milliseconds(BUDGET),
                measured <= BUDGET);
    }

    private static Figure growth(String what, Map<Integer, Double> times) {
        double power = power(times);
        return new Figure(
                what,
                String.format(Locale.ROOT, "steps to the power of %.2f", power),
                "linear: to the power of 1",
                Optional.of(power),
                "linear (power ≤ " + LINEAR + ")",
                power <= LINEAR);
    }

    /** Slope of the line through the logarithms of steps and times: 1 is linear, 2 is quadratic. */
    private static double power(Map<Integer, Double> times) {
        double n = times.size();
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        for (Map.Entry<Integer, Double> point : times.entrySet()) {
            double steps = Math.log(point.getKey());
            double time = Math.log(point.getValue());
            x += steps;
            y += time;
            xx += steps * steps;
            xy += steps * time;
        }
        return (n * xy - x * y) / (n * xx - x * x);
    }

    /** Milliseconds by method and number of steps. */
    private static Map<String, Map<Integer, Double>> times(Path workspace, int rounds, int only) throws IOException {
        Collection<RunResult> results;
        try {
            ChainedOptionsBuilder options = new OptionsBuilder()
                    .include(PlanBenchmark.class.getName() + "\\.")
                    .param("workspace", workspace.toString())
                    .forks(Math.min(2, rounds))
                    .measurementIterations(rounds)
                    .shouldFailOnError(true);
            if (only > 0) {
                options.param("steps", String.valueOf(only));
            }
            results = new Runner(options.build()).run();
        } catch (RunnerException e) {
            throw new IOException("the measuring failed", e);
        }
        Map<String, Map<Integer, Double>> times = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark();
            times.computeIfAbsent(name.substring(name.lastIndexOf('.') + 1), n -> new TreeMap<>())
                    .put(
                            Integer.valueOf(result.getParams().getParam("steps")),
                            result.getPrimaryResult().getScore());
        }
        return times;
    }
}
