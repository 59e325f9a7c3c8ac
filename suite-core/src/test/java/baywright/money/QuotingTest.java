package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import baywright.library.Library;
import baywright.money.TaxRule.On;
import baywright.money.Works.Job;
import baywright.plan.Finding;
import baywright.plan.Proof;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step.Priority;
import baywright.quantity.Quantity;
import baywright.quantity.Unit;
import baywright.script.Place;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class QuotingTest {

    private static final LocalDateTime AT = LocalDateTime.of(2026, 11, 25, 9, 30);
    private static final Library LIBRARY =
            Works.library(Works.item("shampoo", Quantity.of(5000, Unit.MILLILITRE), "29", false));
    private static final Job WASH = Job.of(Priority.MUST, "wash", "60").using("shampoo", "1000", Unit.MILLILITRE);
    private static final Proof SOUND = new Proof(List.of(), List.of(), Map.of());

    private static Money pounds(String amount) {
        return Money.of(CurrencyUnit.GBP, new BigDecimal(amount));
    }

    private static Setting setting(Survey survey) {
        return new Setting(LIBRARY, new Shape("saloon", "Saloon", BigDecimal.ONE, List.of()), survey, List.of(), AT);
    }

    private static Offer offer(Proof proof, SiteTerms site, JobTerms terms, Optional<BigDecimal> cap, Job... jobs) {
        Works works = Works.of(jobs);
        return Quoting.of(
                setting(Survey.NOTHING),
                works.plan(),
                proof,
                works.ledger(LIBRARY, site.rates(), terms),
                site,
                cap,
                AT);
    }

    private static Quote quote(Job... jobs) {
        return (Quote) offer(
                SOUND, Shops.pounds(On.TOTAL), JobTerms.at("detailing", Confidence.NO_TRIAL), Optional.empty(), jobs);
    }

    private static Finding finding(Severity severity) {
        return new Finding("no-zone", severity, Optional.of("s1"), List.of(), new Reason.NoZone("s1"));
    }

    @Test
    void aPlanThatDoesNotProveIsRefusedWithItsFindings() {
        Proof broken = new Proof(List.of(finding(Severity.STOP), finding(Severity.WARN)), List.of(), Map.of());

        Offer offer = offer(
                broken, Shops.pounds(On.TOTAL), JobTerms.at("detailing", Confidence.NO_TRIAL), Optional.empty(), WASH);

        assertThat(offer).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.findings()).isEqualTo(broken.findings());
            assertThat(refusal.stops()).containsExactly(finding(Severity.STOP));
        });
    }

    @Test
    void warningsDoNotRefuse() {
        Proof warned = new Proof(List.of(finding(Severity.WARN)), List.of(), Map.of());

        assertThat(offer(
                        warned,
                        Shops.pounds(On.TOTAL),
                        JobTerms.at("detailing", Confidence.NO_TRIAL),
                        Optional.empty(),
                        WASH))
                .isInstanceOf(Quote.class);
        assertThatIllegalArgumentException().isThrownBy(() -> new Refusal(warned.findings()));
    }

    /** One hour at 45, a litre of 29 per five litres with 25 %: 52.25; tax 10.45; contingency 12 % of 45 is 5.40. */
    @Test
    void namesPriceRangeDepositAndValidity() {
        Quote quote = quote(WASH);

        assertThat(quote.price().net()).isEqualTo(pounds("52.25"));
        assertThat(quote.price().tax()).isEqualTo(pounds("10.45"));
        assertThat(quote.price().gross()).isEqualTo(pounds("62.70"));
        assertThat(quote.range().low()).isEqualTo(quote.price());
        assertThat(quote.range().high().gross()).isEqualTo(pounds("69.18"));
        assertThat(quote.deposit()).isEqualTo(pounds("15.68"));
        assertThat(quote.validUntil()).isEqualTo(LocalDate.of(2026, 12, 25));
    }

    @Test
    void contingencyFollowsHowWellThePaintIsKnown() {
        assertThat(Shops.poundRates().contingency().percent(Confidence.TRIAL_DONE))
                .isEqualByComparingTo("5");
        assertThat(Shops.poundRates().contingency().percent(Confidence.NO_TRIAL))
                .isEqualByComparingTo("12");
        assertThat(Shops.poundRates().contingency().percent(Confidence.RISKY)).isEqualByComparingTo("20");
    }

    /** Cost of the hour: 27.8857 pay, 12 overhead, 0.8366 rework, 5 waste, 5.80 material: 51.5223. */
    @Test
    void theFloorIsTheWholeCostRoundedUp() {
        Margin margin = quote(WASH).margin();

        assertThat(margin.floor()).isEqualTo(pounds("51.53"));
        assertThat(margin.loss()).isFalse();
        assertThat(margin.afterDirect().orElseThrow().doubleValue()).isBetween(51.54, 51.55);
        assertThat(margin.afterAll().orElseThrow().doubleValue()).isBetween(1.39, 1.40);
        assertThat(margin.ownerSigns()).as("1.4 % is below 12 %").isTrue();
    }

    @Test
    void aDiscountBelowTheFloorIsALoss() {
        JobTerms cheap = new JobTerms("detailing", 1, new BigDecimal("20"), Confidence.TRIAL_DONE);

        Quote quote = (Quote) offer(SOUND, Shops.pounds(On.TOTAL), cheap, Optional.empty(), WASH);

        assertThat(quote.margin().loss()).isTrue();
        assertThat(quote.margin().ownerSigns()).isTrue();
    }

    @Test
    void goodMarginsNeedNoSignature() {
        Rates cheapLabour = Shops.rates("10", "0", "100", "5", "0", "0", "0", "25");
        SiteTerms site = new SiteTerms(cheapLabour, Shops.vat(On.TOTAL), 30, BigDecimal.ZERO);

        Quote quote =
                (Quote) offer(SOUND, site, JobTerms.at("detailing", Confidence.TRIAL_DONE), Optional.empty(), WASH);

        assertThat(quote.margin().ownerSigns()).isFalse();
        assertThat(quote.deposit()).isEqualTo(pounds("0.00"));
    }

    @Test
    void aPriceOnTheCapFitsAndAPennyMoreIsOver() {
        JobTerms terms = JobTerms.at("detailing", Confidence.NO_TRIAL);
        Quote onIt = (Quote) offer(SOUND, Shops.pounds(On.TOTAL), terms, Optional.of(new BigDecimal("62.70")), WASH);
        Quote over = (Quote) offer(SOUND, Shops.pounds(On.TOTAL), terms, Optional.of(new BigDecimal("62.69")), WASH);

        assertThat(onIt.cap().orElseThrow().fits()).isTrue();
        assertThat(onIt.cap().orElseThrow().spare()).isEqualTo(pounds("0.00"));
        assertThat(over.cap().orElseThrow().fits()).isFalse();
        assertThat(over.cap().orElseThrow().over()).isEqualTo(pounds("0.01"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> offer(SOUND, Shops.pounds(On.TOTAL), terms, Optional.of(new BigDecimal("-1")), WASH))
                .withMessage("cap must not be negative, got -1");
    }

    @Test
    void anEmptyPlanCostsNothing() {
        Quote quote = quote();

        assertThat(quote.price().gross()).isEqualTo(pounds("0.00"));
        assertThat(quote.margin().afterAll()).isEmpty();
        assertThat(quote.parts()).isEmpty();
        assertThat(quote.positions()).isEmpty();
    }

    @Test
    void pinsLibraryInputsRatesAndPackPrices() {
        Quote quote = quote(WASH);

        assertThat(quote.proof().library()).isEqualTo("library-hash");
        assertThat(quote.proof().at()).isEqualTo(AT);
        assertThat(quote.proof().inputs())
                .matches("[0-9a-f]{64}")
                .isEqualTo(quote(WASH).proof().inputs());
        assertThat(quote.terms().rates().chargeFor("detailing")).isEqualByComparingTo("45");
        assertThat(quote.ledger().purchases()).singleElement().satisfies(p -> {
            assertThat(p.item()).isEqualTo("shampoo");
            assertThat(p.price()).isEqualByComparingTo("29");
        });
    }

    @Test
    void theInputsHashMovesWithTheInputs() {
        String before = quote(WASH).proof().inputs();

        assertThat(quote(WASH, WASH).proof().inputs()).isNotEqualTo(before);
        assertThat(quote(Job.of(Priority.SHOULD, "wash", "60")).proof().inputs())
                .isNotEqualTo(before);
    }

    @Test
    void aFingerprintKnowsValuesAndForgetsPlacesOrderOfMapsAndZeros() {
        Place here = new Place("job.json", 3, 1);
        Place there = new Place("job.json", 9, 4);

        assertThat(Fingerprint.of(Value.of(new BigDecimal("2.50"), here)))
                .isEqualTo(Fingerprint.of(Value.of(new BigDecimal("2.5"), there)));
        assertThat(Fingerprint.of(Map.of("a", 1, "b", 2))).isEqualTo(Fingerprint.of(Map.of("b", 2, "a", 1)));
        assertThat(Fingerprint.of("ab", "c")).isNotEqualTo(Fingerprint.of("a", "bc"));
        assertThat(Fingerprint.of(List.of("a"), List.of())).isNotEqualTo(Fingerprint.of(List.of(), List.of("a")));
        assertThat(Fingerprint.of(Optional.of("a"))).isNotEqualTo(Fingerprint.of(Optional.empty()));
        assertThat(Fingerprint.of(new BigDecimal("2"))).isNotEqualTo(Fingerprint.of("2"));
    }

    @Test
    void subtotalsAddUpByPriority() {
        Quote quote = quote(WASH, Job.of(Priority.SHOULD, "wheels", "30"), Job.of(Priority.COULD, "lamps", "20"));

        assertThat(quote.parts())
                .extracting(Part::priority)
                .containsExactly(Priority.MUST, Priority.SHOULD, Priority.COULD);
        assertThat(quote.part(Priority.SHOULD).orElseThrow().alone().net()).isEqualTo(pounds("22.50"));
        assertThat(quote.part(Priority.SHOULD).orElseThrow().upTo().low().net()).isEqualTo(pounds("74.75"));
        assertThat(quote.part(Priority.COULD).orElseThrow().upTo().low()).isEqualTo(quote.price());
    }

    @Property(tries = 200)
    void positionsAddUpToTheNet(
            @ForAll On on, @ForAll @Size(min = 1, max = 9) List<@IntRange(max = 500) Integer> minutes) {
        Job[] jobs = minutes.stream()
                .map(m -> Job.of(Priority.MUST, "wash", m.toString()).using("shampoo", "7", Unit.MILLILITRE))
                .toArray(Job[]::new);

        Quote quote = (Quote)
                offer(SOUND, Shops.pounds(on), JobTerms.at("detailing", Confidence.NO_TRIAL), Optional.empty(), jobs);

        assertThat(quote.positions().stream().map(Position::net).reduce(pounds("0"), Money::plus))
                .isEqualTo(quote.price().net());
        assertThat(quote.range().high().gross())
                .isGreaterThanOrEqualTo(quote.range().low().gross());
    }
}
