package baywright.library;

import baywright.script.Evaluator;
import baywright.script.Problem;
import baywright.script.Problem.Severity;
import baywright.script.Problems;
import baywright.script.ScriptFault;
import baywright.script.Steps;
import baywright.script.Value;
import baywright.script.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out a stage's terms by running its script, and keeps the last ones: most steps agree on what they read. */
final class ScriptTerms implements Stage.TermsSource {

    private static final int KEPT = 32;

    /** Terms with the values that were read for them. */
    private record Known(Map<String, Object> read, StageTerms terms) {}

    private final Lineage line;
    private final List<Input> inputs;
    private final Surroundings around;
    private volatile List<Known> known = List.of();

    ScriptTerms(Lineage line, List<Input> inputs, Surroundings around) {
        this.line = line;
        this.inputs = List.copyOf(inputs);
        this.around = around;
    }

    @Override
    public StageTerms of(Map<String, Value> with, Map<String, Value> surveyed) {
        StageNames names = new StageNames(inputs, around, with, surveyed);
        for (Known one : known) {
            if (agrees(one, names)) {
                return one.terms();
            }
        }
        StageTerms terms = workOut(names);
        keep(new Known(names.raw(terms.dependsOn()), terms));
        return terms;
    }

    /** Examples are no part of what a stage says for a use. */
    @Override
    public Optional<Wording> wording() {
        Wording wording = new Wording(Set.of("example"));
        line.others().forEach(met -> wording.add(met.block().body(), met.scope()));
        wording.add(line.own().block().body(), line.own().scope());
        around.addTo(wording);
        return Optional.of(wording);
    }

    private static boolean agrees(Known one, StageNames names) {
        return names.raw(one.read().keySet()).equals(one.read());
    }

    private synchronized void keep(Known one) {
        List<Known> more = new ArrayList<>(known);
        if (more.size() == KEPT) {
            more.remove(0);
        }
        more.add(one);
        known = List.copyOf(more);
    }

    private StageTerms workOut(StageNames names) {
        Attempt attempt = attempt(names, new Steps());
        if (!attempt.problems().isEmpty()) {
            throw new ScriptFault(attempt.problems());
        }
        return attempt.terms();
    }

    /** Terms with what was wrong while they were worked out; what was wrong is missing from them. */
    record Attempt(StageTerms terms, List<Problem> problems) {}

    /** Works out the terms without keeping them, and with whatever errors there are, with steps of a file's checking. */
    Attempt attempt(Map<String, Value> with, Map<String, Value> surveyed, Steps steps) {
        return attempt(new StageNames(inputs, around, with, surveyed), steps);
    }

    private Attempt attempt(StageNames names, Steps steps) {
        Problems problems = new Problems();
        TermsBlock block = new TermsBlock();
        Evaluator evaluator = new Evaluator(StageLanguage.VOCABULARY, problems, names, false, steps);
        line.run(evaluator, block);
        return new Attempt(
                block.build(evaluator.read()),
                problems.sorted().stream()
                        .filter(p -> p.severity() == Severity.ERROR)
                        .toList());
    }
}
