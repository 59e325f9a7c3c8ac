package baywright.plan;

import baywright.library.Input;
import baywright.library.Stage;
import baywright.script.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A use of a stage with inputs, zones and drivers, worked out once: it knows no step id, so every step that says the
 * same shares it.
 */
final class CompiledStep {

    private final List<Function<String, Finding>> problems;
    private final Optional<Stage> stage;
    private final Map<String, Value> with;
    private final int[] rows;
    private final boolean vehicle;
    private final List<Part> parts;
    private final Optional<StepWork> work;
    private final long elapsed;

    private CompiledStep(
            List<Function<String, Finding>> problems,
            Optional<Stage> stage,
            Map<String, Value> with,
            int[] rows,
            boolean vehicle,
            List<Part> parts,
            Optional<StepWork> work,
            long elapsed) {
        this.problems = List.copyOf(problems);
        this.stage = stage;
        this.with = with;
        this.rows = rows;
        this.vehicle = vehicle;
        this.parts = List.copyOf(parts);
        this.work = work;
        this.elapsed = elapsed;
    }

    /** A use that does nothing, as its stage is gone, fails or finds no zone. */
    static CompiledStep nothing(List<Function<String, Finding>> problems, Optional<Stage> stage) {
        return new CompiledStep(problems, stage, Map.of(), new int[0], false, List.of(), Optional.empty(), 0);
    }

    static CompiledStep of(
            List<Function<String, Finding>> problems,
            Stage stage,
            Map<String, Value> with,
            int[] rows,
            boolean vehicle,
            List<Part> parts,
            StepWork work) {
        long elapsed = Math.max(0, Ticks.of(work.elapsedMinutes()));
        return new CompiledStep(problems, Optional.of(stage), with, rows, vehicle, parts, Optional.of(work), elapsed);
    }

    /** What is wrong with the use by itself, given the step's id. */
    List<Function<String, Finding>> problems() {
        return problems;
    }

    /** Empty when the library has none. */
    Optional<Stage> stage() {
        return stage;
    }

    /** What an input is set to, or usually is; empty when the stage has no such input. */
    Optional<Value> input(String name) {
        Value set = with.get(name);
        if (set != null || stage.isEmpty()) {
            return Optional.ofNullable(set);
        }
        return stage.get().inputs().stream()
                .filter(i -> i.name().equals(name))
                .map(Input::usual)
                .findFirst();
    }

    /** Rows worked on, in the vehicle's order. */
    int[] rows() {
        return rows;
    }

    /** Whether the vehicle as a whole is among them. */
    boolean vehicle() {
        return vehicle;
    }

    /** Rows that agree on the terms; none for a use that does nothing. */
    List<Part> parts() {
        return parts;
    }

    Optional<StepWork> work() {
        return work;
    }

    /** Ticks from start to the end of the hands-on time. */
    long elapsed() {
        return elapsed;
    }

    /** Rows with the same terms, and those with their neighbours. */
    static final class Part {
        private final int[] rows;
        private final int[] around;
        private final CompiledTerms terms;

        Part(int[] rows, int[] around, CompiledTerms terms) {
            this.rows = rows;
            this.around = around;
            this.terms = terms;
        }

        int[] rows() {
            return rows;
        }

        int[] around() {
            return around;
        }

        CompiledTerms terms() {
            return terms;
        }
    }
}
