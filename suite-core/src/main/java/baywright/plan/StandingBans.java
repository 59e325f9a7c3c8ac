package baywright.plan;

import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.plan.RepairChoice.Use;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What rules forbid on a zone in every plan: rules that ask only for what the survey found, what the shop has settled and
 * the step itself. Other rules depend on the order of the work; they are for the proof of the whole.
 */
final class StandingBans {

    private static final Set<String> WORDS = Set.of("found", "surveyed", "setting", "input", "uses");

    private final Prover prover;
    private final RepairStages stages;
    private final Map<Use, Map<Integer, Finding>> byUse = new HashMap<>();

    StandingBans(Prover prover, RepairStages stages) {
        this.prover = prover;
        this.stages = stages;
    }

    /** The finding that forbids a use on a row, by row. */
    Map<Integer, Finding> of(Use use) {
        return byUse.computeIfAbsent(use, this::judged);
    }

    private Map<Integer, Finding> judged(Use use) {
        Set<String> standing = standing(use.stage());
        BitSet rows = (BitSet) stages.rowsOf(use.stage()).clone();
        rows.clear(prover.vehicle().vehicle());
        if (standing.isEmpty() || rows.isEmpty()) {
            return Map.of();
        }
        Map<Integer, Finding> bans = new LinkedHashMap<>();
        Step alone = stages.inserted("s1", use, rows, Step.Priority.MUST);
        for (Finding finding : prover.stops(new Plan(List.of(alone)))) {
            if (finding.reason() instanceof Reason.RuleSpeaks rule && standing.contains(rule.rule())) {
                finding.zones()
                        .forEach(zone -> bans.putIfAbsent(prover.vehicle().row(zone), finding));
            }
        }
        return bans;
    }

    /** Rules that concern a stage and ask for nothing but what stands. */
    private Set<String> standing(String id) {
        Library library = prover.setting().library();
        Stage stage = library.stageById().get(id);
        return library.rules().stream()
                .filter(rule -> rule.at().concerns(stage))
                .filter(rule -> rule.asks().stream().allMatch(ask -> stands(ask.word())))
                .map(Rule::id)
                .collect(Collectors.toSet());
    }

    private static boolean stands(String word) {
        boolean ofStep = word.startsWith("step.") && !word.equals("step.day") && !word.equals("step.start");
        boolean ofFilm = word.startsWith("film.") && !word.startsWith("film.planned");
        return ofStep || ofFilm || word.startsWith("zone.") || word.startsWith("vehicle.") || WORDS.contains(word);
    }
}
