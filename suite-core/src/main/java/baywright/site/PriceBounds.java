package baywright.site;

import baywright.library.Item;
import baywright.library.Library;
import baywright.money.JobTerms;
import baywright.money.Markup;
import baywright.money.Percent;
import baywright.money.Rates;
import baywright.money.SiteTerms;
import baywright.money.TaxRule;
import baywright.money.WorkCosts;
import baywright.plan.Costing;
import baywright.plan.PlanWork;
import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Stream;

/** What no price of a shop is below, for searches that rule out what is over a cap. */
final class PriceBounds {

    private final SiteTerms terms;
    private final Library library;
    private final BigDecimal surePercent;

    /** @param firmOnly whether the price alone counts, without contingency */
    PriceBounds(SiteTerms terms, Library library, boolean firmOnly) {
        this.terms = terms;
        this.library = library;
        Rates.Contingency contingency = terms.rates().contingency();
        surePercent = firmOnly || contingency.confidencePercent().isPresent()
                ? BigDecimal.ZERO
                : contingency
                        .trialDonePercent()
                        .min(contingency.noTrialPercent())
                        .min(contingency.riskyPercent());
    }

    /** The contingency that every plan has at least, percent of labour. */
    BigDecimal surePercent() {
        return surePercent;
    }

    private Stream<BigDecimal> rates() {
        return Stream.concat(
                Stream.of(terms.tax().percent()), terms.tax().others().stream().map(TaxRule.Other::percent));
    }

    /** What the lowest rate of tax makes of 1. */
    BigDecimal leastTax() {
        return Percent.raised(rates().min(BigDecimal::compareTo).orElseThrow());
    }

    /**
     * By how much a price may fall when something is added: two coins for each thing that may be rounded by itself, the step
     * that prices are rounded to, and, where there are several rates of tax, the rest of an opened pack going to another.
     *
     * @param steps of a plan, at most
     */
    BigDecimal slack(int steps) {
        BigDecimal coin = BigDecimal.ONE.movePointLeft(terms.rates().currency().getDecimalPlaces());
        int rounded = 2 * steps + library.items().size() + 2;
        BigDecimal rate = rates().max(BigDecimal::compareTo)
                .orElseThrow()
                .subtract(rates().min(BigDecimal::compareTo).orElseThrow());
        Markup markup = new Markup(terms.rates().materialMarkupPercent());
        BigDecimal rests = library.items().stream()
                .filter(Item::spoils)
                .map(item -> markup.on(item.price()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return coin.multiply(BigDecimal.valueOf(2L * rounded))
                .add(terms.tax().priceStep().orElse(BigDecimal.ZERO))
                .add(rests.multiply(Percent.share(rate)));
    }

    /** What the customer pays for work at least, before tax. */
    Costing costing(JobTerms job) {
        Costing price = WorkCosts.ofCustomer(library, terms.rates(), job);
        return new Costing() {
            @Override
            public BigDecimal minute() {
                return price.minute().multiply(Percent.raised(surePercent));
            }

            @Override
            public BigDecimal amount(String item, Quantity amount) {
                return price.amount(item, amount);
            }

            @Override
            public Map<String, BigDecimal> opened() {
                return price.opened();
            }

            @Override
            public BigDecimal of(PlanWork work) {
                return price.of(work);
            }
        };
    }
}
