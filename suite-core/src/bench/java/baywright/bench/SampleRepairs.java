package baywright.bench;

import baywright.library.Library;
import baywright.library.LibraryLoader;
import baywright.plan.Edit;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.workspace.Job;
import baywright.workspace.Workspace;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Plans of sixty steps that chance has broken: the demo's show coupe with further rinses and dust-downs, without a stop,
 * from which one to three steps were dropped or moved. What is still without a stop then is left out.
 *
 * @param setting what they are proved against
 * @param broken  the plans, those with fewest breaks first
 */
record SampleRepairs(Setting setting, List<Plan> broken) {

    private static final int STEPS = 60;
    private static final int MOST_BREAKS = 3;
    private static final int SEEDS = 20;
    private static final Set<String> REPEATED = Set.of("pressure-rinse", "final-rinse", "dust-down", "panel-wipe");

    static SampleRepairs of(Path workspace) throws IOException {
        Workspace files = Workspace.open(workspace);
        Library library = LibraryLoader.load(files.stages(), files.items()).library();
        Job coupe = files.job("show-coupe").orElseThrow().job().orElseThrow();
        Setting setting = files.setting(coupe, library, LocalDateTime.of(2026, 12, 7, 8, 0));
        Prover prover = Prover.forSetting(setting);
        Plan whole = lengthened(prover, coupe.plan());
        List<Plan> broken = new ArrayList<>();
        for (int breaks = 1; breaks <= MOST_BREAKS; breaks++) {
            for (int seed = 0; seed < SEEDS; seed++) {
                Plan plan = broken(whole, breaks, new Random(100L * breaks + seed));
                if (!prover.stops(plan).isEmpty()) {
                    broken.add(plan);
                }
            }
        }
        return new SampleRepairs(setting, broken);
    }

    /** Steps that can be done twice in a row are, until there are enough. */
    private static Plan lengthened(Prover prover, Plan plan) {
        List<Step> steps = new ArrayList<>(plan.steps());
        for (int i = 0; i < steps.size() && steps.size() < STEPS; i++) {
            Step step = steps.get(i);
            if (REPEATED.contains(step.stage())) {
                List<Step> longer = new ArrayList<>(steps);
                longer.add(i + 1, again(step, steps.size() + 1));
                if (prover.stops(new Plan(longer)).isEmpty()) {
                    steps = longer;
                    i++;
                }
            }
        }
        if (steps.size() < STEPS) {
            throw new IllegalStateException("the plan has only " + steps.size() + " steps");
        }
        return new Plan(steps);
    }

    private static Step again(Step step, int number) {
        return new Step(
                "again" + number,
                step.stage(),
                step.zones(),
                step.with(),
                step.priority(),
                Optional.empty(),
                step.drivers());
    }

    private static Plan broken(Plan whole, int breaks, Random random) {
        Plan plan = whole;
        for (int b = 0; b < breaks; b++) {
            int size = plan.steps().size();
            String id = plan.steps().get(random.nextInt(size)).id();
            Edit edit = random.nextBoolean() ? new Edit.Drop(id) : new Edit.Move(id, random.nextInt(size));
            plan = edit.applyTo(plan);
        }
        return plan;
    }
}
