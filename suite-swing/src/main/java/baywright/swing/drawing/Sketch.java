package baywright.swing.drawing;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A picture while it is drawn. */
final class Sketch {

    private static final double GAP = 8;
    private static final int TILES = 7;
    private static final double TILE_HEIGHT = 0.085;

    private final Shape vehicle;
    private final Map<String, Area> parts = new LinkedHashMap<>();
    private final List<java.awt.Shape> bare = new ArrayList<>();
    private final List<java.awt.Shape> details = new ArrayList<>();

    Sketch(Shape vehicle) {
        this.vehicle = vehicle;
    }

    boolean has(String zone) {
        return vehicle.zone(zone).isPresent();
    }

    /** Adds a part to the first of these zones that the vehicle has; to none of them, it is bare. */
    void part(Area area, String... zones) {
        if (area.isEmpty()) {
            return;
        }
        for (String zone : zones) {
            if (has(zone)) {
                parts.computeIfAbsent(zone, z -> new Area()).add(area);
                return;
            }
        }
        bare.add(area);
    }

    void detail(java.awt.Shape line) {
        details.add(line);
    }

    VehicleDrawing drawing() {
        Rectangle2D box = new Rectangle2D.Double();
        boolean first = true;
        for (Area area : parts.values()) {
            box = first ? area.getBounds2D() : box.createUnion(area.getBounds2D());
            first = false;
        }
        for (java.awt.Shape shape : bare) {
            box = first ? shape.getBounds2D() : box.createUnion(shape.getBounds2D());
            first = false;
        }
        List<ZoneArea> areas = new ArrayList<>();
        parts.forEach((zone, area) -> areas.add(new ZoneArea(zone, area, Roomiest.in(area), "")));
        Rectangle2D whole = (Rectangle2D) box.clone();
        for (ZoneArea tile : tiles(box)) {
            areas.add(tile);
            whole.add(tile.shape().getBounds2D());
        }
        return new VehicleDrawing(areas, bare, details, whole);
    }

    private List<ZoneArea> tiles(Rectangle2D box) {
        List<Zone> rest =
                vehicle.zones().stream().filter(z -> !parts.containsKey(z.id())).toList();
        List<ZoneArea> tiles = new ArrayList<>();
        int columns = Math.max(1, Math.min(TILES, rest.size()));
        double width = (box.getWidth() - GAP * (columns - 1)) / columns;
        double height = box.getHeight() * TILE_HEIGHT;
        for (int i = 0; i < rest.size(); i++) {
            int row = i / columns;
            Rectangle2D tile = new Rectangle2D.Double(
                    box.getX() + (i % columns) * (width + GAP),
                    box.getMaxY() + 2 * GAP + row * (height + GAP),
                    width,
                    height);
            tiles.add(new ZoneArea(rest.get(i).id(), tile, tile, rest.get(i).title()));
        }
        return tiles;
    }
}
