package baywright.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.quantity.ThreePoint;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaPertTest {

    /**
     * parameters, mean, deviation and quantiles of the beta-PERT distribution, computed from its definition in double
     * arithmetic apart from this project. The last deviation is the textbook's (Malcolm, Roseboom, Clark, Fazar 1959), which
     * is another.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 5, 14, 2, 4, 6, 2.1381, 2.0000, 3.3468, 5.7657, 7.8823, 9.0067, 9.8889",
        "8, 10, 12, 3, 3, 10, 0.7559, 0.6667, 8.9865, 10, 10.6936, 11.0135, 11.2430",
        "3, 4, 8, 1.8, 4.2, 4.5, 0.8660, 0.8333, 3.4495, 4.3834, 5.2513, 5.7267, 6.1064",
        "0, 0, 6, 1, 5, 1, 0.8452, 1.0000, 0.1251, 0.7767, 1.6513, 2.2143, 2.7043",
        "30, 45, 90, 2, 4, 50, 10.6904, 10.0000, 36.7341, 48.8286, 59.4115, 65.0334, 69.4445"
    })
    void hasTheMomentsAndQuantilesOfItsDefinition(
            String least,
            String likely,
            String most,
            double alpha,
            double beta,
            double mean,
            double deviation,
            double textbook,
            double p10,
            double p50,
            double p80,
            double p90,
            double p95) {
        BetaPert pert = new BetaPert(ThreePoint.of(least, likely, most));
        assertThat(pert.alpha()).isEqualTo(alpha, within(1e-9));
        assertThat(pert.beta()).isEqualTo(beta, within(1e-9));
        assertThat(pert.mean()).isEqualTo(mean, within(1e-9));
        assertThat(pert.deviation()).isEqualTo(deviation, within(1e-4));
        assertThat(Math.sqrt(pert.points().variance().doubleValue())).isEqualTo(textbook, within(1e-4));
        assertThat(pert.quantile(0.10)).isEqualTo(p10, within(1e-4));
        assertThat(pert.quantile(0.50)).isEqualTo(p50, within(1e-4));
        assertThat(pert.quantile(0.80)).isEqualTo(p80, within(1e-4));
        assertThat(pert.quantile(0.90)).isEqualTo(p90, within(1e-4));
        assertThat(pert.quantile(0.95)).isEqualTo(p95, within(1e-4));
        assertThat(pert.below(p80)).isEqualTo(0.8, within(1e-4));
    }

    /** Three equal points are a constant. */
    @Test
    void threeEqualPointsAreAConstant() {
        BetaPert pert = new BetaPert(ThreePoint.of("7", "7", "7.0"));
        assertThat(pert.constant()).isTrue();
        assertThat(pert.deviation()).isZero();
        assertThat(pert.quantile(0.01)).isEqualTo(7);
        assertThat(pert.below(6.999)).isZero();
        assertThat(pert.below(7)).isEqualTo(1);
    }

    @Test
    void refusesAQuantileOfNoChance() {
        BetaPert pert = new BetaPert(ThreePoint.of("1", "2", "3"));
        assertThatThrownBy(() -> pert.quantile(1.1)).hasMessageContaining("from 0 to 1");
    }

    /** What is drawn follows the distribution's own quantile function closely enough for any use of it. */
    @Property(tries = 60)
    void theCurveFollowsTheQuantiles(
            @ForAll @DoubleRange(min = 1, max = 5) double alpha, @ForAll @DoubleRange(min = -6, max = 6) double score) {
        QuantileCurve curve = QuantileCurve.of(alpha, 6 - alpha);
        double chance = baywright.quantity.Normal.below(score);
        double exact = org.apache.commons.statistics.distribution.BetaDistribution.of(alpha, 6 - alpha)
                .inverseCumulativeProbability(chance);
        assertThat(curve.at(score)).isEqualTo(exact, within(1e-6));
    }

    @Property(tries = 40)
    void theCurveNeverFalls(@ForAll @DoubleRange(min = 1, max = 5) double alpha) {
        QuantileCurve curve = QuantileCurve.of(alpha, 6 - alpha);
        double last = -1;
        for (double score = -7; score <= 7; score += 0.003) {
            assertThat(curve.at(score)).isGreaterThanOrEqualTo(last).isBetween(0.0, 1.0);
            last = curve.at(score);
        }
    }
}
