package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.library.Library;
import baywright.money.LineKind.Column;
import baywright.money.TaxRule.On;
import baywright.plan.Proof;
import baywright.plan.Setting;
import baywright.plan.Step.Priority;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two worked examples of a shop's own price scheme: common practice, no source (see SOURCE.md beside the data). */
class PriceSchemeTest {

    private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 12, 7, 8, 0);

    private static List<String[]> rows(String file) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                PriceSchemeTest.class.getResourceAsStream("/baywright/money/" + file), StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Library library() {
        return Works.library(rows("packs.csv").stream()
                .map(r -> Works.item(
                        r[0],
                        Quantity.of(r[1], Unit.of(r[2]).orElseThrow()),
                        new BigDecimal(r[3])
                                .add(new BigDecimal(r[4]))
                                .divide(BigDecimal.valueOf(2))
                                .toPlainString(),
                        false))
                .toList());
    }

    private static Works works(String file) {
        Map<String, BigDecimal> families = new LinkedHashMap<>();
        rows("family-set-ups.csv").forEach(r -> families.put(r[0], new BigDecimal(r[1])));
        return Works.of(rows(file).stream().map(PriceSchemeTest::job).toList(), families);
    }

    private static Works.Job job(String[] r) {
        BigDecimal size = new BigDecimal(r[5]);
        BigDecimal amount = new BigDecimal(r[4]);
        Map<String, Quantity> uses = new LinkedHashMap<>();
        Arrays.stream(r[12].split(" \\+ ", -1)).filter(u -> !u.isEmpty()).forEach(use -> {
            String[] words = use.split(" ", -1);
            Quantity each = Quantity.of(words[1], Unit.of(words[2]).orElseThrow());
            uses.put(words[0], each.times(amount).times(size));
        });
        return new Works.Job(
                Priority.valueOf(r[0].toUpperCase(Locale.ROOT)),
                r[1],
                r[2],
                r[3],
                amount,
                Map.of("size", size, "hardness", new BigDecimal(r[6])),
                new BigDecimal(r[7]),
                ThreePoint.of(r[8], r[9], r[10]),
                new BigDecimal(r[11]),
                uses,
                r[1].equals("one-step") || r[1].equals("compound"));
    }

    private static Ledger ledger(String file, String grade) {
        return works(file).ledger(library(), Shops.poundRates(), JobTerms.at(grade, Confidence.TRIAL_DONE));
    }

    private static Quote quote(String file, String grade, On on, String discount, String cap) {
        Library library = library();
        JobTerms terms = new JobTerms(grade, 1, new BigDecimal(discount), Confidence.TRIAL_DONE);
        Works works = works(file);
        SiteTerms site = Shops.pounds(on);
        Setting setting = new Setting(
                library, new Shape("any", "Any", BigDecimal.ONE, List.of()), Survey.NOTHING, List.of(), MONDAY);
        return (Quote) Quoting.of(
                setting,
                works.plan(),
                new Proof(List.of(), List.of(), Map.of()),
                works.ledger(library, site.rates(), terms),
                site,
                Optional.of(new BigDecimal(cap)),
                MONDAY);
    }

    private static BigDecimal pence(BigDecimal exact) {
        return exact.setScale(2, RoundingMode.HALF_UP);
    }

    private static Money pounds(String amount) {
        return Money.of(CurrencyUnit.GBP, new BigDecimal(amount));
    }

    @Test
    void aDeliveryVanCostsWhatTheSchemeSays() {
        Ledger ledger = ledger("delivery-van.csv", "valeting");

        assertThat(ledger.total(Column.MINUTES, Priority.MUST))
                .isCloseTo(new BigDecimal("112.2083333333"), within(new BigDecimal("1e-9")));
        assertThat(pence(ledger.totalUpTo(LineKind.LABOUR, Priority.MUST))).isEqualTo("74.81");
        assertThat(pence(ledger.totalUpTo(LineKind.MATERIAL_COST, Priority.MUST)))
                .isEqualTo("6.53");
        assertThat(pence(ledger.total(Column.PRICE, Priority.MUST))).isEqualTo("82.97");
        assertThat(pence(ledger.total(Column.PRICE, Priority.MUST).multiply(new BigDecimal("1.2"))))
                .isEqualTo("99.57");
        assertThat(pence(ledger.total(Column.MINUTES, Priority.COULD))).isEqualTo("57.52");
        assertThat(pence(ledger.total(Column.PRICE, Priority.COULD))).isEqualTo("46.34");
    }

    /** Rounded once, with the tax taken out of it: 99.57; with the tax on the rounded net a penny less. */
    @Test
    void theVansPennyHangsOnTheTaxRule() {
        Part gross = quote("delivery-van.csv", "valeting", On.GROSS, "0", "100")
                .parts()
                .get(0);
        Part total = quote("delivery-van.csv", "valeting", On.TOTAL, "0", "100")
                .parts()
                .get(0);

        assertThat(gross.alone().net()).isEqualTo(pounds("82.97"));
        assertThat(gross.alone().tax()).isEqualTo(pounds("16.60"));
        assertThat(gross.alone().gross()).isEqualTo(pounds("99.57"));
        assertThat(total.alone().net()).isEqualTo(pounds("82.97"));
        assertThat(total.alone().tax()).isEqualTo(pounds("16.59"));
        assertThat(total.alone().gross()).isEqualTo(pounds("99.56"));
    }

    @ParameterizedTest
    @CsvSource({
        "MUST, 674, 592.25, 710.70, 710.70",
        "SHOULD, 93, 72.31, 86.77, 797.47",
        "COULD, 225, 194.21, 233.06, 1030.53"
    })
    void theEstateCostsWhatTheSchemeSays(Priority priority, int minutes, String net, String gross, String grossUpTo) {
        Quote quote = quote("estate-with-a-cap.csv", "detailing", On.GROSS, "0", "850");
        Part part = quote.part(priority).orElseThrow();

        assertThat(part.minutes().setScale(0, RoundingMode.HALF_UP)).isEqualByComparingTo(BigDecimal.valueOf(minutes));
        assertThat(pence(part.alone().exactNet())).isEqualTo(net);
        assertThat(part.alone().gross()).isEqualTo(pounds(gross));
        assertThat(part.upTo().low().gross()).isEqualTo(pounds(grossUpTo));
    }

    @Test
    void theEstatesMustAndShouldFitTheCapWithContingencyOnLabour() {
        Quote quote = quote("estate-with-a-cap.csv", "detailing", On.GROSS, "0", "850");
        Part should = quote.part(Priority.SHOULD).orElseThrow();

        assertThat(should.upTo().high().gross()).isEqualTo(pounds("832.00"));
        assertThat(should.capHigh().orElseThrow().fits()).isTrue();
        assertThat(should.cap().orElseThrow().spare()).isEqualTo(pounds("52.53"));
        assertThat(quote.cap().orElseThrow().fits()).isFalse();
        assertThat(quote.cap().orElseThrow().over()).isEqualTo(pounds("180.53"));
    }

    @Test
    void taxOnTheRoundedNetGivesTheEstateAnotherPenny() {
        Quote quote = quote("estate-with-a-cap.csv", "detailing", On.TOTAL, "0", "850");

        assertThat(quote.parts())
                .extracting(p -> p.alone().gross())
                .containsExactly(pounds("710.70"), pounds("86.77"), pounds("233.05"));
        assertThat(quote.price().gross()).isEqualTo(pounds("1030.54"));
    }
}
