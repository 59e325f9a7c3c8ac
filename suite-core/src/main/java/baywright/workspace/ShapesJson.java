package baywright.workspace;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code stages/shapes.json} to vehicle shapes. */
final class ShapesJson {

    static final String KIND = "shapes";
    static final int VERSION = 1;
    static final String VEHICLE = "vehicle";

    private ShapesJson() {}

    static Optional<List<Shape>> read(Report report) {
        return Fields.ofDocument(report, KIND, VERSION).flatMap(ShapesJson::read);
    }

    private static Optional<List<Shape>> read(Fields in) {
        List<Fields> all = in.objects("shapes");
        List<Shape> shapes = all.stream().map(ShapesJson::shape).toList();
        Fields.refuseRepeated(all, shapes.stream().map(Shape::id).toList());
        in.done();
        return in.report().whenSound(() -> shapes);
    }

    private static Shape shape(Fields in) {
        List<Fields> all = in.objects("zones");
        List<Zone> zones = all.stream().map(ShapesJson::zone).toList();
        Fields.refuseRepeated(all, zones.stream().map(Zone::id).toList());
        Shape shape = new Shape(in.id("id"), in.title("title"), in.number("size", Span.above(0, 100)), zones);
        in.done();
        if (!shape.zone(VEHICLE).map(Zone::surface).equals(Optional.of(VEHICLE))) {
            in.refuse(
                    "zones",
                    "there is no zone 'vehicle' with the surface 'vehicle'",
                    "add { \"id\": \"vehicle\", \"title\": \"Whole vehicle\", \"surface\": \"vehicle\" }");
        }
        checkNeighbours(all, zones);
        return shape;
    }

    private static Zone zone(Fields in) {
        Zone zone = new Zone(
                in.id("id"),
                in.title("title"),
                in.id("surface"),
                in.text("substrate", ""),
                measures(in),
                in.ids("neighbours"));
        in.done();
        return zone;
    }

    /** How much of each driver a zone counts for. */
    static Map<String, BigDecimal> measures(Fields in) {
        return in.numbers("measures", Span.from(0, 10_000));
    }

    private static void checkNeighbours(List<Fields> all, List<Zone> zones) {
        Map<String, Zone> byId = new LinkedHashMap<>();
        zones.forEach(z -> byId.putIfAbsent(z.id(), z));
        for (int i = 0; i < zones.size(); i++) {
            Zone zone = zones.get(i);
            for (String neighbour : zone.neighbours()) {
                Zone other = byId.get(neighbour);
                if (other == null) {
                    all.get(i)
                            .refuse(
                                    "neighbours",
                                    "there is no zone " + Shown.quoted(neighbour),
                                    Shown.nearest(neighbour, byId.keySet()));
                } else if (neighbour.equals(zone.id())) {
                    all.get(i).refuse("neighbours", "the zone is named as its own neighbour", "delete that");
                } else if (!other.neighbours().contains(zone.id())) {
                    all.get(i)
                            .refuse(
                                    "neighbours",
                                    "'" + neighbour + "' does not name '" + zone.id() + "' as its neighbour",
                                    "name both ways or neither");
                }
            }
        }
    }
}
