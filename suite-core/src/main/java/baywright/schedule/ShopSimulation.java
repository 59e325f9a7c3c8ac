package baywright.schedule;

import baywright.chance.Activity;
import baywright.chance.Blocks;
import baywright.chance.Loadings;
import baywright.chance.Ranks;
import baywright.chance.Rework;
import baywright.chance.Sample;
import baywright.chance.Simulation;
import baywright.chance.TimeDraws;
import baywright.chance.Watch;
import baywright.quantity.Normal;
import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.function.IntConsumer;

/** Runs of a timetable in which work takes drawn times. */
final class ShopSimulation {

    /** Runs whose times are kept for the rank correlation: a standard error of about 0.016. */
    private static final int RANKED = 8 * Blocks.RUNS;

    /** What a time may be above a whole number of minutes by rounding. */
    private static final double NOISE = 1e-9;

    /** Sums for each source: its scores, and their products with the end. */
    private static final int SUMS = 2;

    private final List<BookedJob> jobs;
    private final ShopCalendar calendar;
    private final ShopProject shop;
    private final Timetable timetable;
    private final UncertainSteps uncertain;
    private final Simulation.Options options;
    private final FixedOrder order;
    private final TimeDraws draws;
    private final int size;

    private final int[] planned;

    /** Whose minutes are drawn, and the certain set-up that is added to them. */
    private final boolean[] drawn;

    private final int[] setUps;
    private final List<Source> sources = new ArrayList<>();
    private final double[][] finish;
    private final double[][] rankedTimes;
    private final double[][] sums;
    private final AtomicIntegerArray critical;
    private final AtomicIntegerArray missed;

    /** What moves the end of a job: a shared cause when {@code cause} is not below 0, else an activity. */
    private record Source(int job, int cause, String fact, int activity) {}

