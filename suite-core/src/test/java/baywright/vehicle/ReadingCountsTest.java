package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counts by size of panel: common practice, no source; the area of a large one is from memory. */
class ReadingCountsTest {

    @ParameterizedTest
    @CsvSource({"pillar-left, 0, 0.15, 3", "front-door-left, 1, 0.8, 5", "front-bumper, 1, 1.29, 5", "bonnet, 1, 1.3, 9"
    })
    void aLargePanelWantsMore(String id, BigDecimal panels, BigDecimal area, int wanted) {
        Map<String, BigDecimal> measures = Map.of("panel", panels, "m2", area);
        assertThat(ReadingCounts.USUAL.wanted(new Zone(id, id, "paint", "steel", measures, List.of())))
                .isEqualTo(wanted);
    }

    @Test
    void aLargePanelNeverWantsFewer() {
        assertThatThrownBy(() -> new ReadingCounts(3, 5, 4, BigDecimal.ONE)).hasMessageContaining("3, 5, 4");
        assertThatThrownBy(() -> new ReadingCounts(3, 5, 9, BigDecimal.ZERO)).hasMessageContaining("area above 0");
    }
}
