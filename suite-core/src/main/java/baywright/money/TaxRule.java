package baywright.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The tax on sales at a site and how it is rounded. Several ways are lawful somewhere; a site has one and prints it.
 * Prices themselves are rounded half up to the currency's minor units.
 *
 * @param name      what people call it, such as VAT
 * @param percent   rate, not negative
 * @param rounding  how the tax is rounded to the currency's minor units
 * @param on        what it is worked out on
 * @param others    other rates, for stages of some families
 * @param lineStep  where tax is worked out on each line: what a line's tax is rounded to before the lines are added up, such
 *                  as a tenth of a penny; empty: to minor units
 * @param priceStep what a price with tax is rounded to, half up, such as 5; the tax is then what is inside it
 */
public record TaxRule(
        String name,
        BigDecimal percent,
        RoundingMode rounding,
        On on,
        List<Other> others,
        Optional<BigDecimal> lineStep,
        Optional<BigDecimal> priceStep) {

    /** How a net price is rounded wherever it is. */
    public static final RoundingMode PRICES = RoundingMode.HALF_UP;

    /** What tax is worked out on. */
    public enum On {
        /** Once for each rate, on the rounded net sum. */
        TOTAL,
        /** On each rounded net line; the lines' taxes add up. */
        LINE,
        /** The price with tax is rounded once; the tax is what is inside it, the net what is left. */
        GROSS
    }

    /**
     * Another rate of the same tax.
     *
     * @param percent  rate, not negative
     * @param families ids of the families of stages that it is for, at least one
     */
    public record Other(BigDecimal percent, List<String> families) {
        public Other {
            families = List.copyOf(families);
            requireRate("tax.others.percent", percent);
            if (families.isEmpty()) {
                throw new IllegalArgumentException("tax.others.families needs at least one family");
            }
        }
    }

    /** An exact net amount and the rate that it is taxed at. */
    public record Taxed(BigDecimal exactNet, BigDecimal percent) {}

    public TaxRule {
        others = List.copyOf(others);
        requireRate("tax.percent", percent);
        if (rounding == RoundingMode.UNNECESSARY) {
            throw new IllegalArgumentException("tax.rounding must say how to round");
        }
        lineStep.ifPresent(step -> requireStep("tax.lineStep", step));
        priceStep.ifPresent(step -> requireStep("tax.priceStep", step));
    }

    /** One rate, rounded to minor units. */
    public TaxRule(String name, BigDecimal percent, RoundingMode rounding, On on) {
        this(name, percent, rounding, on, List.of(), Optional.empty(), Optional.empty());
    }

    private static void requireRate(String field, BigDecimal percent) {
        if (percent.signum() < 0) {
            throw new IllegalArgumentException(field + " must not be negative, got " + percent.toPlainString());
        }
    }

    private static void requireStep(String field, BigDecimal step) {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException(field + " must be above zero, got " + step.toPlainString());
        }
    }

    /** The rate for stages of a family. */
    public BigDecimal percentFor(String family) {
        return others.stream()
                .filter(other -> other.families().contains(family))
                .map(Other::percent)
                .findFirst()
                .orElse(percent);
    }

    /** The price of one exact net amount at the first rate. */
    public Price priceOf(CurrencyUnit currency, BigDecimal exactNet) {
        return priceOf(currency, List.of(exactNet));
    }

    /** The price of several exact net amounts together, all at the first rate. */
    public Price priceOf(CurrencyUnit currency, List<BigDecimal> exactNets) {
        return priceOfAll(
                currency, exactNets.stream().map(net -> new Taxed(net, percent)).toList());
    }

    /**
     * The price of several exact net amounts together, each at its rate. Net and tax always add up to gross; gross is never
     * rounded beside them.
     */
    public Price priceOfAll(CurrencyUnit currency, List<Taxed> all) {
        Map<BigDecimal, BigDecimal> nets = new LinkedHashMap<>();
        all.forEach(one -> nets.merge(one.percent().stripTrailingZeros(), one.exactNet(), BigDecimal::add));
        BigDecimal exact = sum(nets.values());
        return switch (on) {
            case TOTAL -> onNet(exact, nets, Rounding.toCoins(currency, exact, PRICES));
            case LINE -> onLines(currency, exact, all);
            case GROSS -> {
                BigDecimal gross = sum(grosses(nets).values());
                yield inside(exact, nets, Rounding.toCoins(currency, gross, PRICES));
            }
        };
    }

    /** What a customer is asked for: the price, with tax rounded to {@link #priceStep} where there is one. */
    public Price askedFor(CurrencyUnit currency, List<Taxed> all) {
        Price price = priceOfAll(currency, all);
        if (priceStep.isEmpty()) {
            return price;
        }
        Map<BigDecimal, BigDecimal> nets = new LinkedHashMap<>();
        all.forEach(one -> nets.merge(one.percent().stripTrailingZeros(), one.exactNet(), BigDecimal::add));
        BigDecimal asked = Rounding.toStep(price.gross().getAmount(), priceStep.get(), PRICES);
        Price inside = inside(BigDecimal.ZERO, nets, Rounding.toCoins(currency, asked, PRICES));
        return new Price(inside.net().getAmount(), inside.net(), inside.tax(), inside.gross(), inside.taxes());
    }

    /** The price whose amount with tax is given, such as a round shelf price, at the first rate. */
    public Price inside(Money gross) {
        BigDecimal exactNet =
                gross.getAmount().multiply(Percent.HUNDRED).divide(Percent.HUNDRED.add(percent), Rates.PRECISION);
        return inside(exactNet, Map.of(percent.stripTrailingZeros(), BigDecimal.ONE), gross);
    }

    private Price inside(BigDecimal exactNet, Map<BigDecimal, BigDecimal> nets, Money gross) {
        List<Money> parts = shared(gross, List.copyOf(grosses(nets).values()));
        List<Price.Tax> taxes = new ArrayList<>();
        for (BigDecimal rate : nets.keySet()) {
            Money part = parts.get(taxes.size());
            BigDecimal exactTax = part.getAmount().multiply(rate).divide(Percent.HUNDRED.add(rate), Rates.PRECISION);
            Money tax = Rounding.toCoins(gross.getCurrencyUnit(), exactTax, rounding);
            taxes.add(new Price.Tax(rate, part.minus(tax), tax));
        }
        return price(exactNet, gross.getCurrencyUnit(), taxes);
    }

    private Price onNet(BigDecimal exact, Map<BigDecimal, BigDecimal> nets, Money net) {
        List<Money> parts = shared(net, List.copyOf(nets.values()));
        List<Price.Tax> taxes = new ArrayList<>();
        for (BigDecimal rate : nets.keySet()) {
            Money part = parts.get(taxes.size());
            BigDecimal exactTax = part.getAmount().multiply(Percent.share(rate));
            taxes.add(new Price.Tax(rate, part, Rounding.toCoins(net.getCurrencyUnit(), exactTax, rounding)));
        }
        return price(exact, net.getCurrencyUnit(), taxes);
    }

    private Price onLines(CurrencyUnit currency, BigDecimal exact, List<Taxed> lines) {
        Map<BigDecimal, Money> nets = new LinkedHashMap<>();
        Map<BigDecimal, BigDecimal> sums = new LinkedHashMap<>();
        for (Taxed line : lines) {
            BigDecimal rate = line.percent().stripTrailingZeros();
            Money net = Rounding.toCoins(currency, line.exactNet(), PRICES);
            BigDecimal tax = net.getAmount().multiply(Percent.share(rate));
            nets.merge(rate, net, Money::plus);
            sums.merge(rate, taxOfLine(currency, tax), BigDecimal::add);
        }
        List<Price.Tax> taxes = new ArrayList<>();
        nets.forEach((rate, net) ->
                taxes.add(new Price.Tax(rate, net, Rounding.toCoins(currency, sums.get(rate), rounding))));
        return price(exact, currency, taxes);
    }

    private BigDecimal taxOfLine(CurrencyUnit currency, BigDecimal tax) {
        return lineStep.map(step -> Rounding.toStep(tax, step, rounding))
                .orElseGet(() -> Rounding.toCoins(currency, tax, rounding).getAmount());
    }

    private static Price price(BigDecimal exact, CurrencyUnit currency, List<Price.Tax> taxes) {
        Money net = Money.zero(currency);
        Money tax = Money.zero(currency);
        for (Price.Tax one : taxes) {
            net = net.plus(one.net());
            tax = tax.plus(one.tax());
        }
        return new Price(exact, net, tax, net.plus(tax), taxes);
    }

    private static Map<BigDecimal, BigDecimal> grosses(Map<BigDecimal, BigDecimal> nets) {
        Map<BigDecimal, BigDecimal> grosses = new LinkedHashMap<>();
        nets.forEach((rate, net) -> grosses.put(rate, net.multiply(Percent.raised(rate))));
        return grosses;
    }

    /** A single part is the whole; several are shared out so that they add up. */
    private static List<Money> shared(Money whole, List<BigDecimal> weights) {
        if (weights.size() == 1) {
            return List.of(whole);
        }
        if (whole.isZero()) {
            return weights.stream().map(weight -> whole).toList();
        }
        return Shares.of(whole, weights);
    }

    private static BigDecimal sum(Iterable<BigDecimal> amounts) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal amount : amounts) {
            sum = sum.add(Objects.requireNonNull(amount));
        }
        return sum;
    }
}
