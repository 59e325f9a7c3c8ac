package baywright.library;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Everything that stages may refer to, and the stages. Lists keep the order of their files' names and of writing.
 *
 * @param hash SHA-256 in hexadecimal of all texts that it was made from; a proof and a quote carry it
 */
public record Library(
        List<State> states,
        List<Surface> surfaces,
        List<Family> families,
        List<Fact> facts,
        List<JobFactor> factors,
        List<Item> items,
        List<Stage> stages,
        List<Rule> rules,
        List<Goal> goals,
        Map<String, Stage> stageById,
        Map<String, State> stateById,
        Map<String, Item> itemById,
        String hash) {

    public Library {
        states = List.copyOf(states);
        surfaces = List.copyOf(surfaces);
        families = List.copyOf(families);
        facts = List.copyOf(facts);
        factors = List.copyOf(factors);
        items = List.copyOf(items);
        stages = List.copyOf(stages);
        rules = List.copyOf(rules);
        goals = List.copyOf(goals);
        stageById = Map.copyOf(stageById);
        stateById = Map.copyOf(stateById);
        itemById = Map.copyOf(itemById);
    }

    /** A library without rules and goals. */
    public static Library of(
            List<State> states,
            List<Surface> surfaces,
            List<Family> families,
            List<Fact> facts,
            List<JobFactor> factors,
            List<Item> items,
            List<Stage> stages,
            String hash) {
        return of(states, surfaces, families, facts, factors, items, stages, List.of(), hash);
    }

    /** A library without goals. */
    public static Library of(
            List<State> states,
            List<Surface> surfaces,
            List<Family> families,
            List<Fact> facts,
            List<JobFactor> factors,
            List<Item> items,
            List<Stage> stages,
            List<Rule> rules,
            String hash) {
        return new Library(
                states,
                surfaces,
                families,
                facts,
                factors,
                items,
                stages,
                rules,
                List.of(),
                byId(stages, Stage::id),
                byId(states, State::id),
                byId(items, Item::id),
                hash);
    }

    /** The same library with these goals. */
    public Library withGoals(List<Goal> other) {
        return new Library(
                states, surfaces, families, facts, factors, items, stages, rules, other, stageById, stateById, itemById,
                hash);
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(t -> map.putIfAbsent(id.apply(t), t));
        return map;
    }
}
