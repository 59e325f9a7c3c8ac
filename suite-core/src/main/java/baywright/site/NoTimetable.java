package baywright.site;

import baywright.workspace.Job;
import java.util.List;

/**
 * Why a job has no timetable.
 *
 * @param job        the job
 * @param overLimits whether its steps bring more in a day than its people and bays may be given
 * @param planHolds  whether nothing in the order of its plan stops it
 * @param circle     steps that wait for each other, in the order of the circle; empty when none do
 */
public record NoTimetable(Job job, boolean overLimits, boolean planHolds, List<String> circle) {
    public NoTimetable {
        circle = List.copyOf(circle);
    }
}
