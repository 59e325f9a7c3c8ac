package baywright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Countries and currencies: ISO 3166-1 and ISO 4217; the region 150 is Europe in UN M49. */
class ShopTest {

    @ParameterizedTest
    @CsvSource({"en, GBP, en-GB", "en, USD, en-US", "sv, SEK, sv-SE", "en, EUR, en-150", "de, EUR, de-150"})
    void aLanguageAloneIsReadInTheCountryOfTheMoney(String language, String currency, String locale) {
        assertThat(Shop.locale(language, CurrencyUnit.of(currency))).isEqualTo(Locale.forLanguageTag(locale));
    }

    @Test
    void aCountryThatIsGivenCounts() {
        assertThat(Shop.locale("de-CH", CurrencyUnit.EUR)).isEqualTo(Locale.forLanguageTag("de-CH"));
    }

    /** The CFA franc's code begins with an X, which no country has. */
    @Test
    void moneyOfNoCountryAddsNone() {
        assertThat(Shop.locale("fr", CurrencyUnit.of("XOF"))).isEqualTo(Locale.FRENCH);
    }
}
