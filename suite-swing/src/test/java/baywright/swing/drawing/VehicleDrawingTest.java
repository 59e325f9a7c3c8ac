package baywright.swing.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VehicleDrawingTest {

    static List<Shape> shapes() {
        return ShippedShapes.all();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyZoneCanBePointedAt(Shape shape) {
        VehicleDrawing drawing = VehicleDrawing.of(shape);
        assertThat(shape.zones()).allSatisfy(zone -> {
            Rectangle2D room = drawing.area(zone.id()).orElseThrow().room();
            assertThat(room.getHeight()).as("room on %s", zone.id()).isGreaterThan(2);
            assertThat(drawing.at(new Point2D.Double(room.getCenterX(), room.getCenterY())))
                    .contains(zone.id());
        });
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void arrowKeysLeadToEveryZone(Shape shape) {
        assertThat(Neighbour.unreached(VehicleDrawing.of(shape).areas())).isEmpty();
    }

    /** What is drawn once and folded out to both sides comes out alike. */
    @ParameterizedTest
    @MethodSource("shapes")
    void leftAndRightAreAlike(Shape shape) {
        VehicleDrawing drawing = VehicleDrawing.of(shape);
        shape.zones().stream()
                .filter(z -> z.id().endsWith("-left"))
                .filter(z -> !z.id().equals("rear-quarter-left")
                        || shape.zone("sliding-door-left").isEmpty())
                .forEach(z -> shape.zone(z.id().replace("-left", "-right")).ifPresent(right -> {
                    Rectangle2D a = bounds(drawing, z.id());
                    Rectangle2D b = bounds(drawing, right.id());
                    assertThat(a.getWidth()).as(z.id()).isCloseTo(b.getWidth(), Offset.offset(1e-6));
                    assertThat(a.getHeight()).as(z.id()).isCloseTo(b.getHeight(), Offset.offset(1e-6));
                }));
    }

    private static Rectangle2D bounds(VehicleDrawing drawing, String zone) {
        return drawing.area(zone).orElseThrow().shape().getBounds2D();
    }

    @Test
    void onACarTheLeftSideIsFoldedOutBelowTheRoof() {
        VehicleDrawing saloon = VehicleDrawing.of(shape("saloon"));
        assertThat(bounds(saloon, "front-door-left").getMinY())
                .isGreaterThan(bounds(saloon, "roof").getMaxY());
        assertThat(bounds(saloon, "front-door-right").getMaxY())
                .isLessThan(bounds(saloon, "roof").getMinY());
        assertThat(bounds(saloon, "bonnet").getMaxX())
                .isLessThan(bounds(saloon, "roof").getMinX());
    }

    @Test
    void arrowsGoToWhatLiesThere() {
        VehicleDrawing saloon = VehicleDrawing.of(shape("saloon"));
        assertThat(saloon.beside("bonnet", VehicleDrawing.Direction.RIGHT)).contains("windscreen");
        assertThat(saloon.beside("front-door-left", VehicleDrawing.Direction.RIGHT))
                .contains("rear-door-left");
        assertThat(saloon.beside("vehicle", VehicleDrawing.Direction.DOWN)).isEmpty();
    }

    @Test
    void zonesThatNoPictureShowsGetTilesBelow() {
        List<Zone> zones = new ArrayList<>(shape("saloon").zones());
        zones.add(zone("roof-box", "Roof box"));
        VehicleDrawing drawing = VehicleDrawing.of(new Shape("our-saloon", "Our saloon", BigDecimal.ONE, zones));
        ZoneArea box = drawing.area("roof-box").orElseThrow();
        assertThat(box.caption()).isEqualTo("Roof box");
        assertThat(box.shape().getBounds2D().getMinY())
                .isGreaterThan(bounds(drawing, "sill-left").getMaxY());
        assertThat(drawing.area("bonnet").orElseThrow().caption()).isEmpty();
    }

    @Test
    void aShapeOfTheShopsOwnThatIsNoVehicleOfOursIsTilesAlone() {
        VehicleDrawing drawing = VehicleDrawing.of(new Shape(
                "caravan", "Caravan", BigDecimal.ONE, List.of(zone("hull", "Hull"), zone("vehicle", "Whole vehicle"))));
        assertThat(drawing.areas()).extracting(ZoneArea::zone).containsExactly("hull", "vehicle");
        assertThat(drawing.at(new Point2D.Double(
                        bounds(drawing, "hull").getCenterX(),
                        bounds(drawing, "hull").getCenterY())))
                .isEqualTo(Optional.of("hull"));
    }

    private static Zone zone(String id, String title) {
        return new Zone(id, title, "paint", "steel", Map.of(), List.of());
    }

    private static Shape shape(String id) {
        return ShippedShapes.all().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
