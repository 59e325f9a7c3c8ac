package baywright.swing.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which zone lies beside another on the picture. */
final class Neighbour {

    /** How much farther a zone seems that lies aside. */
    private static final double ASIDE = 2.2;

    private Neighbour() {}

    static Optional<String> of(List<ZoneArea> areas, String zone, VehicleDrawing.Direction direction) {
        return areas.stream()
                .filter(a -> a.zone().equals(zone))
                .findFirst()
                .flatMap(from -> areas.stream()
                        .filter(to -> !to.zone().equals(zone) && ahead(from, to, direction) > 0.5)
                        .min(Comparator.comparingDouble(to -> cost(from, to, direction)))
                        .map(ZoneArea::zone));
    }

    /** Zones that no way of arrow keys leads to from the first one. */
    static Set<String> unreached(List<ZoneArea> areas) {
        Set<String> left = new HashSet<>();
        areas.forEach(a -> left.add(a.zone()));
        Deque<String> open = new ArrayDeque<>();
        open.add(areas.get(0).zone());
        left.remove(areas.get(0).zone());
        while (!open.isEmpty()) {
            String zone = open.remove();
            for (VehicleDrawing.Direction direction : VehicleDrawing.Direction.values()) {
                of(areas, zone, direction).filter(left::remove).ifPresent(open::add);
            }
        }
        return left;
    }

    private static double ahead(ZoneArea from, ZoneArea to, VehicleDrawing.Direction direction) {
        return direction.x() * (to.room().getCenterX() - from.room().getCenterX())
                + direction.y() * (to.room().getCenterY() - from.room().getCenterY());
    }

    private static double cost(ZoneArea from, ZoneArea to, VehicleDrawing.Direction direction) {
        Rectangle2D a = from.room();
        Rectangle2D b = to.room();
        double aside = direction.x() == 0 ? b.getCenterX() - a.getCenterX() : b.getCenterY() - a.getCenterY();
        return ahead(from, to, direction) + ASIDE * Math.abs(aside);
    }
}
