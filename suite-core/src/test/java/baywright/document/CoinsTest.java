package baywright.document;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.money.Rounding;
import baywright.money.TaxRule;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class CoinsTest {

    private static final CurrencyUnit POUND = CurrencyUnit.of("GBP");

    /** By hand: three thirds of a pound round to 33 each; the penny that lacks goes to the first. */
    @Test
    void thirdsAddUp() {
        BigDecimal third = new BigDecimal("0.333333");
        assertThat(Coins.shared(Money.of(POUND, 1), List.of(third, third, third)))
                .containsExactly(Money.of(POUND, 0.34), Money.of(POUND, 0.33), Money.of(POUND, 0.33));
    }

    /** By hand: 0.005 rounds up to 0.01 twice, one too many for 0.01; what is given back keeps its sign. */
    @Test
    void aCoinTooManyIsTakenAway() {
        assertThat(Coins.shared(
                        Money.of(POUND, -0.99),
                        List.of(new BigDecimal("0.005"), new BigDecimal("0.005"), new BigDecimal("-1"))))
                .containsExactly(Money.of(POUND, 0), Money.of(POUND, 0.01), Money.of(POUND, -1));
    }

    @Property(tries = 200)
    void linesAddUpAndNoneIsOffByMoreThanACoin(@ForAll("lines") List<BigDecimal> exact) {
        BigDecimal whole = exact.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        Money sum = Rounding.toCoins(POUND, whole, TaxRule.PRICES);
        List<Money> lines = Coins.shared(sum, exact);

        assertThat(lines.stream().reduce(Money.zero(POUND), Money::plus)).isEqualTo(sum);
        for (int i = 0; i < exact.size(); i++) {
            assertThat(lines.get(i).getAmount().subtract(exact.get(i)).abs())
                    .isLessThanOrEqualTo(new BigDecimal("0.01"));
        }
    }

    @Provide
    Arbitrary<List<BigDecimal>> lines() {
        return Arbitraries.bigDecimals()
                .between(new BigDecimal("-5"), new BigDecimal("900"))
                .ofScale(5)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
    }
}
