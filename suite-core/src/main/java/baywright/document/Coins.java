package baywright.document;

import baywright.money.Rounding;
import baywright.money.TaxRule;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Rounds the lines of a sum so that they add up to it. */
final class Coins {

    private Coins() {}

    /**
     * Lines in coins. Each is rounded by itself; what then lacks or is over goes, a coin at a time, to the lines that
     * rounding moved farthest the other way, ties to the first. Lines may be negative: what a lower priority uses up of a
     * pack that is paid for already is given back.
     *
     * @param sum   what they add up to
     * @param exact unrounded, at least one
     */
    static List<Money> shared(Money sum, List<BigDecimal> exact) {
        CurrencyUnit currency = sum.getCurrencyUnit();
        List<Money> coins = new ArrayList<>();
        exact.forEach(one -> coins.add(Rounding.toCoins(currency, one, TaxRule.PRICES)));
        Money off = sum.minus(coins.stream().reduce(Money.zero(currency), Money::plus));
        BigDecimal sign = BigDecimal.valueOf(off.getAmount().signum());
        Comparator<Integer> byError = Comparator.comparing(
                (Integer i) -> exact.get(i).subtract(coins.get(i).getAmount()).multiply(sign),
                Comparator.reverseOrder());
        List<Integer> order =
                IntStream.range(0, exact.size()).boxed().sorted(byError).toList();
        BigInteger left = off.getAmountMinor().toBigIntegerExact().abs();
        Money coin = Money.ofMinor(currency, off.getAmount().signum());
        for (int n = 0; left.signum() > 0; n++, left = left.subtract(BigInteger.ONE)) {
            int at = order.get(n % order.size());
            coins.set(at, coins.get(at).plus(coin));
        }
        return coins;
    }
}
