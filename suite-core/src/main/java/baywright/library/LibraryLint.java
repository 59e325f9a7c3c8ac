package baywright.library;

import baywright.library.FileBlock.StateDraft;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Named;
import baywright.library.StageTerms.Need;
import baywright.library.StageTerms.Use;
import baywright.library.State.Scope;
import baywright.quantity.Dimension;
import baywright.quantity.Quantity;
import baywright.script.Nearest;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Value;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Checks that what the declarations refer to is there and fits. */
final class LibraryLint {

    private final Declared<State> states;
    private final Declared<Surface> surfaces;
    private final Declared<Family> families;
    private final Declared<Fact> facts;
    private final Declared<Item> items;
    private final Set<String> stageIds;

    LibraryLint(
            Declared<State> states,
            Declared<Surface> surfaces,
            Declared<Family> families,
            Declared<Fact> facts,
            Declared<Item> items,
            Set<String> stageIds) {
        this.states = states;
        this.surfaces = surfaces;
        this.families = families;
        this.facts = facts;
        this.items = items;
        this.stageIds = stageIds;
    }

    void state(StateDraft draft, Problems problems) {
        State state = draft.state();
        for (Value named : draft.named()) {
            String id = (String) named.raw();
            states.require(id, named.place(), problems, "state");
            if (id.equals(state.id())) {
                problems.error(named.place(), "contradiction", "state '" + id + "' refers to itself", "state");
            }
        }
        for (String implied : implied(state)) {
            boolean opposed = state.opposites().contains(implied)
                    || (states.has(implied) && states.get(implied).opposites().contains(state.id()));
            if (opposed) {
                problems.error(
                        state.place(),
                        "contradiction",
                        "state '" + state.id() + "' implies its own opposite '" + implied + "'",
                        "state");
            }
        }
        if (isMadeOfItself(state)) {
            problems.error(state.place(), "contradiction", "state '" + state.id() + "' is made of itself", "state");
        }
    }

    private Set<String> implied(State state) {
        Set<String> all = new LinkedHashSet<>();
        addImplied(state, all);
        return all;
    }

    private void addImplied(State state, Set<String> all) {
        for (String id : state.implies()) {
            if (all.add(id) && states.has(id)) {
                addImplied(states.get(id), all);
            }
        }
    }

    private boolean isMadeOfItself(State state) {
        Set<String> seen = new HashSet<>();
        Set<String> open = new LinkedHashSet<>(state.madeOf());
        while (!open.isEmpty()) {
            String id = open.iterator().next();
            open.remove(id);
            if (id.equals(state.id())) {
                return true;
            }
            if (seen.add(id) && states.has(id)) {
                open.addAll(states.get(id).madeOf());
            }
        }
        return false;
    }

    void factor(FactorBlock.Draft draft, Problems problems) {
        JobFactor factor = draft.factor();
        boolean size = factor.fact().equals("size");
        if (!size) {
            facts.require(factor.fact(), draft.factPlace(), problems, "reads");
        }
        if (facts.has(factor.fact())) {
            List<String> choices = facts.get(factor.fact()).choices();
            draft.valuePlaces().forEach((value, place) -> {
                if (!choices.isEmpty() && !choices.contains(value)) {
                    problems.error(
                            place,
                            "never-true",
                            "'" + factor.fact() + "' is never '" + value + "'" + Nearest.hint(value, choices),
                            "value");
                }
            });
        }
        draft.families().forEach(v -> families.require((String) v.raw(), v.place(), problems, "families"));
        draft.stages().forEach(v -> requireStage((String) v.raw(), v.place(), problems));
    }

    private void requireStage(String id, Place place, Problems problems) {
        if (!stageIds.contains(id)) {
            problems.error(
                    place, "unknown-stage", "no stage is called '" + id + "'" + Nearest.hint(id, stageIds), "stage");
        }
    }

    void stage(StageDraft draft) {
        Problems problems = draft.problems();
        Stage stage = draft.stage();
        draft.surfacePlaces().forEach((id, place) -> surfaces.require(id, place, problems, "worksOn"));
        if (!stage.family().isEmpty()) {
            families.require(stage.family(), draft.familyPlace(), problems, "family");
        }
        draft.variants().forEach(t -> terms(t, problems));
        draft.examples().forEach(e -> example(e, problems));
    }

