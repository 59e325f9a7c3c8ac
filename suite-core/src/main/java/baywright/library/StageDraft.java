package baywright.library;

import baywright.library.Fact.Kind;
import baywright.library.FileBlock.Met;
import baywright.script.Evaluator;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problems;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A stage that has been read, with what the check across the library needs to know of it.
 *
 * @param stage         the stage
 * @param variants      its terms with every branch of every condition, then for each end of each input
 * @param surfacePlaces where each surface is listed
 * @param familyPlace   where its family is named
 * @param examples      its examples
 * @param problems      what is wrong with it
 */
record StageDraft(
        Stage stage,
        List<StageTerms> variants,
        Map<String, Place> surfacePlaces,
        Place familyPlace,
        List<ExampleDraft> examples,
        Problems problems) {

    /**
     * Reads a stage: first its inputs, then every branch of it, then what it says at the ends of its inputs.
     *
     * @param wholeText whether all of its file could be read; else nothing is noted as missing
     */
    static StageDraft read(Lineage line, Surroundings around, boolean wholeText) {
        Met met = line.own();
        Problems problems = new Problems();
        List<Input> inputs = inputs(line, around, problems);
        StageBlock block = new StageBlock(met.id(), met.place(), inputs);
        StageNames usual = new StageNames(inputs, around, Map.of(), Map.of());
        Evaluator walk = new Evaluator(StageLanguage.VOCABULARY, problems, usual, true);
        line.run(walk, block);
        if (wholeText) {
            block.judge(problems);
        }
        List<StageTerms> variants = new ArrayList<>(List.of(block.allBranches()));
        ScriptTerms terms = new ScriptTerms(line, inputs, around);
        sweep(terms, inputs, around.facts(), walk.read(), problems, variants);
        return new StageDraft(
                block.build(terms, met.likeId()),
                variants,
                block.surfacePlaces(),
                block.familyPlace(),
                block.examples(),
                problems);
    }

    /** All needs of all variants, each once. */
    Set<StageTerms.Need> needs() {
        Set<StageTerms.Need> all = new LinkedHashSet<>();
        variants.forEach(t -> all.addAll(t.needs()));
        return all;
    }

    private static List<Input> inputs(Lineage line, Surroundings around, Problems problems) {
        InputsBlock block = new InputsBlock();
        line.inputs(new Evaluator(StageLanguage.VOCABULARY, problems, around, true), block);
        List<Input> inputs = block.build();
        for (Input input : inputs) {
            around.constant(input.name())
                    .ifPresent(c -> problems.error(
                            input.place(),
                            "duplicate",
                            "'" + input.name() + "' is already the name of the constant at " + c.place(),
                            "constant"));
        }
        return inputs;
    }

    /** Tries each choice and each end of each input and fact that the script reads, one at a time. */
    private static void sweep(
            ScriptTerms terms,
            List<Input> inputs,
            List<Fact> facts,
            Set<String> read,
            Problems problems,
            List<StageTerms> variants) {
        tryValues(terms, Map.of(), Map.of(), "", problems, variants);
        for (Input input : inputs) {
            for (Value value : ends(input)) {
                String when = " (when " + input.name() + " is " + InputValues.shown(value) + ")";
                tryValues(terms, Map.of(input.name(), value), Map.of(), when, problems, variants);
            }
        }
        for (Fact fact : facts) {
            for (Value value : read.contains(fact.id()) ? ends(fact) : List.<Value>of()) {
                String when = " (when " + fact.id() + " is " + InputValues.shown(value) + ")";
                tryValues(terms, Map.of(), Map.of(fact.id(), value), when, problems, variants);
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

    private static void tryValues(
            ScriptTerms terms,
            Map<String, Value> with,
            Map<String, Value> surveyed,
            String when,
            Problems problems,
            List<StageTerms> variants) {
        ScriptTerms.Attempt attempt = terms.attempt(with, surveyed);
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
