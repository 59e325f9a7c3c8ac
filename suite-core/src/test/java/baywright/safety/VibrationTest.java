package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VibrationTest {

    // ISO 5349-1:2001, 5.3; EU guide to good practice on hand-arm vibration (2008), 2.4 (example from memory)
    @Test
    void oneTool() {
        List<Vibration.Use> day = List.of(new Vibration.Use(4, 4.5));
        assertThat(Vibration.daily(day)).isCloseTo(3.0, within(1e-9));
        assertThat(Vibration.points(day)).isCloseTo(144, within(1e-9));
    }

    // EU guide to good practice on hand-arm vibration (2008), 2.4.2 (example from memory)
    @Test
    void threeToolsInADayLieBetweenActionAndLimitValue() {
        List<Vibration.Use> day =
                List.of(new Vibration.Use(4, 2.5), new Vibration.Use(3, 1), new Vibration.Use(20, 0.25));
        assertThat(day.stream().map(Vibration.Use::partial))
                .zipSatisfy(
                        List.of(2.236, 1.061, 3.536),
                        (got, want) -> assertThat(got).isCloseTo(want, within(1e-3)));
        assertThat(Vibration.daily(day)).isCloseTo(4.3157, within(1e-4));
        assertThat(Vibration.points(day)).isCloseTo(80 + 18 + 200, within(1e-9));
        assertThat(Comparison.EXCEEDS.reached(Vibration.daily(day), Vibration.ACTION))
                .isTrue();
        assertThat(Comparison.EXCEEDS.reached(Vibration.daily(day), Vibration.LIMIT))
                .isFalse();
    }

    // Directive 2002/44/EC, art. 3(1); points: UK HSE L140
    @Test
    void pointsStandForActionAndLimitValue() {
        assertThat(Vibration.toPoints(Vibration.ACTION)).isEqualTo(100);
        assertThat(Vibration.toPoints(Vibration.LIMIT)).isEqualTo(400);
        assertThat(Vibration.ofPoints(100)).isEqualTo(2.5);
        assertThat(Vibration.ofPoints(400)).isEqualTo(5);
    }

    // the Directive acts when a value is exceeded; UK regulations 2005, reg. 6, at or above it (from memory)
    @Test
    void exactlyAtTheActionValueTheSettingDecides() {
        double at = Vibration.daily(List.of(new Vibration.Use(2.5, 8)));
        assertThat(Comparison.EXCEEDS.reached(at, Vibration.ACTION)).isFalse();
        assertThat(Comparison.AT_OR_ABOVE.reached(at, Vibration.ACTION)).isTrue();
        double pieced = Vibration.daily(Collections.nCopies(30, new Vibration.Use(2.5, 8.0 / 30)));
        assertThat(Comparison.EXCEEDS.reached(pieced, Vibration.ACTION)).isFalse();
        assertThat(Comparison.AT_OR_ABOVE.reached(pieced, Vibration.ACTION)).isTrue();
        assertThat(Comparison.EXCEEDS.reached(2.5001, Vibration.ACTION)).isTrue();
        assertThat(Comparison.AT_OR_ABOVE.reached(2.4999, Vibration.ACTION)).isFalse();
    }

    // formula t = 8 h (limit / a)², computed
    @ParameterizedTest
    @CsvSource({
        "2.5, 480.0, 1920.0",
        "3, 333.3, 1333.3",
        "3.5, 244.9, 979.6",
        "4, 187.5, 750.0",
        "5, 120.0, 480.0",
        "6, 83.3, 333.3",
        "7, 61.2, 244.9",
        "8, 46.9, 187.5",
        "10, 30.0, 120.0",
        "12, 20.8, 83.3",
        "15, 13.3, 53.3",
        "20, 7.5, 30.0"
    })
    void minutesUntilAValueIsReached(double level, double toAction, double toLimit) {
        assertThat(60 * Vibration.hoursUntil(Vibration.ACTION, level)).isCloseTo(toAction, within(0.05));
        assertThat(60 * Vibration.hoursUntil(Vibration.LIMIT, level)).isCloseTo(toLimit, within(0.05));
    }

    // UK HSE exposure points table (INDG175/L140), figures computed, exact
    @ParameterizedTest
    @CsvSource({
        "3, 4.5, 9, 18, 36, 54, 72, 90, 108, 144", "4, 8, 16, 32, 64, 96, 128, 160, 192, 256",
        "5, 12.5, 25, 50, 100, 150, 200, 250, 300, 400", "6, 18, 36, 72, 144, 216, 288, 360, 432, 576",
        "7, 24.5, 49, 98, 196, 294, 392, 490, 588, 784", "8, 32, 64, 128, 256, 384, 512, 640, 768, 1024",
        "10, 50, 100, 200, 400, 600, 800, 1000, 1200, 1600", "12, 72, 144, 288, 576, 864, 1152, 1440, 1728, 2304",
        "15, 112.5, 225, 450, 900, 1350, 1800, 2250, 2700, 3600"
    })
    void readyReckoner(
            double level,
            double q,
            double half,
            double h1,
            double h2,
            double h3,
            double h4,
            double h5,
            double h6,
            double h8) {
        double[] hours = {0.25, 0.5, 1, 2, 3, 4, 5, 6, 8};
        double[] points = {q, half, h1, h2, h3, h4, h5, h6, h8};
        for (int i = 0; i < hours.length; i++) {
            assertThat(new Vibration.Use(level, hours[i]).points()).isEqualTo(points[i]);
        }
    }

    // ISO 5349-1:2001, annex C, eq. C.1 and table C.1 (from memory, computed)
    @ParameterizedTest
    @CsvSource({"26, 1.006, 1", "14, 1.939, 2", "7, 4.042, 4", "3.7, 7.946, 8"})
    void yearsToBlanching(double daily, double years, double printed) {
        assertThat(Vibration.yearsToBlanching(daily))
                .isCloseTo(years, within(1e-3))
                .isCloseTo(printed, within(0.05 * printed));
    }

    // laws
    @Property
    void dailyIsAQuarterOfTheRootOfThePoints(
            @ForAll @DoubleRange(min = 0.1, max = 40) double level,
            @ForAll @DoubleRange(min = 0.01, max = 24) double hours) {
        List<Vibration.Use> day = List.of(new Vibration.Use(level, hours));
        assertThat(Vibration.daily(day)).isCloseTo(Math.sqrt(Vibration.points(day)) / 4, within(1e-12));
        assertThat(Vibration.daily(day)).isCloseTo(Math.sqrt(level * level * hours / 8), within(1e-9));
    }

    // laws
    @Property
    void orderAndPiecesDoNotMatterAndNothingLowersADay(
            @ForAll List<@DoubleRange(min = 0, max = 30) Double> levels,
            @ForAll @DoubleRange(min = 0.01, max = 3) double hours) {
        List<Vibration.Use> day = new ArrayList<>();
        levels.forEach(l -> day.add(new Vibration.Use(l, hours)));
        List<Vibration.Use> pieces = new ArrayList<>();
        levels.forEach(l -> {
            pieces.add(0, new Vibration.Use(l, hours / 3));
            pieces.add(new Vibration.Use(l, hours - hours / 3));
        });
        double daily = Vibration.daily(day);
        assertThat(Vibration.daily(pieces)).isCloseTo(daily, within(1e-9));
        day.add(new Vibration.Use(1, hours));
        assertThat(Vibration.daily(day)).isGreaterThanOrEqualTo(daily);
    }

    // laws
    @Property
    void doubleLevelIsFourfoldAndDoubleTimeIsDoublePoints(
            @ForAll @DoubleRange(min = 0.1, max = 20) double level,
            @ForAll @DoubleRange(min = 0.1, max = 8) double hours) {
        double points = new Vibration.Use(level, hours).points();
        assertThat(new Vibration.Use(2 * level, hours).points()).isCloseTo(4 * points, within(1e-9 * points));
        assertThat(new Vibration.Use(level, 2 * hours).points()).isCloseTo(2 * points, within(1e-9 * points));
    }
}
