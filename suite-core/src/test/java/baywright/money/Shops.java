package baywright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/** Invented sites for the tests. */
final class Shops {

    private Shops() {}

    private static BigDecimal d(String text) {
        return new BigDecimal(text);
    }

    /** Pounds, three grades, all costs stated. */
    static Rates poundRates() {
        return rates("16", "22", "70", "12", "1.5", "5", "3", "25");
    }

    /** Pounds, no cost but wages, no markup. */
    static Rates bareRates(String wage, String overhead) {
        return rates(wage, "0", "100", overhead, "0", "0", "0", "0");
    }

    static Rates rates(
            String wage,
            String employer,
            String utilisation,
            String overhead,
            String machine,
            String waste,
            String rework,
            String markup) {
        return new Rates(
                CurrencyUnit.GBP,
                Map.of("valeting", d("40"), "detailing", d("45"), "coating", d("52")),
                d(wage),
                d(employer),
                d(utilisation),
                d(overhead),
                d(machine),
                d(waste),
                d(rework),
                d(markup),
                new Rates.Margins(d("45"), d("12")),
                new Rates.Contingency(d("5"), d("12"), d("20")));
    }

    static TaxRule vat(TaxRule.On on) {
        return new TaxRule("VAT", d("20"), RoundingMode.HALF_UP, on);
    }

    static SiteTerms pounds(TaxRule.On on) {
        return new SiteTerms(poundRates(), vat(on), 30, d("25"));
    }
}
