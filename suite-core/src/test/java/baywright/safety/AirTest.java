package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.safety.SolventAir.Part;
import baywright.safety.SolventAir.Period;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air, ventilation and climate. */
class AirTest {

    // 29 CFR 1910.1000(d)(1)
    @Test
    void timeWeightedAverage() {
        double average = SolventAir.average(List.of(new Period(2, 150), new Period(2, 75), new Period(4, 50)));
        assertThat(average).isEqualTo(81.25).isLessThan(100);
    }

    // 29 CFR 1910.1000(d)(2)
    @Test
    void severalSubstances() {
        List<Part> parts = List.of(new Part(500, 1000), new Part(45, 200), new Part(40, 200));
        assertThat(SolventAir.mixture(parts)).isCloseTo(0.925, within(1e-12)).isLessThan(1);
    }

    // law
    @Property
    void moreVapourNeverLowersTheSumAndUnitsDoNotMatter(
            @ForAll @DoubleRange(min = 0, max = 1e4) double c, @ForAll @DoubleRange(min = 1, max = 1e4) double limit) {
        double sum = SolventAir.mixture(List.of(new Part(c, limit), new Part(10, 200)));
        assertThat(SolventAir.mixture(List.of(new Part(c + 1, limit), new Part(10, 200))))
                .isGreaterThan(sum);
        assertThat(SolventAir.mixture(List.of(new Part(c * 2.46, limit * 2.46), new Part(24.6, 492))))
                .isCloseTo(sum, within(1e-9 * (1 + sum)));
    }

    // NIOSH Pocket Guide, isopropyl alcohol
    @Test
    void propanolInTheUnitedStates() {
        Substance.Limit limit = Substance.of("propan-2-ol").orElseThrow().limit("us");
        assertThat(limit.ppm()).isEqualTo(400);
        assertThat(limit.milligrams()).isEqualTo(980);
        assertThat(limit.shortPpm()).hasValue(500.0);
        assertThat(limit.checked()).isTrue();
        assertThat(DewPoint.ofFahrenheit(53)).isCloseTo(11.7, within(0.05));
    }

    // NIOSH Pocket Guide, isopropyl alcohol: 1 ppm is 2.46 mg/m³, 500 ppm 1225 mg/m³
    // (printed with 24.45 l/mol), relative density 0.79
    @Test
    void propanolsFiguresAgreeWithEachOther() {
        double molarMass = Substance.of("propan-2-ol").orElseThrow().molarMass();
        assertThat(SolventAir.milligrams(1, molarMass, 25)).isCloseTo(2.46, within(0.005));
        assertThat(SolventAir.milligrams(500, molarMass, 25)).isCloseTo(1225, within(0.004 * 1225));
        assertThat(Substance.of("propan-2-ol").orElseThrow().density()).isCloseTo(0.79, within(0.005 + 1e-9));
    }

    // EH40/2005 (from memory), fifteen-minute values, cross-checked with the molar volume
    @ParameterizedTest
    @CsvSource({"propan-2-ol, 500, 1250, 1249.2", "xylene, 100, 441, 441.4"})
    void shortLimitsOfTheUnitedKingdom(String id, double ppm, double milligrams, double reckoned) {
        Substance substance = Substance.of(id).orElseThrow();
        assertThat(substance.limit("uk").shortPpm()).hasValue(ppm);
        assertThat(SolventAir.milligrams(ppm, substance.molarMass(), 20))
                .isCloseTo(reckoned, within(0.0005 * reckoned))
                .isCloseTo(milligrams, within(0.004 * milligrams));
    }

