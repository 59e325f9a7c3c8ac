package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreePointTest {

    /** Malcolm, Roseboom, Clark, Fazar, Operations Research 7 (1959) 646; fractions worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "2, 5, 14, 6, 4",
        "8, 10, 12, 10, 0.444444444444",
        "3, 4, 8, 4.5, 0.694444444444",
        "0, 0, 6, 1, 1",
        "30, 45, 90, 50, 100"
    })
    void meanAndVarianceAreThoseOfThePaper(String least, String likely, String most, double mean, double variance) {
        ThreePoint three = ThreePoint.of(least, likely, most);

        assertThat(three.mean().doubleValue()).isCloseTo(mean, within(1e-9));
        assertThat(three.variance().doubleValue()).isCloseTo(variance, within(1e-9));
    }

    @Test
    void fullyCorrelatedEstimatesAddPointByPoint() {
        assertThat(ThreePoint.of("2", "5", "14").plus(ThreePoint.of("8", "10", "12")))
                .isEqualTo(ThreePoint.of("10", "15", "26"));
        assertThat(ThreePoint.of("2", "5", "14").times(new BigDecimal("0.5")).mean())
                .isEqualByComparingTo("3");
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 1", "2, 1, 3", "1, 3, 2"})
    void pointsOutOfOrderOrBelowZeroAreRefusedWithTheirNumbers(String least, String likely, String most) {
        assertThatThrownBy(() -> ThreePoint.of(least, likely, most))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(least + ", " + likely + ", " + most);
    }
}
