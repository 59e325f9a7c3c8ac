package baywright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The tax on sales at a site and how it is rounded. Several ways are lawful somewhere; a site has one and prints it.
 * Prices themselves are rounded half up to the currency's minor units.
 *
 * @param name     what people call it, such as VAT
 * @param percent  rate, not negative
 * @param rounding how the tax is rounded to the currency's minor units
 * @param on       what it is worked out on
 */
public record TaxRule(String name, BigDecimal percent, RoundingMode rounding, On on) {

    /** How a net price is rounded wherever it is. */
    public static final RoundingMode PRICES = RoundingMode.HALF_UP;

    /** What tax is worked out on. */
    public enum On {
        /** Once, on the rounded net sum. */
        TOTAL,
        /** On each rounded net line; the lines' taxes add up. */
        LINE,
        /** The price with tax is rounded once; the tax is what is inside it, the net what is left. */
        GROSS
    }

    public TaxRule {
        if (percent.signum() < 0) {
            throw new IllegalArgumentException("tax.percent must not be negative, got " + percent.toPlainString());
        }
        if (rounding == RoundingMode.UNNECESSARY) {
            throw new IllegalArgumentException("tax.rounding must say how to round");
        }
    }

    /** The price of one exact net amount. */
    public Price priceOf(CurrencyUnit currency, BigDecimal exactNet) {
        return priceOf(currency, List.of(exactNet));
    }

    /**
     * The price of several exact net amounts together. Net and tax always add up to gross; gross is never rounded beside
     * them.
     */
    public Price priceOf(CurrencyUnit currency, List<BigDecimal> exactNets) {
        BigDecimal exact = exactNets.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return switch (on) {
            case TOTAL -> onNet(exact, List.of(Rounding.toCoins(currency, exact, PRICES)), currency);
            case LINE ->
                onNet(
                        exact,
                        exactNets.stream()
                                .map(net -> Rounding.toCoins(currency, net, PRICES))
                                .toList(),
                        currency);
            case GROSS -> {
                Money gross = Rounding.toCoins(currency, exact.multiply(Percent.raised(percent)), PRICES);
                yield inside(exact, gross);
            }
        };
    }

    /** The price whose amount with tax is given, such as a round shelf price. */
    public Price inside(Money gross) {
        BigDecimal exactNet =
                gross.getAmount().multiply(Percent.HUNDRED).divide(Percent.HUNDRED.add(percent), Rates.PRECISION);
        return inside(exactNet, gross);
    }

    private Price inside(BigDecimal exactNet, Money gross) {
        BigDecimal tax = gross.getAmount().multiply(percent).divide(Percent.HUNDRED.add(percent), Rates.PRECISION);
        Money rounded = Rounding.toCoins(gross.getCurrencyUnit(), tax, rounding);
        return new Price(exactNet, gross.minus(rounded), rounded, gross);
    }

    private Price onNet(BigDecimal exact, List<Money> nets, CurrencyUnit currency) {
        Money net = Money.zero(currency);
        Money tax = Money.zero(currency);
        for (Money line : nets) {
            net = net.plus(line);
            tax = tax.plus(Rounding.toCoins(currency, line.getAmount().multiply(Percent.share(percent)), rounding));
        }
        return new Price(exact, net, tax, net.plus(tax));
    }
}
