package baywright.library;

import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Need;
import baywright.library.State.Scope;
import baywright.script.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Finds needs that no stage meets and stages that wait for each other in a circle. */
final class Reachability {

    private final Declared<State> states;
    private final List<StageDraft> stages;
    private final Map<String, Set<String>> setters = new HashMap<>();

    Reachability(Declared<State> states, List<StageDraft> stages) {
        this.states = states;
        this.stages = stages;
        for (StageDraft draft : stages) {
            draft.variants().stream()
                    .flatMap(t -> t.effects().stream())
                    .filter(Effect::sets)
                    .forEach(e -> addSetter(e.state(), draft.stage().id(), new HashSet<>()));
        }
    }

    private void addSetter(String state, String stage, Set<String> seen) {
        if (!seen.add(state)) {
            return;
        }
        setters.computeIfAbsent(state, k -> new TreeSet<>()).add(stage);
        if (states.has(state)) {
            states.get(state).implies().forEach(i -> addSetter(i, stage, seen));
        }
    }

    void judge() {
        for (StageDraft draft : stages) {
            draft.needs().stream()
                    .filter(n -> !n.absent())
                    .filter(n -> n.anyOf().stream().allMatch(this::isOnlyFound))
                    .forEach(n -> draft.problems()
                            .warning(
                                    n.origin().place(),
                                    "never-set",
                                    "no stage sets '" + String.join("' or '", n.anyOf())
                                            + "'; only a survey can find it",
                                    "needs"));
        }
        Set<String> attainable = attainable();
        for (StageDraft draft : stages) {
            blocked(draft, attainable).ifPresent(need -> report(draft.problems(), draft, need, attainable));
        }
    }

    /** A state of zone or vehicle that is declared and that no stage sets. */
    private boolean isOnlyFound(String id) {
        return states.has(id)
                && states.get(id).scope() != Scope.CONDITION
                && !setters.containsKey(id)
                && (states.get(id).madeOf().isEmpty()
                        || states.get(id).madeOf().stream().anyMatch(this::isOnlyFound));
    }

    private Set<String> attainable() {
        Set<String> all = new HashSet<>();
        for (State state : states.all()) {
            if (!setters.containsKey(state.id()) && state.madeOf().isEmpty()) {
                all.add(state.id());
            }
        }
        boolean grew = true;
        while (grew) {
            int before = all.size();
            for (StageDraft draft : stages) {
                if (blocked(draft, all).isEmpty()) {
                    setters.forEach((state, by) -> {
                        if (by.contains(draft.stage().id())) {
                            all.add(state);
                        }
                    });
                }
            }
            for (State state : states.all()) {
                if (!state.madeOf().isEmpty() && all.containsAll(state.madeOf())) {
                    all.add(state.id());
                }
            }
            grew = all.size() > before;
        }
        return all;
    }

    /** The first need that nothing attainable meets. Needs that depend on an input or a fact are left aside. */
    private Optional<Need> blocked(StageDraft draft, Set<String> attainable) {
        return draft.needs().stream()
                .filter(n -> !n.absent() && n.origin().from().isEmpty())
                .filter(n -> n.anyOf().stream().allMatch(states::has))
                .filter(n -> n.anyOf().stream().noneMatch(attainable::contains))
                .findFirst();
    }

    private void report(Problems problems, StageDraft start, Need need, Set<String> attainable) {
        List<String> chain = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Map<String, StageDraft> byId =
                stages.stream().collect(Collectors.toMap(d -> d.stage().id(), d -> d, (a, b) -> a));
        Optional<Need> at = Optional.of(need);
        String stage = start.stage().id();
        while (at.isPresent() && seen.add(stage)) {
            String state = missingPart(at.get().anyOf().get(0), attainable);
            Optional<String> by = setters.getOrDefault(state, Set.of()).stream().findFirst();
            chain.add("'" + stage + "' needs '" + state + "'"
                    + by.map(b -> " from '" + b + "'").orElse(""));
            if (by.isEmpty()) {
                break;
            }
            stage = by.get();
            at = Optional.ofNullable(byId.get(stage)).flatMap(d -> blocked(d, attainable));
        }
        problems.warning(
                need.origin().place(),
                "unreachable",
                "stage '" + start.stage().id() + "' can only begin where a survey finds what it needs: "
                        + String.join(", ", chain),
                "needs");
    }

    private String missingPart(String id, Set<String> attainable) {
        return states.get(id).madeOf().stream()
                .filter(p -> states.has(p) && !attainable.contains(p))
                .findFirst()
                .orElse(id);
    }
}
