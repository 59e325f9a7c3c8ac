package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import baywright.money.TaxRule.On;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TaxRuleTest {

    private static TaxRule vat(String percent, RoundingMode mode, On on) {
        return new TaxRule("VAT", new BigDecimal(percent), mode, on);
    }

    private static String[] amounts(Price price) {
        return new String[] {
            price.net().getAmount().toPlainString(),
            price.tax().getAmount().toPlainString(),
            price.gross().getAmount().toPlainString()
        };
    }

    /** The table of java.math.RoundingMode in the JDK's API documentation. */
    @ParameterizedTest
    @CsvSource({
        "HALF_UP, 6 3 2 1 1 -1 -1 -2 -3 -6",
        "HALF_EVEN, 6 2 2 1 1 -1 -1 -2 -2 -6",
        "HALF_DOWN, 5 2 2 1 1 -1 -1 -2 -2 -5",
        "DOWN, 5 2 1 1 1 -1 -1 -1 -2 -5"
    })
    void roundsWholeUnitsAsTheModeSays(RoundingMode mode, String expected) {
        String[] inputs = {"5.5", "2.5", "1.6", "1.1", "1.0", "-1.0", "-1.1", "-1.6", "-2.5", "-5.5"};
        String[] rounded = expected.split(" ", -1);
        for (int i = 0; i < inputs.length; i++) {
            assertThat(Rounding.toCoins(CurrencyUnit.JPY, new BigDecimal(inputs[i]), mode)
                            .getAmount())
                    .as(inputs[i])
                    .isEqualByComparingTo(rounded[i]);
        }
    }

    /** Decimal ties that binary fractions get wrong. */
    @ParameterizedTest
    @CsvSource({"2.345, 2.35, 2.34", "1.005, 1.01, 1.00", "0.125, 0.13, 0.12", "-0.125, -0.13, -0.12"})
    void roundsDecimalTies(BigDecimal exact, BigDecimal halfUp, BigDecimal halfEven) {
        assertThat(Rounding.toCoins(CurrencyUnit.GBP, exact, RoundingMode.HALF_UP)
                        .getAmount())
                .isEqualTo(halfUp);
        assertThat(Rounding.toCoins(CurrencyUnit.GBP, exact, RoundingMode.HALF_EVEN)
                        .getAmount())
                .isEqualTo(halfEven);
    }

    /** 0.99 + 0.045/3 is 1.005 in exact arithmetic: the tail of the division must not hide the tie. */
    @Test
    void aTieThatADivisionBlurredIsATieAgain() {
        BigDecimal third = BigDecimal.ONE.divide(new BigDecimal(3), Rates.PRECISION);
        BigDecimal blurred = third.multiply(new BigDecimal("0.045")).add(new BigDecimal("0.99"));

        assertThat(blurred).isLessThan(new BigDecimal("1.005"));
        assertThat(Rounding.toCoins(CurrencyUnit.GBP, blurred, RoundingMode.HALF_UP))
                .isEqualTo(Money.parse("GBP 1.01"));
    }

    /** VAT per line or on the sum; both are lawful somewhere. */
    @ParameterizedTest
    @CsvSource({"17.27, 4, 13.80, 13.82", "0.33, 3, 0.21, 0.20"})
    void taxesEachLineOrTheSum(BigDecimal line, int lines, BigDecimal perLine, BigDecimal onSum) {
        List<BigDecimal> nets = Collections.nCopies(lines, line);

        assertThat(vat("20", RoundingMode.HALF_UP, On.LINE)
                        .priceOf(CurrencyUnit.GBP, nets)
                        .tax()
                        .getAmount())
                .isEqualTo(perLine);
        assertThat(vat("20", RoundingMode.HALF_UP, On.TOTAL)
                        .priceOf(CurrencyUnit.GBP, nets)
                        .tax()
                        .getAmount())
                .isEqualTo(onSum);
    }

    /** An example of an accounting forum, 704.88 at 20 %. */
    @ParameterizedTest
    @CsvSource({"HALF_UP, 140.98, 845.86", "DOWN, 140.97, 845.85"})
    void grossIsNetAndTheRoundedTax(RoundingMode mode, String tax, String gross) {
        assertThat(amounts(vat("20", mode, On.TOTAL).priceOf(CurrencyUnit.GBP, new BigDecimal("704.88"))))
                .containsExactly("704.88", tax, gross);
    }

    /** HMRC VAT Notice 700, 17.5 (invoice trader, tax rounded down to a whole penny; from memory). */
    @Test
    void anInvoiceMayRoundItsTaxDown() {
        assertThat(amounts(vat("20", RoundingMode.DOWN, On.TOTAL).priceOf(CurrencyUnit.GBP, new BigDecimal("4.3395"))))
                .containsExactly("4.34", "0.86", "5.20");
        assertThat(amounts(
                        vat("20", RoundingMode.HALF_UP, On.TOTAL).priceOf(CurrencyUnit.GBP, new BigDecimal("4.3395"))))
                .containsExactly("4.34", "0.87", "5.21");
    }

    /**
     * HMRC VAT Notice 700, 17.5.1 (from memory) and 17.5.2: 86.76p is 86.7p, or 87p; 0.0024 of a pound for each unit
     * is 0.002.
     */
    @ParameterizedTest
    @CsvSource({
        "0.8676, 0.001, DOWN, 0.867",
        "0.8676, 0.01, HALF_UP, 0.87",
        "0.8676, 0.005, HALF_UP, 0.87",
        "0.0024, 0.001, DOWN, 0.002",
        "0.0026, 0.005, HALF_UP, 0.005"
    })
    void roundsToAStep(BigDecimal exact, BigDecimal step, RoundingMode mode, BigDecimal rounded) {
        assertThat(Rounding.toStep(exact, step, mode)).isEqualByComparingTo(rounded);
    }

    /** 17.5.1: a line's tax to 0.1p downwards, then the total to a penny downwards; by hand 2 × 0.949 = 1.898. */
    @Test
    void aLinesTaxMayBeRoundedToATenthOfAPenny() {
        TaxRule rule = new TaxRule(
                "VAT",
                new BigDecimal("5.5"),
                RoundingMode.DOWN,
                On.LINE,
                List.of(),
                Optional.of(new BigDecimal("0.001")),
                Optional.empty());
        BigDecimal line = new BigDecimal("17.27"); // tax 0.94985
        assertThat(amounts(rule.priceOf(CurrencyUnit.GBP, List.of(line, line))))
                .containsExactly("34.54", "1.89", "36.43");
        assertThat(amounts(vat("5.5", RoundingMode.DOWN, On.LINE).priceOf(CurrencyUnit.GBP, List.of(line, line))))
                .containsExactly("34.54", "1.88", "36.42");
    }

    private static TaxRule twoRates(On on, String priceStep) {
        return new TaxRule(
                "VAT",
                new BigDecimal("20"),
                RoundingMode.HALF_UP,
                on,
                List.of(new TaxRule.Other(new BigDecimal("5"), List.of("cabin"))),
                Optional.empty(),
                priceStep.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(priceStep)));
    }

    private static List<TaxRule.Taxed> taxed(String at20, String at5) {
        return List.of(
                new TaxRule.Taxed(new BigDecimal(at20), new BigDecimal("20")),
                new TaxRule.Taxed(new BigDecimal(at5), new BigDecimal("5.0")));
    }

    /** By hand: 100 at 20 % and 50 at 5 % are 20 and 2.50 of tax, whatever it is worked out on. */
    @ParameterizedTest
    @EnumSource(On.class)
    void eachRateIsTaxedByItself(On on) {
        Price price = twoRates(on, "").priceOfAll(CurrencyUnit.GBP, taxed("100", "50"));
        assertThat(amounts(price)).containsExactly("150.00", "22.50", "172.50");
        assertThat(price.taxes())
                .extracting(tax -> tax.net() + " " + tax.tax())
                .containsExactly("GBP 100.00 GBP 20.00", "GBP 50.00 GBP 2.50");
        assertThat(twoRates(on, "").percentFor("cabin")).isEqualByComparingTo("5");
        assertThat(twoRates(on, "").percentFor("wash")).isEqualByComparingTo("20");
    }

    /** By hand: 66.666 is 66.67, shared as 33.34 and 33.33; 6.668 and 1.6665 of tax are 6.67 and 1.67. */
    @Test
    void theNetOfEachRateAddsUpToTheNet() {
        Price price = twoRates(On.TOTAL, "").priceOfAll(CurrencyUnit.GBP, taxed("33.333", "33.333"));
        assertThat(amounts(price)).containsExactly("66.67", "8.34", "75.01");
    }

    /** Tax inside a rounded price: 1 030.53 becomes 1 030, with 1 030 · 20/120 = 171.666… of tax inside. */
    @Test
    void aRoundPriceHasItsTaxInside() {
        TaxRule rule = twoRates(On.TOTAL, "5");
        List<TaxRule.Taxed> net = List.of(new TaxRule.Taxed(new BigDecimal("858.77"), new BigDecimal("20")));
        assertThat(amounts(rule.askedFor(CurrencyUnit.GBP, net))).containsExactly("858.33", "171.67", "1030.00");
        assertThat(amounts(rule.priceOfAll(CurrencyUnit.GBP, net))).containsExactly("858.77", "171.75", "1030.52");
        Price both = rule.askedFor(CurrencyUnit.GBP, taxed("100", "50")); // 172.50 up to 175
        assertThat(both.gross()).isEqualTo(Money.parse("GBP 175.00"));
        assertThat(both.taxes()).hasSize(2);
    }

    @Property
    void ratesAddUpAndAreWithinACoinOfTheExactTax(
            @ForAll On on,
            @ForAll @BigRange(min = "0", max = "10000") @Scale(4) BigDecimal first,
            @ForAll @BigRange(min = "0", max = "10000") @Scale(4) BigDecimal second) {
        Price price =
                twoRates(on, "").priceOfAll(CurrencyUnit.GBP, taxed(first.toPlainString(), second.toPlainString()));
        BigDecimal exact = first.multiply(new BigDecimal("0.20")).add(second.multiply(new BigDecimal("0.05")));
        assertThat(price.taxes().stream().map(Price.Tax::tax).reduce(Money.zero(CurrencyUnit.GBP), Money::plus))
                .isEqualTo(price.tax());
        assertThat(price.taxes().stream().map(Price.Tax::net).reduce(Money.zero(CurrencyUnit.GBP), Money::plus))
                .isEqualTo(price.net());
        assertThat(price.tax().getAmount().subtract(exact).abs()).isLessThanOrEqualTo(new BigDecimal("0.03"));
    }

    @Test
    void refusesStepsAndRatesThatMakeNoSense() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> twoRates(On.TOTAL, "0"))
                .withMessageContaining("tax.priceStep must be above zero");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TaxRule.Other(BigDecimal.ONE, List.of()))
                .withMessageContaining("at least one family");
    }

    /** Tax inside a gross price, {@code gross · r / (100 + r)}, half up. */
    @ParameterizedTest
    @CsvSource({
        "120.00, 20, 20.00, 100.00",
        "99.99, 20, 16.67, 83.32",
        "249.00, 19, 39.76, 209.24",
        "100.00, 21, 17.36, 82.64",
        "35.90, 5.5, 1.87, 34.03"
    })
    void findsTheTaxInsideAGrossPrice(BigDecimal gross, String percent, String tax, String net) {
        assertThat(amounts(vat(percent, RoundingMode.HALF_UP, On.GROSS).inside(Money.of(CurrencyUnit.EUR, gross))))
                .containsExactly(net, tax, gross.toPlainString());
    }

    /** ISO 4217 list one (from memory), and the currency data of the JDK. */
    @ParameterizedTest
    @CsvSource({
        "0, JPY KRW VND CLP ISK UGX XOF",
        "2, EUR GBP USD CHF HUF SEK PLN",
        "3, BHD KWD OMR TND JOD IQD LYD",
        "4, CLF"
    })
    void knowsTheMinorUnits(int places, String codes) {
        for (String code : codes.split(" ", -1)) {
            assertThat(CurrencyUnit.of(code).getDecimalPlaces()).as(code).isEqualTo(places);
            assertThat(Currency.getInstance(code).getDefaultFractionDigits())
                    .as("JDK " + code)
                    .isEqualTo(places);
        }
        assertThat(CurrencyUnit.of("XAU").isPseudoCurrency()).isTrue();
        assertThat(CurrencyUnit.of("XDR").isPseudoCurrency()).isTrue();
    }

    /** 10 % of 12 345 yen; 12.3455 dinar. */
    @Test
    void roundsToTheMinorUnitsOfItsCurrency() {
        BigDecimal yen = new BigDecimal("12345");

        assertThat(vat("10", RoundingMode.HALF_UP, On.TOTAL)
                        .priceOf(CurrencyUnit.JPY, yen)
                        .tax())
                .isEqualTo(Money.ofMajor(CurrencyUnit.JPY, 1235));
        assertThat(vat("10", RoundingMode.DOWN, On.TOTAL)
                        .priceOf(CurrencyUnit.JPY, yen)
                        .tax())
                .isEqualTo(Money.ofMajor(CurrencyUnit.JPY, 1234));
        assertThat(Rounding.toCoins(CurrencyUnit.of("KWD"), new BigDecimal("12.3455"), RoundingMode.HALF_UP))
                .isEqualTo(Money.parse("KWD 12.346"));
    }

    @Test
    void aPriceThatDoesNotAddUpIsRefused() {
        Money one = Money.ofMajor(CurrencyUnit.GBP, 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Price(BigDecimal.ONE, one, one, one, List.of()))
                .withMessageContaining("net and tax must add up to gross");
    }

    @Test
    void refusesANegativeRateAndAModeThatDoesNotRound() {
        assertThatIllegalArgumentException().isThrownBy(() -> vat("-1", RoundingMode.HALF_UP, On.TOTAL));
        assertThatIllegalArgumentException().isThrownBy(() -> vat("20", RoundingMode.UNNECESSARY, On.TOTAL));
    }

    @Property
    void taxIsWithinACoinOfTheExactTaxPerRounding(
            @ForAll On on,
            @ForAll @Size(min = 1, max = 6) List<@BigRange(min = "0", max = "10000") @Scale(5) BigDecimal> nets,
            @ForAll @BigRange(min = "0", max = "30") @Scale(1) BigDecimal percent) {
        Price price = new TaxRule("VAT", percent, RoundingMode.HALF_UP, on).priceOf(CurrencyUnit.GBP, nets);
        BigDecimal exactTax = price.exactNet().multiply(Percent.share(percent));
        BigDecimal coins = new BigDecimal("0.01").multiply(new BigDecimal(on == On.LINE ? nets.size() : 1));

        assertThat(price.net().plus(price.tax())).isEqualTo(price.gross());
        assertThat(price.tax().getAmount().subtract(exactTax).abs()).isLessThanOrEqualTo(coins);
    }

    @Property
    void aDearerNetNeverHasALowerPrice(
            @ForAll On on,
            @ForAll RoundingMode mode,
            @ForAll @BigRange(min = "0", max = "10000") @Scale(5) BigDecimal net,
            @ForAll @BigRange(min = "0", max = "100") @Scale(5) BigDecimal more) {
        if (mode == RoundingMode.UNNECESSARY) {
            return;
        }
        TaxRule rule = vat("20", mode, on);

        assertThat(rule.priceOf(CurrencyUnit.GBP, net.add(more)).gross())
                .isGreaterThanOrEqualTo(rule.priceOf(CurrencyUnit.GBP, net).gross());
    }

    @Property
    void oneLineIsTaxedLikeItsSum(@ForAll @BigRange(min = "0", max = "10000") @Scale(4) BigDecimal net) {
        assertThat(vat("20", RoundingMode.HALF_UP, On.LINE).priceOf(CurrencyUnit.GBP, net))
                .isEqualTo(vat("20", RoundingMode.HALF_UP, On.TOTAL).priceOf(CurrencyUnit.GBP, net));
    }
}
