package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadTest {

    /** NIST Statistical Reference Datasets, univariate, NumAcc1: three values; certified 10000002 and 1. */
    @Test
    void numAcc1() {
        Spread spread = Spread.of(List.of(10_000_001, 10_000_003, 10_000_002));

        assertThat(spread.mean()).isCloseTo(10_000_002, within(1e-9 * 10_000_002));
        assertThat(spread.deviation()).isCloseTo(1, within(1e-6));
    }

    /**
     * NIST Statistical Reference Datasets, univariate, NumAcc2 to NumAcc4: one value, then 500 times a tenth less
     * and a tenth more; certified the first value and 0.1.
     */
    @ParameterizedTest
    @CsvSource({"1.2, 1.1, 1.3", "1000000.2, 1000000.1, 1000000.3", "10000000.2, 10000000.1, 10000000.3"})
    void numAcc2To4(double first, double less, double more) {
        List<Double> values = new ArrayList<>(List.of(first));
        for (int i = 0; i < 500; i++) {
            values.add(less);
            values.add(more);
        }

        Spread spread = Spread.of(values);

        assertThat(spread.count()).isEqualTo(1001);
        assertThat(spread.mean()).isCloseTo(first, within(1e-9 * first));
        assertThat(spread.deviation()).isCloseTo(0.1, within(1e-7));
    }

    @Test
    void oneValueHasNoSpread() {
        assertThat(Spread.of(List.of(108.5))).isEqualTo(new Spread(1, 108.5, 0));
    }

    @Test
    void noValuesAreRefused() {
        assertThatThrownBy(() -> Spread.of(List.<Integer>of())).hasMessageContaining("count from 1");
    }
}
