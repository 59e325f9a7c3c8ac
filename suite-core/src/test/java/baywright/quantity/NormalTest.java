package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalTest {

    /** GUM, JCGM 100:2008, table G.1. */
    @ParameterizedTest
    @CsvSource({"1, 0.6827", "1.645, 0.9000", "1.96, 0.9500", "2, 0.9545", "2.576, 0.9900", "3, 0.9973"})
    void coverage(double k, double expected) {
        assertThat(Normal.below(k) - Normal.below(-k)).isCloseTo(expected, within(1e-4));
    }

    /** Tail values of the standard normal distribution, Abramowitz, Stegun (1964), tables 26.1 and 26.2, from memory. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "-1, 0.15865525393145707", "-5, 2.866515719e-7", "-10, 7.619853024e-24"})
    void tails(double z, double expected) {
        assertThat(Normal.below(z) / expected).isCloseTo(1, within(1e-9));
    }

    @Property
    void bothTailsMakeOne(@ForAll @Scale(9) @DoubleRange(min = -8, max = 8) double z) {
        assertThat(Normal.below(z) + Normal.below(-z)).isCloseTo(1, within(1e-12));
    }

    @Property
    void moreIsNeverLessLikely(
            @ForAll @Scale(9) @DoubleRange(min = -9, max = 9) double z,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 5) double step) {
        assertThat(Normal.below(z + step)).isGreaterThanOrEqualTo(Normal.below(z));
    }

    @Property
    void quantileIsTheWayBack(@ForAll @Scale(9) @DoubleRange(min = 1e-9, max = 0.999999) double chance) {
        assertThat(Normal.below(Normal.quantile(chance)) / chance).isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void aQuantileNeedsAChanceBetween(double chance) {
        assertThatThrownBy(() -> Normal.quantile(chance)).hasMessageContaining("above 0 and below 1");
    }
}
