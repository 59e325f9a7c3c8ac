package baywright.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When everything can begin and must have begun if nothing is uncertain (critical path method), and which activities have
 * no room.
 *
 * @param length  minutes from the network's start to its end
 * @param timings one for each activity, in the network's order
 */
public record CriticalPath(double length, List<Timing> timings) {

    /** Room that rounding leaves on a chain that has none, as a share of the length. */
    static final double NO_ROOM = 1e-9;

    /**
     * One activity, in minutes after the network's start.
     *
     * @param activity    its id
     * @param earlyStart  when it can begin
     * @param earlyFinish when it then ends
     * @param lateStart   when it must begin so that the end does not move
     * @param lateFinish  when it then ends
     * @param totalFloat  how much later it may begin so that the end does not move
     * @param freeFloat   how much later it may begin so that nothing else moves
     */
    public record Timing(
            String activity,
            double earlyStart,
            double earlyFinish,
            double lateStart,
            double lateFinish,
            double totalFloat,
            double freeFloat) {}

    public CriticalPath {
        timings = List.copyOf(timings);
    }

    /** With every activity at its mean. */
    public static CriticalPath ofMeans(Network network) {
        return of(
                network,
                network.activities().stream()
                        .mapToDouble(a -> a.minutes().mean().doubleValue())
                        .toArray());
    }

    /** With every activity at its likely time. */
    public static CriticalPath ofLikely(Network network) {
        return of(
                network,
                network.activities().stream()
                        .mapToDouble(a -> a.minutes().likely().doubleValue())
                        .toArray());
    }

    /**
     * With given times.
     *
     * @param durations minutes, not negative, in the network's order of activities
     */
    public static CriticalPath of(Network network, double... durations) {
        CompiledNetwork compiled = new CompiledNetwork(network);
        if (durations.length != compiled.size) {
            throw new IllegalArgumentException(
                    "a network of " + compiled.size + " activities needs as many durations, got " + durations.length);
        }
        double[] early = compiled.starts(durations);
        double length = 0;
        for (int i = 0; i < early.length; i++) {
            length = Math.max(length, early[i] + durations[i]);
        }
        double[] late = compiled.lateStarts(length, durations);
        List<Timing> timings = new ArrayList<>();
        for (int i = 0; i < early.length; i++) {
            double room = length - early[i] - durations[i];
            for (CompiledNetwork.Arc arc : compiled.outOf.get(i)) {
                room = Math.min(room, early[arc.to()] - compiled.bound(arc, early[i], durations));
            }
            timings.add(new Timing(
                    network.activities().get(i).id(),
                    early[i],
                    early[i] + durations[i],
                    late[i],
                    late[i] + durations[i],
                    late[i] - early[i],
                    room));
        }
        return new CriticalPath(length, timings);
    }

    /** Ids of the activities without room, by early start. */
    public List<String> critical() {
        return timings.stream()
                .filter(t -> t.totalFloat() <= NO_ROOM * Math.max(1, length))
                .sorted(Comparator.comparingDouble(Timing::earlyStart))
                .map(Timing::activity)
                .toList();
    }
}
