package baywright.bench;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.plan.Composer;
import baywright.plan.Composition;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Repair;
import baywright.plan.RepairResult;
import baywright.plan.Setting;
import baywright.plan.Wish;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The smallest repair of broken plans, and a plan from wishes, in this process. */
final class RepairSection {

    private static final double BUDGET = 1;

    /** Plans mended before any is timed. */
    private static final int WARM_UP = 15;

    private static final int PROOFS = 200;

    private RepairSection() {}

    static List<Figure> measure(Sample sample, int rounds) throws IOException {
        SampleRepairs repairs = SampleRepairs.of(sample.coupe());
        Repair.Options options = Repair.Options.USUAL.within(Duration.ofMillis((long) (BUDGET * 1000)));
        repairs.broken().subList(0, Math.min(WARM_UP, repairs.broken().size())).forEach(p -> mend(repairs, p, options));
        double[] seconds = new double[repairs.broken().size()];
        int proved = 0;
        for (int i = 0; i < seconds.length; i++) {
            long start = System.nanoTime();
            RepairResult result = mend(repairs, repairs.broken().get(i), options);
            seconds[i] = (System.nanoTime() - start) / 1e9;
            proved += result.provedSmallest() ? 1 : 0;
        }
        Arrays.sort(seconds);
        double proof = proof(repairs);
        String of = "smallest repair of a plan of 60 steps, " + seconds.length + " broken plans: ";
        List<Figure> figures = new ArrayList<>();
        figures.add(told(of + "median", seconds[seconds.length / 2], proof));
        figures.add(told(of + "95 of 100", seconds[seconds.length * 95 / 100], proof));
        figures.add(told(of + "longest", seconds[seconds.length - 1], proof));
        figures.add(new Figure(
                of + "proved within " + Figure.seconds(BUDGET),
                proved + " of " + seconds.length,
                "",
                Optional.empty(),
                "all",
                proved == seconds.length));
        figures.addAll(compose(sample.workspace(), rounds));
        return figures;
    }

    private static RepairResult mend(SampleRepairs repairs, Plan plan, Repair.Options options) {
        return Repair.find(repairs.setting(), plan, options);
    }

    private static Figure told(String what, double seconds, double proof) {
        return Figure.told(
                what, Figure.seconds(seconds), "one proof: " + Figure.milliseconds(proof * 1e3), seconds / proof);
    }

    /** Seconds of one proof of a plan of the same length by a prover that knows the setting. */
    private static double proof(SampleRepairs repairs) {
        Prover prover = Prover.forSetting(repairs.setting());
        Plan plan = repairs.broken().get(0);
        for (int i = 0; i < PROOFS; i++) {
            prover.stops(plan);
        }
        long start = System.nanoTime();
        for (int i = 0; i < PROOFS; i++) {
            prover.stops(plan);
        }
        return (System.nanoTime() - start) / 1e9 / PROOFS;
    }

    /** A full correction of the demo's hatch, from decontamination to a coating. */
    private static List<Figure> compose(Path workspace, int rounds) throws IOException {
        Workspace files = Workspace.open(workspace);
        Library library = LibraryLoader.load(files.stages(), files.items()).library();
        Setting setting = files.setting(
                files.job("hurried-hatch").orElseThrow().job().orElseThrow(),
                library,
                LocalDateTime.of(2026, 12, 7, 8, 0));
        List<Wish> wishes = List.of(
                Wish.must("decontaminated", "surface:paint"),
                Wish.must("refined", "surface:paint"),
                Wish.must("finish-checked", "surface:paint"),
                Wish.must("coated", "surface:paint"),
                Wish.must("handed-over", "vehicle"));
        double[] seconds = new double[rounds];
        long begin = System.nanoTime();
        Composition plan = Composer.compose(setting, wishes, true);
        double first = (System.nanoTime() - begin) / 1e9;
        for (int i = 0; i < rounds; i++) {
            long start = System.nanoTime();
            Composer.compose(setting, wishes, true);
            seconds[i] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(seconds);
        double median = seconds[rounds / 2];
        String what = "composing a full correction (" + plan.plan().steps().size() + " steps, "
                + (plan.provedCheapest() ? "" : "not ") + "proved the cheapest)";
        return List.of(
                Figure.told(what, Figure.seconds(median), "the first: " + Figure.seconds(first), median / first));
    }
}
