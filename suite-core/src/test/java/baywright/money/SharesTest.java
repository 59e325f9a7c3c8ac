package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharesTest {

    private static List<BigDecimal> weights(String spaced) {
        return Arrays.stream(spaced.split(" ", -1)).map(BigDecimal::new).toList();
    }

    /** Largest remainder (Hamilton's method), ties to the first; the sums are arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "100.00, 1 1 1, 33.34 33.33 33.33",
        "187.43, 50 30 20, 93.71 56.23 37.49",
        "10.00, 1 1 1 1 1 1 1, 1.43 1.43 1.43 1.43 1.43 1.43 1.42",
        "0.05, 70 30, 0.04 0.01"
    })
    void sharesARoundedSumOut(String sum, String weights, String parts) {
        assertThat(Shares.of(Money.of(CurrencyUnit.GBP, new BigDecimal(sum)), weights(weights)))
                .extracting(Money::getAmount)
                .containsExactlyElementsOf(weights(parts));
    }

    @Test
    void sharesWholeYen() {
        assertThat(Shares.of(Money.ofMajor(CurrencyUnit.JPY, 100), weights("1 1 1")))
                .extracting(m -> m.getAmount().intValueExact())
                .containsExactly(34, 33, 33);
    }

    @Test
    void refusesToShareByNothing() {
        Money sum = Money.ofMajor(CurrencyUnit.GBP, 1);

        assertThatIllegalArgumentException().isThrownBy(() -> Shares.of(sum, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> Shares.of(sum, weights("0 0")));
        assertThatIllegalArgumentException().isThrownBy(() -> Shares.of(sum, weights("2 -1")));
        assertThatIllegalArgumentException().isThrownBy(() -> Shares.of(sum.negated(), weights("1")));
    }

    @Property
    void partsAddUpAndNoneIsAUnitAway(
            @ForAll @IntRange(max = 10_000_000) int pennies,
            @ForAll @Size(min = 1, max = 12) List<@BigRange(min = "0", max = "1000") @Scale(3) BigDecimal> weights) {
        BigDecimal whole = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        Assume.that(whole.signum() > 0);
        Money sum = Money.ofMinor(CurrencyUnit.GBP, pennies);

        List<Money> parts = Shares.of(sum, weights);

        assertThat(parts.stream().reduce(Money.zero(CurrencyUnit.GBP), Money::plus))
                .isEqualTo(sum);
        for (int i = 0; i < parts.size(); i++) {
            BigDecimal exact = sum.getAmount().multiply(weights.get(i)).divide(whole, 30, RoundingMode.HALF_EVEN);
            assertThat(parts.get(i).getAmount().subtract(exact).abs()).isLessThan(new BigDecimal("0.01"));
        }
    }
}
