package baywright.bench;

import baywright.money.Ledger;
import baywright.money.RollUp;
import baywright.plan.Plan;
import baywright.plan.Proof;
import baywright.plan.Prover;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Proving a plan and rolling it up, beside a plain topological sort of the same plan. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 10, time = 1)
@Measurement(time = 1)
public class PlanBenchmark {

    /** Folder of the workspace. */
    @Param("target/bench/site")
    public String workspace = "";

    /** Length of the plan. */
    @Param({"60", "600", "5000"})
    public int steps;

    private SamplePlan sample;
    private Prover prover;
    private List<Plan> variants;
    private int turn;

    /** Loads library and plan. */
    @Setup
    public void load() throws IOException {
        sample = SamplePlan.of(Path.of(workspace), steps);
        prover = Prover.forSetting(sample.setting());
        List<Plan> all = new ArrayList<>();
        for (int i = 1; i < Math.min(steps, 20); i++) {
            var order = new ArrayList<>(sample.plan().steps());
            order.add(i, order.remove(i - 1));
            all.add(new Plan(order));
        }
        variants = all;
    }

    /** From nothing: proof, work and ledger of one plan. */
    @Benchmark
    public Ledger proveAndRollUp() {
        return ledger(Prover.forSetting(sample.setting()), sample.plan());
    }

    /** As after an edit: a prover that knows the setting meets a plan with two steps changed about. */
    @Benchmark
    public Ledger proveAndRollUpAfterAnEdit() {
        turn = (turn + 1) % variants.size();
        return ledger(prover, variants.get(turn));
    }

    private Ledger ledger(Prover with, Plan plan) {
        Proof proof = with.prove(plan);
        if (proof.clock().size() != steps) {
            throw new IllegalStateException("a step was lost: " + proof.clock().size() + " of " + steps);
        }
        return RollUp.of(
                plan, with.work(plan), sample.setting().library(), sample.site().rates(), sample.terms());
    }

    /**
     * What knows nothing of states: each use of a zone waits for the use before it, and for the first use of the next
     * step; sorted after Kahn.
     */
    @Benchmark
    @Warmup(iterations = 4, time = 1)
    public int[] topologicalSort() {
        int zones = SamplePlan.ZONES;
        int uses = steps * zones;
        int[] waits = new int[uses];
        int[][] next = new int[uses][];
        for (int use = 0; use < uses; use++) {
            boolean last = use + zones >= uses;
            next[use] = last
                    ? new int[0]
                    : use % zones == 0 ? new int[] {use + zones} : new int[] {use + zones, use - use % zones + zones};
            for (int later : next[use]) {
                waits[later]++;
            }
        }
        int[] order = new int[uses];
        int end = 0;
        for (int use = 0; use < uses; use++) {
            if (waits[use] == 0) {
                order[end++] = use;
            }
        }
        for (int at = 0; at < end; at++) {
            for (int later : next[order[at]]) {
                if (--waits[later] == 0) {
                    order[end++] = later;
                }
            }
        }
        return Arrays.copyOf(order, end);
    }
}
