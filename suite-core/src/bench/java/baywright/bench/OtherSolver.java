package baywright.bench;

import baywright.schedule.Activity;
import baywright.schedule.Lag;
import baywright.schedule.Need;
import baywright.schedule.Project;
import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;

/** CP-SAT of OR-Tools on a project whose lags go forward and whose needs leave no choice; starts from a schedule. */
final class OtherSolver {

    /**
     * An answer.
     *
     * @param end    of the best schedule found
     * @param proved whether it says that none is better
     */
    record Answer(long end, boolean proved) {}

    private OtherSolver() {}

    static void load() {
        Loader.loadNativeLibraries();
    }

    static Answer solve(Project project, int[] from, int seconds, int workers) {
        CpModel model = new CpModel();
        int last = from.length - 1;
        int horizon = from[last] + project.activities().get(last).minutes();
        List<IntVar> starts = new ArrayList<>();
        List<IntervalVar> intervals = new ArrayList<>();
        for (int i = 0; i < from.length; i++) {
            Activity activity = project.activities().get(i);
            IntVar start = model.newIntVar(0, (long) horizon - activity.minutes(), activity.id());
            model.addHint(start, from[i]);
            starts.add(start);
            intervals.add(model.newFixedSizeIntervalVar(start, activity.minutes(), activity.id()));
        }
        for (Lag lag : project.lags()) {
            int minutes = project.activities().get(lag.from()).minutes();
            model.addLessOrEqual(LinearExpr.affine(starts.get(lag.from()), 1, minutes), starts.get(lag.to()));
        }
        for (int r = 0; r < project.resources().size(); r++) {
            CumulativeConstraint together =
                    model.addCumulative(project.resources().get(r).capacity());
            for (int i = 0; i < from.length; i++) {
                for (Need need : project.activities().get(i).needs()) {
                    if (need.anyOf().contains(r)) {
                        together.addDemand(intervals.get(i), need.amount());
                    }
                }
            }
        }
        model.minimize(starts.get(last));
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(workers)
                .setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(found ? Math.round(solver.objectiveValue()) : horizon, status == CpSolverStatus.OPTIMAL);
    }
}