    ShopSimulation(
            List<BookedJob> jobs,
            ShopCalendar calendar,
            ShopProject shop,
            Timetable timetable,
            UncertainSteps uncertain,
            Simulation.Options options) {
        this.jobs = jobs;
        this.calendar = calendar;
        this.shop = shop;
        this.timetable = timetable;
        this.uncertain = uncertain;
        this.options = options;
        order = FixedOrder.of(shop.project(), timetable);
        size = shop.project().activities().size();
        planned = new int[size];
        drawn = new boolean[size];
        setUps = new int[size];
        Map<String, Source> facts = new HashMap<>();
        List<Activity> times = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            planned[i] = shop.project().activities().get(i).minutes();
            times.add(time(i, facts));
        }
        draws = new TimeDraws(times, options.seed());
        for (int c = 0; c < draws.shared().size(); c++) {
            Source fact = facts.get(draws.shared().get(c));
            sources.add(new Source(fact.job(), c, fact.fact(), -1));
        }
        for (int i = 0; i < size; i++) {
            if (drawn[i]) {
                sources.add(new Source(shop.part(i).job(), -1, "", i));
            }
        }
        finish = new double[jobs.size()][options.runs()];
        rankedTimes = new double[size][];
        for (int i = 0; i < size; i++) {
            rankedTimes[i] = new double[drawn[i] ? Math.min(RANKED, options.runs()) : 0];
        }
        sums = new double[Blocks.count(options.runs())][2 * SUMS * sources.size()];
        critical = new AtomicIntegerArray(jobs.size() * size);
        missed = new AtomicIntegerArray(order.limits().size());
    }

    /** Names go by job, so that a job meets the same luck alone and among others. */
    private Activity time(int i, Map<String, Source> facts) {
        ShopProject.Part part = shop.part(i);
        Optional<ShopProject.Hands> hands = shop.hands(i);
        if (hands.isEmpty()) {
            return Activity.of(i + "", ThreePoint.ZERO);
        }
        String job = jobs.get(part.job()).id();
        ThreePoint minutes = uncertain.minutes(hands.get().step());
        Rework rework = uncertain.rework(hands.get().step());
        drawn[i] = minutes.least().compareTo(minutes.most()) < 0 || rework.chance() > 0 && rework.share() > 0;
        setUps[i] = hands.get().setUp();
        Map<String, Double> on = new TreeMap<>();
        uncertain.loadings(hands.get().step()).on().forEach((fact, loading) -> {
            String name = job + "/" + fact;
            on.put(name, loading);
            facts.put(name, new Source(part.job(), 0, fact, -1));
        });
        String id = job + "/" + part.vehicle() + "/" + hands.get().step().step();
        return Activity.of(id, minutes).with(new Loadings(on)).with(rework);
    }

    ShopChance run(Watch watch) {
        Blocks.run(options, watch, Worker::new);
        List<ShopChance.JobChance> chances = new ArrayList<>();
        double[][] ranks = new double[size][];
        for (int i = 0; i < size; i++) {
            ranks[i] = drawn[i] ? Ranks.of(rankedTimes[i]) : rankedTimes[i];
        }
        for (int j = 0; j < jobs.size(); j++) {
            chances.add(job(j, ranks));
        }
        return new ShopChance(options.seed(), options.runs(), chances);
    }

    /** Does blocks of runs; one for each thread. */
    private final class Worker implements IntConsumer {
        private final TimeDraws.Rows rows = draws.rows();
        private final FixedOrder.Day day = order.new Day();
        private final int[] minutes = planned.clone();
        private final int[] hung = new int[jobs.size() * size];
        private final int[] over = new int[missed.length()];
        private final double[][] ends = new double[jobs.size()][Blocks.RUNS];

        @Override
        public void accept(int block) {
            int runs = Blocks.runsOf(block, options.runs());
            rows.draw(block, runs);
            Arrays.fill(hung, 0);
            Arrays.fill(over, 0);
            for (int r = 0; r < runs; r++) {
                run(r);
            }
            int first = block * Blocks.RUNS;
            for (int j = 0; j < ends.length; j++) {
                System.arraycopy(ends[j], 0, finish[j], first, runs);
            }
            for (int i = 0; i < size; i++) {
                int ranked = Math.min(runs, rankedTimes[i].length - first);
                if (ranked > 0) {
                    System.arraycopy(rows.minutes(i), 0, rankedTimes[i], first, ranked);
                }
            }
            add(hung, critical);
            add(over, missed);
            for (int s = 0; s < sources.size(); s++) {
                account(block, s, runs);
            }
        }

        private void run(int r) {
            for (int i = 0; i < size; i++) {
                if (drawn[i]) {
                    minutes[i] = (int) Math.ceil(rows.minutes(i)[r] - NOISE) + setUps[i];
                }
            }
            day.pass(minutes);
            for (int j = 0; j < ends.length; j++) {
                int end = shop.end(j);
                ends[j][r] = day.end(end);
                boolean[] marked = day.hungOn(end);
                for (int i = 0; i < size; i++) {
                    hung[j * size + i] += marked[i] ? 1 : 0;
                }
            }
            for (int l = 0; l < over.length; l++) {
                over[l] += day.misses(order.limits().get(l)) ? 1 : 0;
            }
        }

        private static void add(int[] counts, AtomicIntegerArray to) {
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] > 0) {
                    to.addAndGet(i, counts[i]);
                }
            }
        }

        private void account(int block, int s, int runs) {
            Source source = sources.get(s);
            if (source.cause() >= 0) {
                account(block, 2 * s, rows.shared(source.cause()), source.job(), runs);
            } else {
                rows.own(source.activity()).ifPresent(own -> account(block, 2 * s, own, source.job(), runs));
                rows.again(source.activity()).ifPresent(again -> account(block, 2 * s + 1, again, source.job(), runs));
            }
        }

        private void account(int block, int at, double[] scores, int job, int runs) {
            double about = timetable.end(shop.end(job));
            double alone = 0;
            double together = 0;
            for (int r = 0; r < runs; r++) {
                alone += scores[r];
                together += scores[r] * (ends[job][r] - about);
            }
            sums[block][SUMS * at] = alone;
            sums[block][SUMS * at + 1] = together;
        }
    }

    // ---- what came out

    private ShopChance.JobChance job(int j, double[][] ranks) {
        Sample sample = Sample.of(finish[j]);
        int end = shop.end(j);
        Optional<Integer> wanted = jobs.get(j).wanted().map(shop::minute);
        return new ShopChance.JobChance(
                jobs.get(j).id(),
                shop.time(timetable.end(end)),
                jobs.get(j).wanted(),
                sample,
                shop.origin(),
                calendar.zone(),
                wanted.map(w -> OptionalDouble.of(textbook(end, w))).orElse(OptionalDouble.empty()),
                roles(j, ranks),
                causes(j, sample),
                missed(j));
    }

    private double textbook(int end, int wanted) {
        double variance = 0;
        for (CriticalChain.Link link : CriticalChain.to(shop.project(), timetable, end)) {
            variance += shop.hands(link.activity())
                    .map(hands -> uncertain.minutes(hands.step()).variance())
                    .orElse(BigDecimal.ZERO)
                    .doubleValue();
        }
        int planned = timetable.end(end);
        if (variance == 0) {
            return planned <= wanted ? 1 : 0;
        }
        double room = shop.open().openBefore(Math.max(0, wanted))
                - (double) shop.open().openBefore(planned);
        return Normal.below(room / Math.sqrt(variance));
    }

    private List<ShopChance.Role> roles(int j, double[][] ranks) {
        double[] ends = Ranks.of(Arrays.copyOf(finish[j], Math.min(RANKED, options.runs())));
        List<ShopChance.Role> roles = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int count = critical.get(j * size + i);
            if (shop.hands(i).isPresent() && (count > 0 || drawn[i])) {
                ShopProject.Part part = shop.part(i);
                roles.add(new ShopChance.Role(
                        jobs.get(part.job()).id(),
                        part.vehicle() + 1,
                        step(i),
                        count / (double) options.runs(),
                        drawn[i] ? Ranks.correlation(ranks[i], ends) : 0));
            }
        }
        roles.sort(Comparator.comparingDouble(ShopChance.Role::criticality)
                .thenComparingDouble(ShopChance.Role::correlation)
                .reversed());
        return roles;
    }

    private String step(int i) {
        ShopProject.Part part = shop.part(i);
        return jobs.get(part.job()).plan().steps().get(part.step()).id();
    }

    private List<ShopChance.Cause> causes(int j, Sample sample) {
        List<ShopChance.Cause> causes = new ArrayList<>();
        for (int s = 0; s < sources.size(); s++) {
            Source source = sources.get(s);
            if (source.job() == j) {
                double share = share(2 * s, sample, j) + share(2 * s + 1, sample, j);
                causes.add(
                        source.cause() >= 0
                                ? new ShopChance.Cause(source.fact(), 0, "", share)
                                : new ShopChance.Cause(
                                        "",
                                        shop.part(source.activity()).vehicle() + 1,
                                        step(source.activity()),
                                        share));
            }
        }
        causes.sort(Comparator.comparingDouble(ShopChance.Cause::share).reversed());
        return causes;
    }

    /** Squared correlation of scores, which have mean 0 and variance 1, with the end. */
    private double share(int at, Sample sample, int job) {
        if (!(sample.deviation() > 0)) {
            return 0;
        }
        double alone = 0;
        double together = 0;
        for (double[] block : sums) {
            alone += block[SUMS * at];
            together += block[SUMS * at + 1];
        }
        double runs = options.runs();
        double covariance = together / runs - alone / runs * (sample.mean() - timetable.end(shop.end(job)));
        double correlation = covariance / sample.deviation();
        return Math.min(1, correlation * correlation);
    }

    private List<ShopChance.Missed> missed(int j) {
        List<ShopChance.Missed> all = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        for (int l = 0; l < order.limits().size(); l++) {
            FixedOrder.Limit limit = order.limits().get(l);
            ShopProject.Part part = shop.part(limit.from());
            String why = shop.project().lags().get(limit.lag()).why();
            if (part.job() == j
                    && missed.get(l) > 0
                    && seen.add(List.of(limit.from(), limit.to(), why, limit.most()))) {
                all.add(new ShopChance.Missed(
                        part.vehicle() + 1,
                        step(limit.from()),
                        step(limit.to()),
                        why,
                        limit.most(),
                        missed.get(l) / (double) options.runs()));
            }
        }
        all.sort(Comparator.comparingDouble(ShopChance.Missed::chance).reversed());
        return all;
    }
}
