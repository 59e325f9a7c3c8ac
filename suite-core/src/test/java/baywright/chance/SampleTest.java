package baywright.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleTest {

    /**
     * data of NIST/SEMATECH e-Handbook of Statistical Methods 7.2.6.2, by definition 7 of Hyndman, Fan, The American
     * Statistician 50 (1996) 361. The handbook's own 95.19807 for P90 is definition 6, which this is not.
     */
    @Test
    void percentilesOfTheHandbooksResistivities() {
        Sample sample = Sample.of(
                95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990,
                95.1682);
        assertThat(sample.quantile(0.10)).isEqualTo(95.09390, within(1e-9));
        assertThat(sample.quantile(0.25)).isEqualTo(95.11625, within(1e-9));
        assertThat(sample.quantile(0.50)).isEqualTo(95.15790, within(1e-9));
        assertThat(sample.quantile(0.75)).isEqualTo(95.181325, within(1e-9));
        assertThat(sample.quantile(0.90)).isEqualTo(95.19568, within(1e-9));
    }

    /** A widely printed example, and one to ten by hand. */
    @Test
    void percentilesOfSmallSamples() {
        assertThat(Sample.of(15, 20, 35, 40, 50).quantile(0.4)).isEqualTo(29, within(1e-9));
        Sample ten = Sample.of(IntStream.rangeClosed(1, 10).asDoubleStream().toArray());
        assertThat(DoubleStream.of(0, 0.1, 0.25, 0.5, 0.8, 0.9, 0.95, 1)
                        .map(ten::quantile)
                        .toArray())
                .containsExactly(new double[] {1, 1.9, 3.25, 5.5, 8.2, 9.1, 9.55, 10}, within(1e-9));
        Sample one = Sample.of(4);
        assertThat(one.quantile(0.3)).isEqualTo(4);
        assertThat(one.deviation()).isZero();
        assertThatThrownBy(Sample::of).hasMessageContaining("at least one");
        assertThatThrownBy(() -> Sample.of(1, Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> one.quantile(-0.1)).hasMessageContaining("from 0 to 1");
    }

    /** NIST Statistical Reference Datasets, univariate, NumAcc1 to NumAcc4. A sum of squares fails these. */
    @ParameterizedTest
    @CsvSource({
        "1.2, 1.1, 1.3, 1.2",
        "1000000.2, 1000000.1, 1000000.3, 1000000.2",
        "10000000.2, 10000000.1, 10000000.3, 10000000.2"
    })
    void meanAndSpreadOfHardData(double first, double low, double high, double mean) {
        double[] values = new double[1001];
        values[0] = first;
        for (int i = 1; i < values.length; i++) {
            values[i] = i % 2 == 1 ? low : high;
        }
        Sample sample = Sample.of(values);
        assertThat(sample.mean()).isEqualTo(mean, within(mean * 1e-9));
        assertThat(sample.deviation()).isEqualTo(0.1, within(1e-7));
    }

    @Test
    void meanAndSpreadOfThreeLargeNumbers() {
        Sample sample = Sample.of(10000001, 10000003, 10000002);
        assertThat(sample.mean()).isEqualTo(10000002, within(1e-2));
        assertThat(sample.deviation()).isEqualTo(1, within(1e-6));
    }

    /** Standard errors, and binomial ranks after Hahn, Meeker, Statistical Intervals. */
    @ParameterizedTest
    @CsvSource({"10000, 0.8, 7922, 8078", "100000, 0.8, 79752, 80248", "100000, 0.95, 94865, 95135"})
    void bandsOfQuantilesByRanks(int size, double share, int low, int high) {
        Sample sample =
                Sample.of(IntStream.rangeClosed(1, size).asDoubleStream().toArray());
        assertThat(sample.rank(share, 0.95, -1)).isEqualTo(low);
        assertThat(sample.rank(share, 0.95, 1)).isEqualTo(high);
        assertThat(sample.band(share, 0.95)).isEqualTo(new Sample.Band(low, high));
    }

    /** A deviation of 3 leaves 0.3, 0.0949, 0.03 and 0.0095 of error. */
    @ParameterizedTest
    @CsvSource({"100, 0.3", "1000, 0.0949", "10000, 0.03", "100000, 0.0095"})
    void errorOfAMean(int size, double error) {
        double[] values = new double[size];
        double swing = 3 * Math.sqrt((size - 1.0) / size);
        for (int i = 0; i < size; i++) {
            values[i] = i % 2 == 0 ? swing : -swing;
        }
        assertThat(Sample.of(values).deviation()).isEqualTo(3, within(1e-9));
        assertThat(Sample.of(values).errorOfMean()).isEqualTo(error, within(5e-5));
    }

    @Property
    void quantilesRiseAndStayWithin(
            @ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = -1e6, max = 1e6) Double> given) {
        double[] values = given.stream().mapToDouble(Double::doubleValue).toArray();
        Sample sample = Sample.of(values);
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 50; i++) {
            double value = sample.quantile(i / 50.0);
            assertThat(value).isGreaterThanOrEqualTo(last);
            last = value;
        }
        assertThat(sample.quantile(0)).isEqualTo(Arrays.stream(values).min().orElseThrow());
        assertThat(sample.within(sample.quantile(1))).isEqualTo(1);
        assertThat(sample.within(sample.quantile(0) - 1)).isZero();
    }

    /**
     * The band of a chance, by its defining equation {@code |p − q| = z √(q (1 − q) / n)} at both ends (Wilson, J. American
     * Statistical Association 22 (1927) 209).
     */
    @ParameterizedTest
    @CsvSource({"10, 3", "50, 0", "400, 399", "1000, 500"})
    void bandOfAChanceSolvesItsEquation(int size, int within) {
        Sample sample =
                Sample.of(IntStream.rangeClosed(1, size).asDoubleStream().toArray());
        Sample.Band band = sample.withinBand(within, 0.95);
        double p = (double) within / size;
        for (double q : new double[] {band.low(), band.high()}) {
            if (q > 1e-12) {
                assertThat(Math.abs(p - q)).isEqualTo(1.959964 * Math.sqrt(q * (1 - q) / size), within(1e-6));
            }
        }
        assertThat(band.low()).isLessThanOrEqualTo(p);
        assertThat(band.high()).isGreaterThanOrEqualTo(p);
    }

    /**
     * Rank correlation of Spearman's formula {@code 1 − 6 Σd²/(n(n² − 1))}: a widely printed example of ten people's
     * intelligence and hours of television, d² adding up to 194.
     */
    @Test
    void rankCorrelationOfAPrintedExample() {
        double[] a = Ranks.of(106, 100, 86, 101, 99, 103, 97, 113, 112, 110);
        double[] b = Ranks.of(7, 27, 2, 50, 28, 29, 20, 12, 6, 17);
        assertThat(Ranks.correlation(a, b)).isEqualTo(1 - 6 * 194 / 990.0, within(1e-12));
        assertThat(Ranks.of(3, 1, 3, 2)).containsExactly(3.5, 1, 3.5, 2);
        assertThat(Ranks.correlation(Ranks.of(1, 1, 1), Ranks.of(1, 2, 3))).isZero();
    }
}
