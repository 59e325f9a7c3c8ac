package baywright.library;

import baywright.script.Call;
import baywright.script.Names;
import baywright.script.Nearest;
import baywright.script.Problems;
import baywright.script.Value;
import baywright.script.Wording;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** What every stage of a library may read: the facts of a survey and the library's constants. */
final class Surroundings implements Names {

    private final List<Fact> facts;
    private final Declared<Constant> constants;
    private final Set<String> used = ConcurrentHashMap.newKeySet();

    Surroundings(List<Fact> facts, Declared<Constant> constants) {
        this.facts = List.copyOf(facts);
        this.constants = constants;
    }

    List<Fact> facts() {
        return facts;
    }

    /** The constant of this name. */
    Optional<Constant> constant(String id) {
        return Optional.ofNullable(constants.get(id));
    }

    /** Notes constants that nothing has read so far. */
    void noteUnused(FileDraft file) {
        Problems problems = file.problems();
        file.block().constants().stream()
                .filter(c -> !used.contains(c.id()))
                .forEach(c -> problems.warning(
                        c.place(), "unused", "no stage reads the constant '" + c.id() + "'", "constant"));
    }

    /** Adds the constants that scripts may read, those that they name. */
    void addTo(Wording wording) {
        for (Constant constant : constants.all()) {
            if (wording.isComposed() || wording.names().contains(constant.id())) {
                wording.add(constant.id(), constant.value());
            }
        }
    }

    @Override
    public Optional<Value> value(String name) {
        Optional<Value> found = constant(name).map(Constant::value);
        found.ifPresent(v -> used.add(name));
        return found;
    }

    @Override
    public Set<String> known() {
        return Set.copyOf(constants.ids());
    }

    @Override
    public Value call(Call function) {
        if (!function.word().name().equals("constant")) {
            return Names.NONE.call(function);
        }
        String id = function.text("name");
        return value(id)
                .orElseThrow(() -> function.refusal(
                        function.value("name").place(),
                        "unknown-constant",
                        "no constant is called '" + id + "'" + Nearest.hint(id, constants.ids())));
    }

    @Override
    public List<String> choices(String name) {
        return List.of();
    }
}
