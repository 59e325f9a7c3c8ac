package baywright.library;

import baywright.script.Call;
import baywright.script.Names;
import baywright.script.Nearest;
import baywright.script.Value;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Inputs and surveyed facts of one use, as its script sees them. */
final class StageNames implements Names {

    private final Map<String, Value> inputs = new HashMap<>();
    private final Map<String, Value> facts = new HashMap<>();
    private final Map<String, List<String>> choices = new HashMap<>();
    private final Surroundings around;

    /**
     * Takes values over the usual ones.
     *
     * @throws IllegalArgumentException when a value does not fit its input or fact
     */
    StageNames(List<Input> declared, Surroundings around, Map<String, Value> with, Map<String, Value> surveyed) {
        this.around = around;
        for (Fact fact : around.facts()) {
            Value given = surveyed.get(fact.id());
            Value value = given == null
                    ? InputValues.usual(fact)
                    : InputValues.fit(fact, given)
                            .orElseThrow(() -> new IllegalArgumentException("fact '" + fact.id() + "' takes "
                                    + InputValues.wanted(fact) + ", got " + given.described()));
            facts.put(fact.id(), new Value(value.raw(), value.place(), Set.of(fact.id())));
            choices.put(fact.id(), fact.choices());
        }
        for (Input input : declared) {
            Value given = with.get(input.name());
            Value value = given == null
                    ? input.usual()
                    : InputValues.fit(input, given)
                            .orElseThrow(() -> new IllegalArgumentException("input '" + input.name() + "' takes "
                                    + InputValues.wanted(input) + ", got " + given.described()));
            inputs.put(input.name(), new Value(value.raw(), value.place(), Set.of(input.name())));
            choices.put(input.name(), input.choices());
        }
    }

    @Override
    public Optional<Value> value(String name) {
        Value input = inputs.get(name);
        return input != null ? Optional.of(input) : around.value(name);
    }

    @Override
    public Set<String> known() {
        Set<String> all = new TreeSet<>(inputs.keySet());
        all.addAll(around.known());
        return all;
    }

    @Override
    public Value call(Call function) {
        if (function.word().name().equals("constant")) {
            return around.call(function);
        }
        boolean input = function.word().name().equals("input");
        if (!input && !function.word().name().equals("surveyed")) {
            throw function.refusal(
                    function.place(),
                    "unknown-function",
                    "'" + function.word().name() + "' can only be asked in a rule: a stage knows no plan");
        }
        String param = input ? "name" : "fact";
        Map<String, Value> from = input ? inputs : facts;
        String name = function.text(param);
        Value found = from.get(name);
        if (found == null) {
            throw function.refusal(
                    function.value(param).place(),
                    "unknown-" + (input ? "name" : "fact"),
                    (input ? "the stage has no input '" : "no fact is called '") + name + "'"
                            + Nearest.hint(name, from.keySet()));
        }
        return found;
    }

    /** The values behind some names, to tell whether two uses agree on them. */
    Map<String, Object> raw(Set<String> names) {
        Map<String, Object> values = new HashMap<>();
        for (String name : names) {
            values.put(name, List.of(raw(inputs, name), raw(facts, name)));
        }
        return values;
    }

    private static Object raw(Map<String, Value> from, String name) {
        Value value = from.get(name);
        return value == null ? Value.NOTHING : value.raw();
    }

    @Override
    public List<String> choices(String name) {
        return choices.getOrDefault(name, List.of());
    }
}
