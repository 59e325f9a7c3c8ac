package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CostRatesTest {

    private static BigDecimal d(String text) {
        return new BigDecimal(text);
    }

    /** Exercises of managerial-accounting courses on the predetermined overhead rate, with solutions. */
    @ParameterizedTest
    @CsvSource({
        "403260, 61100, 6.60, 58750, 462000, 387750, -74250",
        "60000, 6000, 10.00, 7000, 65000, 70000, 5000",
        "448000, 320000, 1.40, 345000, 459000, 483000, 24000"
    })
    void spreadsOverheadOverItsBase(
            BigDecimal overhead,
            BigDecimal base,
            BigDecimal rate,
            BigDecimal actualBase,
            BigDecimal actual,
            BigDecimal applied,
            BigDecimal over) {
        OverheadRate spread = OverheadRate.of(overhead, base);

        assertThat(spread.perUnit()).isEqualByComparingTo(rate);
        assertThat(spread.applied(actualBase)).isEqualByComparingTo(applied);
        assertThat(spread.overApplied(actualBase, actual)).isEqualByComparingTo(over);
    }

    @Test
    void refusesOverheadWithoutABase() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OverheadRate.of(BigDecimal.TEN, BigDecimal.ZERO))
                .withMessage("overhead needs a base above zero, got 0");
    }

    /** Invented figures, the common method: 32 000 + 22 % over 1 420.8 of 2 080 paid hours. */
    @Test
    void aSoldHourCostsMoreThanAPaidOne() {
        HourCost hour = HourCost.ofYear(d("32000"), d("22"), d("2080"), d("304"), d("80"));
        BigDecimal penny = d("0.005");

        assertThat(hour.perPaidHour()).isCloseTo(d("18.77"), within(penny));
        assertThat(hour.perSoldHour()).isCloseTo(d("27.48"), within(penny));
        OverheadRate overhead = OverheadRate.of(d("18000"), d("1420.8"));
        assertThat(hour.perSoldHour().add(overhead.perUnit())).isCloseTo(d("40.15"), within(penny));
        assertThat(hour.perPaidHour().add(hour.idlePerSoldHour())).isEqualByComparingTo(hour.perSoldHour());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0.1", "1.01"})
    void refusesAnImpossibleShareOfSoldHours(BigDecimal share) {
        assertThatIllegalArgumentException().isThrownBy(() -> new HourCost(BigDecimal.TEN, share));
    }

    /** Any textbook of cost accounting, from memory; the sums are arithmetic. */
    @ParameterizedTest
    @CsvSource({"10, 9.09", "20, 16.67", "25, 20", "30, 23.08", "50, 33.33", "100, 50"})
    void turnsMarkupIntoMargin(BigDecimal markup, BigDecimal margin) {
        assertThat(new Markup(markup).marginPercent()).isCloseTo(margin, within(d("0.005")));
    }

    /** As above, the other way. */
    @ParameterizedTest
    @CsvSource({"10, 11.11", "20, 25", "25, 33.33", "30, 42.86", "40, 66.67", "50, 100"})
    void turnsMarginIntoMarkup(BigDecimal margin, BigDecimal markup) {
        assertThat(Markup.leaving(margin).percent()).isCloseTo(markup, within(d("0.005")));
    }

    /** Cost 100 and 30 %, cost 250 and 35 %, once as margin and once as markup. */
    @ParameterizedTest
    @CsvSource({"100, 30, 142.86, 130.00", "250, 35, 384.62, 337.50"})
    void pricesAtMarginAndAtMarkup(BigDecimal cost, BigDecimal percent, BigDecimal atMargin, BigDecimal atMarkup) {
        assertThat(Markup.leaving(percent).on(cost).setScale(2, RoundingMode.HALF_UP))
                .isEqualTo(atMargin);
        assertThat(new Markup(percent).on(cost).setScale(2, RoundingMode.HALF_UP))
                .isEqualTo(atMarkup);
    }

    /** No price has a margin of its whole self. */
    @ParameterizedTest
    @ValueSource(strings = {"100", "100.1", "400"})
    void refusesAMarginOfTheWholePrice(BigDecimal margin) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Markup.leaving(margin))
                .withMessage("a margin must be below 100 % of the price, got " + margin);
    }

    @Property
    void markupAndMarginInvertEachOther(@ForAll @BigRange(min = "-99", max = "10000") BigDecimal percent) {
        Markup markup = new Markup(percent);

        assertThat(Markup.leaving(markup.marginPercent()).percent()).isCloseTo(percent, within(d("1e-20")));
    }

    @Property
    void markupIsNeverBelowMarginOnAGain(@ForAll @BigRange(min = "0", max = "10000") BigDecimal percent) {
        assertThat(percent).isGreaterThanOrEqualTo(new Markup(percent).marginPercent());
    }

    @Property
    void marginOfAPriceIsTheMarginOfItsMarkup(
            @ForAll @BigRange(min = "0.01", max = "10000") BigDecimal cost,
            @ForAll @BigRange(min = "0", max = "500") BigDecimal percent) {
        Markup markup = new Markup(percent);

        assertThat(Markup.marginPercent(markup.on(cost), cost)).isCloseTo(markup.marginPercent(), within(d("1e-20")));
    }
}
