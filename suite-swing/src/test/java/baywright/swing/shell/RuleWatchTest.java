package baywright.swing.shell;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.site.JudgedJob;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Remark;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RuleWatchTest {

    private final RuleWatch watch = new RuleWatch(Duration.ofMillis(300));
    private final List<String> broken = new ArrayList<>();
    private final List<Throwable> faults = new ArrayList<>();
    private final AtomicBoolean over = new AtomicBoolean();
    private final AtomicInteger asked = new AtomicInteger();

    @AfterEach
    void letTheSpinnerEnd() {
        over.set(true);
    }

    private record Rule(String id, Supplier<List<Remark>> says) implements FindingRule {
        @Override
        public List<Remark> judge(JudgedJob job) {
            return says.get();
        }
    }

    private Rule honest(String id) {
        return new Rule(id, () -> {
            asked.incrementAndGet();
            return List.of();
        });
    }

    private List<Remark> ask(List<FindingRule> rules) {
        return watch.ask(rules, null, (rule, fault) -> {
            broken.add(rule);
            faults.add(fault);
        });
    }

    @Test
    void rulesThatSleepOrSpinAreSetAsideAndTheOthersGoOn() {
        Rule sleeps = new Rule("sleeps", () -> {
            try {
                new CountDownLatch(1).await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return List.of();
        });
        Rule spins = new Rule("spins", () -> {
            while (!over.get()) {
                Thread.onSpinWait();
            }
            return List.of();
        });
        List<FindingRule> rules = List.of(honest("first"), sleeps, honest("second"), spins, honest("third"));
        ask(rules);
        assertThat(broken).containsExactly("sleeps", "spins");
        assertThat(faults).hasOnlyElementsOfType(TimeoutException.class);
        assertThat(asked).hasValue(3);
        ask(rules);
        assertThat(broken).hasSize(2);
        assertThat(asked).hasValue(6);
    }

    @Test
    void aRuleThatThrowsIsNamedAndAskedAgain() {
        IllegalStateException fault = new IllegalStateException("meant to break");
        Rule throwing = new Rule("throws", () -> {
            throw fault;
        });
        ask(List.of(throwing, honest("other")));
        ask(List.of(throwing));
        assertThat(broken).containsExactly("throws", "throws");
        assertThat(faults).containsOnly(fault);
        assertThat(asked).hasValue(1);
    }
}
