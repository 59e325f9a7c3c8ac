package baywright.schedule;

import baywright.plan.Finding;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Step;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Times the booked jobs of a shop together. Steps of one vehicle that do not need each other may change places or run
 * side by side; the order that comes out is proved, and a job whose new order does not prove keeps the order of its plan.
 */
public final class ShopScheduler {

    /**
     * How much may be spent.
     *
     * @param seed      which of equal ways are tried first
     * @param conflicts contradictions to meet at most, from 0; 0: only the timetable at once
     * @param stop      once true the best so far is given
     */
    public record Effort(long seed, long conflicts, BooleanSupplier stop) {

        /** The timetable at once. */
        public static final Effort AT_ONCE = new Effort(1, 0, () -> false);

        /** As much as can be done until a moment of {@link System#nanoTime()}. */
        public static Effort until(long nanoTime) {
            return new Effort(1, Long.MAX_VALUE, () -> System.nanoTime() - nanoTime > 0);
        }
    }

    /** Proving an order takes its time, which the search lacks. */
    private static final long BETWEEN_NANOS = 500_000_000L;

    private final List<BookedJob> jobs;
    private final ShopCalendar calendar;
    private final Effort effort;
    private final Optional<Consumer<TimedShop>> better;
    private long told;

    private ShopScheduler(
            List<BookedJob> jobs, ShopCalendar calendar, Effort effort, Optional<Consumer<TimedShop>> better) {
        this.jobs = List.copyOf(jobs);
        this.calendar = calendar;
        this.effort = effort;
        this.better = better;
    }

    /**
     * The best timetable found; empty when there is none, or none was found. Where starts that plans fix cannot all be
     * kept, no step begins before its fixed start, and those that begin later say so.
     *
     * @param jobs at least one
     */
    public static Optional<ShopTimetable> timetable(List<BookedJob> jobs, ShopCalendar calendar, Effort effort) {
        return timed(jobs, calendar, effort).map(TimedShop::timetable);
    }

    /**
     * The same, with what is needed to ask what may become of it.
     *
     * @see #timetable(List, ShopCalendar, Effort)
     */
    public static Optional<TimedShop> timed(List<BookedJob> jobs, ShopCalendar calendar, Effort effort) {
        return new ShopScheduler(jobs, calendar, effort, Optional.empty()).run();
    }

    /**
     * The same, told while it is made.
     *
     * @param better gets the timetable made at once and then better ones, twice a second at most, each with an order that
     *               proves; from the same thread, while the search waits
     * @see #timetable(List, ShopCalendar, Effort)
     */
    public static Optional<TimedShop> timed(
            List<BookedJob> jobs, ShopCalendar calendar, Effort effort, Consumer<TimedShop> better) {
        return new ShopScheduler(jobs, calendar, effort, Optional.of(better)).run();
    }

    /** Steps whose waits contradict each other, in the order of the circle; empty when they do not. */
    public static List<String> contradiction(BookedJob job, ShopCalendar calendar) {
        ShopProject shop = new ShopProject(List.of(job), calendar, Set.of(), false);
        return Network.of(shop.project()).contradiction().stream()
                .map(lag -> shop.part(lag.from()))
                .filter(part -> part.step() >= 0)
                .map(part -> job.plan().steps().get(part.step()).id())
                .distinct()
                .toList();
    }

    private Optional<TimedShop> run() {
        return run(true).or(() -> run(false));
    }

    private Optional<TimedShop> run(boolean fixed) {
        Set<Integer> inOrder = new TreeSet<>();
        while (true) {
            ShopProject shop = new ShopProject(jobs, calendar, inOrder, fixed);
            Improvement first = new Improvement(Serial.first(shop.project()), 0, false, 0);
            Set<Integer> kept = Set.copyOf(inOrder);
            if (effort.conflicts() > 0 && first.best().isPresent()) {
                tell(shop, first, kept);
            }
            Improvement found = effort.conflicts() == 0
                    ? first
                    : Improver.improve(
                            shop.project(),
                            first.best(),
                            effort.seed(),
                            effort.conflicts(),
                            effort.stop(),
                            now -> tellNowAndThen(shop, now, kept));
            if (found.best().isEmpty()) {
                return Optional.empty();
            }
            Set<Integer> unproved = unproved(shop, found.best().get(), inOrder);
            if (unproved.isEmpty()) {
                return Optional.of(
                        new TimedShop(jobs, calendar, shop, found.best().get(), told(shop, found)));
            }
            inOrder.addAll(unproved);
        }
    }

    private void tellNowAndThen(ShopProject shop, Improvement found, Set<Integer> inOrder) {
        if (System.nanoTime() - told > BETWEEN_NANOS) {
            tell(shop, found, inOrder);
        }
    }

    private void tell(ShopProject shop, Improvement found, Set<Integer> inOrder) {
        if (better.isPresent()
                && unproved(shop, found.best().orElseThrow(), inOrder).isEmpty()) {
            better.get().accept(new TimedShop(jobs, calendar, shop, found.best().get(), told(shop, found)));
            told = System.nanoTime();
        }
    }

    // ---- does the new order prove?

