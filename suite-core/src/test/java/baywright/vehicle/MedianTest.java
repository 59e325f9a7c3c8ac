package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MedianTest {

    private static List<Reading> readings(String... films) {
        return Stream.of(films).map(f -> new Reading(new BigDecimal(f), "")).toList();
    }

    @Test
    void oneHighReadingDoesNotMoveIt() {
        assertThat(FilmStatistics.median(readings("110", "640", "108"))).isEqualByComparingTo("110");
        assertThat(FilmStatistics.median(readings("112.5", "640", "108", "111")))
                .isEqualByComparingTo("111.75");
    }

    @Test
    void ofNoReadingsThereIsNone() {
        assertThatThrownBy(() -> FilmStatistics.median(List.of())).hasMessageContaining("at least one reading");
    }
}
