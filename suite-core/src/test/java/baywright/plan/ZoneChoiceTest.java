package baywright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ZoneChoiceTest {

    private static final Shape FRONT = Stages.front();

    @Test
    void idsComeInTheVehiclesOrderAndOnce() {
        assertThat(ZoneChoice.resolve(List.of("windscreen", "bonnet", "bonnet"), FRONT))
                .containsExactly("bonnet", "windscreen");
    }

    @Test
    void aSurfaceMeansAllItsZonesAndAMinusLeavesOut() {
        assertThat(ZoneChoice.resolve(List.of("-bonnet", "surface:paint"), FRONT))
                .containsExactly("wing-left", "wing-right", "boot-lid");
        assertThat(ZoneChoice.resolve(List.of("windscreen", "bonnet", "-surface:glass"), FRONT))
                .containsExactly("bonnet");
    }

    @Test
    void leavingOutAloneChoosesNothing() {
        assertThat(ZoneChoice.resolve(List.of("-bonnet"), FRONT)).isEmpty();
    }

    @Test
    void strangersAndSurfacesWithoutZonesAreNamed() {
        ZoneChoice choice = ZoneChoice.of(List.of("bonet", "-rooof", "surface:wheel", "surface:glass"), FRONT);

        assertThat(choice.zones()).containsExactly("windscreen");
        assertThat(choice.unknown()).containsExactly("bonet", "rooof");
        assertThat(choice.empty()).containsExactly("wheel");
    }

    @Test
    void wholeSurfacesAreWrittenInOneWord() {
        List<String> paint = FRONT.zones().stream()
                .filter(z -> z.surface().equals("paint"))
                .map(Zone::id)
                .toList();

        assertThat(ZoneChoice.written(paint, FRONT)).containsExactly("surface:paint");
        assertThat(ZoneChoice.written(paint.subList(1, paint.size()), FRONT))
                .containsExactly("surface:paint", "-" + paint.get(0));
        assertThat(ZoneChoice.written(paint.subList(0, 1), FRONT)).containsExactly(paint.get(0));
    }

    @Property
    void whatIsWrittenMeansTheZonesThatItWasWrittenFor(
            @ForAll @Size(max = 12) Set<@IntRange(max = 11) Integer> chosen) {
        List<String> ids = IntStream.range(0, FRONT.zones().size())
                .filter(chosen::contains)
                .mapToObj(i -> FRONT.zones().get(i).id())
                .toList();

        assertThat(ZoneChoice.resolve(ZoneChoice.written(ids, FRONT), FRONT)).isEqualTo(ids);
    }
}