    private Set<Integer> unproved(ShopProject shop, Timetable timetable, Set<Integer> inOrder) {
        Set<Integer> unproved = new TreeSet<>();
        for (int j = 0; j < jobs.size(); j++) {
            if (!inOrder.contains(j)) {
                Prover prover = Prover.forSetting(jobs.get(j).setting());
                Set<String> before = stops(prover, jobs.get(j).plan());
                for (Plan plan : orders(shop, timetable, j)) {
                    if (!before.containsAll(stops(prover, plan))) {
                        unproved.add(j);
                    }
                }
            }
        }
        return unproved;
    }

    private static Set<String> stops(Prover prover, Plan plan) {
        return prover.stops(plan).stream().map(ShopScheduler::name).collect(Collectors.toSet());
    }

    private static String name(Finding finding) {
        return finding.code() + " " + finding.step().orElse("");
    }

    /** The steps of a job in the order in which they begin, for each vehicle that has an order of its own. */
    private Set<Plan> orders(ShopProject shop, Timetable timetable, int j) {
        Plan plan = jobs.get(j).plan();
        Set<Plan> orders = new HashSet<>();
        for (int v = 0; v < jobs.get(j).vehicles(); v++) {
            Map<Integer, Integer> starts = new HashMap<>();
            for (int i = 0; i < timetable.starts().size(); i++) {
                ShopProject.Part part = shop.part(i);
                if (part.kind() == ShopProject.Kind.WORK && part.job() == j && part.vehicle() == v) {
                    starts.put(part.step(), timetable.start(i));
                }
            }
            List<Step> steps = IntStream.range(0, plan.steps().size())
                    .filter(starts::containsKey)
                    .boxed()
                    .sorted(Comparator.comparing(starts::get))
                    .map(plan.steps()::get)
                    .collect(Collectors.toCollection(ArrayList::new));
            for (int s = 0; s < plan.steps().size(); s++) {
                if (!starts.containsKey(s)) {
                    steps.add(Math.min(s, steps.size()), plan.steps().get(s));
                }
            }
            orders.add(new Plan(steps));
        }
        return orders;
    }

    // ---- in words of the shop

    private ShopTimetable told(ShopProject shop, Improvement found) {
        Timetable timetable = found.best().orElseThrow();
        Map<Integer, String> critical = new HashMap<>();
        List<ShopTimetable.JobEnd> ends = new ArrayList<>();
        for (int j = 0; j < jobs.size(); j++) {
            for (CriticalChain.Link link : CriticalChain.to(shop.project(), timetable, shop.end(j))) {
                String resource = link.resource().isPresent()
                        ? shop.project()
                                .resources()
                                .get(link.resource().getAsInt())
                                .id()
                        : "";
                critical.put(link.activity(), resource);
            }
            LocalDateTime end = shop.time(timetable.end(shop.end(j)));
            Optional<LocalDateTime> wanted = jobs.get(j).wanted();
            long late = wanted.map(w -> Math.max(
                            0,
                            Duration.between(w.atZone(calendar.zone()), end.atZone(calendar.zone()))
                                    .toMinutes()))
                    .orElse(0L);
            ends.add(new ShopTimetable.JobEnd(jobs.get(j).id(), end, wanted, late));
        }
        Map<Integer, String> bays = bays(shop, timetable);
        List<ShopTimetable.Entry> entries = new ArrayList<>();
        for (int i = 0; i < timetable.starts().size(); i++) {
            ShopProject.Part part = shop.part(i);
            if (part.kind() != ShopProject.Kind.MARK) {
                BookedJob job = jobs.get(part.job());
                entries.add(new ShopTimetable.Entry(
                        job.id(),
                        part.vehicle() + 1,
                        job.plan().steps().get(part.step()).id(),
                        ShopTimetable.Doing.valueOf(part.kind().name()),
                        shop.time(timetable.start(i)),
                        shop.time(timetable.end(i)),
                        people(timetable, i),
                        bays.getOrDefault(i, ""),
                        critical.containsKey(i),
                        critical.getOrDefault(i, ""),
                        moved(job.plan().steps().get(part.step()), part, shop.time(timetable.start(i))),
                        part.kind() == ShopProject.Kind.STANDING ? List.of() : shop.spells(i, timetable.start(i))));
            }
        }
        entries.sort(Comparator.comparing(ShopTimetable.Entry::from)
                .thenComparing(ShopTimetable.Entry::job)
                .thenComparing(ShopTimetable.Entry::vehicle));
        return new ShopTimetable(entries, ends, found.proved(), found.gap());
    }

    private static Optional<LocalDateTime> moved(Step step, ShopProject.Part part, LocalDateTime start) {
        return part.kind() == ShopProject.Kind.WORK ? step.at().filter(start::isAfter) : Optional.empty();
    }

    private List<String> people(Timetable timetable, int i) {
        return timetable.taken().get(i).stream()
                .flatMap(List::stream)
                .filter(r -> r < calendar.people().size())
                .map(r -> calendar.people().get(r).id())
                .toList();
    }

    private static Map<Integer, String> bays(ShopProject shop, Timetable timetable) {
        Map<Integer, String> bays = new HashMap<>();
        for (int h = 0; h < shop.project().holds().size(); h++) {
            String bay = shop.project()
                    .resources()
                    .get(timetable.held().get(h).get(0))
                    .id()
                    .substring("bay ".length());
            shop.project().holds().get(h).activities().forEach(a -> bays.put(a, bay));
        }
        return bays;
    }
}