    private void terms(StageTerms terms, Problems problems) {
        terms.needs().forEach(n -> need(n, problems));
        terms.prefers().forEach(n -> need(n, problems));
        terms.effects().forEach(e -> effect(e, problems));
        terms.uses().forEach(u -> use(u, problems));
        terms.hazards().from().forEach(n -> items.require(n.id(), n.origin().place(), problems, "from"));
        hazardsNamed(terms, problems);
    }

    private void need(Need need, Problems problems) {
        need.anyOf()
                .forEach(
                        id -> states.require(id, need.origin().place(), problems, need.absent() ? "refuses" : "needs"));
    }

    private void effect(Effect effect, Problems problems) {
        Place place = effect.origin().place();
        states.require(effect.state(), place, problems, effect.sets() ? "sets" : "clears");
        if (!effect.unless().isEmpty()) {
            states.require(effect.unless(), effect.unlessPlace(), problems, "clears");
        }
        if (!states.has(effect.state())) {
            return;
        }
        State state = states.get(effect.state());
        if (state.scope() == Scope.CONDITION) {
            problems.error(
                    place,
                    "not-settable",
                    "'" + state.id() + "' is a condition that the bay gives; a stage can need it, not set or clear it",
                    "sets");
        } else if (!state.madeOf().isEmpty() && effect.sets()) {
            problems.error(
                    place,
                    "not-settable",
                    "'" + state.id() + "' is made of '" + String.join("', '", state.madeOf()) + "'; set those",
                    "sets");
        }
    }

    private void use(Use use, Problems problems) {
        Place place = use.origin().place();
        items.require(use.item(), place, problems, "item");
        if (items.has(use.item())) {
            unit(items.get(use.item()), use.amount(), place, problems);
        }
    }

    private static void unit(Item item, Quantity amount, Place place, Problems problems) {
        Dimension pack = item.pack().dimension();
        Dimension met = amount.dimension();
        boolean throughDensity = item.density().isPresent()
                && Set.of(Dimension.VOLUME, Dimension.MASS).containsAll(Set.of(pack, met));
        if (pack != met && !throughDensity) {
            problems.error(
                    place,
                    "unit",
                    "item '" + item.id() + "' comes in packs of " + item.pack() + ", so its amount is " + pack.example()
                            + ", not " + met.example(),
                    "item");
        }
    }

    private void hazardsNamed(StageTerms terms, Problems problems) {
        Set<String> named = new HashSet<>();
        terms.hazards().from().stream().map(Named::id).forEach(named::add);
        Set<String> told = new HashSet<>();
        for (Use use : terms.uses()) {
            boolean dangerous =
                    items.has(use.item()) && !items.get(use.item()).hazards().isEmpty();
            if (dangerous && !named.contains(use.item()) && told.add(use.item())) {
                problems.warning(
                        use.origin().place(),
                        "hazards-missing",
                        "item '" + use.item() + "' has hazard statements; add hazards { from '" + use.item() + "' }",
                        "from");
            }
        }
    }

    private void example(ExampleDraft draft, Problems problems) {
        draft.states().forEach(v -> states.require((String) v.raw(), v.place(), problems, "example"));
        draft.example().uses().forEach((id, amount) -> {
            Place place = draft.items().get(id).place();
            items.require(id, place, problems, "example");
            if (items.has(id)) {
                unit(items.get(id), amount, place, problems);
            }
        });
        draft.example().given().forEach((id, value) -> {
            facts.require(id, value.place(), problems, "example");
            if (facts.has(id) && InputValues.fit(facts.get(id), value).isEmpty()) {
                Fact fact = facts.get(id);
                String hint = value.raw() instanceof String met ? Nearest.hint(met, fact.choices()) : "";
                problems.error(
                        value.place(),
                        "bad-value",
                        "fact '" + id + "' takes " + InputValues.wanted(fact) + "; it is " + value.described() + hint,
                        "example");
            }
        });
    }
}
