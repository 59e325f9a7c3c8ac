package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.DemoSite;
import baywright.money.BuildUp.Bar;
import baywright.money.BuildUp.What;
import baywright.site.Site;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's estate piled up; its totals are held to the penny in {@link DemoPricesTest}: common practice, no source. */
class BuildUpTest {

    @TempDir
    private Path folder;

    private Quote quote(String tax) throws IOException {
        DemoSite.copy("millrace-works", folder);
        Path file = folder.resolve("shop.json");
        String terms = "\"tax\": {\"name\": \"VAT\", \"percent\": 20, " + tax + "}";
        Files.writeString(file, Files.readString(file).replaceFirst("\"tax\": \\{[^}]*\\}", terms));
        Site site =
                Site.open(folder, Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC), DemoSite.SCRIPTS);
        return (Quote) site.work(site.job(site.workspace().job("green-estate").orElseThrow()))
                .offer();
    }

    private static Bar bar(List<Bar> bars, What what) {
        return bars.stream().filter(b -> b.what() == what).findFirst().orElseThrow();
    }

    /** The price is 1030.53; the tax inside it is a sixth, 171.755, half up 171.76, which leaves 858.77. */
    @Test
    void theEstatePilesUpToItsPrice() throws IOException {
        BuildUp built = BuildUp.of(quote("\"rounding\": \"half-up\", \"on\": \"gross\""));

        assertThat(bar(built.price(), What.NET).to()).isEqualByComparingTo("858.77");
        assertThat(bar(built.price(), What.PRICE).to()).isEqualByComparingTo("1030.53");
        assertThat(bar(built.price(), What.TAX).of()).isEqualTo("20");
        assertThat(built.price().get(0).kind()).isEqualTo(Optional.of(LineKind.LABOUR));
        assertThat(built.price().get(0).of()).isEqualTo("detailing");
    }

    /** However a shop rounds and taxes, bars join end to end, and each is the sum of its lines. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"rounding\": \"half-up\", \"on\": \"total\"",
                "\"rounding\": \"down\", \"on\": \"line\"",
                "\"rounding\": \"half-up\", \"on\": \"gross\", \"priceStep\": 5"
            })
    void barsJoinEndToEnd(String tax) throws IOException {
        Quote quote = quote(tax);
        BuildUp built = BuildUp.of(quote);
        for (List<Bar> bars : List.of(built.price(), built.cost())) {
            BigDecimal top = BigDecimal.ZERO;
            for (Bar bar : bars) {
                assertThat(bar.from()).isEqualByComparingTo(bar.what().isSum() ? BigDecimal.ZERO : top);
                if (bar.what().isSum()) {
                    assertThat(bar.to()).isEqualByComparingTo(top);
                }
                if (bar.what() == What.LINES) {
                    assertThat(bar.amount())
                            .isEqualByComparingTo(bar.lines().stream()
                                    .map(LedgerLine::amount)
                                    .reduce(BigDecimal.ZERO, BigDecimal::add));
                }
                top = bar.to();
            }
        }
        assertThat(bar(built.price(), What.NET).to())
                .isEqualByComparingTo(quote.price().net().getAmount());
        assertThat(bar(built.price(), What.PRICE).to())
                .isEqualByComparingTo(quote.price().gross().getAmount());
        assertThat(bar(built.price(), What.MOST).to())
                .isEqualByComparingTo(quote.range().high().gross().getAmount());
        assertThat(bar(built.cost(), What.COST).to())
                .isEqualByComparingTo(quote.ledger().cost());
        assertThat(bar(built.cost(), What.NET).to())
                .isEqualByComparingTo(quote.price().net().getAmount());
    }

    /** A round price of whole five pounds is off the exact net by more than a coin; that stands as rounding. */
    @Test
    void aRoundPriceIsToldAsRounding() throws IOException {
        BuildUp built = BuildUp.of(quote("\"rounding\": \"half-up\", \"on\": \"gross\", \"priceStep\": 5"));

        assertThat(bar(built.price(), What.PRICE).to().remainder(BigDecimal.valueOf(5)))
                .isEqualByComparingTo(BigDecimal.ZERO);
        // 1030 / 1.2 = 858.33, and 858.77 - 858.33 = 0.44
        assertThat(bar(built.price(), What.ROUNDING).amount())
                .isBetween(new BigDecimal("-0.45"), new BigDecimal("-0.43"));
    }
}
