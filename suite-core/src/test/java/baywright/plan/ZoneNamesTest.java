package baywright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.vehicle.Shape;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ZoneNamesTest {

    private static final List<String> PANELS = ids("panel", 9);
    private static final List<String> PANES = ids("pane", 4);
    private static final List<String> LAMPS = ids("lamp", 2);
    private static final List<String> AERIAL = ids("aerial", 1);
    private static final List<String> SLATS = ids("slat", 3);
    private static final Shape VAN = new Shape(
            "van",
            "Van",
            BigDecimal.ONE,
            Stream.of(
                            zones(PANELS, "paint"),
                            zones(PANES, "glass"),
                            zones(LAMPS, "lamp"),
                            zones(AERIAL, "trim"),
                            zones(SLATS, "teak"))
                    .flatMap(List::stream)
                    .toList());

    private final ZoneNames names = new ZoneNames(VAN, Locale.UK);

    @Test
    void fewZonesAreNamed() {
        assertThat(names.of(List.of("panel-2", "lamp-1"), 4)).isEqualTo("panel 2, lamp 1");
        assertThat(names.of(List.of(), 4)).isEmpty();
    }

    @Test
    void aWholeSurfaceHasOneName() {
        assertThat(names.of(PANES, 4)).isEqualTo("all glass");
        assertThat(names.of(joined(PANELS, PANES, List.of("lamp-1")), 4))
                .isEqualTo("all painted panels, all glass, lamp 1");
    }

    @Test
    void aSoleZoneIsNamedThoughItIsAll() {
        assertThat(names.of(AERIAL, 4)).isEqualTo("aerial 1");
        assertThat(names.of(LAMPS, 4)).isEqualTo("all lamps");
    }

    @Test
    void aSurfaceThatLacksLittleIsNamedByWhatItLacks() {
        assertThat(names.of(PANELS.subList(1, 9), 4)).isEqualTo("all painted panels but panel 1");
        assertThat(names.of(PANES.subList(1, 4), 4)).isEqualTo("pane 2, pane 3, pane 4");
        assertThat(names.of(PANELS.subList(2, 9), 4)).isEqualTo("panel 3, panel 4, panel 5, panel 6 and 3 more");
    }

    @Test
    void theRestIsCountedInZones() {
        assertThat(names.of(joined(PANELS, PANES, LAMPS), 1)).isEqualTo("all painted panels and 6 more");
    }

    @Test
    void aSoleRestIsNamed() {
        assertThat(names.of(PANELS.subList(0, 5), 4)).isEqualTo("panel 1, panel 2, panel 3, panel 4, panel 5");
        assertThat(names.of(joined(PANELS, PANES), 1)).isEqualTo("all painted panels, all glass");
        assertThat(names.of(PANELS.subList(0, 6), 4)).isEqualTo("panel 1, panel 2, panel 3, panel 4 and 2 more");
    }

    @Test
    void aSurfaceWithoutAWordGoesByItsId() {
        assertThat(names.of(SLATS, 4)).isEqualTo("all of the surface 'teak'");
    }

    @Test
    void whatTheVehicleDoesNotHaveStaysAsWritten() {
        assertThat(names.of(List.of("spoiler"), 4)).isEqualTo("spoiler");
    }

    @Test
    void eachZoneHasItsNameWhenAllAreWanted() {
        assertThat(names.each(joined(PANES, LAMPS))).isEqualTo("pane 1, pane 2, pane 3, pane 4, lamp 1, lamp 2");
    }

    @SafeVarargs
    private static List<String> joined(List<String>... lists) {
        List<String> all = new ArrayList<>();
        for (List<String> list : lists) {
            all.addAll(list);
        }
        return all;
    }

    private static List<String> ids(String word, int count) {
        return IntStream.rangeClosed(1, count).mapToObj(i -> word + "-" + i).toList();
    }

    private static List<Zone> zones(List<String> ids, String surface) {
        List<Zone> zones = new ArrayList<>();
        for (String id : ids) {
            String title = Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
            zones.add(new Zone(id, title, surface, "", Map.of(), List.of()));
        }
        return zones;
    }
}
