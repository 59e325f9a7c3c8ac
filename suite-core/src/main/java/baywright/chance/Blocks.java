package baywright.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Runs of a simulation in blocks, on several threads. */
public final class Blocks {

    /** Runs of a block. */
    public static final int RUNS = 512;

    private Blocks() {}

    /** How many blocks so many runs are. */
    public static int count(int runs) {
        return (runs + RUNS - 1) / RUNS;
    }

    /** Runs of one block of so many runs: the last may be shorter. */
    public static int runsOf(int block, int runs) {
        return Math.min(RUNS, runs - block * RUNS);
    }

    /**
     * Does every block once, in any order.
     *
     * @param worker makes what does a block, given its number from 0; one for each thread
     * @throws CancellationException when the watch says so, or the thread is interrupted
     */
    public static void run(Simulation.Options options, Watch watch, Supplier<IntConsumer> worker) {
        int blocks = count(options.runs());
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        Runnable work = () -> {
            IntConsumer one = worker.get();
            for (int b = next.getAndIncrement(); b < blocks; b = next.getAndIncrement()) {
                if (watch.cancelled() || Thread.currentThread().isInterrupted()) {
                    throw new CancellationException("the simulation was cancelled");
                }
                one.accept(b);
                watch.done(done.addAndGet(runsOf(b, options.runs())), options.runs());
            }
        };
        int threads = Math.min(options.threads(), blocks);
        if (threads == 1) {
            work.run();
        } else {
            runOn(threads, work);
        }
    }

    private static void runOn(int threads, Runnable work) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "simulation");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                all.add(pool.submit(work));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the simulation was cancelled");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CancellationException cancelled) {
                throw cancelled;
            }
            throw new IllegalStateException("the simulation broke down", e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
