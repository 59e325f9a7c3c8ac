package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.library.StageTerms;
import baywright.library.StageTerms.Need;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Takes one rule, need, wish or refusal at a time out of the library and sees whether the bench or the table of needs
 * notices. Needs are sampled, one in ten; {@code -Dmutation.full=true} takes every one.
 */
class MutationTest {

    private static final int ONE_IN = Boolean.getBoolean("mutation.full") ? 1 : 10;

    private static final Library LIBRARY = Shipped.library().library();
    private static final List<StageNeeds> TABLE = StageNeeds.table();

    /** What can be taken out of a stage. */
    record Mutant(String stage, String line) {}

    @Test
    void everyRuleIsMissedWhenItIsTakenOut() {
        Set<String> survivors = new TreeSet<>();
        List<Bench> benches = Benches.all();
        for (Rule rule : LIBRARY.rules()) {
            boolean missed = benches.stream()
                    .filter(b -> b.expect().stream().anyMatch(e -> e.contains(" " + rule.id() + " ")))
                    .anyMatch(b -> !b.lines(without(Benches.library(b), rule.id()))
                            .equals(b.expect().stream().sorted().toList()));
            if (!missed) {
                survivors.add(rule.id());
            }
        }
        assertThat(survivors)
                .as(
                        "killed %d of %d",
                        LIBRARY.rules().size() - survivors.size(),
                        LIBRARY.rules().size())
                .isEmpty();
    }

    @Test
    void everyNeedIsMissedWhenItIsTakenOut() {
        List<Mutant> mutants = mutants();
        Set<String> survivors = new TreeSet<>();
        int tried = 0;
        for (int m = 0; m < mutants.size(); m += ONE_IN) {
            Mutant mutant = mutants.get(m);
            Library library = without(mutant);
            boolean missed = TABLE.stream()
                    .filter(l -> l.stage().equals(mutant.stage()))
                    .filter(l -> (l.kind() + " " + l.states()).equals(mutant.line()))
                    .anyMatch(l -> !l.isTold(library, TABLE));
            tried++;
            if (!missed) {
                survivors.add(mutant.toString());
            }
        }
        assertThat(survivors)
                .as("killed %d of %d", tried - survivors.size(), tried)
                .isEmpty();
        assertThat(tried).isGreaterThanOrEqualTo(mutants.size() / ONE_IN);
    }

    /** Each need, wish and refusal that any use of a stage may have, once. */
    static List<Mutant> mutants() {
        Set<Mutant> all = new LinkedHashSet<>();
        for (Stage stage : LIBRARY.stages()) {
            Set<String> lines = new LinkedHashSet<>(StageNeeds.of(LIBRARY, stage, ""));
            TABLE.stream()
                    .filter(l -> l.stage().equals(stage.id()) && !l.given().isEmpty())
                    .forEach(l -> lines.addAll(StageNeeds.of(LIBRARY, stage, l.given())));
            lines.forEach(l -> all.add(new Mutant(stage.id(), l)));
        }
        return new ArrayList<>(all);
    }

    private static Library without(Library library, String rule) {
        return with(
                library,
                library.stages(),
                library.rules().stream().filter(r -> !r.id().equals(rule)).toList());
    }

    private static Library without(Mutant mutant) {
        List<Stage> stages = LIBRARY.stages().stream()
                .map(s -> s.id().equals(mutant.stage()) ? poorer(s, mutant.line()) : s)
                .toList();
        return with(LIBRARY, stages, LIBRARY.rules());
    }

    private static Library with(Library library, List<Stage> stages, List<Rule> rules) {
        return Library.of(
                library.states(),
                library.surfaces(),
                library.families(),
                library.facts(),
                library.factors(),
                library.items(),
                stages,
                rules,
                library.hash());
    }

    private static Stage poorer(Stage stage, String line) {
        return new Stage(
                stage.id(),
                stage.title(),
                stage.about(),
                stage.family(),
                stage.revision(),
                stage.inputs(),
                stage.surfaces(),
                stage.examples(),
                (with, facts) -> poorer(stage.terms().of(with, facts), line),
                stage.place());
    }

    private static StageTerms poorer(StageTerms terms, String line) {
        return new StageTerms(
                terms.needs().stream()
                        .filter(n -> !line.equals((n.absent() ? "refuses " : "needs ") + states(n)))
                        .toList(),
                terms.prefers().stream()
                        .filter(n -> !line.equals("prefers " + states(n)))
                        .toList(),
                terms.effects(),
                terms.attended(),
                terms.standing(),
                terms.setUps(),
                terms.uses(),
                terms.hazards(),
                terms.crew(),
                terms.where(),
                terms.climate(),
                terms.removals(),
                terms.checks(),
                terms.mistakes(),
                terms.dependsOn());
    }

    private static String states(Need need) {
        return String.join("/", need.anyOf());
    }
}
