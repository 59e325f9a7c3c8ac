package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmSamplingTest {

    /** SSPC-PA 2 (now AMPP), sections on measurement, areas in ft²; 12 500 ft² is the published case. */
    @ParameterizedTest
    @CsvSource({"100, 1, 5, 15", "300, 3, 15, 45", "1000, 3, 15, 45", "1001, 4, 20, 60", "12500, 15, 75, 225"})
    void spotsAndAreas(BigDecimal squareFeet, int areas, int spots, int readings) {
        // the standard takes 100 ft² for 10 m²
        FilmSampling.Spots plan = FilmSampling.spots(squareFeet.movePointLeft(1));

        assertThat(plan.areas()).isEqualTo(areas);
        assertThat(plan.spots()).isEqualTo(spots);
        assertThat(plan.readings()).isEqualTo(readings);
    }

    /** ISO 19840:2012, table of readings. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 5",
        "1, 5",
        "1.01, 10",
        "3, 10",
        "3.01, 15",
        "10, 15",
        "10.1, 20",
        "30, 20",
        "31, 30",
        "100, 30",
        "101, 40",
        "200, 40",
        "500, 70"
    })
    void readingsByArea(BigDecimal squareMetres, int readings) {
        assertThat(FilmSampling.readings(squareMetres)).isEqualTo(readings);
    }

    @Test
    void noAreaIsRefused() {
        assertThatThrownBy(() -> FilmSampling.spots(BigDecimal.ZERO)).hasMessageContaining("above 0 m2, got 0");
        assertThatThrownBy(() -> FilmSampling.readings(BigDecimal.ONE.negate())).hasMessageContaining("got -1");
    }
}
