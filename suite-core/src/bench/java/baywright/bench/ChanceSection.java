package baywright.bench;

import baywright.chance.Activity;
import baywright.chance.Link;
import baywright.chance.Loadings;
import baywright.chance.Network;
import baywright.chance.Rework;
import baywright.chance.Simulation;
import baywright.chance.Watch;
import baywright.quantity.ThreePoint;
import baywright.schedule.BookedJob;
import baywright.schedule.ShopCalendar;
import baywright.schedule.ShopScheduler;
import baywright.schedule.TimedShop;
import baywright.schedule.UncertainSteps;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Simulating a network in a process that has warmed up. */
final class ChanceSection {

    private static final int ACTIVITIES = 60;
    private static final int RUNS = 100_000;
    private static final double BUDGET = 1;
    private static final double NANOS = 1e9;

    private ChanceSection() {}

    static List<Figure> measure(Path workspace, int rounds) throws IOException {
        return List.of(network(rounds), timetable(workspace, rounds));
    }

    /** A timetable of sixty steps with the shop's hours, people and bays; beside it what making it takes. */
    private static Figure timetable(Path workspace, int rounds) throws IOException {
        SamplePlan plan = SamplePlan.of(workspace, ACTIVITIES);
        ShopCalendar own = Workspace.open(workspace).shop().orElseThrow().calendar();
        BookedJob job = new BookedJob("sample", plan.setting(), plan.plan(), 1, Optional.empty());
        double[] ours = new double[rounds];
        double[] baseline = new double[rounds];
        double unused = 0;
        for (int round = -2; round < rounds; round++) {
            long begun = System.nanoTime();
            TimedShop timed = ShopScheduler.timed(List.of(job), own, ShopScheduler.Effort.AT_ONCE)
                    .orElseThrow();
            long between = System.nanoTime();
            unused += timed.chance(UncertainSteps.APART, Simulation.Options.of(1, RUNS), Watch.NOBODY)
                    .jobs()
                    .get(0)
                    .finish()
                    .mean();
            if (round >= 0) {
                ours[round] = (System.nanoTime() - between) / NANOS;
                baseline[round] = (between - begun) / NANOS;
            }
        }
        double median = median(ours);
        return new Figure(
                RUNS + " runs of a timetable of " + ACTIVITIES + " steps" + (Double.isNaN(unused) ? ", broken" : ""),
                Figure.seconds(median),
                "making the timetable: " + Figure.seconds(median(baseline)),
                Optional.of(median / median(baseline)),
                "≤ " + Figure.seconds(BUDGET),
                median <= BUDGET);
    }

    private static Figure network(int rounds) {
        Simulation simulation = Simulation.of(network());
        double[] ours = new double[rounds];
        double[] baseline = new double[rounds];
        double unused = 0;
        for (int round = -2; round < rounds; round++) {
            long begun = System.nanoTime();
            unused += simulation.run(Simulation.Options.of(1, RUNS)).finish().mean();
            long between = System.nanoTime();
            unused += scores();
            if (round >= 0) {
                ours[round] = (between - begun) / NANOS;
                baseline[round] = (System.nanoTime() - between) / NANOS;
            }
        }
        double median = median(ours);
        return new Figure(
                RUNS + " runs of " + ACTIVITIES + " activities" + (Double.isNaN(unused) ? ", broken" : ""),
                Figure.seconds(median),
                "as many normal scores: " + Figure.seconds(median(baseline)),
                Optional.of(median / median(baseline)),
                "≤ " + Figure.seconds(BUDGET),
                median <= BUDGET);
    }

    private static double scores() {
        SplittableRandom random = new SplittableRandom(1);
        double sum = 0;
        for (int i = 0; i < RUNS * ACTIVITIES; i++) {
            sum += random.nextGaussian();
        }
        return sum;
    }

    private static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static Network network() {
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < ACTIVITIES; i++) {
            int least = 5 + i * 7 % 20;
            activities.add(Activity.of(
                            "a" + i,
                            ThreePoint.of(
                                    String.valueOf(least),
                                    String.valueOf(least + 3 + i % 5),
                                    String.valueOf(least + 15 + i * 3 % 25)))
                    .with(Loadings.evenly(0.5, List.of("cause" + i % 3)))
                    .with(new Rework(0.06, 0.5))
                    .costing(0.5));
            for (int back = 1; back <= 3 && back <= i; back += 1 + i % 2) {
                links.add(Link.after("a" + (i - back), "a" + i));
            }
        }
        return new Network(activities, links);
    }
}
