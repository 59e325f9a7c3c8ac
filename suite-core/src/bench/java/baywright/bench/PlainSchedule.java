package baywright.bench;

import baywright.schedule.Activity;
import baywright.schedule.Lag;
import baywright.schedule.Need;
import baywright.schedule.Project;
import java.util.Arrays;

/**
 * The plain serial schedule: of the activities whose predecessors are placed, the one with the least latest finish, ties by
 * number, as early as the resources allow. R. Kolisch, "Serial and parallel resource-constrained project scheduling methods
 * revisited", European Journal of Operational Research 90 (1996) 320-333. Only for projects whose lags go forward and whose
 * needs leave no choice.
 */
final class PlainSchedule {

    private final Project project;
    private final int[] starts;
    private final boolean[] placed;
    private final int[][] free;

    private PlainSchedule(Project project) {
        this.project = project;
        starts = new int[project.activities().size()];
        placed = new boolean[starts.length];
        free = new int[project.resources().size()][project.horizon()];
        for (int r = 0; r < free.length; r++) {
            Arrays.fill(free[r], project.resources().get(r).capacity());
        }
    }

    /** Start of each activity. */
    static int[] starts(Project project) {
        PlainSchedule schedule = new PlainSchedule(project);
        int[] latest = schedule.latestFinish();
        for (int k = 0; k < schedule.starts.length; k++) {
            int next = -1;
            for (int i = 0; i < latest.length; i++) {
                if (schedule.mayBePlaced(i) && (next < 0 || latest[i] < latest[next])) {
                    next = i;
                }
            }
            schedule.place(next);
        }
        return schedule.starts;
    }

    private int minutes(int i) {
        return project.activities().get(i).minutes();
    }

    private int[] latestFinish() {
        int[] latest = new int[starts.length];
        Arrays.fill(latest, project.horizon());
        for (int i = latest.length - 1; i >= 0; i--) {
            for (Lag lag : project.lags()) {
                if (lag.from() == i) {
                    latest[i] = Math.min(latest[i], latest[lag.to()] - minutes(lag.to()));
                }
            }
        }
        return latest;
    }

    private boolean mayBePlaced(int i) {
        return !placed[i]
                && project.lags().stream().filter(lag -> lag.to() == i).allMatch(lag -> placed[lag.from()]);
    }

    private void place(int i) {
        int start = 0;
        for (Lag lag : project.lags()) {
            if (lag.to() == i) {
                start = Math.max(start, starts[lag.from()] + minutes(lag.from()));
            }
        }
        while (!fits(i, start)) {
            start++;
        }
        Activity activity = project.activities().get(i);
        for (Need need : activity.needs()) {
            for (int t = start; t < start + activity.minutes(); t++) {
                free[need.anyOf().get(0)][t] -= need.amount();
            }
        }
        starts[i] = start;
        placed[i] = true;
    }

    private boolean fits(int i, int start) {
        Activity activity = project.activities().get(i);
        for (Need need : activity.needs()) {
            for (int t = start; t < start + activity.minutes(); t++) {
                if (free[need.anyOf().get(0)][t] < need.amount()) {
                    return false;
                }
            }
        }
        return true;
    }
}
