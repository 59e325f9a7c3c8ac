package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.vehicle.FilmAcceptance.Fault;
import baywright.vehicle.FilmAcceptance.Level;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmAcceptanceTest {

    private static final BigDecimal NOMINAL = BigDecimal.valueOf(100);

    private static List<BigDecimal> films(String text) {
        return Arrays.stream(text.split(" ", -1)).map(BigDecimal::new).toList();
    }

    /** ISO 19840:2012, nominal 100 µm, ten readings each. */
    @ParameterizedTest
    @CsvSource({
        "112 108 95 121 104 101 117 110 106 113, 108.7,",
        "100 100 100 100 100 100 100 100 100 85, 98.5, MEAN_TOO_LOW",
        "130 128 79 126 131 127 125 129 130 124, 122.9, READING_TOO_LOW",
        "96 97 95 140 131 125 128 133 127 129, 120.1, TOO_MANY_LOW"
    })
    void tenReadings(String readings, BigDecimal mean, Fault fault) {
        assertThat(FilmAcceptance.mean(films(readings))).isEqualByComparingTo(mean);
        assertThat(FilmAcceptance.faults(films(readings), NOMINAL, Optional.empty()))
                .isEqualTo(fault == null ? Set.of() : Set.of(fault));
    }

    /** Not settled by the sources; taken as a failure. */
    @Test
    void exactlyAFifthLowFails() {
        List<BigDecimal> readings = films("90 90 120 120 120 120 120 120 120 120");

        assertThat(FilmAcceptance.faults(readings, NOMINAL, Optional.empty())).containsExactly(Fault.TOO_MANY_LOW);
    }

    @Test
    void nothingLiesAboveTheAgreedMost() {
        List<BigDecimal> readings = films("110 120 150");

        assertThat(FilmAcceptance.faults(readings, NOMINAL, Optional.of(BigDecimal.valueOf(150))))
                .isEmpty();
        assertThat(FilmAcceptance.faults(readings, NOMINAL, Optional.of(BigDecimal.valueOf(149))))
                .containsExactly(Fault.READING_TOO_HIGH);
    }

    /** SSPC-PA 2 (now AMPP), restriction levels; 8 to 12 mil at the usual level is the published example. */
    @ParameterizedTest
    @CsvSource({"ONE, 8, 12", "TWO, 8, 14.4", "THREE, 6.4, 14.4", "FOUR, 6.4, 18", "FIVE, 6.4,"})
    void spotLimits(Level level, BigDecimal least, BigDecimal most) {
        assertThat(level.leastSpot(BigDecimal.valueOf(8))).isEqualByComparingTo(least);
        assertThat(level.mostSpot(BigDecimal.valueOf(12)).map(BigDecimal::stripTrailingZeros))
                .isEqualTo(Optional.ofNullable(most).map(BigDecimal::stripTrailingZeros));
    }

    /** SSPC-PA 2 (now AMPP), appendix 1: one spot below 64 µm, and yet the area conforms. */
    @Test
    void workedArea() {
        List<BigDecimal> spots = films("64 76 53 76 66");
        BigDecimal least = BigDecimal.valueOf(64);
        BigDecimal most = BigDecimal.valueOf(76);

        assertThat(FilmAcceptance.mean(spots)).isEqualByComparingTo("67.0");
        assertThat(Level.THREE.leastSpot(least)).isEqualByComparingTo("51.2");
        assertThat(Level.THREE.mostSpot(most).orElseThrow()).isEqualByComparingTo("91.2");
        assertThat(Level.THREE.conforms(spots, least, most)).isTrue();
        assertThat(Level.ONE.conforms(spots, least, most)).isFalse();
        assertThat(Level.THREE.conforms(films("64 76 51 76 66"), least, most)).isFalse();
    }

    @Test
    void noReadingsAreRefused() {
        assertThatThrownBy(() -> FilmAcceptance.faults(List.of(), NOMINAL, Optional.empty()))
                .hasMessageContaining("at least one reading");
    }
}
