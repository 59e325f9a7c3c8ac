package baywright.swing.shell;

import baywright.site.JudgedJob;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Remark;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiConsumer;

/**
 * Asks finding rules of plug-ins, each on a thread of its own and for a limited time. One that overruns is set aside and not asked again until
 * its plug-in is started anew; its thread is interrupted, and when it does not heed that, it goes on until the program ends. To be used on one
 * thread.
 */
final class RuleWatch {

    /** A proof is looked at by rules in milliseconds; this is for a machine that is busy. */
    static final Duration USUAL_PATIENCE = Duration.ofSeconds(2);

    private final Duration patience;
    private final Set<FindingRule> aside = Collections.newSetFromMap(new IdentityHashMap<>());

    /** @param patience how long to wait for one rule */
    RuleWatch(Duration patience) {
        this.patience = patience;
    }

    /**
     * Asks the rules one after the other.
     *
     * @param broke gets the id of each that threw, with what it threw, or that overran, with a {@link TimeoutException}
     */
    List<Remark> ask(List<FindingRule> rules, JudgedJob job, BiConsumer<String, Throwable> broke) {
        List<Remark> all = new ArrayList<>();
        for (FindingRule rule : rules) {
            if (aside.contains(rule)) {
                continue;
            }
            FutureTask<List<Remark>> asked = new FutureTask<>(() -> List.copyOf(rule.judge(job)));
            Thread thread = new Thread(asked, "baywright rule");
            thread.setDaemon(true);
            thread.start();
            try {
                all.addAll(asked.get(patience.toMillis(), TimeUnit.MILLISECONDS));
            } catch (TimeoutException e) {
                asked.cancel(true);
                aside.add(rule);
                broke.accept(rule.id(), e);
            } catch (ExecutionException e) {
                broke.accept(rule.id(), e.getCause());
            } catch (InterruptedException e) {
                thread.interrupt();
                Thread.currentThread().interrupt();
                return all;
            }
        }
        return all;
    }
}
