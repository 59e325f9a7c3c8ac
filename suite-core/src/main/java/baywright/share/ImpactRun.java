package baywright.share;

import baywright.chance.Watch;
import baywright.library.Library;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** Works out what a library would make of jobs: first which may notice it, then those, on all cores. */
final class ImpactRun {

    /** What becomes of a job, apart from its name; empty when it comes to the same. */
    private record Moved(ImpactFigures before, ImpactFigures after, List<ImpactCause> causes, Optional<String> paper) {}

    private final Site before;
    private final Site after;
    private final Library other;
    private final ImpactPapers papers;
    private final Watch watch;
    private final List<ImpactChange> changes;
    private final BitSet newGround = new BitSet();
    private final Map<String, BitSet> direct = new HashMap<>();
    private final Map<Integer, Site> alone = new ConcurrentHashMap<>();
    private final Map<List<Object>, Optional<Moved>> known = new ConcurrentHashMap<>();
    private final AtomicInteger done = new AtomicInteger();
    private int all;

    ImpactRun(Site site, Library other, ImpactPapers papers, Watch watch) {
        before = site.stopped();
        this.other = other;
        this.papers = papers;
        this.watch = watch;
        changes = ImpactLibraries.changes(site.library(), other);
        for (int i = 0; i < changes.size(); i++) {
            newGround.set(i, changes.get(i).isNewGround());
        }
        ImpactIndex index =
                new ImpactIndex(site.library(), other, changes, site.shop().rules());
        before.jobs().forEach(job -> direct.put(job.id(), index.of(job)));
        after = before.withLibrary(other, job -> direct.get(job.id()).isEmpty());
    }

    Impact impact() {
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService workers = Executors.newFixedThreadPool(cores, task -> {
            Thread thread = new Thread(task, "impact");
            thread.setDaemon(true);
            return thread;
        });
        try {
            return impact(workers);
        } finally {
            workers.shutdownNow();
        }
    }

    private Impact impact(ExecutorService workers) {
        Map<String, BitSet> noticed = noticed(workers);
        List<Job> touched = before.jobs().stream()
                .filter(job -> !noticed.get(job.id()).isEmpty())
                .toList();
        all = touched.size();
        List<Optional<ImpactOfJob>> results = inParallel(
                workers,
                touched.stream()
                        .<Callable<Optional<ImpactOfJob>>>map(job -> () -> of(job, noticed.get(job.id())))
                        .toList());
        List<ImpactOfJob> jobs = results.stream()
                .flatMap(Optional::stream)
                .sorted((a, b) -> a.job().id().compareTo(b.job().id()))
                .toList();
        return new Impact(
                changes, jobs, touched.size() - jobs.size(), before.jobs().size() - touched.size());
    }

    /** A job notices what those beside it notice, if they then bring something else into the bays. */
    private Map<String, BitSet> noticed(ExecutorService workers) {
        Map<String, BitSet> noticed = new HashMap<>();
        direct.forEach((id, bits) -> noticed.put(id, (BitSet) bits.clone()));
        List<Job> movers = before.jobs().stream()
                .filter(job -> !direct.get(job.id()).isEmpty())
                .filter(job -> !before.near(job).isEmpty())
                .toList();
        List<Boolean> same = inParallel(
                workers,
                movers.stream()
                        .<Callable<Boolean>>map(job -> () -> before.bringsTheSame(job, after))
                        .toList());
        for (int i = 0; i < movers.size(); i++) {
            if (!same.get(i)) {
                BitSet bits = direct.get(movers.get(i).id());
                before.near(movers.get(i)).forEach(job -> noticed.get(job.id()).or(bits));
            }
        }
        return noticed;
    }

