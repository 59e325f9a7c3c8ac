package baywright.plan;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The vehicle's zones as rows, in its order; the vehicle as a whole is a row too. */
final class VehicleIndex {

    /** The zone that stands for the vehicle as a whole. */
    static final String VEHICLE = "vehicle";

    private final Shape shape;
    private final Map<String, Integer> rowById = new HashMap<>();
    private final String[] ids;
    private final Zone[] zones;
    private final int vehicle;
    private final int[] whole;
    private final int[] real;
    private final int[][] neighbours;
    private final int[][] near;

    VehicleIndex(Shape shape) {
        this.shape = shape;
        for (Zone zone : shape.zones()) {
            rowById.putIfAbsent(zone.id(), rowById.size());
        }
        vehicle = rowById.computeIfAbsent(VEHICLE, id -> rowById.size());
        whole = new int[] {vehicle};
        ids = new String[rowById.size()];
        rowById.forEach((id, row) -> ids[row] = id);
        real = new int[ids.length - 1];
        int next = 0;
        for (int row = 0; row < ids.length; row++) {
            if (row != vehicle) {
                real[next++] = row;
            }
        }
        Map<String, Zone> byId = new HashMap<>();
        shape.zones().forEach(zone -> byId.putIfAbsent(zone.id(), zone));
        zones = new Zone[ids.length];
        neighbours = new int[ids.length][];
        near = new int[ids.length][];
        for (int row = 0; row < ids.length; row++) {
            zones[row] = byId.get(ids[row]);
            neighbours[row] = zone(row)
                    .map(z -> z.neighbours().stream()
                            .map(rowById::get)
                            .filter(r -> r != null && r != vehicle)
                            .mapToInt(r -> r)
                            .toArray())
                    .orElse(new int[0]);
        }
    }

    Shape shape() {
        return shape;
    }

    int rows() {
        return ids.length;
    }

    /** The row of the vehicle as a whole. */
    int vehicle() {
        return vehicle;
    }

    /** The vehicle's row alone. */
    int[] whole() {
        return whole;
    }

    /** Every row but the vehicle's. */
    int[] real() {
        return real;
    }

    String id(int row) {
        return ids[row];
    }

    Set<String> ids() {
        return rowById.keySet();
    }

    /** The zone of a row; empty for a vehicle row that the shape does not list. */
    Optional<Zone> zone(int row) {
        return Optional.ofNullable(zones[row]);
    }

    int row(String id) {
        return rowById.getOrDefault(id, -1);
    }

    /** A row and the ones that touch it, as {@link #withNeighbours} gives them. */
    int[] near(int row) {
        if (near[row] == null) {
            near[row] = withNeighbours(new int[] {row});
        }
        return near[row];
    }

    /** These rows and the ones that touch them; all real rows when the vehicle is among them. */
    int[] withNeighbours(int[] rows) {
        BitSet all = new BitSet();
        for (int row : rows) {
            if (row == vehicle) {
                return real;
            }
            all.set(row);
            for (int other : neighbours[row]) {
                all.set(other);
            }
        }
        return all.stream().toArray();
    }
}
