package baywright.plan;

import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Rule.Ask;
import baywright.plan.RepairChoice.Use;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Brings a plan into line with the rules that forbid it: moves or inserts the stages that such a rule asks for, one at a
 * time, as long as fewer of them forbid it each time and nothing else stops it instead. Of the edits that do, it takes the one
 * with the fewest warnings, then with the least time; it does not claim that no better one exists.
 */
final class RuleMend {

    private static final int MOST_EDITS = 12;

    /** How far before the forbidden step an edit may reach; composed plans have what belongs together side by side. */
    private static final int REACH = 12;

    private final Prover prover;
    private final RepairStages stages;
    private final Library library;
    private final Map<String, Rule> rules = new HashMap<>();

    RuleMend(Prover prover, RepairStages stages) {
        this.prover = prover;
        this.stages = stages;
        library = prover.setting().library();
        library.rules().forEach(r -> rules.put(r.id(), r));
    }

    /** A plan with what forbids it, what else stops it, how often it is warned of and how long it takes. */
    private record Variant(Plan plan, List<Finding> forbidden, int otherStops, int warnings, BigDecimal minutes) {

        /** Fewer rules against it, and nothing else that stops it in their place. */
        boolean mends(Variant other) {
            return forbidden.size() < other.forbidden.size() && otherStops <= other.otherStops;
        }

        boolean isBetterThan(Variant other) {
            int fewer = Integer.compare(forbidden.size(), other.forbidden.size());
            fewer = fewer != 0 ? fewer : Integer.compare(warnings, other.warnings);
            return fewer != 0 ? fewer < 0 : minutes.compareTo(other.minutes) < 0;
        }
    }

    private Variant variant(Plan plan) {
        List<Finding> forbidden = new ArrayList<>();
        int otherStops = 0;
        int warnings = 0;
        for (Finding finding : prover.prove(plan).findings()) {
            boolean stops = finding.severity() == Severity.STOP;
            if (stops && finding.reason() instanceof Reason.RuleSpeaks) {
                forbidden.add(finding);
            } else {
                otherStops += stops ? 1 : 0;
                warnings += finding.severity() == Severity.WARN ? 1 : 0;
            }
        }
        return new Variant(
                plan,
                forbidden,
                otherStops,
                warnings,
                prover.work(plan).attendedMinutes().mean());
    }

    /** The plan with as few rules against it as was found. */
    Plan mended(Plan plan) {
        Variant now = variant(plan);
        for (int edits = 0; edits < MOST_EDITS; edits++) {
            Optional<Variant> next = better(now);
            if (next.isEmpty()) {
                break;
            }
            now = next.get();
        }
        return now.plan();
    }

    private Optional<Variant> better(Variant now) {
        Optional<Variant> best = Optional.empty();
        for (Finding stop : now.forbidden()) {
            if (stop.reason() instanceof Reason.RuleSpeaks spoken && rules.containsKey(spoken.rule())) {
                for (Edit edit : edits(now.plan(), stop, rules.get(spoken.rule()))) {
                    Variant variant = variant(edit.applyTo(now.plan()));
                    if (variant.mends(now) && best.map(variant::isBetterThan).orElse(true)) {
                        best = Optional.of(variant);
                    }
                }
            }
        }
        return best;
    }

    private List<Edit> edits(Plan plan, Finding stop, Rule rule) {
        Set<String> asked = new LinkedHashSet<>();
        for (Ask ask : rule.asks()) {
            ask.names().stream().filter(library.stageById()::containsKey).forEach(asked::add);
        }
        int at =
                plan.steps().stream().map(Step::id).toList().indexOf(stop.step().orElseThrow());
        int from = Math.max(0, at - REACH);
        List<Edit> edits = new ArrayList<>();
        for (int position = from; position <= at; position++) {
            for (int i = from; i < Math.min(plan.steps().size(), at + REACH); i++) {
                Step step = plan.steps().get(i);
                if (i != position && (i == at || asked.contains(step.stage()))) {
                    edits.add(new Edit.Move(step.id(), position));
                }
            }
            for (String stage : asked) {
                if (!abrades(stage)) {
                    Optional<Step> made = made(plan, stop, stage);
                    int there = position;
                    made.ifPresent(s -> edits.add(new Edit.Insert(s, there)));
                }
            }
        }
        return edits;
    }

    private Optional<Step> made(Plan plan, Finding stop, String stage) {
        BitSet rows = new BitSet();
        stop.zones().forEach(zone -> rows.set(prover.vehicle().row(zone)));
        rows.and(stages.rowsOf(stage));
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(stages.inserted(freeId(plan), new Use(stage, Map.of()), rows, Step.Priority.MUST));
    }

    /** Paint is not spent to please a rule. */
    private boolean abrades(String stage) {
        return !library.stageById().get(stage).usualTerms().removals().isEmpty();
    }

    private static String freeId(Plan plan) {
        Set<String> ids = new HashSet<>();
        plan.steps().forEach(s -> ids.add(s.id()));
        int number = 1;
        while (ids.contains("r" + number)) {
            number++;
        }
        return "r" + number;
    }
}
