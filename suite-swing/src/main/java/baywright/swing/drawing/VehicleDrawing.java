package baywright.swing.drawing;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The picture of one kind of vehicle, in centimetres. Every zone of the shape has an area: what no picture of ours shows, such as the
 * cabin or a zone that the shop added, is a tile below it.
 *
 * @param areas   in the order of painting; where two lie over each other the later one is meant
 * @param bare    parts of the body that belong to no zone of this vehicle
 * @param details lines that only help to recognise the vehicle
 * @param bounds  of all of it
 */
public record VehicleDrawing(
        List<ZoneArea> areas, List<java.awt.Shape> bare, List<java.awt.Shape> details, Rectangle2D bounds) {

    private static final int MOST_KEPT = 64;
    private static final Map<Shape, VehicleDrawing> KEPT = new ConcurrentHashMap<>();

    public VehicleDrawing {
        areas = List.copyOf(areas);
        bare = List.copyOf(bare);
        details = List.copyOf(details);
    }

    /** The picture of a vehicle's shape; made once for each. */
    public static VehicleDrawing of(Shape vehicle) {
        if (KEPT.size() > MOST_KEPT) {
            KEPT.clear();
        }
        return KEPT.computeIfAbsent(withoutFindings(vehicle), VehicleDrawing::drawn);
    }

    /** Where a zone lies depends on its id alone; what else a vehicle says of it makes no other picture. */
    private static Shape withoutFindings(Shape vehicle) {
        List<Zone> zones = vehicle.zones().stream()
                .map(z -> new Zone(z.id(), z.title(), "", "", Map.of(), List.of()))
                .toList();
        return new Shape(vehicle.id(), vehicle.title(), vehicle.size(), zones);
    }

    private static VehicleDrawing drawn(Shape vehicle) {
        BodyKind kind = BodyKind.of(vehicle);
        Sketch sketch = new Sketch(vehicle);
        if (kind.body() == null) {
            Motorcycle.onto(sketch);
        } else {
            new Car(sketch, kind.body()).draw();
        }
        return sketch.drawing();
    }

    /** The area of a zone. */
    public Optional<ZoneArea> area(String zone) {
        return areas.stream().filter(a -> a.zone().equals(zone)).findFirst();
    }

    /** The zone at a point. */
    public Optional<String> at(Point2D point) {
        for (int i = areas.size() - 1; i >= 0; i--) {
            if (areas.get(i).shape().contains(point)) {
                return Optional.of(areas.get(i).zone());
            }
        }
        return Optional.empty();
    }

    /** The zone to which an arrow key leads: the nearest in that direction, rather straight ahead than aside. */
    public Optional<String> beside(String zone, Direction direction) {
        return Neighbour.of(areas, zone, direction);
    }

    /** Where an arrow key points. */
    public enum Direction {
        LEFT(-1, 0),
        RIGHT(1, 0),
        UP(0, -1),
        DOWN(0, 1);

        private final int x;
        private final int y;

        Direction(int x, int y) {
            this.x = x;
            this.y = y;
        }

        int x() {
            return x;
        }

        int y() {
            return y;
        }
    }
}