    // EH40/2005 (from memory), cross-checked with the molar volume
    @ParameterizedTest
    @CsvSource({
        "propan-2-ol, 400, 999, 999.4",
        "acetone, 500, 1210, 1207.2",
        "xylene, 50, 220, 220.7",
        "toluene, 50, 191, 191.5",
        "methoxypropanol, 100, 375, 374.6",
        "butyl-acetate, 150, 724, 724.3",
        "ethanol, 1000, 1920, 1915.2"
    })
    void limitsOfTheUnitedKingdom(String id, double ppm, double milligrams, double reckoned) {
        Substance substance = Substance.of(id).orElseThrow();
        Substance.Limit limit = substance.limit("uk");
        assertThat(limit.ppm()).isEqualTo(ppm);
        assertThat(limit.milligrams()).isEqualTo(milligrams);
        assertThat(limit.source()).isEqualTo("EH40/2005");
        assertThat(limit.checked()).isFalse();
        assertThat(SolventAir.milligrams(ppm, substance.molarMass(), 20))
                .isCloseTo(reckoned, within(0.0005 * reckoned))
                .isCloseTo(milligrams, within(0.004 * milligrams));
    }

    // CODATA 2018
    @Test
    void molarVolume() {
        assertThat(SolventAir.molarVolume(20)).isCloseTo(24.055, within(0.001));
        assertThat(SolventAir.molarVolume(25)).isCloseTo(24.465, within(0.001));
        assertThat(SolventAir.molarVolume(DewPoint.ofFahrenheit(70))).isCloseTo(24.146, within(0.001));
        assertThat(SolventAir.milligrams(400, 60.1, 25)).isCloseTo(982.6, within(0.05));
    }

    // ACGIH, Industrial Ventilation, dilution for health
    @Test
    void dilutionVentilationInUsUnits() {
        assertThat(SolventAir.ventilationUs(1.5 / 60, 1.32, 133.4, 350, 1)).isCloseTo(284.8, within(0.1));
        assertThat(SolventAir.ventilationUs(1.5 / 60, 1.32, 133.4, 350, 5)).isCloseTo(1424, within(0.2));
    }

    // computed; the US formula agrees within its rounded constant
    @ParameterizedTest
    @CsvSource({"20, 392.75", "21.111111, 394.24", "25, 399.45"})
    void dilutionVentilation(double celsius, double air) {
        assertThat(SolventAir.ventilation(100, 0.785, 60.1, 400, 5, celsius)).isCloseTo(air, within(0.01));
        assertThat(SolventAir.concentration(100, 0.785, 60.1, air, 5, celsius)).isCloseTo(400, within(0.02));
    }

    // ACGIH, Industrial Ventilation: the formula in US units, computed
    @Test
    void usFormAgreesWithSi() {
        double pintsPerMinute = 100 / 473.176473 / 60;
        double us = SolventAir.ventilationUs(pintsPerMinute, 0.785, 60.1, 400, 5);
        assertThat(us).isCloseTo(231.76, within(0.02));
        double cubicMetresPerHour = us * 0.3048 * 0.3048 * 0.3048 * 60;
        assertThat(cubicMetresPerHour).isCloseTo(394.24, within(0.002 * 394.24));
    }

    // ACGIH, Industrial Ventilation, dilution for fire and explosion (from memory)
    @Test
    void dilutionForFire() {
        assertThat(SolventAir.ventilationForFireUs(2.0 / 60, 0.88, 106, 1.0, 10, 0.7))
                .isCloseTo(159.3, within(0.1));
    }

    // lower explosive limit 2.0 %: NIOSH Pocket Guide
    @Test
    void liquidThatFillsABayToATenthOfTheLimit() {
        assertThat(SolventAir.millilitresToTenthOfLel(120, 2.0, 0.785, 60.1, 20))
                .isCloseTo(763.9, within(0.1));
        assertThat(SolventAir.vapour(0.785, 60.1, 20)).isCloseTo(0.3142, within(0.0001));
    }

    // ACGIH, Industrial Ventilation
    @Test
    void purging() {
        assertThat(SolventAir.purgeMinutes(150, 600, 0.1)).isCloseTo(34.54, within(0.01));
        assertThat(SolventAir.purgeMinutes(150, 600, 0.01)).isCloseTo(69.08, within(0.01));
        assertThat(100 * SolventAir.left(150, 600, 30)).isCloseTo(13.53, within(0.01));
    }

    // vapour pressure, LEL and UEL: NIOSH Pocket Guide
    @Test
    void overAnOpenTrayTheAirCanBurn() {
        assertThat(SolventAir.saturated(33)).isCloseTo(4.34, within(0.005)).isBetween(2.0, 12.7);
    }

