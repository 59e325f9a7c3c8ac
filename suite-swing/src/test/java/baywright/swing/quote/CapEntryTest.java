package baywright.swing.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CapEntryTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "en-GB; 850; 850",
                "en-GB; ' 1,030.53 '; 1030.53",
                "en-GB; 0; 0",
                "en-GB; 850.5; 850.5",
                "de-DE; 1.030,53; 1030.53",
                "de-DE; 1030.53; 1030.53",
                "de-DE; 850,5; 850.5"
            })
    void anAmountIsReadTheWayOfTheCountryOrWithAPoint(String locale, String text, BigDecimal amount) {
        assertThat(CapEntry.read(text, Locale.forLanguageTag(locale), 2))
                .hasValueSatisfying(read -> assertThat(read).isEqualByComparingTo(amount));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "-3", "12 pounds", "1,2", "8.505", "1,0,30", "1.2.3", "1234567890123", "NaN", "1e3", "∞"})
    void whatIsNoAmountInCoinsIsNotRead(String text) {
        assertThat(CapEntry.read(text, Locale.UK, 2)).isEmpty();
    }

    @Test
    void aCurrencyWithoutCoinsTakesNoDecimals() {
        assertThat(CapEntry.read("850.5", Locale.UK, 0)).isEmpty();
        assertThat(CapEntry.read("850", Locale.UK, 0)).isPresent();
    }
}
