package baywright.site;

import baywright.safety.Booked;
import baywright.workspace.Job;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** The jobs of a shop as they stand beside each other, with what each says to the others worked out once. For any thread. */
final class Neighbours {

    /** Days from one arrival to another within which two jobs may meet in the shop. */
    private static final long DAYS = 30;

    /** A job with what it says to the jobs beside it. */
    private record Beside(Job job, Booked booked) {}

    private final List<Job> jobs;
    private final Map<String, Beside> booked;
    private final Function<Job, Booked> booking;
    private final Optional<Neighbours> like;
    private final Predicate<Job> alike;
    private volatile NavigableMap<LocalDateTime, List<Integer>> byArrival;

    private Neighbours(
            List<Job> jobs,
            Map<String, Beside> booked,
            Function<Job, Booked> booking,
            Optional<Neighbours> like,
            Predicate<Job> alike) {
        this.jobs = jobs;
        this.booked = booked;
        this.booking = booking;
        this.like = like;
        this.alike = alike;
    }

    /** @param booking works out what a job says to those beside it */
    static Neighbours of(List<Job> jobs, Function<Job, Booked> booking) {
        return new Neighbours(jobs, new ConcurrentHashMap<>(), booking, Optional.empty(), job -> false);
    }

    /** Other jobs in the same shop; of those that stay the same what they say is known. */
    Neighbours withJobs(List<Job> others) {
        return new Neighbours(others, booked, booking, like, alike);
    }

    /** The same jobs under something else that changes what they say, but for those that say the same under both. */
    Neighbours under(Function<Job, Booked> other, Predicate<Job> same) {
        return new Neighbours(jobs, new ConcurrentHashMap<>(), other, Optional.of(this), same);
    }

    List<Job> jobs() {
        return jobs;
    }

    /** The other jobs that come at about the time of this one; none beside a job that nobody knows the arrival of. */
    List<Booked> beside(Job job) {
        return near(job).stream().map(this::booked).toList();
    }

    /** The same without what they say. */
    List<Job> near(Job job) {
        if (job.arrives().isEmpty()) {
            return List.of();
        }
        LocalDateTime from = job.arrives().get().minusDays(DAYS + 1);
        LocalDateTime to = job.arrives().get().plusDays(DAYS + 1);
        List<Integer> found = new ArrayList<>();
        byArrival().subMap(from, false, to, false).values().forEach(found::addAll);
        return found.stream()
                .sorted()
                .map(jobs::get)
                .filter(other -> !other.id().equals(job.id()))
                .toList();
    }

    private NavigableMap<LocalDateTime, List<Integer>> byArrival() {
        NavigableMap<LocalDateTime, List<Integer>> known = byArrival;
        if (known == null) {
            known = new TreeMap<>();
            for (int i = 0; i < jobs.size(); i++) {
                if (jobs.get(i).arrives().isPresent()) {
                    known.computeIfAbsent(jobs.get(i).arrives().get(), at -> new ArrayList<>())
                            .add(i);
                }
            }
            byArrival = known;
        }
        return known;
    }

    /** What a job says to those beside it, where somebody asked already. */
    Optional<Booked> known(Job other) {
        return Optional.ofNullable(booked.get(other.id()))
                .filter(known -> known.job().equals(other))
                .map(Beside::booked);
    }

    /** What a job says to those beside it. */
    Booked booked(Job other) {
        if (like.isPresent() && alike.test(other)) {
            return like.get().booked(other);
        }
        return booked.compute(
                        other.id(),
                        (id, known) -> known != null && known.job().equals(other)
                                ? known
                                : new Beside(other, booking.apply(other)))
                .booked();
    }
}
