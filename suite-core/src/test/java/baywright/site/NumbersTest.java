package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class NumbersTest {

    private final Numbers british = new Numbers(Locale.UK);
    private final Numbers german = new Numbers(Locale.GERMANY);

    @Test
    void minutesBecomeHoursFromSixtyOn() {
        assertThat(british.duration(new BigDecimal("59.49"))).isEqualTo("59 min");
        assertThat(british.duration(new BigDecimal("59.5"))).isEqualTo("1 h 00 min");
        assertThat(british.duration(new BigDecimal("674.1"))).isEqualTo("11 h 14 min");
    }

    @Test
    void moneyFollowsTheReadersHabit() {
        Money price = Money.of(CurrencyUnit.GBP, new BigDecimal("1030.53"));
        assertThat(british.money(price)).isEqualTo("GBP 1,030.53");
        assertThat(german.money(price)).isEqualTo("GBP 1.030,53");
    }

    @Test
    void yenHaveNoDecimals() {
        assertThat(british.money(Money.of(CurrencyUnit.JPY, new BigDecimal("1200"))))
                .isEqualTo("JPY 1,200");
    }

    @Test
    void daysAreWrittenTheWayOfTheCountry() {
        LocalDate day = LocalDate.of(2026, 12, 25);
        assertThat(british.day(day)).isEqualTo("25 December 2026");
        assertThat(german.day(day)).isEqualTo("25. Dezember 2026");
    }

    @Test
    void decimalsThatSayNothingAreLeftOut() {
        assertThat(british.number(new BigDecimal("14.600"), 3)).isEqualTo("14.6");
        assertThat(british.number(new BigDecimal("0.0005"), 3)).isEqualTo("0.001");
    }
}