    private Optional<ImpactOfJob> of(Job job, BitSet noticed) {
        boolean asAnother = before.near(job).isEmpty() && papers.newest(job).isEmpty();
        Optional<Moved> moved =
                asAnother ? known.computeIfAbsent(likeness(job), k -> moved(job, noticed)) : moved(job, noticed);
        watch.done(done.incrementAndGet(), all);
        return moved.map(m -> new ImpactOfJob(job, m.before(), m.after(), m.causes(), rest(m), m.paper()));
    }

    /** Jobs that agree on these come to the same: neither a name nor a customer counts. */
    private static List<Object> likeness(Job job) {
        return List.of(
                job.vehicle(),
                job.vehicles(),
                job.arrives(),
                job.wanted(),
                job.cap(),
                job.rate(),
                job.goals(),
                job.survey(),
                job.plan(),
                job.discountLabourPercent(),
                job.discountPercent(),
                job.safety());
    }

    private Optional<Moved> moved(Job job, BitSet noticed) {
        WorkedJob was = before.workOneOfMany(job);
        if (noticesRulesAlone(noticed) && papers.newest(job).isEmpty() && after.provesTheSame(job, was)) {
            return Optional.empty();
        }
        WorkedJob is = after.workOneOfMany(job);
        ImpactFigures from = ImpactFigures.of(was);
        ImpactFigures to = ImpactFigures.of(is);
        Optional<String> paper =
                papers.newest(job).filter(name -> !papers.differences(job, was).equals(papers.differences(job, is)));
        boolean moves = !from.saysTheSame(to);
        if (!moves && paper.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Moved(from, to, moves ? causes(job, noticed, from, to) : List.of(), paper));
    }

    private boolean noticesRulesAlone(BitSet noticed) {
        return noticed.stream().allMatch(i -> changes.get(i).kind() == ImpactChange.Kind.RULE);
    }

    private List<ImpactCause> causes(Job job, BitSet noticed, ImpactFigures from, ImpactFigures to) {
        int[] tried =
                noticed.stream().filter(i -> !changes.get(i).isLostGround()).toArray();
        if (noticed.cardinality() == 1 && tried.length == 1) {
            return List.of(ImpactCause.of(changes.get(tried[0]), from, to));
        }
        List<ImpactCause> causes = new ArrayList<>();
        for (int i : tried) {
            refuseIfCancelled();
            ImpactFigures with = ImpactFigures.of(alone(i).workOneOfMany(job));
            ImpactCause cause = ImpactCause.of(changes.get(i), from, with);
            if (!cause.isNothing()) {
                causes.add(cause);
            }
        }
        return causes;
    }

    /** The site with one change, and with what is new for it to stand on. */
    private Site alone(int change) {
        return alone.computeIfAbsent(change, i -> {
            BitSet taken = (BitSet) newGround.clone();
            taken.set(i);
            Library mixed = ImpactLibraries.with(
                    before.library(),
                    other,
                    taken.stream().mapToObj(changes::get).toList());
            return before.withLibrary(mixed, job -> !direct.get(job.id()).intersects(taken));
        });
    }

    private static Optional<ImpactEffect> rest(Moved moved) {
        ImpactEffect rest = ImpactEffect.between(moved.before(), moved.after());
        for (ImpactCause cause : moved.causes()) {
            rest = rest.minus(cause.effect());
        }
        return Optional.of(rest).filter(r -> !r.isNothing());
    }

    private void refuseIfCancelled() {
        if (watch.cancelled()) {
            throw new CancellationException("the look at the jobs was stopped");
        }
    }

    private <T> List<T> inParallel(ExecutorService workers, List<Callable<T>> tasks) {
        List<Future<T>> futures = new ArrayList<>();
        for (Callable<T> task : tasks) {
            futures.add(workers.submit(() -> {
                refuseIfCancelled();
                return task.call();
            }));
        }
        List<T> results = new ArrayList<>();
        try {
            for (Future<T> future : futures) {
                results.add(future.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the look at the jobs was interrupted");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw new IllegalStateException(e.getCause());
        }
        return results;
    }
}
