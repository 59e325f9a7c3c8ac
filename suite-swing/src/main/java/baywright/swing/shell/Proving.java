package baywright.swing.shell;

import baywright.library.ScriptCache;
import baywright.site.OpenShop;
import baywright.site.WorkedJob;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Remark;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/**
 * Proves and prices the chosen job and loads the library anew after edits, on one thread of its own. What was asked last is done next;
 * what was asked before it and has not begun is left out.
 */
final class Proving {

    /** What is to be done: the shop as it was when asked, by whose serial number an answer is known. */
    record Asked(long serial, OpenShop shop, Optional<String> job) {}

    /**
     * What came out.
     *
     * @param asked   what was to be done
     * @param loaded  the shop with its library loaded anew, where that was due and has been done
     * @param worked  the job; empty when there is none
     * @param remarks what plug-ins say of it
     * @param fault   a fault of the program that kept it from being worked
     */
    record Answer(
            Asked asked,
            Optional<OpenShop> loaded,
            Optional<WorkedJob> worked,
            List<Remark> remarks,
            Optional<Throwable> fault) {}

    /** A rule of a plug-in that threw or, with a {@link java.util.concurrent.TimeoutException}, overran. */
    record BrokenRule(String rule, Throwable fault) {}

    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "baywright proof");
        made.setDaemon(true);
        return made;
    });
    private final AtomicReference<Asked> next = new AtomicReference<>();
    private final RuleWatch watch = new RuleWatch(RuleWatch.USUAL_PATIENCE);
    private final ScriptCache cache;
    private final Supplier<List<FindingRule>> rules;
    private final Consumer<Answer> answered;
    private final Consumer<BrokenRule> ruleBroke;

    /**
     * Does nothing until asked.
     *
     * @param rules     those of plug-ins, asked for on the thread of proofs
     * @param answered  gets each answer on the event thread
     * @param ruleBroke hears of rules that threw or overran, on the event thread
     */
    Proving(
            ScriptCache cache,
            Supplier<List<FindingRule>> rules,
            Consumer<Answer> answered,
            Consumer<BrokenRule> ruleBroke) {
        this.cache = cache;
        this.rules = rules;
        this.answered = answered;
        this.ruleBroke = ruleBroke;
    }

    void ask(Asked asked) {
        if (thread.isShutdown()) {
            return;
        }
        next.set(asked);
        thread.execute(() -> {
            Asked newest = next.getAndSet(null);
            if (newest != null) {
                answer(newest);
            }
        });
    }

    /** The job with the library at hand first, as a reload can take a second; then again with the fresh one. */
    private void answer(Asked asked) {
        tell(work(asked, asked.shop(), Optional.empty()));
        if (asked.shop().isStale() && next.get() == null) {
            try {
                OpenShop loaded = asked.shop().reloaded(cache);
                tell(work(asked, loaded, Optional.of(loaded)));
            } catch (RuntimeException | StackOverflowError e) {
                tell(new Answer(asked, Optional.empty(), Optional.empty(), List.of(), Optional.of(e)));
            }
        }
    }

    private Answer work(Asked asked, OpenShop shop, Optional<OpenShop> loaded) {
        try {
            Optional<WorkedJob> worked = asked.job().flatMap(shop::job).map(shop.site()::work);
            return new Answer(asked, loaded, worked, worked.map(this::remarks).orElse(List.of()), Optional.empty());
        } catch (RuntimeException | StackOverflowError e) {
            return new Answer(asked, loaded, Optional.empty(), List.of(), Optional.of(e));
        }
    }

    private List<Remark> remarks(WorkedJob worked) {
        return watch.ask(rules.get(), worked.judged(), (rule, fault) -> {
            BrokenRule broken = new BrokenRule(rule, fault);
            SwingUtilities.invokeLater(() -> ruleBroke.accept(broken));
        });
    }

    /** What is broken off by the end is no answer, and no fault either. */
    private void tell(Answer answer) {
        if (thread.isShutdown()) {
            return;
        }
        SwingUtilities.invokeLater(() -> answered.accept(answer));
    }

    void stop() {
        thread.shutdownNow();
    }
}
