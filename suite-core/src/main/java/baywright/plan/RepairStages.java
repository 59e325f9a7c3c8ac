package baywright.plan;

import baywright.library.Input;
import baywright.library.Stage;
import baywright.plan.CompiledStep.Part;
import baywright.plan.CompiledTerms.Change;
import baywright.plan.RepairChoice.Use;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which stages of the library, with which inputs, can make or unmake a state on this vehicle. */
final class RepairStages {

    /** A count with more values than this is tried at its ends and its usual value only. */
    private static final int MOST_COUNTS = 6;

    private final Prover prover;
    private final VehicleIndex vehicle;
    private final Map<String, BitSet> rowsByStage = new HashMap<>();
    private final IdentityHashMap<Use, Map<BitSet, CompiledStep>> compiledByUse = new IdentityHashMap<>();
    private final Map<String, BitSet> bySurface = new LinkedHashMap<>();
    private final List<List<Use>> setters = new ArrayList<>();
    private final List<List<Use>> clearers = new ArrayList<>();

    RepairStages(Prover prover) {
        this.prover = prover;
        vehicle = prover.vehicle();
        for (int s = 0; s < prover.states().count(); s++) {
            setters.add(new ArrayList<>());
            clearers.add(new ArrayList<>());
        }
        for (int row : vehicle.real()) {
            vehicle.zone(row)
                    .ifPresent(z -> bySurface
                            .computeIfAbsent(z.surface(), s -> new BitSet())
                            .set(row));
        }
        prover.setting().library().stages().forEach(this::enter);
    }

    private void enter(Stage stage) {
        BitSet rows = fitting(stage);
        rowsByStage.put(stage.id(), rows);
        Set<Object> seen = new HashSet<>();
        for (Map<String, Value> with : variants(stage, Map.of())) {
            CompiledStep step = compiled(stage.id(), with, rows);
            if (!step.parts().isEmpty() && seen.add(meaning(step))) {
                enter(step, new Use(stage.id(), with));
            }
        }
    }

    private void enter(CompiledStep step, Use use) {
        StateIndex states = prover.states();
        BitSet made = new BitSet();
        BitSet unmade = new BitSet();
        for (Part part : step.parts()) {
            for (Change change : part.terms().clears) {
                unmade.or(BitSet.valueOf(states.clears(change.state())));
            }
            for (Change change : part.terms().sets) {
                made.or(BitSet.valueOf(states.brings(change.state())));
                unmade.or(BitSet.valueOf(states.ends(change.state())));
            }
        }
        made.stream().forEach(s -> setters.get(s).add(use));
        unmade.stream().forEach(s -> clearers.get(s).add(use));
    }

    /** What matters for a proof: two uses of a stage that agree on it mend the same. */
    private static Object meaning(CompiledStep step) {
        List<Object> all = new ArrayList<>();
        for (Part part : step.parts()) {
            all.add(part.terms().terms.needs());
            all.add(part.terms().terms.effects());
            all.add(part.terms().terms.standing());
            all.add(part.terms().terms.where().bay());
        }
        return all;
    }

    /** A stage that names no surface works on every zone. */
    private BitSet fitting(Stage stage) {
        BitSet rows = new BitSet();
        for (int row = 0; row < vehicle.rows(); row++) {
            boolean real = row != vehicle.vehicle();
            String surface = vehicle.zone(row).map(z -> z.surface()).orElse(VehicleIndex.VEHICLE);
            if (stage.surfaces().isEmpty() ? real : stage.surfaces().contains(surface)) {
                rows.set(row);
            }
        }
        return rows;
    }

    /** Uses that make a state somewhere, the usual inputs first. */
    List<Use> setters(int state) {
        return setters.get(state);
    }

    /** Uses that unmake a state somewhere. */
    List<Use> clearers(int state) {
        return clearers.get(state);
    }

    /** Rows with a surface that the stage works on. */
    BitSet rowsOf(String stage) {
        return rowsByStage.getOrDefault(stage, new BitSet());
    }

    private CompiledStep compiled(String stage, Map<String, Value> with, BitSet rows) {
        return prover.compile(step("", stage, with, rows, Step.Priority.MUST));
    }

    /** The use on these rows. */
    CompiledStep compiled(Use use, BitSet rows) {
        return compiledByUse
                .computeIfAbsent(use, u -> new HashMap<>())
                .computeIfAbsent((BitSet) rows.clone(), r -> compiled(use.stage(), use.with(), r));
    }

    /**
     * A step that does the stage on these rows. What is counted one by one and was not counted by the survey is taken
     * once, so that the work is not reckoned as nothing.
     */
    Step inserted(String id, Use use, BitSet rows, Step.Priority priority) {
        Step plain = step(id, use.stage(), use.with(), rows, priority);
        Map<String, BigDecimal> drivers = new HashMap<>();
        prover.compile(plain)
                .work()
                .ifPresent(work -> work.attended().forEach(a -> {
                    if (a.trail().amount().signum() == 0 && !a.trail().driver().isEmpty()) {
                        drivers.put(a.trail().driver(), BigDecimal.ONE);
                    }
                }));
        return new Step(id, plain.stage(), plain.zones(), plain.with(), priority, Optional.empty(), drivers);
    }

    private Step step(String id, String stage, Map<String, Value> with, BitSet rows, Step.Priority priority) {
        return new Step(id, stage, written(rows), with, priority, Optional.empty(), Map.of());
    }

    /** Rows as a person writes them: a whole surface by its name, the rest by zones. */
    List<String> written(BitSet rows) {
        List<String> written = new ArrayList<>();
        BitSet left = (BitSet) rows.clone();
        bySurface.forEach((surface, all) -> {
            BitSet within = (BitSet) all.clone();
            within.andNot(rows);
            if (within.isEmpty() && all.cardinality() > 1) {
                written.add("surface:" + surface);
                left.andNot(all);
            }
        });
        left.stream().forEach(row -> written.add(vehicle.id(row)));
        return written;
    }

    /** These inputs and all that differ from them in one input. */
    static List<Map<String, Value>> variants(Stage stage, Map<String, Value> with) {
        List<Map<String, Value>> all = new ArrayList<>();
        all.add(with);
        for (Input input : stage.inputs()) {
            Object now = Optional.ofNullable(with.get(input.name()))
                    .orElse(input.usual())
                    .raw();
            for (Object raw : values(input)) {
                if (!raw.equals(now)) {
                    Map<String, Value> other = new HashMap<>(with);
                    if (raw.equals(input.usual().raw())) {
                        other.remove(input.name());
                    } else {
                        other.put(input.name(), Value.of(raw, input.place()));
                    }
                    all.add(Map.copyOf(other));
                }
            }
        }
        return all;
    }

    private static List<Object> values(Input input) {
        return switch (input.kind()) {
            case CHOICE -> List.copyOf(input.choices());
            case YES_NO -> List.of(false, true);
            case COUNT -> counts(input);
            case MEASURE -> List.of();
        };
    }

    private static List<Object> counts(Input input) {
        if (input.least().isEmpty()
                || input.most().isEmpty()
                || !(input.least().get().raw() instanceof BigDecimal least)
                || !(input.most().get().raw() instanceof BigDecimal most)) {
            return List.of();
        }
        List<Object> all = new ArrayList<>();
        if (most.subtract(least).compareTo(BigDecimal.valueOf(MOST_COUNTS)) >= 0) {
            all.add(least);
            all.add(most);
            return all;
        }
        for (BigDecimal n = least; n.compareTo(most) <= 0; n = n.add(BigDecimal.ONE)) {
            all.add(n);
        }
        return all;
    }
}
