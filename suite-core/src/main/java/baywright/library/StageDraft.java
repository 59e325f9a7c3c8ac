package baywright.library;

import baywright.library.FileBlock.Met;
import baywright.script.Evaluator;
import baywright.script.Place;
import baywright.script.Problems;
import baywright.script.Steps;
import java.util.ArrayList;
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
     * @param steps     those that the checking of its file has left
     */
    static StageDraft read(Lineage line, Surroundings around, boolean wholeText, Steps steps) {
        Met met = line.own();
        Problems problems = new Problems();
        List<Input> inputs = inputs(line, around, problems, steps);
        StageBlock block = new StageBlock(met.id(), met.place(), inputs);
        StageNames usual = new StageNames(inputs, around, Map.of(), Map.of());
        Evaluator walk = new Evaluator(StageLanguage.VOCABULARY, problems, usual, true, steps);
        line.run(walk, block);
        if (wholeText && !steps.areSpent()) {
            block.judge(problems);
        }
        List<StageTerms> variants = new ArrayList<>(List.of(block.allBranches()));
        ScriptTerms terms = new ScriptTerms(line, inputs, around);
        new Sweep(terms, problems, variants, steps).all(inputs, around.facts(), walk.read());
        if (steps.areSpent()
                && problems.sorted().stream().noneMatch(p -> p.code().equals("limit"))) {
            problems.error(met.place(), "limit", Steps.advice());
        }
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

    private static List<Input> inputs(Lineage line, Surroundings around, Problems problems, Steps steps) {
        InputsBlock block = new InputsBlock();
        line.inputs(new Evaluator(StageLanguage.VOCABULARY, problems, around, true, steps), block);
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
}
