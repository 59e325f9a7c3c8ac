package baywright.chance;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** What a simulation draws, and from which streams. Read by all threads, changed by none. */
final class Draws {

    private static final long FNV_START = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    /** A figure with a distribution. */
    static final class Figure {
        final String name;
        final long stream;
        final double least;
        final double range;
        final QuantileCurve curve;
        final double own;
        final int[] drivers;
        final double[] loadings;

        private Figure(
                String name, String stream, BetaPert pert, Loadings shared, List<String> drivers, QuantileCurve curve) {
            this.name = name;
            this.stream = hash(stream + name);
            least = pert.least();
            range = pert.most() - pert.least();
            this.curve = curve;
            own = shared.own();
            List<String> names = List.copyOf(shared.on().keySet());
            this.drivers = names.stream().mapToInt(drivers::indexOf).toArray();
            loadings = names.stream()
                    .mapToDouble(driver -> shared.on().get(driver))
                    .toArray();
        }

        boolean constant() {
            return range == 0;
        }
    }

    final CompiledNetwork network;
    final List<Figure> activities = new ArrayList<>();
    final List<Figure> charges = new ArrayList<>();
    final double[] costPerMinute;
    final double[] reworkChance;
    final double[] reworkShare;
    final long[] reworkStreams;
    final int[][] windows;
    final double[] windowMost;
    final double fixed;

    /** Length and cost with everything at its mean: sums of products are taken about them, so that no digits are lost. */
    final double aboutFinish;

    final double aboutCost;

    private final List<String> drivers;
    private final long[] driverStreams;
    private final long seed;

    Draws(Simulation simulation, long seed) {
        this.seed = seed;
        Network of = simulation.network();
        network = new CompiledNetwork(of);
        SortedSet<String> names = new TreeSet<>();
        of.activities().forEach(a -> names.addAll(a.loadings().on().keySet()));
        simulation.charges().forEach(c -> names.addAll(c.loadings().on().keySet()));
        drivers = List.copyOf(names);
        driverStreams = drivers.stream().mapToLong(d -> hash("driver " + d)).toArray();
        Map<Double, QuantileCurve> curves = new HashMap<>();
        for (Activity activity : of.activities()) {
            activities.add(
                    figure(activity.id(), "activity ", new BetaPert(activity.minutes()), activity.loadings(), curves));
        }
        for (Charge charge : simulation.charges()) {
            charges.add(figure(charge.id(), "charge ", new BetaPert(charge.amount()), charge.loadings(), curves));
        }
        costPerMinute =
                of.activities().stream().mapToDouble(Activity::costPerMinute).toArray();
        reworkChance =
                of.activities().stream().mapToDouble(a -> a.rework().chance()).toArray();
        reworkShare =
                of.activities().stream().mapToDouble(a -> a.rework().share()).toArray();
        reworkStreams = of.activities().stream()
                .mapToLong(a -> hash("rework " + a.id()))
                .toArray();
        Map<String, Integer> places = of.places();
        windows = of.windows().stream()
                .map(w -> new int[] {places.get(w.from()), places.get(w.to())})
                .toArray(int[][]::new);
        windowMost = of.windows().stream().mapToDouble(Window::most).toArray();
        fixed = simulation.fixed();
        double[] means = new double[activities.size()];
        double cost = fixed;
        for (int i = 0; i < means.length; i++) {
            means[i] = of.activities().get(i).minutes().mean().doubleValue() * (1 + reworkChance[i] * reworkShare[i]);
            cost += means[i] * costPerMinute[i];
        }
        for (Charge charge : simulation.charges()) {
            cost += charge.amount().mean().doubleValue();
        }
        aboutFinish = CriticalPath.of(of, means).length();
        aboutCost = cost;
    }

    private Figure figure(
            String name, String stream, BetaPert pert, Loadings shared, Map<Double, QuantileCurve> curves) {
        QuantileCurve curve =
                curves.computeIfAbsent(pert.alpha(), alpha -> QuantileCurve.of(alpha, 2 + BetaPert.WEIGHT - alpha));
        return new Figure(name, stream, pert, shared, drivers, curve);
    }

    List<String> driverNames() {
        return drivers;
    }

    /** Whether an activity may be done again, and that takes time. */
    boolean reworks(int activity) {
        return reworkChance[activity] > 0 && reworkShare[activity] > 0;
    }

    int sharedDrivers() {
        return drivers.size();
    }

    /** Shared drivers, the activities' own scores, whether they are done again, the charges' own scores. */
    int sources() {
        return drivers.size() + 2 * activities.size() + charges.size();
    }

    /** Fills with standard normal scores of one stream in one block. */
    void scores(long stream, int block, double[] scores, int runs) {
        ZigguratSampler.NormalizedGaussian gauss = ZigguratSampler.NormalizedGaussian.of(source(stream, block));
        for (int r = 0; r < runs; r++) {
            scores[r] = gauss.sample();
        }
    }

    void driverScores(int driver, int block, double[] scores, int runs) {
        scores(driverStreams[driver], block, scores, runs);
    }

    /** Random bits of one stream in one block. */
    UniformRandomProvider source(long stream, int block) {
        SplitMix64 mixed = new SplitMix64(new SplitMix64(seed ^ stream).nextLong() + GOLDEN * block);
        return new XoShiRo256PlusPlus(
                new long[] {mixed.nextLong(), mixed.nextLong(), mixed.nextLong(), mixed.nextLong()});
    }

    /** Hash of a name: FNV-1a, 64 bits (Fowler, Noll, Vo). */
    private static long hash(String name) {
        long hash = FNV_START;
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return hash;
    }

    /** What each source does to finish and cost. */
    List<Outcome.Driver> drivers(Tally tally, Sample finish, Sample cost) {
        List<Outcome.Driver> all = new ArrayList<>();
        for (int d = 0; d < drivers.size(); d++) {
            all.add(new Outcome.Driver(
                    Outcome.Kind.SHARED,
                    drivers.get(d),
                    tally.share(d, Tally.FINISH, finish, aboutFinish),
                    tally.share(d, Tally.COST, cost, aboutCost)));
        }
        for (int i = 0; i < activities.size(); i++) {
            int own = ownSource(i);
            int again = reworkSource(i);
            all.add(new Outcome.Driver(
                    Outcome.Kind.ACTIVITY,
                    activities.get(i).name,
                    tally.share(own, Tally.FINISH, finish, aboutFinish)
                            + tally.share(again, Tally.FINISH, finish, aboutFinish),
                    tally.share(own, Tally.COST, cost, aboutCost) + tally.share(again, Tally.COST, cost, aboutCost)));
        }
        for (int c = 0; c < charges.size(); c++) {
            all.add(new Outcome.Driver(
                    Outcome.Kind.CHARGE,
                    charges.get(c).name,
                    tally.share(chargeSource(c), Tally.FINISH, finish, aboutFinish),
                    tally.share(chargeSource(c), Tally.COST, cost, aboutCost)));
        }
        return all;
    }

    int ownSource(int activity) {
        return drivers.size() + activity;
    }

    int reworkSource(int activity) {
        return drivers.size() + activities.size() + activity;
    }

    int chargeSource(int charge) {
        return drivers.size() + 2 * activities.size() + charge;
    }
}
