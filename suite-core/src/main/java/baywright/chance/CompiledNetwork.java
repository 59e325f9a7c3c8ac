package baywright.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A network as plain numbers: activities by place, each with the links that end and begin at it. */
final class CompiledNetwork {

    /** A link between places. */
    record Arc(int from, int to, boolean fromFinish, boolean toFinish, double lag) {}

    final int size;
    final int[] order;
    final double[] earliest;
    final List<List<Arc>> into = new ArrayList<>();
    final List<List<Arc>> outOf = new ArrayList<>();

    CompiledNetwork(Network network) {
        size = network.activities().size();
        order = network.order();
        earliest = network.activities().stream().mapToDouble(Activity::earliest).toArray();
        for (int i = 0; i < size; i++) {
            into.add(new ArrayList<>());
            outOf.add(new ArrayList<>());
        }
        Map<String, Integer> places = network.places();
        for (Link link : network.links()) {
            Arc arc = new Arc(
                    places.get(link.from()),
                    places.get(link.to()),
                    link.kind().fromFinish(),
                    link.kind().toFinish(),
                    link.lag());
            into.get(arc.to()).add(arc);
            outOf.get(arc.from()).add(arc);
        }
    }

    /** Early starts for some durations. */
    double[] starts(double... durations) {
        double[] starts = new double[size];
        for (int j : order) {
            double start = earliest[j];
            for (Arc arc : into.get(j)) {
                start = Math.max(start, bound(arc, starts[arc.from()], durations));
            }
            starts[j] = start;
        }
        return starts;
    }

    /** The start that a link allows at the earliest. */
    double bound(Arc arc, double fromStart, double... durations) {
        double end = arc.fromFinish() ? fromStart + durations[arc.from()] : fromStart;
        return end + arc.lag() - (arc.toFinish() ? durations[arc.to()] : 0);
    }

    /** Latest starts that let everything end at {@code finish}. */
    double[] lateStarts(double finish, double... durations) {
        double[] late = new double[size];
        for (int k = size - 1; k >= 0; k--) {
            int i = order[k];
            double start = finish - durations[i];
            for (Arc arc : outOf.get(i)) {
                double room = late[arc.to()] - arc.lag() + (arc.toFinish() ? durations[arc.to()] : 0);
                start = Math.min(start, arc.fromFinish() ? room - durations[i] : room);
            }
            late[i] = start;
        }
        return late;
    }
}
