package baywright.money;

import java.math.BigDecimal;

/**
 * What a site's quotes rest on.
 *
 * @param rates          costs and charge-out
 * @param tax            the tax on sales and its rounding
 * @param validDays      how many days a quote stands, from 1
 * @param depositPercent part of the price asked for at acceptance, 0 to 100
 */
public record SiteTerms(Rates rates, TaxRule tax, int validDays, BigDecimal depositPercent) {
    public SiteTerms {
        if (validDays < 1) {
            throw new IllegalArgumentException("quote.validDays must be 1 or more, got " + validDays);
        }
        if (depositPercent.signum() < 0 || depositPercent.compareTo(Percent.HUNDRED) > 0) {
            throw new IllegalArgumentException(
                    "quote.depositPercent must be from 0 to 100, got " + depositPercent.toPlainString());
        }
    }
}
