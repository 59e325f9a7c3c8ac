package baywright.schedule;

import java.util.List;

/**
 * When each activity of a project runs and who serves it.
 *
 * @param starts by activity, minutes
 * @param ends   by activity, minutes
 * @param taken  for each need of each activity the resources that serve it
 * @param held   for each hold the resources that serve it
 * @param goal   the goal's value
 */
public record Timetable(
        List<Integer> starts,
        List<Integer> ends,
        List<List<List<Integer>>> taken,
        List<List<Integer>> held,
        long goal) {
    public Timetable {
        starts = List.copyOf(starts);
        ends = List.copyOf(ends);
        taken = taken.stream()
                .map(needs -> needs.stream().map(List::copyOf).toList())
                .toList();
        held = held.stream().map(List::copyOf).toList();
    }

    public int start(int activity) {
        return starts.get(activity);
    }

    public int end(int activity) {
        return ends.get(activity);
    }
}
