package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class ShapesFileTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/trade/shape-totals.csv", useHeadersInDisplayName = false, numLinesToSkip = 3)
    void measuresAddUpToTheTable(
            String shape,
            BigDecimal paint,
            BigDecimal glass,
            BigDecimal fabric,
            BigDecimal tape,
            BigDecimal dress,
            BigDecimal panel,
            BigDecimal seat,
            BigDecimal pane,
            BigDecimal wheel,
            BigDecimal size) {
        JsonNode met = shape(shape);
        assertThat(sum(met, "m2", on("paint")).setScale(1, RoundingMode.HALF_UP))
                .isEqualByComparingTo(paint);
        assertThat(sum(met, "m2", on("glass"))).isEqualByComparingTo(glass);
        assertThat(sum(met, "m2", on("fabric-roof"))).isEqualByComparingTo(fabric);
        assertThat(sum(met, "m", on("trim"))).isEqualByComparingTo(tape);
        assertThat(sum(met, "m", z -> z.path("id").asText().equals("trim"))).isEqualByComparingTo(dress);
        assertThat(sum(met, "panel", on("paint"))).isEqualByComparingTo(panel);
        assertThat(sum(met, "seat", on("cabin"))).isEqualByComparingTo(seat);
        assertThat(sum(met, "pane", on("glass"))).isEqualByComparingTo(pane);
        assertThat(sum(met, "wheel", on("wheel"))).isEqualByComparingTo(wheel);
        assertThat(sum(met, "tyre", on("wheel"))).isEqualByComparingTo(wheel);
        assertThat(met.path("size").decimalValue()).isEqualByComparingTo(size);
    }

    @Test
    void thePaintOfTheEstateIsExactlyTheAreaThatItsJobIsReckonedOn() {
        assertThat(sum(shape("estate"), "m2", on("paint"))).isEqualByComparingTo("14.6");
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void neighboursAreZonesOfTheShapeAndKnowEachOther(String shape) {
        Map<String, Set<String>> neighbours = new HashMap<>();
        for (JsonNode zone : shape(shape).path("zones")) {
            Set<String> of = new HashSet<>();
            zone.path("neighbours").forEach(n -> of.add(n.asText()));
            assertThat(neighbours.put(zone.path("id").asText(), of))
                    .as("zone %s once", zone.path("id"))
                    .isNull();
        }
        neighbours.forEach((zone, of) -> of.forEach(other -> assertThat(neighbours.getOrDefault(other, Set.of()))
                .as("%s of %s", other, shape)
                .contains(zone)
                .doesNotContain(other)));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void whatIsOnTheLeftIsOnTheRightAsWellButForTheSlidingDoor(String shape) {
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (JsonNode zone : shape(shape).path("zones")) {
            String id = zone.path("id").asText();
            if (id.endsWith("-left") && !id.startsWith("sliding-door")) {
                left.add(id.substring(0, id.length() - 5) + zone.path("measures"));
            } else if (id.endsWith("-right")) {
                right.add(id.substring(0, id.length() - 6) + zone.path("measures"));
            }
        }
        assertThat(left).containsExactlyInAnyOrderElementsOf(right);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyShapeHasTheWholeVehicleAsAZoneWithoutMeasures(String shape) {
        List<JsonNode> whole = new ArrayList<>();
        shape(shape).path("zones").forEach(z -> {
            if (z.path("surface").asText().equals("vehicle")) {
                whole.add(z);
            }
        });
        assertThat(whole).singleElement().satisfies(z -> {
            assertThat(z.path("id").asText()).isEqualTo("vehicle");
            assertThat(z.path("measures").size()).isZero();
        });
    }

    static List<String> shapes() {
        List<String> ids = new ArrayList<>();
        file().path("shapes").forEach(s -> ids.add(s.path("id").asText()));
        return ids;
    }

    private static JsonNode file() {
        try {
            return Shipped.json(Shipped.STAGES.resolve("shapes.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode shape(String id) {
        for (JsonNode shape : file().path("shapes")) {
            if (shape.path("id").asText().equals(id)) {
                return shape;
            }
        }
        throw new AssertionError("no shape " + id);
    }

    private static Predicate<JsonNode> on(String surface) {
        return z -> z.path("surface").asText().equals(surface);
    }

    private static BigDecimal sum(JsonNode shape, String driver, Predicate<JsonNode> zones) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode zone : shape.path("zones")) {
            if (zones.test(zone)) {
                sum = sum.add(new BigDecimal(zone.path("measures").path(driver).asText("0")));
            }
        }
        return sum;
    }
}
