package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseTest {

    // Directive 2003/10/EC, art. 3(1) and its footnotes
    @ParameterizedTest
    @CsvSource({"112, 134.96, 135", "140, 136.90, 137", "200, 140.00, 140"})
    void peakPressureAsALevel(double pascal, double level, long printed) {
        assertThat(Noise.peakLevel(pascal)).isCloseTo(level, within(0.01));
        assertThat(Math.round(Noise.peakLevel(pascal))).isEqualTo(printed);
    }

    // Directive 2003/10/EC, art. 3(1)
    @Test
    void valuesOfTheDirective() {
        assertThat(List.of(Noise.LIMIT, Noise.UPPER_ACTION, Noise.LOWER_ACTION)).containsExactly(87.0, 85.0, 80.0);
    }

    // SCENIHR, opinion on personal music players (2008), table 3; exact figures computed
    @ParameterizedTest
    @CsvSource({
        "240, 83.01, 88.01, 90.01", "120, 86.02, 91.02, 93.02", "60, 89.03, 94.03, 96.03", "30, 92.04, 97.04, 99.04",
        "15, 95.05, 100.05, 102.05", "8, 97.78, 102.78, 104.78", "5, 99.82, 104.82, 106.82",
                "4, 100.79, 105.79, 107.79",
        "2, 103.80, 108.80, 110.80", "1, 106.81, 111.81, 113.81"
    })
    void sameDoseInLessTime(double minutes, double for80, double for85, double for87) {
        assertThat(Noise.levelFor(80, minutes / 60)).isCloseTo(for80, within(0.02));
        assertThat(Noise.levelFor(85, minutes / 60)).isCloseTo(for85, within(0.02));
        assertThat(Noise.levelFor(87, minutes / 60)).isCloseTo(for87, within(0.02));
        assertThat(Noise.daily(List.of(new Noise.Use(for85, minutes / 60)))).isCloseTo(85, within(0.02));
    }

    // UK HSE weekly noise exposure ready-reckoner (Crown copyright 2020)
    @ParameterizedTest
    @CsvSource({
        "95, 1000, 1000", "94, 794.3, 790", "93, 631.0, 630", "92, 501.2, 500", "91, 398.1, 400", "90, 316.2, 315",
        "89, 251.2, 250", "88, 199.5, 200", "87, 158.5, 160", "86, 125.9, 125", "85, 100, 100", "84, 79.4, 80",
        "83, 63.1, 65", "82, 50.1, 50", "81, 39.8, 40", "80, 31.6, 32", "79, 25.1, 26", "78, 20.0, 20"
    })
    void pointsTable(double level, double points, double printed) {
        assertThat(Noise.points(level)).isCloseTo(points, within(0.05)).isCloseTo(printed, within(0.04 * printed));
        assertThat(Noise.ofPoints(Noise.points(level))).isCloseTo(level, within(1e-9));
    }

    // UK HSE weekly ready-reckoner; Directive 2003/10/EC, art. 3(3)
    @Test
    void week() {
        assertThat(Noise.weekly(List.of(90.0, 88.0, 85.0, 84.0, 87.0))).isCloseTo(87.323, within(0.01));
        assertThat(Noise.ofPoints((315 + 200 + 100 + 80 + 160) / 5.0)).isCloseTo(87.33, within(0.01));
        assertThat(Noise.ofPoints(500 / 5.0)).isCloseTo(85, within(0.1));
        assertThat(Noise.ofPoints(1250 / 5.0)).isCloseTo(89, within(0.1));
        assertThat(Noise.ofPoints(2000 / 5.0)).isCloseTo(91, within(0.1));
        assertThat(Noise.ofPoints(5000 / 5.0)).isCloseTo(95, within(0.1));
    }

    // computed
    @Test
    void mixedDay() {
        double day = Noise.daily(List.of(new Noise.Use(85, 2), new Noise.Use(88, 1.5), new Noise.Use(95, 0.5)));
        assertThat(day).isCloseTo(85.966, within(0.005));
        assertThat(Noise.points(day)).isCloseTo(124.9, within(0.05));
        assertThat(Comparison.AT_OR_ABOVE.reached(day, Noise.UPPER_ACTION)).isTrue();
        assertThat(Comparison.AT_OR_ABOVE.reached(day, Noise.LIMIT)).isFalse();
    }

    // 29 CFR 1910.95, appendix A, table G-16A
    @ParameterizedTest
    @CsvSource({
        "80, 32",
        "85, 16",
        "87, 12.1",
        "90, 8",
        "92, 6.1",
        "95, 4",
        "97, 3.0",
        "100, 2",
        "102, 1.5",
        "105, 1",
        "110, 0.5",
        "115, 0.25",
        "83, 21.11"
    })
    void hoursOfTheUsRule(double level, double hours) {
        assertThat(UsNoise.allowedHours(level)).isCloseTo(hours, within(0.05));
    }

    // 29 CFR 1910.95, appendix A
    @Test
    void doseOfTheUsRule() {
        assertThat(UsNoise.dose(List.of(new Noise.Use(92, 8)))).isCloseTo(131.95, within(0.01));
        List<Noise.Use> day = List.of(new Noise.Use(95, 2), new Noise.Use(90, 4), new Noise.Use(85, 2));
        assertThat(UsNoise.dose(day)).isCloseTo(112.5, within(0.01));
        assertThat(UsNoise.average(112.5)).isCloseTo(90.85, within(0.01));
        assertThat(Noise.daily(day)).isCloseTo(91.37, within(0.01));
        assertThat(UsNoise.average(50)).isCloseTo(85, within(0.01));
        assertThat(UsNoise.average(200)).isCloseTo(95, within(0.01));
    }

    // laws
    @Property
    void equalLevelsMayBeCutUpAnyhow(
            @ForAll @DoubleRange(min = 60, max = 110) double level, @ForAll @IntRange(min = 1, max = 50) int pieces) {
        List<Noise.Use> day = java.util.Collections.nCopies(pieces, new Noise.Use(level, 8.0 / pieces));
        assertThat(Noise.daily(day)).isCloseTo(level, within(1e-9));
        assertThat(Noise.daily(List.of(new Noise.Use(level + 10 * Math.log10(2), 4))))
                .isCloseTo(level, within(1e-9));
        assertThat(Noise.daily(List.of(new Noise.Use(level, 8), new Noise.Use(level, 8))))
                .isCloseTo(level + 3.0103, within(1e-4));
    }
}
