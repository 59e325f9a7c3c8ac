package baywright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.quantity.Spread;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class GaugeErrorTest {

    private static final GaugeError GAUGE = GaugeError.USUAL;

    /** JCGM 100:2008 (GUM) 4.2.3, 4.3.7, 5.1.2, 6.2; five readings of one spot. */
    @Test
    void fiveReadingsOfOneSpot() {
        Spread spread = Spread.of(List.of(117, 121, 116, 119, 119));

        assertThat(spread.mean()).isCloseTo(118.4, within(0.001));
        assertThat(spread.deviation()).isCloseTo(1.9494, within(0.0001));
        assertThat(spread.ofMean()).isCloseTo(0.8718, within(0.0001));
        assertThat(GAUGE.standard(spread.mean())).isCloseTo(1.2609, within(0.0001));
        assertThat(GAUGE.standardOfSpot(spread.mean(), spread.deviation(), 5)).isCloseTo(1.5330, within(0.001));
        assertThat(GAUGE.expandedOfSpot(spread.mean(), spread.deviation(), 5)).isCloseTo(3.066, within(0.001));
    }

    /** Second set: the same clauses. */
    @Test
    void aRoundReading() {
        assertThat(GAUGE.limit(BigDecimal.valueOf(100))).isEqualByComparingTo("2");
        assertThat(GAUGE.standard(100)).isCloseTo(1.1547, within(0.001));
        assertThat(GAUGE.standardOfSpot(100, 1.5, 5)).isCloseTo(1.3354, within(0.001));
        assertThat(GAUGE.expandedOfSpot(100, 1.5, 5)).isCloseTo(2.671, within(0.001));
    }

    @Test
    void aGaugeIsNotBetterThanRight() {
        assertThatThrownBy(() -> new GaugeError(new BigDecimal("-1"), BigDecimal.ONE))
                .hasMessage("a gauge error needs fixed >= 0 and percent from 0 to 100, got -1 and 1");
        assertThatThrownBy(() -> new GaugeError(BigDecimal.ONE, BigDecimal.valueOf(101)))
                .hasMessageContaining("got 1 and 101");
    }
}
