package baywright.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.quantity.ThreePoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimulationTest {

    private static final int RUNS = 100_000;
    private static final ThreePoint WIDE = ThreePoint.of("30", "45", "90");

    private static Outcome run(Network network) {
        return Simulation.of(network).run(new Simulation.Options(11, RUNS, 2));
    }

    /** Four standard errors of a chance. */
    private static double errors(double chance) {
        return 4 * Math.sqrt(chance * (1 - chance) / RUNS);
    }

    /**
     * exact values of k equal beta-PERT activities side by side, by numerical integration. The critical path of the
     * means stays at the single mean whatever k is: the difference is what a timetable without simulation hides.
     */
    @ParameterizedTest
    @CsvSource({
        "8, 10, 12, 1, 10.0000, 0.7559, 0.5000, 10.6936, 11.2430",
        "8, 10, 12, 2, 10.4329, 0.6197, 0.2500, 10.9922, 11.4107",
        "8, 10, 12, 3, 10.6494, 0.5393, 0.1250, 11.1326, 11.4901",
        "8, 10, 12, 5, 10.8825, 0.4468, 0.0313, 11.2804, 11.5744",
        "30, 45, 90, 1, 50.0000, 10.6904, 0.5391, 59.4115, 69.4445",
        "30, 45, 90, 2, 56.0606, 9.7402, 0.2906, 64.6430, 72.9265",
        "30, 45, 90, 3, 59.3906, 8.9797, 0.1567, 67.2780, 74.6700",
        "30, 45, 90, 5, 63.2343, 7.9622, 0.0455, 70.1993, 76.6036"
    })
    void whereTheyMeetTheyEndLater(
            String least,
            String likely,
            String most,
            int count,
            double mean,
            double deviation,
            double withinSingle,
            double p80,
            double p95) {
        ThreePoint points = ThreePoint.of(least, likely, most);
        Network network = Networks.sideBySide(count, points, Loadings.NONE);
        Sample finish = run(network).finish();
        double single = points.mean().doubleValue();
        assertThat(finish.mean()).isEqualTo(mean, within(4 * finish.errorOfMean() + 5e-5));
        assertThat(finish.deviation()).isEqualTo(deviation, within(0.01 * deviation));
        assertThat(finish.within(single)).isEqualTo(withinSingle, within(errors(withinSingle) + 5e-5));
        assertInBand(finish, 0.80, p80);
        assertInBand(finish, 0.95, p95);
        assertThat(CriticalPath.ofMeans(network).length()).isEqualTo(single, within(1e-9));
    }

    /** Within the band of four standard errors, and half of the last digit printed. */
    private static void assertInBand(Sample sample, double share, double expected) {
        Sample.Band band = sample.band(share, 0.99994);
        assertThat(expected).isBetween(band.low() - 5e-5, band.high() + 5e-5);
    }

    /**
     * the published networks of {@link Networks} with independent beta-PERT activities, ten million runs of another
     * program. The textbook's answers are too hopeful: 0.8935 against 0.852, 0.715 against 0.690, 0.841 against 0.816.
     */
    @Test
    void publishedNetworksSimulated() {
        Sample a = run(Networks.fourteen()).finish();
        assertThat(a.mean()).isEqualTo(51.628, within(0.04));
        assertThat(a.deviation()).isEqualTo(3.170, within(0.03));
        assertThat(a.within(53)).isEqualTo(0.6664, within(0.006));
        assertThat(a.within(55)).isEqualTo(0.8517, within(0.006));
        quantiles(a, 0.06, 47.55, 51.60, 54.34, 55.77, 56.90);

        Sample b = run(Networks.eight()).finish();
        assertThat(b.mean()).isEqualTo(15.234, within(0.022));
        assertThat(b.deviation()).isEqualTo(1.712, within(0.02));
        assertThat(b.within(15)).isEqualTo(0.4769, within(errors(0.4769)));
        assertThat(b.within(16)).isEqualTo(0.6902, within(errors(0.6902)));
        quantiles(b, 0.05, 13.13, 15.10, 16.66, 17.54, 18.28);

        Sample c = run(Networks.prototype()).finish();
        assertThat(c.mean()).isEqualTo(44.328, within(0.038));
        assertThat(c.deviation()).isEqualTo(2.933, within(0.03));
        assertThat(c.within(44)).isEqualTo(0.4736, within(errors(0.4736)));
        assertThat(c.within(47)).isEqualTo(0.8162, within(errors(0.8162)));
        assertThat(c.within(50)).isEqualTo(0.9675, within(errors(0.9675)));
        quantiles(c, 0.08, 40.64, 44.20, 46.81, 48.21, 49.37);
    }

    private static void quantiles(Sample sample, double tolerance, double... expected) {
        double[] shares = {0.10, 0.50, 0.80, 0.90, 0.95};
        for (int i = 0; i < shares.length; i++) {
            assertThat(sample.quantile(shares[i])).isEqualTo(expected[i], within(tolerance));
        }
    }

    /**
     * means and variances of the largest of n normals, David, Nagaraja, Order Statistics. Holds the scores that
     * everything is drawn from to it, each from a stream of its own.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.564190, 0.681690", "3, 0.846284, 0.559467", "5, 1.162964, 0.447534", "10, 1.538753, 0.344344"})
    void largestOfSomeScores(int count, double mean, double variance) {
        Sample largest = Sample.of(largest(count, 1, 0));
        assertThat(largest.mean()).isEqualTo(mean, within(4 * Math.sqrt(variance / RUNS)));
        assertThat(largest.deviation() * largest.deviation()).isEqualTo(variance, within(0.02 * variance));
    }

    /** The mean of the largest of n uniform numbers is n/(n + 1). */
    @ParameterizedTest
    @CsvSource({"2", "5"})
    void largestOfSomeUniforms(int count) {
        double[] most = new double[RUNS];
        Draws draws = new Draws(Simulation.of(Networks.eight()), 5);
        for (int i = 0; i < count; i++) {
            var source = draws.source(draws.activities.get(i).stream, 0);
            for (int r = 0; r < RUNS; r++) {
                most[r] = Math.max(most[r], source.nextDouble());
            }
        }
        double n = count;
        double variance = n / ((n + 1) * (n + 1) * (n + 2));
        assertThat(Sample.of(most).mean()).isEqualTo(n / (n + 1), within(4 * Math.sqrt(variance / RUNS)));
    }

    /** The larger of two normals, Clark, Operations Research 9 (1961) 145. */
    @ParameterizedTest
    @CsvSource({"20, 2, 20, 2, 21.1284, 1.6513", "20, 2, 18, 3, 20.6542, 1.9265", "44, 3, 42, 2, 44.6542, 2.4116"})
    void largerOfTwoPaths(double mean1, double sd1, double mean2, double sd2, double mean, double deviation) {
        double[] one = largest(1, sd1, mean1);
        double[] both = new double[RUNS];
        double[] scores = new double[RUNS];
        Draws draws = new Draws(Simulation.of(Networks.eight()), 6);
        draws.scores(draws.activities.get(7).stream, 0, scores, RUNS);
        for (int r = 0; r < RUNS; r++) {
            both[r] = Math.max(one[r], mean2 + sd2 * scores[r]);
        }
        Sample sample = Sample.of(both);
        assertThat(sample.mean()).isEqualTo(mean, within(4 * sample.errorOfMean() + 5e-5));
        assertThat(sample.deviation()).isEqualTo(deviation, within(0.01 * deviation));
    }

    private static double[] largest(int count, double deviation, double mean) {
        double[] most = new double[RUNS];
        double[] scores = new double[RUNS];
        java.util.Arrays.fill(most, Double.NEGATIVE_INFINITY);
        Draws draws = new Draws(Simulation.of(Networks.prototype()), 5);
        for (int i = 0; i < count; i++) {
            draws.scores(draws.activities.get(i).stream, 0, scores, RUNS);
            for (int r = 0; r < RUNS; r++) {
                most[r] = Math.max(most[r], mean + deviation * scores[r]);
            }
        }
        return most;
    }

    /**
     * Two times with loadings a and b on one driver have normal scores that correlate by ab; their ranks then correlate by
     * {@code 6/π asin(ab/2)} (Kruskal, J. American Statistical Association 53 (1958) 814), whatever their distributions.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "0.7071067811865476, 0.7071067811865476", "0.9, 0.3", "0.8, -0.8", "0, 0.5"})
    void ranksCorrelateAsTheLoadingsSay(double a, double b) {
        Network network = new Network(
                List.of(
                        Activity.of("a", WIDE).with(new Loadings(Map.of("paint", a))),
                        Activity.of("b", ThreePoint.of("0", "0", "6")).with(new Loadings(Map.of("paint", b)))),
                List.of());
        Draws draws = new Draws(Simulation.of(network), 3);
        int runs = 512 * 40;
        Tally tally = new Tally(draws, runs, runs);
        Block block = new Block(draws, tally);
        for (int i = 0; i < tally.blocks(); i++) {
            block.simulate(i);
        }
        double expected = 6 / Math.PI * Math.asin(a * b / 2);
        assertThat(Ranks.correlation(Ranks.of(tally.rankedTimes[0]), Ranks.of(tally.rankedTimes[1])))
                .isEqualTo(expected, within(0.03));
        assertThat(Sample.of(tally.rankedTimes[0]).mean()).isEqualTo(50, within(0.3));
        assertThat(Sample.of(tally.rankedTimes[0]).deviation()).isEqualTo(10.6904, within(0.2));
    }

    /** Variances of independent activities in a row add up; of activities that share everything, deviations do. */
    @Test
    void whatIsSharedDoesNotEvenOut() {
        Outcome apart = run(inARow(4, Loadings.NONE));
        Outcome together = run(inARow(4, new Loadings(Map.of("paint", 1.0))));
        assertThat(apart.finish().mean()).isEqualTo(200, within(0.3));
        assertThat(together.finish().mean()).isEqualTo(200, within(0.6));
        assertThat(apart.finish().deviation()).isEqualTo(2 * 10.6904, within(0.2));
        assertThat(together.finish().deviation()).isEqualTo(4 * 10.6904, within(0.4));
        assertThat(together.finish().quantile(0.8)).isEqualTo(4 * 59.4115, within(0.6));
        assertThat(together.drivers().get(0).kind()).isEqualTo(Outcome.Kind.SHARED);
        assertThat(together.drivers().get(0).ofFinish()).isGreaterThan(0.95);
    }

    private static Network inARow(int count, Loadings loadings) {
        List<Link> links = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            links.add(Link.after("a" + (i - 1), "a" + i));
        }
        return new Network(Networks.sideBySide(count, WIDE, loadings).activities(), links);
    }

    /** In a row each activity's share of the variance is its own variance's: 4 to 1 for twice the spread. */
    @Test
    void sharesOfTheSpreadAreThoseOfTheVariances() {
        Network network = new Network(
                List.of(
                        Activity.of("large", ThreePoint.of("40", "60", "80")),
                        Activity.of("small", ThreePoint.of("20", "30", "40")),
                        Activity.of("aside", ThreePoint.of("5", "6", "7"))),
                List.of(Link.after("large", "small")));
        Outcome outcome = run(network);
        assertThat(outcome.drivers()).extracting(Outcome.Driver::name).startsWith("large", "small");
        assertThat(outcome.drivers().get(0).ofFinish()).isEqualTo(0.8, within(0.01));
        assertThat(outcome.drivers().get(1).ofFinish()).isEqualTo(0.2, within(0.01));
        assertThat(outcome.role("large").orElseThrow().criticality()).isEqualTo(1);
        assertThat(outcome.role("aside").orElseThrow().criticality()).isZero();
        assertThat(outcome.role("large").orElseThrow().correlation()).isEqualTo(0.886, within(0.03));
        assertThat(outcome.role("aside").orElseThrow().correlation()).isEqualTo(0, within(0.06));
    }

    /** Of two alike side by side each is the longer one half the time. */
    @Test
    void criticalityIsSharedByWhatIsAlike() {
        Outcome outcome = run(Networks.sideBySide(2, WIDE, Loadings.NONE));
        assertThat(outcome.roles())
                .allSatisfy(role -> assertThat(role.criticality()).isEqualTo(0.5, within(errors(0.5))));
    }

    /** By hand: a time of 10 that is spent half again one time in five has mean 11 and variance 25 × 0.16. */
    @Test
    void reworkLengthens() {
        Activity often = Activity.of("a", ThreePoint.of("10", "10", "10"))
                .with(new Rework(0.2, 0.5))
                .costing(2);
        Outcome outcome = run(new Network(List.of(often), List.of()));
        assertThat(outcome.finish().mean()).isEqualTo(11, within(0.03));
        assertThat(outcome.finish().deviation()).isEqualTo(2, within(0.02));
        assertThat(outcome.finish().within(10)).isEqualTo(0.8, within(errors(0.8)));
        assertThat(outcome.cost().mean()).isEqualTo(22, within(0.06));
        assertThat(outcome.drivers().get(0).ofCost()).isEqualTo(1, within(0.01));
    }

    /** A cost of beta-PERT (300, 360, 540); exact values by the distribution function. */
    @Test
    void costsOfCharges() {
        Simulation simulation = new Simulation(
                new Network(List.of(Activity.of("none", ThreePoint.ZERO)), List.of()),
                List.of(new Charge("all", ThreePoint.of("300", "360", "540"), Loadings.NONE)),
                0);
        Sample cost = simulation.run(new Simulation.Options(4, RUNS, 1)).cost();
        assertThat(cost.mean()).isEqualTo(380, within(4 * cost.errorOfMean()));
        for (double[] row : new double[][] {{380, 0.4609}, {400, 0.3088}, {420, 0.1875}, {450, 0.0692}}) {
            assertThat(1 - cost.within(row[0])).isEqualTo(row[1], within(errors(row[1]) + 5e-5));
        }
        assertInBand(cost, 0.95, 457.78);
    }

    @Test
    void fixedCostAndMinutesAddUp() {
        Network network = new Network(
                List.of(Activity.of("a", ThreePoint.of("10", "10", "10")).costing(0.5)), List.of());
        Charge charge = new Charge("c", ThreePoint.of("3", "3", "3"), Loadings.NONE);
        Outcome outcome = new Simulation(network, List.of(charge), 2).run(new Simulation.Options(1, 100, 1));
        assertThat(outcome.cost().mean()).isEqualTo(10, within(1e-9));
        assertThat(outcome.cost().deviation()).isZero();
    }

    /** By hand: of two alike, one after a wipe, the other is later than the window of 30 whenever it takes longer than 30. */
    @Test
    void windowsThatAreMissedAreCounted() {
        Network network = new Network(
                List.of(
                        Activity.of("wipe", ThreePoint.of("5", "5", "5")),
                        Activity.of("other", ThreePoint.of("5", "8", "14")),
                        Activity.of("coat", ThreePoint.of("9", "9", "9"))),
                List.of(Link.after("wipe", "coat"), Link.after("other", "coat")),
                List.of(new Window("wipe", "coat", 3.7657), new Window("wipe", "coat", 9)));
        Outcome outcome = run(network);
        double later = 1 - new BetaPert(ThreePoint.of("5", "8", "14")).below(8.7657);
        assertThat(outcome.missed().get(0).chance()).isEqualTo(later, within(errors(later)));
        assertThat(outcome.missed().get(1).chance()).isZero();
    }

    /** The same seed and inputs give the same answer bit by bit, whatever the number of threads. */
    @Property(tries = 8)
    void aSeedGivesTheSameOnAnyNumberOfThreads(@ForAll long seed, @ForAll @IntRange(min = 100, max = 6000) int runs) {
        Simulation simulation = Simulation.of(Networks.large(20));
        Outcome one = simulation.run(new Simulation.Options(seed, runs, 1));
        assertThat(simulation.run(new Simulation.Options(seed, runs, 2))).isEqualTo(one);
        assertThat(simulation.run(new Simulation.Options(seed, runs, 5))).isEqualTo(one);
        assertThat(simulation.run(new Simulation.Options(seed + 1, runs, 1)).finish())
                .isNotEqualTo(one.finish());
    }

    /** The draws of an activity come from its name, so the order of the table does not matter. */
    @Property(tries = 10)
    void theOrderOfTheTableChangesNothing(@ForAll long seed) {
        Network network = Networks.large(15);
        List<Activity> activities = new ArrayList<>(network.activities());
        List<Link> links = new ArrayList<>(network.links());
        Collections.shuffle(activities, new Random(seed));
        Collections.shuffle(links, new Random(seed));
        Simulation.Options options = new Simulation.Options(seed, 1000, 1);
        assertThat(Simulation.of(new Network(activities, links)).run(options).finish())
                .isEqualTo(Simulation.of(network).run(options).finish());
    }

    /** A law of every network, run by run: with the same luck, more time or another link never ends earlier. */
    @Property(tries = 15)
    void moreWorkNeverEndsEarlier(@ForAll long seed, @ForAll @IntRange(min = 0, max = 11) int which) {
        Network network = Networks.large(12);
        Simulation.Options options = new Simulation.Options(seed, 1024, 1);
        double[] before = Simulation.of(network).run(options).finish().sorted();
        List<Activity> longer = new ArrayList<>(network.activities());
        Activity old = longer.get(which);
        ThreePoint extra = ThreePoint.of("2", "3", "9");
        longer.set(
                which,
                new Activity(
                        old.id(),
                        new ThreePoint(
                                old.minutes().least().add(extra.least()),
                                old.minutes().likely().add(extra.least()),
                                old.minutes().most().add(extra.least())),
                        0,
                        old.loadings(),
                        old.rework(),
                        old.costPerMinute()));
        List<Link> links = new ArrayList<>(network.links());
        links.add(Link.after("a0", "a11", 4));
        double[] after =
                Simulation.of(new Network(longer, links)).run(options).finish().sorted();
        for (int i = 0; i < before.length; i++) {
            assertThat(after[i]).isGreaterThanOrEqualTo(before[i] - 1e-9);
        }
    }

    @Test
    void stopsWhenItIsToldToAndTellsHowFarItIs() {
        AtomicInteger told = new AtomicInteger();
        Watch impatient = new Watch() {
            @Override
            public boolean cancelled() {
                return told.get() > 1000;
            }

            @Override
            public void done(int runs, int all) {
                told.accumulateAndGet(runs, Math::max);
                assertThat(all).isEqualTo(RUNS);
            }
        };
        for (int threads = 1; threads <= 2; threads++) {
            told.set(0);
            Simulation.Options options = new Simulation.Options(1, RUNS, threads);
            assertThatThrownBy(() -> Simulation.of(Networks.eight()).run(options, impatient))
                    .isInstanceOf(CancellationException.class);
            assertThat(told.get()).isBetween(1001, 4000);
        }
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> new Simulation.Options(1, 99, 1)).hasMessageContaining("100 to 10000000");
        assertThatThrownBy(() -> new Simulation.Options(1, 100, 0)).hasMessageContaining("a thread");
        assertThatThrownBy(() -> new Loadings(Map.of("a", 0.8, "b", 0.7))).hasMessageContaining("1 at most");
        assertThatThrownBy(() -> new Rework(1.2, 0)).hasMessageContaining("from 0 to 1");
        assertThatThrownBy(() -> new Window("a", "b", -1)).hasMessageContaining("not be negative");
        assertThatThrownBy(() -> Activity.of("a", WIDE).costing(-1)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> Activity.of("a", WIDE).notBefore(-1)).hasMessageContaining("earlier");
        assertThatThrownBy(() -> new Link("a", "b", Link.Kind.START_TO_START, Double.NaN))
                .hasMessageContaining("must be a number");
        Charge charge = new Charge("c", WIDE, Loadings.NONE);
        assertThatThrownBy(() -> new Simulation(Networks.eight(), List.of(charge, charge), 0))
                .hasMessageContaining("same id");
    }
}
