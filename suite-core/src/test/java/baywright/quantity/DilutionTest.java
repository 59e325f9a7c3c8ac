package baywright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DilutionTest {

    /** Parts of product and water, common practice, no published source; the sums are plain arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "1:10, 500, 45.45, 454.55",
        "1 in 10, 500, 50, 450",
        "1:4, 750, 150, 600",
        "1:400, 5000, 12.47, 4987.53",
        "1:0, 500, 500, 0",
        "2:8, 500, 100, 400"
    })
    void splitsAReadyMixIntoProductAndWater(String written, BigDecimal mix, BigDecimal product, BigDecimal water) {
        Dilution dilution = Dilution.parse(written);
        Quantity ready = new Quantity(mix, Unit.MILLILITRE);

        BigDecimal cent = new BigDecimal("0.005");
        assertThat(dilution.concentrateOf(ready).amount()).isCloseTo(product, within(cent));
        assertThat(dilution.waterOf(ready).amount()).isCloseTo(water, within(cent));
    }

    /** 1:10 is 9.091 % product, 1 in 10 is 10 %. */
    @Test
    void tellsPartsToWaterFromPartsInTheMix() {
        assertThat(Dilution.parse("1:10").strength())
                .isCloseTo(new BigDecimal("0.09091"), within(new BigDecimal("0.000005")));
        assertThat(Dilution.parse("1 in 10").strength()).isEqualByComparingTo("0.1");
    }

    @Test
    void keepsTheUnitOfTheMix() {
        assertThat(Dilution.parse("1:4").concentrateOf(Quantity.of("2.5", Unit.LITRE)))
                .isEqualTo(Quantity.of("0.5", Unit.LITRE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "10", "1/10", "1:-10", "-1:10", "1:1:10", "one:ten", "1e9:1", "1 in", "1in10", "NaN:1"})
    void refusesWhatIsNoDilution(String written) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Dilution.parse(written))
                .withMessage("a dilution is written '1:10' (one part product, ten parts water) or "
                        + "'1 in 10' (one part product in ten parts of mix), got '" + written + "'");
    }

    @Test
    void refusesNoProductAndMoreProductThanMix() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Dilution.parse("0:10"))
                .withMessageContaining("needs some product");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Dilution.parse("10 in 1"))
                .withMessageContaining("more product than mix");
    }

    @Property
    void productAndWaterMakeTheMix(
            @ForAll @IntRange(min = 1, max = 999) int product,
            @ForAll @IntRange(max = 999) int water,
            @ForAll @BigRange(min = "0", max = "100000") BigDecimal mix) {
        Dilution dilution = Dilution.parse(product + ":" + water);
        Quantity ready = new Quantity(mix, Unit.MILLILITRE);

        assertThat(dilution.concentrateOf(ready)
                        .amount()
                        .add(dilution.waterOf(ready).amount()))
                .isEqualByComparingTo(mix);
        assertThat(dilution.waterOf(ready).amount().signum()).isNotNegative();
    }

    @Property
    void moreWaterIsWeaker(
            @ForAll @IntRange(min = 1, max = 99) int product,
            @ForAll @IntRange(max = 998) int water,
            @ForAll @IntRange(min = 1, max = 99) int more) {
        assertThat(Dilution.parse(product + ":" + (water + more)).strength())
                .isLessThan(Dilution.parse(product + ":" + water).strength());
    }
}
