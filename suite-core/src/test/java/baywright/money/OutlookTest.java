package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.chance.BetaPert;
import baywright.chance.Outcome;
import baywright.chance.Sample;
import baywright.chance.Simulation;
import baywright.library.JobFactor;
import baywright.library.Library;
import baywright.plan.PlanWork;
import baywright.plan.Proof;
import baywright.plan.Step.Priority;
import baywright.quantity.Normal;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlookTest {

    private static final ThreePoint WIDE = ThreePoint.of("30", "45", "90");
    private static final Library LIBRARY = Works.library(
            Works.item("polish", Quantity.of(1, Unit.LITRE), "40", false),
            Works.item("coating", Quantity.of("50", Unit.MILLILITRE), "60", true));
    private static final Simulation.Options OPTIONS = new Simulation.Options(7, 60_000, 2);

    private static Works.Job wide(String stage) {
        return Works.Job.of(Priority.MUST, stage, "0").taking(WIDE);
    }

    private static Outlook outlook(Works works, Library library, Rates rates, JobTerms terms) {
        return Outlook.of(
                library,
                works.plan(),
                oneAfterTheOther(works.work()),
                works.work(),
                works.ledger(library, rates, terms),
                rates,
                Uncertainty.USUAL,
                OPTIONS);
    }

    /** The clock that a proof of them would hold. */
    private static Proof oneAfterTheOther(PlanWork work) {
        java.util.ArrayList<Proof.Slot> slots = new java.util.ArrayList<>();
        BigDecimal now = BigDecimal.ZERO;
        for (var step : work.steps()) {
            BigDecimal end = now.add(step.elapsedMinutes());
            slots.add(new Proof.Slot(step.step(), now, end, BigDecimal.ZERO));
            now = end.add(step.usualStanding());
        }
        return new Proof(List.of(), slots, Map.of());
    }

    private static JobTerms vehicles(int count) {
        return new JobTerms("detailing", count, BigDecimal.ZERO, Confidence.TRIAL_DONE);
    }

    /** Without rework the averages are those of the ledger, to the accuracy of the run. */
    @Test
    void averagesAreThoseOfTheLedger() {
        Works works = Works.of(
                wide("polish").setUp("8").withMachine().using("polish", "100", Unit.MILLILITRE),
                wide("coat").using("coating", "30", Unit.MILLILITRE));
        Rates rates = Shops.rates("16", "22", "70", "12", "1.5", "5", "0", "25");
        Ledger ledger = works.ledger(LIBRARY, rates, vehicles(1));
        Outlook outlook = outlook(works, LIBRARY, rates, vehicles(1));
        assertThat(outlook.minutes().mean())
                .isEqualTo(
                        ledger.minutes().doubleValue(),
                        within(4 * outlook.minutes().errorOfMean()));
        assertThat(outlook.cost().mean())
                .isEqualTo(
                        ledger.cost().doubleValue(), within(4 * outlook.cost().errorOfMean()));
        assertThat(outlook.minutes().deviation()).isEqualTo(Math.sqrt(2) * 10.6904, within(0.15));
        assertThat(outlook.work().drivers())
                .filteredOn(d -> d.kind() == Outcome.Kind.CHARGE)
                .extracting(Outcome.Driver::name)
                .containsExactly("polish");
    }

    /** Rework happens as often as the shop reserves for it: 4 % of the time on average, half a step each time. */
    @Test
    void reworkTakesTheShopsReserveOnAverage() {
        Works works = Works.of(wide("polish"), wide("coat"));
        Rates rates = Shops.rates("16", "0", "100", "0", "0", "0", "4", "0");
        Outlook outlook = outlook(works, LIBRARY, rates, vehicles(1));
        assertThat(outlook.minutes().mean())
                .isEqualTo(104, within(4 * outlook.minutes().errorOfMean()));
        assertThat(outlook.cost().mean())
                .isEqualTo(104 / 60.0 * 16, within(4 * outlook.cost().errorOfMean()));
        Ledger ledger = works.ledger(LIBRARY, rates, vehicles(1));
        assertThat(outlook.cost().mean())
                .isEqualTo(
                        ledger.cost().doubleValue(), within(4 * outlook.cost().errorOfMean()));
    }

    /** By hand: n vehicles that share nothing have √n times the spread of one, and n times the mean. */
    @ParameterizedTest
    @CsvSource({"1", "6", "40"})
    void vehiclesAlikeEvenOut(int count) {
        Rates rates = Shops.bareRates("60", "0");
        Outlook outlook = outlook(Works.of(wide("wash")), LIBRARY, rates, vehicles(count));
        assertThat(outlook.minutes().mean())
                .isEqualTo(50.0 * count, within(4 * outlook.minutes().errorOfMean()));
        assertThat(outlook.minutes().deviation())
                .isEqualTo(10.6904 * Math.sqrt(count), within(0.02 * 10.6904 * Math.sqrt(count)));
    }

    /** By hand: n times that share half of their variance have {@code n √(0.5 + 0.5/n)} times the spread of one. */
    @Test
    void whatVehiclesShareDoesNotEvenOut() {
        Rates rates = Shops.bareRates("60", "0");
        Outlook outlook = outlook(Works.of(wide("wash")), soiled(), rates, vehicles(6));
        assertThat(outlook.minutes().deviation()).isEqualTo(6 * 10.6904 * Math.sqrt(0.5 + 0.5 / 6), within(0.8));
        assertThat(outlook.work().drivers().get(0).kind()).isEqualTo(Outcome.Kind.SHARED);
        assertThat(outlook.work().drivers().get(0).name()).isEqualTo("soiling");
    }

    /** Two steps that react to one surveyed fact are slow together; two that do not, are not. */
    @Test
    void stepsOfOneCauseAreSlowTogether() {
        Rates rates = Shops.bareRates("60", "0");
        Works both = Works.of(wide("wash"), wide("wash"));
        Works one = Works.of(wide("wash"), wide("dry"));
        double together = outlook(both, soiled(), rates, vehicles(1)).minutes().deviation();
        double apart = outlook(one, soiled(), rates, vehicles(1)).minutes().deviation();
        assertThat(apart).isEqualTo(10.6904 * Math.sqrt(2), within(0.2));
        assertThat(together).isEqualTo(10.6904 * Math.sqrt(3), within(0.25)); // 1 + 1 + 2 × 0.5
    }

    private static Library soiled() {
        JobFactor soiling = new JobFactor(
                "soiling",
                "soiling",
                Map.of("heavy", new BigDecimal("1.5")),
                List.of(),
                List.of("wash"),
                List.of(),
                "",
                false,
                new Place("factors.groovy", 1, 1));
        JobFactor size = new JobFactor(
                "size",
                "size",
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                "vehicle",
                true,
                new Place("factors.groovy", 2, 1));
        return Library.of(
                List.of(), List.of(), List.of(), List.of(), List.of(soiling, size), List.of(), List.of(), "hash");
    }

    /** Beta-PERT (300, 360, 540) as the only cost; exact by the distribution function. */
    @ParameterizedTest
    @CsvSource({"380, 46.09", "400, 30.88", "420, 18.75", "450, 6.92"})
    void chanceOfALoss(String net, double percent) {
        Works works = Works.of(Works.Job.of(Priority.MUST, "all", "0").taking(ThreePoint.of("300", "360", "540")));
        Outlook outlook = outlook(works, LIBRARY, Shops.bareRates("60", "0"), vehicles(1));
        double error = 4 * Math.sqrt(percent / 100 * (1 - percent / 100) / OPTIONS.runs());
        assertThat(outlook.lossAt(Money.parse("GBP " + net))).isEqualTo(percent / 100, within(error + 5e-5));
        assertThat(1 - new BetaPert(ThreePoint.of("300", "360", "540")).below(Double.parseDouble(net)))
                .isEqualTo(percent / 100, within(1e-4));
    }

    /** A normal cost, exact; the price for five percent is the mean and 1.6449 deviations. */
    @ParameterizedTest
    @CsvSource({"400, 340, 45, 9.12, 414.02", "500, 410, 60, 6.68, 508.69"})
    void chanceOfALossOfANormalCost(double price, double mean, double deviation, double percent, double forFive) {
        assertThat(100 * (1 - Normal.below((price - mean) / deviation))).isEqualTo(percent, within(0.01));
        assertThat(mean + deviation * Normal.quantile(0.95)).isEqualTo(forFive, within(0.005));
    }

    /** P80 of (30, 45, 90) is 59.4115, 18.8 % above the mean of 50. */
    @Test
    void contingencyCarriesTheHoursWithAConfidence() {
        Outlook outlook = outlook(Works.of(wide("polish")), LIBRARY, Shops.bareRates("60", "0"), vehicles(1));
        BigDecimal mean = new BigDecimal("50");
        assertThat(outlook.contingencyPercent(new BigDecimal("80"), mean).doubleValue())
                .isEqualTo(18.8, within(0.4));
        assertThat(outlook.contingencyPercent(new BigDecimal("50"), mean)).isEqualByComparingTo("0");
        assertThat(outlook.contingencyPercent(new BigDecimal("80"), BigDecimal.ZERO))
                .isZero();
    }

    /** The simple clock of a plan: steps in a row with the usual wait of five minutes between them. */
    @Test
    void theClockIsThatOfTheProof() {
        Outlook outlook = outlook(
                Works.of(wide("wash").setUp("3"), wide("polish"), wide("coat")),
                LIBRARY,
                Shops.bareRates("60", "0"),
                vehicles(1));
        assertThat(outlook.textbook().orElseThrow().mean()).isEqualTo(3 * 50 + 3 + 2 * 5, within(1e-3));
        Sample finish = outlook.clock().orElseThrow().finish();
        assertThat(finish.mean()).isEqualTo(163, within(4 * finish.errorOfMean()));
        assertThat(finish.deviation()).isEqualTo(Math.sqrt(3) * 10.6904, within(0.25));
    }

    @Test
    void aPlanWithoutWorkHasNoClockAndCostsWhatIsCertain() {
        Outlook outlook = outlook(Works.of(), LIBRARY, Shops.poundRates(), vehicles(1));
        assertThat(outlook.clock()).isEmpty();
        assertThat(outlook.cost().quantile(1)).isZero();
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new Uncertainty(1.5, ThreePoint.ZERO, BigDecimal.ONE))
                .hasMessageContaining("0 to 1");
        assertThatThrownBy(() -> new Uncertainty(0.5, ThreePoint.ZERO, BigDecimal.ZERO))
                .hasMessageContaining("above 0");
        BigDecimal five = BigDecimal.valueOf(5);
        assertThatThrownBy(() -> new Rates.Contingency(five, five, five, java.util.Optional.of(new BigDecimal("99.5"))))
                .hasMessageContaining("from 50 to 99");
    }
}
