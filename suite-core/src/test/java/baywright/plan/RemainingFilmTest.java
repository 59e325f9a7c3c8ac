package baywright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.quantity.ThreePoint;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.GaugeError;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemainingFilmTest {

    private static final RemainingFilm LEFT = new RemainingFilm(112, 4).less(6, 1.5);

    /** Normal difference, computed. */
    @Test
    void aPanelLessARemoval() {
        assertThat(LEFT.mean()).isEqualTo(106);
        assertThat(LEFT.deviation()).isCloseTo(4.272, within(0.0005));
    }

    /** Normal distribution, computed; 1 % relative. */
    @ParameterizedTest
    @CsvSource({"90, 9.01e-5", "95, 0.00501", "100, 0.0801"})
    void chanceOfEndingBelow(double floor, double expected) {
        assertThat(LEFT.chanceBelow(floor) / expected).isCloseTo(1, within(0.01));
    }

    /** At most 2 % below 90 µm at the same spread. */
    @Test
    void whatMayBePlannedAway() {
        assertThat(new RemainingFilm(112, LEFT.deviation()).mostFor(90, 0.02)).isCloseTo(13.23, within(0.01));
    }

    @Test
    void aSureFilmIsBelowOrNot() {
        assertThat(new RemainingFilm(60, 0).chanceBelow(60)).isZero();
        assertThat(new RemainingFilm(59.9, 0).chanceBelow(60)).isOne();
    }

    /** Law. */
    @Property
    void moreRemovalNeverLowersTheRisk(
            @ForAll @DoubleRange(min = 60, max = 400) double film,
            @ForAll @DoubleRange(min = 0.1, max = 30) double deviation,
            @ForAll @DoubleRange(min = 0, max = 40) double removal,
            @ForAll @DoubleRange(min = 0, max = 40) double more) {
        RemainingFilm before = new RemainingFilm(film, deviation);

        assertThat(before.less(removal + more, 1).chanceBelow(60))
                .isGreaterThanOrEqualTo(before.less(removal, 1).chanceBelow(60));
    }

    /** Law, for the place of the lowest reading: the gauge's error shrinks with the reading, the risk does not. */
    @Property
    void aLowerReadingNeverLowersTheRisk(
            @ForAll @DoubleRange(min = 40, max = 400) double reading,
            @ForAll @DoubleRange(min = 0, max = 40) double lower) {
        RemainingFilm high = RemainingFilm.at(BigDecimal.valueOf(reading), FilmLimits.USUAL);
        RemainingFilm low = RemainingFilm.at(BigDecimal.valueOf(reading - lower), FilmLimits.USUAL);

        assertThat(low.less(5, 1).chanceBelow(60))
                .isGreaterThanOrEqualTo(high.less(5, 1).chanceBelow(60));
    }

    /** Law, as long as more than the floor is expected to be left: beyond it doubt can only help. */
    @Property
    void aLargerUncertaintyNeverLowersTheRisk(
            @ForAll @DoubleRange(min = 0, max = 100) double aboveFloor,
            @ForAll @DoubleRange(min = 0, max = 10) double fixed,
            @ForAll @DoubleRange(min = 0, max = 10) double more) {
        BigDecimal reading = BigDecimal.valueOf(60 + aboveFloor);

        assertThat(RemainingFilm.at(reading, gauge(fixed + more)).chanceBelow(60))
                .isGreaterThanOrEqualTo(RemainingFilm.at(reading, gauge(fixed)).chanceBelow(60));
    }

    private static FilmLimits gauge(double fixed) {
        FilmLimits usual = FilmLimits.USUAL;
        return new FilmLimits(
                usual.stopBelow(),
                usual.careBelow(),
                usual.repaintAbove(),
                usual.fillerAbove(),
                new GaugeError(BigDecimal.valueOf(fixed), BigDecimal.ZERO),
                usual.shares(),
                usual.readings());
    }

    /** Law: equal to the last bit. */
    @Property
    void theOrderOfStepsDoesNotMatter(@ForAll @IntRange(min = 0, max = 6) int steps, @ForAll long seed) {
        Random random = new Random(seed);
        List<ThreePoint> removals = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            BigDecimal least = BigDecimal.valueOf(random.nextInt(50), 1);
            BigDecimal likely = least.add(BigDecimal.valueOf(random.nextInt(50), 1));
            removals.add(new ThreePoint(least, likely, likely.add(BigDecimal.valueOf(random.nextInt(50), 1))));
        }
        List<ThreePoint> shuffled = new ArrayList<>(removals);
        Collections.shuffle(shuffled, random);

        assertThat(new RemainingFilm(112, 4).less(shuffled)).isEqualTo(new RemainingFilm(112, 4).less(removals));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new RemainingFilm(100, -1)).hasMessageContaining("a deviation from 0");
        assertThatThrownBy(() -> new RemainingFilm(Double.NaN, 1)).hasMessageContaining("needs a mean");
    }
}
