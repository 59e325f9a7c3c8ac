package baywright.library;

import baywright.library.Fact.Kind;
import baywright.library.FileBlock.Met;
import baywright.script.Evaluator;
import baywright.script.Names;
import baywright.script.Node;
import baywright.script.Place;
import baywright.script.Problem;
import baywright.script.Problems;
import baywright.script.ScriptFault;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A stage that has been read, with what the check across the library needs to know of it.
 *
 * @param stage         the stage
 * @param everything    its terms with every branch of every condition
 * @param surfacePlaces where each surface is listed
 * @param familyPlace   where its family is named
 * @param problems      what is wrong with it
 */
record StageDraft(
        Stage stage, StageTerms everything, Map<String, Place> surfacePlaces, Place familyPlace, Problems problems) {

    /** Reads a stage: first its inputs, then every branch of it, then what it says at the ends of its inputs. */
    static StageDraft read(Met met, List<Fact> facts) {
        Problems problems = new Problems();
        List<Node> body = met.block().body();
        List<Input> inputs = inputs(met, problems);
        StageBlock block = new StageBlock(met.id(), met.place(), inputs);
        StageNames usual = new StageNames(inputs, facts, Map.of(), Map.of());
        Evaluator walk = new Evaluator(StageLanguage.VOCABULARY, problems, usual, true);
        walk.start(body, met.scope().inner(), block);
        block.judge(problems);
        ScriptTerms terms = new ScriptTerms(body, met.scope(), inputs, facts);
        if (problems.errors() == 0) {
            sweep(terms, inputs, facts, walk.read(), problems);
        }
        return new StageDraft(
                block.build(terms), block.everything(), block.surfacePlaces(), block.familyPlace(), problems);
    }

    private static List<Input> inputs(Met met, Problems problems) {
        InputsBlock block = new InputsBlock();
        for (Node node : met.block().body()) {
            if (node instanceof Node.Call call
                    && call.receiver().isEmpty()
                    && call.name().equals("inputs")
                    && call.block().isPresent()) {
                new Evaluator(StageLanguage.VOCABULARY, problems, Names.NONE, true)
                        .start(call.block().get().body(), met.scope().inner(), block);
            }
        }
        return block.build();
    }

    /** Tries each choice and each end of each input and fact that the script reads, one at a time. */
    private static void sweep(
            ScriptTerms terms, List<Input> inputs, List<Fact> facts, Set<String> read, Problems problems) {
        tryValues(terms, Map.of(), Map.of(), "", problems);
        for (Input input : inputs) {
            for (Value value : ends(input)) {
                String when = " (when " + input.name() + " is " + value.described() + ")";
                tryValues(terms, Map.of(input.name(), value), Map.of(), when, problems);
            }
        }
        for (Fact fact : facts) {
            if (read.contains(fact.id())) {
                for (Value value : ends(fact)) {
                    String when = " (when " + fact.id() + " is " + value.described() + ")";
                    tryValues(terms, Map.of(), Map.of(fact.id(), value), when, problems);
                }
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
            ScriptTerms terms, Map<String, Value> with, Map<String, Value> surveyed, String when, Problems problems) {
        try {
            terms.of(with, surveyed);
        } catch (ScriptFault fault) {
            Map<Place, Problem> first = new LinkedHashMap<>();
            fault.problems().forEach(p -> first.putIfAbsent(p.place(), p));
            boolean known = problems.sorted().stream().anyMatch(p -> first.containsKey(p.place()));
            if (!known) {
                first.values()
                        .forEach(p -> problems.add(
                                new Problem(p.place(), p.severity(), p.code(), p.message() + when, p.word())));
            }
        }
    }
}
