package baywright.library;

import baywright.library.Rule.Ask;
import baywright.library.Rule.At;
import baywright.script.Evaluator;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes rules of their blocks once everything that they may speak of is known. */
final class RuleReader {

    /** What rules may name; {@code around} has the facts and the constants. */
    record Known(
            Declared<State> states,
            Declared<Surface> surfaces,
            Declared<Family> families,
            Declared<Item> items,
            Surroundings around) {}

    /** A block with its file. */
    private record Met(RuleBlock block, FileDraft file) {
        Problems problems() {
            return file.problems();
        }
    }

    private final Known known;
    private final Map<String, Stage> stages = new LinkedHashMap<>();
    private final Optional<Set<String>> goods;

    /**
     * Sets out.
     *
     * @param stages all that the library declares
     * @param goods  items, groups and what stages keep apart; empty when the rules are known to be sound
     */
    RuleReader(Known known, List<Stage> stages, Optional<Set<String>> goods) {
        this.known = known;
        stages.forEach(s -> this.stages.putIfAbsent(s.id(), s));
        this.goods = goods;
    }

    /** What a rule may ask the use of: items, their groups, and what stages keep apart. */
    static Set<String> goods(Declared<Item> items, List<StageDraft> drafts) {
        Set<String> goods = new LinkedHashSet<>(items.ids());
        items.all().forEach(i -> goods.addAll(i.groups()));
        drafts.forEach(d ->
                d.variants().forEach(t -> t.hazards().keepApart().forEach(apart -> goods.add(apart.what()))));
        return goods;
    }

    /** All sound rules, in order of files and of writing; a rule that replaces another stands in its place. */
    List<Rule> read(List<FileDraft> files) {
        Map<String, Met> first = new LinkedHashMap<>();
        List<Met> replacing = new ArrayList<>();
        List<Met> twice = new ArrayList<>();
        for (FileDraft file : files) {
            for (RuleBlock block : file.block().rules()) {
                Met met = new Met(block, file);
                if (block.replaces()) {
                    replacing.add(met);
                } else {
                    Met before = first.putIfAbsent(block.id(), met);
                    if (before != null) {
                        noteTwice(met, before);
                        twice.add(met);
                    }
                }
            }
        }
        Map<String, Met> chosen = new LinkedHashMap<>(first);
        Set<String> replaced = new LinkedHashSet<>();
        for (Met met : replacing) {
            String id = met.block().id();
            if (!first.containsKey(id)) {
                met.problems()
                        .error(
                                met.block().place(),
                                "unknown-rule",
                                "there is no rule '" + id + "' to replace" + Nearest.hint(id, first.keySet()),
                                "rule");
            } else if (!replaced.add(id)) {
                noteTwice(met, chosen.get(id));
                twice.add(met);
            } else {
                chosen.put(id, met);
            }
        }
        List<Rule> rules = new ArrayList<>();
        chosen.values().forEach(met -> read(met.block(), met.file()).ifPresent(rules::add));
        twice.forEach(met -> read(met.block(), met.file())); // only to say what else is wrong with it
        return rules;
    }

    private static void noteTwice(Met met, Met before) {
        met.problems()
                .error(
                        met.block().place(),
                        "duplicate",
                        "rule '" + met.block().id() + "' is already declared at "
                                + before.block().place()
                                + (met.block().replaces() ? "" : "; write replaces: true to take its place"),
                        "rule");
    }

    private Optional<Rule> read(RuleBlock block, FileDraft file) {
        Problems problems = file.problems();
        long before = problems.errors();
        for (Value family : block.families()) {
            known.families().require((String) family.raw(), family.place(), problems, "at");
        }
        for (Value surface : block.surfaces()) {
            known.surfaces().require((String) surface.raw(), surface.place(), problems, "at");
        }
        List<Value> named = new ArrayList<>(block.stages());
        named.addAll(block.except());
        for (Value stage : named) {
            requireStage((String) stage.raw(), stage.place(), problems);
        }
        At at = new At(texts(block.families()), texts(block.stages()), texts(block.except()), texts(block.surfaces()));
        List<Stage> concerned = stages.values().stream().filter(at::concerns).toList();
        AskingNames asking = new AskingNames(known, goods, stages, concerned);
        for (RuleBlock.Line line : block.lines()) {
            Evaluator check = new Evaluator(StageLanguage.VOCABULARY, problems, asking, true, file.steps());
            check.answer(line.block(), line.scope())
                    .filter(v -> !(v.raw() instanceof Boolean))
                    .ifPresent(v -> problems.error(
                            line.block().place(),
                            "wrong-operand",
                            "a condition is true or false, such as holds('masked'); this is " + v.described(),
                            "forbids"));
        }
        if (problems.errors() > before) {
            return Optional.empty();
        }
        List<Ask> asks = asking.asks();
        return Optional.of(new Rule(
                block.id(),
                block.title(),
                block.reason(),
                at,
                asks,
                new ScriptJudge(block.lines(), asks, known.around()),
                block.place()));
    }

    private void requireStage(String id, Place place, Problems problems) {
        if (!stages.containsKey(id)) {
            problems.error(
                    place,
                    "unknown-stage",
                    "no stage is called '" + id + "'" + Nearest.hint(id, stages.keySet()),
                    "at");
        }
    }

    private static List<String> texts(List<Value> values) {
        return values.stream().map(v -> (String) v.raw()).toList();
    }
}
