package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {

    /** GUM, JCGM 100:2008, table G.2, 95 %; 1 degree of freedom: tan(0.475 π). */
    @ParameterizedTest
    @CsvSource({"1, 12.706", "2, 4.303", "4, 2.776", "9, 2.262", "29, 2.045", "1000000, 1.960"})
    void coverageFactors(int degrees, double expected) {
        assertThat(StudentT.coverage(0.95, degrees)).isCloseTo(expected, within(0.001));
    }

    /** GUM, table G.2: mean of five readings of one spot at 95 % from repeatability alone, 115.98 to 120.82 µm. */
    @Test
    void aMeanOfFiveReadings() {
        Spread spread = Spread.of(List.of(117, 121, 116, 119, 119));
        double off = StudentT.coverage(0.95, 4) * spread.ofMean();

        assertThat(spread.mean() - off).isCloseTo(115.98, within(0.005));
        assertThat(spread.mean() + off).isCloseTo(120.82, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"0.95, 0", "1, 4", "0, 4"})
    void nonsenseIsRefused(double confidence, int degrees) {
        assertThatThrownBy(() -> StudentT.coverage(confidence, degrees))
                .hasMessageContaining("a coverage factor needs");
    }
}
