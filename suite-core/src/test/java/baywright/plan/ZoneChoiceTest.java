package baywright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.Shape;
import java.util.List;
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
}