    // Alduchov and Eskridge, J. Appl. Meteor. 35 (1996) 601 (constants from memory)
    @ParameterizedTest
    @CsvSource({
        "5, 90, 3.50, 6.50",
        "10, 85, 7.59, 10.59",
        "15, 80, 11.58, 14.58",
        "20, 50, 9.26, 12.26",
        "20, 60, 12.00, 15.00",
        "20, 100, 20.00, 23.00",
        "22, 65, 15.12, 18.12",
        "25, 60, 16.70, 19.70",
        "30, 55, 19.98, 22.98"
    })
    void dewPoint(double celsius, double humidity, double dewPoint, double surface) {
        assertThat(DewPoint.of(celsius, humidity)).isCloseTo(dewPoint, within(0.02));
        assertThat(DewPoint.leastSurface(celsius, humidity)).isCloseTo(surface, within(0.02));
    }

    // a coatings glossary: 30 °C and 55 % give 20 °C; a US chart: 70 °F and 65 % give 57 °F and a least surface of
    // 62 °F (its margin is 5 °F), in a row that lies up to 2 °F low
    @Test
    void dewPointAgainstPublishedCharts() {
        assertThat(DewPoint.of(30, 55)).isCloseTo(20, within(0.5));
        assertThat(DewPoint.toFahrenheit(DewPoint.of(DewPoint.ofFahrenheit(70), 65)))
                .isCloseTo(57, within(2.0));
    }

    // ISO 8502-4, ISO 12944-7 (from memory)
    @Test
    void threeKelvinRule() {
        double least = DewPoint.leastSurface(22, 65);
        assertThat(18.0).isLessThan(least);
        assertThat(18.2).isGreaterThan(least);
        assertThat(DewPoint.humidity(20, 15 - DewPoint.MARGIN)).isCloseTo(60.0, within(0.1));
    }

    // computed
    @Test
    void backToHumidity() {
        assertThat(DewPoint.humidity(20, 10)).isCloseTo(52.5, within(0.1));
        assertThat(DewPoint.humidity(25, 15)).isCloseTo(53.8, within(0.1));
    }

    // law
    @Property
    void dewPointIsNotAboveTheAirAndRisesWithBoth(
            @ForAll @DoubleRange(min = -20, max = 45) double celsius,
            @ForAll @DoubleRange(min = 1, max = 99) double humidity) {
        double dewPoint = DewPoint.of(celsius, humidity);
        assertThat(dewPoint).isLessThanOrEqualTo(celsius);
        assertThat(DewPoint.of(celsius + 1, humidity)).isGreaterThan(dewPoint);
        assertThat(DewPoint.of(celsius, humidity + 1)).isGreaterThan(dewPoint);
        assertThat(DewPoint.of(celsius, 100)).isCloseTo(celsius, within(1e-9));
        assertThat(DewPoint.humidity(celsius, dewPoint)).isCloseTo(humidity, within(1e-6));
    }

    // relative humidity is defined above 0 to 100 %
    @Test
    void impossibleHumidityIsRefused() {
        for (double humidity : new double[] {0, -1, 100.1, Double.NaN}) {
            assertThatThrownBy(() -> DewPoint.of(20, humidity)).hasMessageContaining("above 0 to 100");
        }
        assertThatThrownBy(() -> DewPoint.humidity(20, 21)).hasMessageContaining("not above");
    }

    // computed
    @ParameterizedTest
    @CsvSource({"53, 11.67", "120, 48.89", "140, 60.00", "41, 5", "77, 25"})
    void temperatures(double fahrenheit, double celsius) {
        assertThat(DewPoint.ofFahrenheit(fahrenheit)).isCloseTo(celsius, within(0.01));
        assertThat(DewPoint.toFahrenheit(celsius)).isCloseTo(fahrenheit, within(0.01));
    }

    // the US chart's 5 °F above the dew point are 2.8 K
    @Test
    void differencesConvertWithoutTheThirtyTwo() {
        assertThat(DewPoint.differenceOfFahrenheit(5)).isCloseTo(2.78, within(0.01));
    }
}
