package baywright.library;

import baywright.library.Fact.Kind;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problems;
import baywright.script.Steps;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Works out what a stage says at the ends of its inputs and facts, to find what is wrong only there.
 *
 * @param terms    works out the stage
 * @param problems gets what is wrong, each place once
 * @param variants gets the terms of each attempt
 * @param steps    those that the checking of the stage's file has left
 */
record Sweep(ScriptTerms terms, Problems problems, List<StageTerms> variants, Steps steps) {

    /** Tries each choice and each end of each input and fact that the script reads, one at a time. */
    void all(List<Input> inputs, List<Fact> facts, Set<String> read) {
        tryValues(Map.of(), Map.of(), "");
        for (Input input : inputs) {
            for (Value value : ends(input)) {
                String when = " (when " + input.name() + " is " + InputValues.shown(value) + ")";
                tryValues(Map.of(input.name(), value), Map.of(), when);
            }
        }
        for (Fact fact : facts) {
            for (Value value : read.contains(fact.id()) ? ends(fact) : List.<Value>of()) {
                String when = " (when " + fact.id() + " is " + InputValues.shown(value) + ")";
                tryValues(Map.of(), Map.of(fact.id(), value), when);
            }
        }
    }

    private static List<Value> ends(Input input) {
        List<Value> ends = new ArrayList<>();
        input.choices().forEach(c -> ends.add(Value.of(c, input.place())));
        input.least().ifPresent(ends::add);
        input.most().ifPresent(ends::add);
        if (input.kind() == Input.Kind.YES_NO) {
            ends.add(Value.of(true, input.place()));
            ends.add(Value.of(false, input.place()));
        }
        return ends;
    }

    private static List<Value> ends(Fact fact) {
        List<Value> ends = new ArrayList<>();
        fact.choices().forEach(c -> ends.add(Value.of(c, fact.place())));
        if (fact.kind() == Kind.YES_NO) {
            ends.add(Value.of(true, fact.place()));
            ends.add(Value.of(false, fact.place()));
        } else if (fact.kind() == Kind.NUMBER) {
            ends.add(Value.of(BigDecimal.ONE, fact.place()));
        }
        return ends;
    }

    private void tryValues(Map<String, Value> with, Map<String, Value> surveyed, String when) {
        if (steps.areSpent()) {
            return;
        }
        ScriptTerms.Attempt attempt = terms.attempt(with, surveyed, steps);
        variants.add(attempt.terms());
        Set<Place> told = new HashSet<>();
        problems.sorted().forEach(p -> told.add(p.place()));
        for (Problem p : attempt.problems()) {
            if (told.add(p.place())) {
                problems.add(new Problem(p.place(), p.severity(), p.code(), p.message() + when, p.word()));
            }
        }
    }
}
