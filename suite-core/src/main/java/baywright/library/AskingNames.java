package baywright.library;

import baywright.library.Rule.Ask;
import baywright.library.Rule.Reach;
import baywright.script.Call;
import baywright.script.Names;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Answers a rule's condition with samples while it is checked, and collects what it asks. */
final class AskingNames implements Names {

    private static final Place SAMPLE = Place.ofFile("sample");

    private final RuleReader.Known known;
    private final Optional<Set<String>> goods;
    private final Map<String, Stage> stages;
    private final List<Stage> concerned;
    private final Map<String, Ask> asks = new LinkedHashMap<>();

    /**
     * Sets out.
     *
     * @param goods items, their groups, and what stages keep apart; empty: whatever is asked is known
     */
    AskingNames(RuleReader.Known known, Optional<Set<String>> goods, Map<String, Stage> stages, List<Stage> concerned) {
        this.known = known;
        this.goods = goods;
        this.stages = stages;
        this.concerned = concerned;
    }

    List<Ask> asks() {
        return List.copyOf(asks.values());
    }

    @Override
    public Optional<Value> value(String name) {
        Object sample = RuleQueries.NAMES.get(name);
        return sample == null
                ? known.around().value(name)
                : Optional.of(answer(new Ask(name, List.of(), "", Reach.ZONE, false), sample));
    }

    private Value answer(Ask ask, Object sample) {
        asks.putIfAbsent(ask.text(), ask);
        return new Value(sample, SAMPLE, Set.of(ask.text()));
    }

    @Override
    public Set<String> known() {
        Set<String> all = new LinkedHashSet<>(RuleQueries.NAMES.keySet());
        all.addAll(known.around().known());
        return all;
    }

    @Override
    public Value call(Call function) {
        if (function.word().name().equals("constant")) {
            return known.around().call(function);
        }
        Ask ask = RuleAsks.of(function);
        return switch (ask.word()) {
            case "input" -> answer(ask, input(function, ask.names().get(0), concerned));
            case "surveyed" -> answer(ask, fact(function, ask.names().get(0)));
            case "lastInput" -> {
                String id = ask.names().get(0);
                require(id, stages.keySet(), "stage", function, "stage");
                yield answer(ask, input(function, ask.names().get(1), List.of(stages.get(id))));
            }
            default -> {
                check(function, ask);
                yield answer(ask, RuleQueries.sample(ask.word(), ask.names()));
            }
        };
    }

    private void check(Call function, Ask ask) {
        switch (ask.word()) {
            case "holds", "found", "sinceSet" ->
                require(ask.names().get(0), known.states().ids(), "state", function, "state");
            case "uses", "usedSince", "sinceUse" -> {
                if (goods.isPresent()) {
                    require(ask.names().get(0), goods.get(), "item or group", function, "what");
                }
                if (!ask.until().isEmpty()) {
                    require(ask.until(), known.states().ids(), "state", function, "until");
                }
            }
            case "setting" -> require(ask.names().get(0), RuleQueries.SETTINGS, "setting", function, "name");
            default -> {
                Set<String> steps = new LinkedHashSet<>(stages.keySet());
                steps.addAll(known.families().ids());
                for (Value step : function.several()) {
                    require((String) step.raw(), steps, "stage or family", function, step.place());
                }
            }
        }
    }

    private static void require(String id, Collection<String> ids, String kind, Call function, String param) {
        require(id, ids, kind, function, function.value(param).place());
    }

    private static void require(String id, Collection<String> ids, String kind, Call function, Place place) {
        if (!ids.contains(id)) {
            throw function.refusal(
                    place,
                    "unknown-" + kind.replace(' ', '-'),
                    "no " + kind + " is called '" + id + "'" + Nearest.hint(id, ids));
        }
    }

    private static Object input(Call function, String name, List<Stage> of) {
        Set<String> names = new LinkedHashSet<>();
        for (Stage stage : of) {
            for (Input input : stage.inputs()) {
                if (input.name().equals(name)) {
                    return input.usual().raw();
                }
                names.add(input.name());
            }
        }
        String param = function.word().name().equals("input") ? "name" : "input";
        throw function.refusal(
                function.value(param).place(),
                "unknown-name",
                "none of the stages concerned has an input '" + name + "'" + Nearest.hint(name, names));
    }

    private Object fact(Call function, String id) {
        List<String> ids = new ArrayList<>();
        for (Fact fact : known.around().facts()) {
            if (fact.id().equals(id)) {
                Object usual = InputValues.usual(fact).raw();
                return usual == Value.NOTHING ? BigDecimal.ONE : usual;
            }
            ids.add(fact.id());
        }
        throw function.refusal(
                function.value("fact").place(),
                "unknown-fact",
                "no fact is called '" + id + "'" + Nearest.hint(id, ids));
    }

    @Override
    public List<String> choices(String name) {
        return known.around().facts().stream()
                .filter(f -> f.id().equals(name))
                .findFirst()
                .map(Fact::choices)
                .orElse(List.of());
    }
}
