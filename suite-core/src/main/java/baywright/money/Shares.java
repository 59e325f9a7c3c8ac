package baywright.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Shares a rounded sum out so that the parts add up to it: each part gets its whole minor units, the units left over go
 * to the largest remainders, ties to the first (the largest-remainder method).
 */
public final class Shares {

    private Shares() {}

    /**
     * Parts of a sum in proportion to weights, in their order.
     *
     * @param sum     not negative
     * @param weights at least one above zero, none negative
     * @throws IllegalArgumentException when there is nothing to share in proportion to
     */
    public static List<Money> of(Money sum, List<BigDecimal> weights) {
        BigDecimal whole = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.isNegative() || whole.signum() <= 0 || weights.stream().anyMatch(w -> w.signum() < 0)) {
            throw new IllegalArgumentException(
                    "a sum is shared out by weights that are not negative and not all zero, got " + weights);
        }
        BigDecimal units = new BigDecimal(sum.getAmountMinor().toBigIntegerExact());
        List<BigInteger> parts = new ArrayList<>();
        List<BigDecimal> remainders = new ArrayList<>();
        for (BigDecimal weight : weights) {
            BigDecimal[] share = units.multiply(weight).divideAndRemainder(whole);
            parts.add(share[0].toBigInteger());
            remainders.add(share[1]);
        }
        int left = units.toBigInteger()
                .subtract(parts.stream().reduce(BigInteger.ZERO, BigInteger::add))
                .intValueExact();
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
                .limit(left)
                .forEach(i -> parts.set(i, parts.get(i).add(BigInteger.ONE)));
        return parts.stream()
                .map(part -> Money.of(
                        sum.getCurrencyUnit(),
                        new BigDecimal(part, sum.getCurrencyUnit().getDecimalPlaces())))
                .toList();
    }
}
