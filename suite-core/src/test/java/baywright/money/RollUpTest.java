package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.library.Item;
import baywright.library.Library;
import baywright.library.StageTerms;
import baywright.money.LineKind.Column;
import baywright.money.Works.Job;
import baywright.plan.PlanWork;
import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class RollUpTest {

    private static final Item SHAMPOO = Works.item("shampoo", Quantity.of(5000, Unit.MILLILITRE), "29", false);
    private static final Item COATING = Works.item("coating", Quantity.of(50, Unit.MILLILITRE), "60", true);
    private static final Library LIBRARY = Works.library(SHAMPOO, COATING);
    private static final JobTerms DETAILING = JobTerms.at("detailing", Confidence.NO_TRIAL);
    private static final BigDecimal TINY = new BigDecimal("1e-20");

    private static BigDecimal d(String text) {
        return new BigDecimal(text);
    }

    private static Ledger ledger(Job... jobs) {
        return Works.of(jobs).ledger(LIBRARY, Shops.poundRates(), DETAILING);
    }

    /** Managerial-accounting exercise: materials 800, labour 1 200, 100 h at an overhead of 500 000 / 25 000 h. */
    @Test
    void addsUpTheCostOfAJob() {
        Library metal = Works.library(Works.item("metal", Quantity.of(1, Unit.EACH), "800", false));
        Rates rates = Shops.bareRates(
                "12", OverheadRate.of(d("500000"), d("25000")).perUnit().toPlainString());

        Ledger ledger = Works.of(Job.of(Priority.MUST, "machining", "6000").using("metal", "1", Unit.EACH))
                .ledger(metal, rates, DETAILING);

        assertThat(ledger.total(LineKind.MATERIAL_COST)).isEqualByComparingTo("800");
        assertThat(ledger.total(LineKind.LABOUR_COST)).isEqualByComparingTo("1200");
        assertThat(ledger.total(LineKind.OVERHEAD)).isEqualByComparingTo("2000");
        assertThat(ledger.cost()).isEqualByComparingTo("4000");
    }

    @Test
    void everyCostOfAnHourHasItsLine() {
        Ledger ledger = ledger(Job.of(Priority.MUST, "one-step", "60").withMachine());

        assertThat(ledger.total(LineKind.LABOUR_COST)).isEqualByComparingTo("19.52");
        assertThat(ledger.total(LineKind.LABOUR_COST).add(ledger.total(LineKind.IDLE_COST)))
                .isCloseTo(d("27.885714285714"), within(d("1e-11")));
        assertThat(ledger.total(LineKind.OVERHEAD)).isEqualByComparingTo("12");
        assertThat(ledger.total(LineKind.MACHINE)).isEqualByComparingTo("1.5");
        assertThat(ledger.total(LineKind.WASTE)).isEqualByComparingTo("5");
        assertThat(ledger.total(LineKind.REWORK)).isCloseTo(d("0.836571428571"), within(d("1e-11")));
        assertThat(ledger.net()).isEqualByComparingTo("45");
    }

    @Test
    void aMachineCostsNothingWhereNoneRunsAndNothingWhileBeingSetUp() {
        assertThat(ledger(Job.of(Priority.MUST, "claying", "60")).lines(LineKind.MACHINE))
                .isEmpty();
        assertThat(ledger(Job.of(Priority.MUST, "one-step", "60").setUp("8").withMachine())
                        .total(LineKind.MACHINE))
                .isEqualByComparingTo("1.5");
    }

    @Test
    void standingTimeIsToldAndCostsNothing() {
        Ledger ledger = ledger(Job.of(Priority.MUST, "iron-removal", "0"), Job.of(Priority.MUST, "rinse", "0"));

        assertThat(ledger.total(Column.WAITING)).isEqualByComparingTo("10");
        assertThat(ledger.minutes()).isEqualByComparingTo("0");
        assertThat(ledger.net()).isEqualByComparingTo("0");
        assertThat(ledger.cost()).as("waste only").isEqualByComparingTo("5");
    }

    @Test
    void chargesPartOfAPackAndListsWholeOnes() {
        Ledger ledger = ledger(Job.of(Priority.MUST, "wash", "30").using("shampoo", "1250", Unit.MILLILITRE));

        assertThat(ledger.total(LineKind.MATERIAL_COST)).isEqualByComparingTo("7.25");
        assertThat(ledger.total(LineKind.MATERIAL)).isEqualByComparingTo("9.0625");
        Purchase shampoo = ledger.purchases().get(0);
        assertThat(shampoo.wholePacks()).isEqualTo(1);
        assertThat(shampoo.charged()).isEqualByComparingTo("0.25");
        assertThat(shampoo.amount().inBase()).isEqualByComparingTo("1250");
    }

    @Test
    void chargesWholePacksOfWhatSpoils() {
        Ledger ledger = ledger(
                Job.of(Priority.MUST, "first-layer", "30").using("coating", "40", Unit.MILLILITRE),
                Job.of(Priority.MUST, "second-layer", "30").using("coating", "40", Unit.MILLILITRE));

        assertThat(ledger.total(LineKind.MATERIAL_COST)).isEqualByComparingTo("120");
        assertThat(ledger.total(LineKind.MATERIAL)).isEqualByComparingTo("150");
        assertThat(ledger.purchases().get(0).wholePacks()).isEqualTo(2);
    }

    /** The rest of a bottle that was opened anyway makes an extra layer cheaper; together they are whole bottles. */
    @Test
    void aLowerPriorityUsesUpTheRestOfAnOpenedPack() {
        Ledger ledger = ledger(
                Job.of(Priority.MUST, "first-layer", "0").using("coating", "30", Unit.MILLILITRE),
                Job.of(Priority.COULD, "second-layer", "0").using("coating", "15", Unit.MILLILITRE));

        assertThat(ledger.total(Column.PRICE, Priority.MUST)).isEqualByComparingTo("75");
        assertThat(ledger.total(Column.PRICE, Priority.COULD)).isEqualByComparingTo("0");
        assertThat(ledger.net()).isEqualByComparingTo("75");
    }

    @Test
    void aPackUsedToTheLastDropOpensNoSecond() {
        Item thirds = Works.item("thirds", Quantity.of(3, Unit.MILLILITRE), "10", true);
        Job third = Job.of(Priority.MUST, "dab", "0").using("thirds", "1", Unit.MILLILITRE);

        assertThat(Works.of(third, third, third)
                        .ledger(Works.library(thirds), Shops.poundRates(), DETAILING)
                        .purchases()
                        .get(0)
                        .wholePacks())
                .isEqualTo(1);
    }

    @Test
    void convertsMassToVolumeOnlyWithADensity() {
        Item paste = Works.item("paste", Quantity.of(200, Unit.GRAM), "40", false);
        Item dense = new Item(
                "dense",
                "Dense",
                Quantity.of(200, Unit.GRAM),
                d("40"),
                false,
                Optional.of(d("1.25")),
                List.of(),
                List.of(),
                List.of(),
                "");

        assertThat(Packs.fraction(dense, Quantity.of(40, Unit.MILLILITRE))).isEqualByComparingTo("0.25");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Packs.fraction(paste, Quantity.of(40, Unit.MILLILITRE)))
                .withMessage("item 'paste' comes in packs of 200 g but 40 ml is used; its density in g/ml would tell");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Packs.fraction(paste, Quantity.of(4, Unit.EACH)))
                .withMessage("item 'paste' comes in packs of 200 g but 4 each is used");
    }

    @Test
    void aFamilyIsSetUpOnceAndForItsHighestPriority() {
        Works works = Works.of(
                List.of(
                        job(Priority.COULD, "glass", "lamp", "10"),
                        job(Priority.SHOULD, "glass", "pane", "10"),
                        job(Priority.MUST, "wash", "rinse", "10")),
                Map.of("glass", d("3")));

        Ledger ledger = works.ledger(LIBRARY, Shops.poundRates(), DETAILING);

        assertThat(ledger.lines(LineKind.FAMILY_SET_UP)).singleElement().satisfies(line -> {
            assertThat(line.priority()).isEqualTo(Priority.SHOULD);
            assertThat(line.amount()).isEqualByComparingTo("3");
            assertThat(line.trail().get(0)).isInstanceOf(Origin.FamilySetUp.class);
        });
        assertThat(ledger.minutes()).isEqualByComparingTo("33");
    }

    @Test
    void sixVansTakeSixTimesAsMuchAndOneLotOfWaste() {
        Works works = Works.of(
                List.of(job(Priority.MUST, "wash", "rinse", "10").using("shampoo", "100", Unit.MILLILITRE)),
                Map.of("wash", d("10")));
        JobTerms six = new JobTerms("valeting", 6, BigDecimal.ZERO, Confidence.TRIAL_DONE);
        JobTerms one = JobTerms.at("valeting", Confidence.TRIAL_DONE);

        Ledger fleet = works.ledger(LIBRARY, Shops.poundRates(), six);
        Ledger van = works.ledger(LIBRARY, Shops.poundRates(), one);

        assertThat(fleet.minutes()).isEqualByComparingTo("120");
        assertThat(fleet.net()).isCloseTo(van.net().multiply(d("6")), within(TINY));
        assertThat(fleet.total(LineKind.WASTE)).isEqualByComparingTo("5");
    }

    @Test
    void discountIsOnLabourOnly() {
        Job wash = Job.of(Priority.MUST, "wash", "60").using("shampoo", "1000", Unit.MILLILITRE);
        JobTerms tenOff = new JobTerms("detailing", 1, BigDecimal.TEN, Confidence.TRIAL_DONE);

        Ledger ledger = Works.of(wash).ledger(LIBRARY, Shops.poundRates(), tenOff);

        assertThat(ledger.total(LineKind.DISCOUNT)).isEqualByComparingTo("-4.5");
        assertThat(ledger.labourNet()).isEqualByComparingTo("40.5");
        assertThat(ledger.total(LineKind.MATERIAL)).isEqualByComparingTo("7.25");
    }

    /** By hand: labour 45 less 10 % is 40.50, less 20 % is 32.40; material 5.80 with a quarter is 7.25, less 20 % is 5.80. */
    @Test
    void aDiscountOnEverythingIsOnWhatTheOneOnLabourLeaves() {
        Job wash = Job.of(Priority.MUST, "wash", "60").using("shampoo", "1000", Unit.MILLILITRE);
        JobTerms both = new JobTerms("detailing", 1, BigDecimal.TEN, d("20"), Confidence.TRIAL_DONE);

        Ledger ledger = Works.of(wash).ledger(LIBRARY, Shops.poundRates(), both);

        assertThat(ledger.labourNet()).isEqualByComparingTo("32.4");
        assertThat(ledger.total(LineKind.MATERIAL_DISCOUNT)).isEqualByComparingTo("-1.45");
        assertThat(ledger.net()).isEqualByComparingTo("38.2");
        assertThat(ledger.discount()).isEqualByComparingTo("-14.05");
        assertThat(ledger.lines(LineKind.MATERIAL_DISCOUNT).get(0).trail())
                .contains(new Origin.Term("price.discountPercent", d("20")));
        assertThat(ledger.cost())
                .isEqualByComparingTo(Works.of(wash)
                        .ledger(LIBRARY, Shops.poundRates(), DETAILING)
                        .cost());
    }

    @Test
    void aLineTellsScriptDriverFactorPackAndRate() {
        Ledger ledger = ledger(Job.of(Priority.MUST, "wash", "60").using("shampoo", "1000", Unit.MILLILITRE));

        assertThat(ledger.lines(LineKind.HANDS_ON).get(0).trail())
                .singleElement()
                .isInstanceOfSatisfying(
                        Origin.Work.class,
                        work -> assertThat(work.trail().place()).hasToString("wash.groovy:3:5"));
        assertThat(ledger.lines(LineKind.MATERIAL).get(0).trail())
                .contains(
                        new Origin.Pack("shampoo", Quantity.of(5000, Unit.MILLILITRE), d("29")),
                        new Origin.Term("rates.materialMarkupPercent", d("25")));
        assertThat(ledger.lines(LineKind.LABOUR).get(0).trail())
                .contains(new Origin.Term("rates.charge.detailing", d("45")));
    }

    @Test
    void saysWhichGradeOrItemIsMissing() {
        Job wash = Job.of(Priority.MUST, "wash", "60").using("soap", "1", Unit.MILLILITRE);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ledger(wash))
                .withMessage("wash.groovy:3:5: stage 'wash' uses the item 'soap', which the price list does not have");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        Works.of(wash).ledger(LIBRARY, Shops.poundRates(), JobTerms.at("gilding", Confidence.RISKY)))
                .withMessage("no rate is called 'gilding'; the shop has coating, detailing, valeting");
    }

    private static Job job(Priority priority, String family, String stage, String minutes) {
        Job plain = Job.of(priority, stage, minutes);
        return new Job(
                priority,
                stage,
                family,
                plain.driver(),
                plain.amount(),
                plain.factors(),
                plain.times(),
                plain.minutes(),
                plain.setUp(),
                plain.uses(),
                false);
    }

    @Provide
    Arbitrary<Job> jobs() {
        return Combinators.combine(
                        Arbitraries.of(Priority.class),
                        Arbitraries.of("wash", "clay", "coat", "wipe"),
                        Arbitraries.integers().between(0, 600),
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.of("shampoo", "coating"),
                        Arbitraries.bigDecimals()
                                .between(BigDecimal.ZERO, d("200"))
                                .ofScale(2),
                        Arbitraries.of(true, false))
                .as((priority, stage, minutes, setUp, item, amount, machine) -> {
                    Job job = Job.of(priority, stage, minutes.toString())
                            .setUp(setUp.toString())
                            .using(item, amount.toPlainString(), Unit.MILLILITRE);
                    return machine ? job.withMachine() : job;
                });
    }

    private static final Map<String, BigDecimal> FAMILIES = Map.of("family-of-wash", d("10"), "family-of-coat", d("7"));

    private static Ledger of(List<Job> jobs) {
        return Works.of(jobs, FAMILIES).ledger(LIBRARY, Shops.poundRates(), DETAILING);
    }

    @Property(tries = 200)
    void aLedgerIsTheSumOfItsStepsAndOfWhatTheJobNeeds(@ForAll("jobs") Job first, @ForAll("jobs") Job second) {
        Ledger both = of(List.of(first, second));

        List<LedgerLine> apart = new ArrayList<>(of(List.of(first)).linesOf("s1"));
        assertThat(both.linesOf("s1")).isEqualTo(apart);
        assertThat(both.linesOf("s2"))
                .extracting(LedgerLine::amount)
                .isEqualTo(of(List.of(second)).linesOf("s1").stream()
                        .map(LedgerLine::amount)
                        .toList());
    }

    @Property(tries = 200)
    void columnsAddUpFromStepsFamiliesRestsAndWaste(@ForAll @Size(min = 1, max = 8) List<@From("jobs") Job> jobs) {
        Ledger ledger = of(jobs);
        BigDecimal stepCost = BigDecimal.ZERO;
        BigDecimal coating = BigDecimal.ZERO;
        Set<String> families = new HashSet<>();
        for (Job job : jobs) {
            Ledger alone = of(List.of(job));
            stepCost = stepCost.add(alone.linesOf("s1").stream()
                    .filter(line -> line.kind().column() == Column.COST)
                    .map(LedgerLine::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
            Quantity used = job.uses().get("coating");
            coating = used == null ? coating : coating.add(used.inBase());
            families.add(job.family());
        }
        BigDecimal packs = coating.divide(d("50"));
        BigDecimal rest = Packs.whole(packs).subtract(packs).multiply(d("60"));
        BigDecimal familyMinutes = families.stream()
                .map(f -> FAMILIES.getOrDefault(f, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal familyCost = familyMinutes
                .divide(d("60"), Rates.PRECISION)
                .multiply(Shops.poundRates()
                        .hourCost()
                        .perSoldHour()
                        .multiply(d("1.03"))
                        .add(d("12")));

        assertThat(ledger.cost()).isCloseTo(stepCost.add(rest).add(familyCost).add(d("5")), within(TINY));
    }

    @Property(tries = 200)
    void everyLineIsQuantityTimesRateAndHasATrail(@ForAll @Size(min = 1, max = 5) List<@From("jobs") Job> jobs) {
        assertThat(of(jobs).lines()).allSatisfy(line -> {
            assertThat(line.amount()).isEqualByComparingTo(line.quantity().multiply(line.rate()));
            assertThat(line.trail()).isNotEmpty();
        });
    }

    @Property(tries = 200)
    void moreMinutesNeverLowerThePriceOrTheCost(
            @ForAll("jobs") Job job, @ForAll("jobs") Job other, @ForAll @IntRange(max = 300) int more) {
        BigDecimal longer = job.minutes().mean().add(BigDecimal.valueOf(more));
        Job slow = new Job(
                job.priority(),
                job.stage(),
                job.family(),
                job.driver(),
                job.amount(),
                job.factors(),
                job.times(),
                new ThreePoint(longer, longer, longer),
                job.setUp(),
                job.uses(),
                job.machine());

        Ledger before = of(List.of(job, other));
        Ledger after = of(List.of(slow, other));

        assertThat(after.net()).isGreaterThanOrEqualTo(before.net());
        assertThat(after.cost()).isGreaterThanOrEqualTo(before.cost());
    }

    @Property(tries = 200)
    void aDearerItemNeverLowersThePrice(
            @ForAll @Size(min = 1, max = 4) List<@From("jobs") Job> jobs,
            @ForAll @BigRange(min = "0", max = "100") BigDecimal more) {
        Library dearer = Works.library(
                Works.item("shampoo", SHAMPOO.pack(), SHAMPOO.price().add(more).toPlainString(), false),
                Works.item("coating", COATING.pack(), COATING.price().add(more).toPlainString(), true));

        assertThat(Works.of(jobs, FAMILIES)
                        .ledger(dearer, Shops.poundRates(), DETAILING)
                        .net())
                .isGreaterThanOrEqualTo(of(jobs).net());
    }

    /** Exercises of managerial-accounting courses: materials 800, labour 1 200, 100 h at 500 000 / 25 000 h. */
    @Test
    void aJobCostsMaterialsLabourAndOverhead() {
        Library library = Works.library(Works.item("all", Quantity.of(1, Unit.LITRE), "800", false));
        BigDecimal overhead = OverheadRate.of(new BigDecimal("500000"), new BigDecimal("25000"))
                .perUnit();
        Ledger ledger = Works.of(Works.Job.of(Priority.MUST, "job", "6000").using("all", "1", Unit.LITRE))
                .ledger(
                        library,
                        Shops.bareRates("12", overhead.toPlainString()),
                        JobTerms.at("detailing", Confidence.TRIAL_DONE));

        assertThat(ledger.total(LineKind.MATERIAL_COST)).isEqualByComparingTo("800");
        assertThat(ledger.total(LineKind.LABOUR_COST)).isEqualByComparingTo("1200");
        assertThat(ledger.total(LineKind.OVERHEAD)).isEqualByComparingTo("2000");
        assertThat(ledger.cost()).isEqualByComparingTo("4000");
    }

    /** By hand: an hour of coating at 52 and 19 paid beside an hour of washing at the job's 45 and the shop's 16. */
    @Test
    void aSkillHasItsOwnRateAndWage() {
        Works works = Works.of(Works.Job.of(Priority.MUST, "wash", "60"), Works.Job.of(Priority.MUST, "coat", "60"));
        PlanWork skilled = new PlanWork(
                works.work().steps().stream()
                        .map(step -> step.stage().equals("coat") ? asking(step, "coating") : step)
                        .toList(),
                List.of());
        Rates plain = Shops.bareRates("16", "0");
        Rates rates = new Rates(
                plain.currency(),
                plain.charge(),
                plain.wage(),
                plain.employerPercent(),
                plain.utilisationPercent(),
                plain.overhead(),
                plain.machine(),
                plain.wastePerJob(),
                plain.reworkPercent(),
                plain.materialMarkupPercent(),
                plain.margins(),
                plain.contingency(),
                Map.of("coating", new Rates.SkillRate("coating", Optional.of(new BigDecimal("19")))));
        JobTerms terms = JobTerms.at("detailing", Confidence.TRIAL_DONE);
        Ledger ledger = RollUp.of(works.plan(), skilled, Works.library(), rates, terms);

        assertThat(ledger.lines(LineKind.LABOUR))
                .extracting(line -> line.amount().setScale(2))
                .containsExactly(new BigDecimal("45.00"), new BigDecimal("52.00"));
        assertThat(ledger.total(LineKind.LABOUR_COST)).isEqualByComparingTo("35");
        assertThat(ledger.linesOf("s2"))
                .flatExtracting(LedgerLine::trail)
                .contains(
                        new Origin.Term("rates.charge.coating", new BigDecimal("52")),
                        new Origin.Term("rates.bySkill.coating.wage", new BigDecimal("19")));
        assertThat(RollUp.of(works.plan(), skilled, Works.library(), plain, terms)
                        .net())
                .isEqualByComparingTo("90");
    }

    private static StepWork asking(StepWork step, String skill) {
        return new StepWork(
                step.step(),
                step.stage(),
                step.family(),
                step.zones(),
                step.parts(),
                step.attended(),
                step.setUps(),
                step.standing(),
                step.uses(),
                step.removals(),
                new StageTerms.Crew(1, 1, List.of(BigDecimal.ONE), skill, false, Optional.empty()));
    }

    @Test
    void aSkillsRateMustExist() {
        assertThatThrownBy(() -> new Rates(
                        Shops.poundRates().currency(),
                        Map.of("detailing", BigDecimal.TEN),
                        BigDecimal.ONE,
                        BigDecimal.ZERO,
                        BigDecimal.TEN,
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        BigDecimal.ZERO,
                        Shops.poundRates().margins(),
                        Shops.poundRates().contingency(),
                        Map.of("film", new Rates.SkillRate("filming", Optional.empty()))))
                .hasMessageContaining("rates.bySkill.film names the rate 'filming'");
    }
}
